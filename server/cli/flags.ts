// Flags of the command line: made from the parameters of a family, read strictly, with the nearest name for a slip.
import { parseArgs } from 'node:util';
import type { InputProblem } from './outcome.js';

/** A flag that takes a value, or a switch. */
export interface Flag {
  /** Without dashes in front, for example `bolt-circle` or `pattern2.bolt-circle`. */
  readonly name: string;
  readonly takesValue: boolean;
}

export interface ReadFlags {
  /** By flag name; switches are `true`. */
  readonly values: ReadonlyMap<string, string | true>;
  readonly positionals: readonly string[];
  readonly problems: readonly InputProblem[];
}

/**
 * The flag of a parameter.
 * @example flagName('pattern2.boltCircle') // 'pattern2.bolt-circle'
 */
export function flagName(path: string): string {
  return path.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`);
}

/** Reads arguments against the flags there are. Never throws on what was typed. */
export function readFlags(args: readonly string[], flags: readonly Flag[]): ReadFlags {
  const known = new Map(flags.map((flag) => [flag.name, flag]));
  const { tokens } = parseArgs({
    args: [...args],
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: Object.fromEntries(
      flags.map(({ name, takesValue }) => [name, { type: takesValue ? 'string' : 'boolean' } as const]),
    ),
  });
  const values = new Map<string, string | true>();
  const positionals: string[] = [];
  const problems: InputProblem[] = [];
  for (const token of tokens) {
    if (token.kind === 'positional') positionals.push(token.value);
    if (token.kind !== 'option') continue;
    const { name, rawName, value, inlineValue } = token;
    const flag = known.get(name);
    const refuse = (says: string) => problems.push({ field: name, flag: rawName, says });
    if (flag === undefined) refuse(unknownFlag(rawName, name, [...known.keys()]));
    else if (values.has(name)) refuse('is given twice; give it once.');
    else if (!flag.takesValue && value !== undefined) refuse(`takes no value, but "${value}" was given.`);
    else if (!flag.takesValue) values.set(name, true);
    else if (value === undefined || value === '') refuse('needs a value behind it.');
    else if (!inlineValue && value.startsWith('--'))
      refuse(`needs a value, but "${value}" follows. Write ${rawName}=VALUE if that is the value.`);
    else values.set(name, value);
  }
  return { values, positionals, problems };
}

function unknownFlag(rawName: string, name: string, known: readonly string[]): string {
  const nearest = nearestOf(name, known);
  return `There is no flag ${rawName}${nearest === undefined ? '' : `; did you mean --${nearest}?`}`;
}

/** The name that a slip was probably meant for, if there is one near enough. */
export function nearestOf(typed: string, names: readonly string[]): string | undefined {
  const ranked = names
    .map((name) => ({ name, slips: slipsBetween(typed.toLowerCase(), name) }))
    .toSorted((a, b) => a.slips - b.slips);
  const [best] = ranked;
  // With more than a third of the letters wrong it is another word.
  return best !== undefined && best.slips <= Math.ceil(typed.length / 3) ? best.name : undefined;
}

/** Levenshtein distance: letters to change, add or drop. */
function slipsBetween(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (const [i, letter] of a.split('').entries()) {
    let diagonal = row[0] ?? 0;
    const next = [i + 1];
    for (const [j, other] of b.split('').entries()) {
      const above = row[j + 1] ?? 0;
      next.push(Math.min(above + 1, (next[j] ?? 0) + 1, diagonal + (letter === other ? 0 : 1)));
      diagonal = above;
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
