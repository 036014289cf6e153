// What a part is called says what it is for: names that speak of brakes, steering or lifting get the usual caution.
import type { Finding, Part } from '../model/index.js';
import { found } from './findings.js';

/** Words in a name, and what they mean for a part. */
const USES = [
  { use: 'brake', words: /\bbrak(e|es|ing)\b|\bcaliper bracket\b/i },
  { use: 'steering', words: /\bsteer(ing)?\b|\btie rod\b|\bkingpin\b/i },
  { use: 'suspension', words: /\bsuspension\b|\bspring hanger\b|\bwishbone\b|\bshock mount\b/i },
  { use: 'belt', words: /\b(seat|lap|safety) ?belt\b|\bharness\b/i },
  { use: 'lift', words: /\blift(ing)?\b|\bhoist\b|\bhook\b|\bsling\b/i },
  { use: 'tow', words: /\btow(ing)?\b|\bhitch\b|\bdrawbar\b/i },
] as const;

/**
 * The caution for a part whose name says that somebody's safety hangs on it; none when the family has said it already.
 * @param said findings of the part so far
 */
export function checkNamedUse(part: Part, said: readonly Finding[]): readonly Finding[] {
  const named = USES.find(({ words }) => words.test(part.name));
  if (named === undefined || said.some(({ code }) => code === `use-${named.use}`)) return [];
  return [
    found({
      code: `use-${named.use}`,
      level: 'caution',
      title: `Named “${part.name}”: have a qualified person check it`,
      says: `Somebody’s safety hangs on a ${named.use} part. These checks screen geometry and static strength only; shock, fatigue and local rules are not covered.`,
      source: {
        title: 'Usual caution',
        where: 'local code and licensed practice come first',
        certainty: 'common practice',
      },
    }),
  ];
}
