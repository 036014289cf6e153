// Will it bolt up: the room that clearance leaves against everything that is out of place, fixed or floating fastener.
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

const FASTENER_FORMULAS: Source = {
  title: 'ASME Y14.5 fixed and floating fastener formulas',
  where: 'Appendix B: position tolerance T = H − F for floating, shared 2T = H − F for fixed fasteners',
  certainty: 'from memory',
};

/** One thing that uses up room, as a distance from true position, mm. */
interface Share {
  readonly says: string;
  readonly amount: number;
}

/** Room and its users for one pattern, in radial mm. */
export interface BoltUpBudget {
  readonly room: number;
  readonly shares: readonly Share[];
  /** Room less the sum of all shares: what is left when everything goes the wrong way at once. */
  readonly worst: number;
  /** Room less the root of the sum of squares: what is left as a rule. */
  readonly likely: number;
}

/**
 * Radial room of a bolt of diameter F in holes H1 (this plate) and H2 (the bolted part): (H1 − F)/2 + (H2 − F)/2 for
 * a floating fastener; for a fixed one the side that is tapped or has studs gives nothing. A measured circle that is ±u out puts a hole u/2
 * out along its radius.
 *
 * @example M10 tapped, bolted hole 10.5, circle ±0.17, drill drift 0.2: room 0.25, worst 0.25 − 0.285 = −0.035
 */
export function budgetBoltUp(pattern: {
  readonly bolt: number;
  readonly here: { readonly diameter: number; readonly plusMinus: number } | 'fixed';
  readonly there: { readonly diameter: number; readonly plusMinus: number } | 'fixed';
  readonly circlePlusMinus: number;
  readonly placing: Share;
}): BoltUpBudget {
  const { bolt, here, there } = pattern;
  const roomIn = (hole: typeof here): number => (hole === 'fixed' ? 0 : (hole.diameter - bolt) / 2);
  const room = roomIn(here) + roomIn(there);
  const shares: readonly Share[] = [
    { says: 'measured circle', amount: pattern.circlePlusMinus / 2 },
    pattern.placing,
    ...(there === 'fixed' ? [] : [{ says: 'bolted hole as measured', amount: there.plusMinus / 2 }]),
    ...(here === 'fixed' ? [] : [{ says: 'size of the hole cut here', amount: here.plusMinus / 2 }]),
  ].filter(({ amount }) => amount > 0);
  const sum = shares.reduce((total, { amount }) => total + amount, 0);
  const root = Math.sqrt(shares.reduce((total, { amount }) => total + amount * amount, 0));
  return { room, shares, worst: room - sum, likely: room - root };
}

/** What would make room, for the way the two parts are bolted. */
function remedyWords(pattern: BoltPattern, short: string): string {
  const looser = pattern.made === 'tapped' ? '' : ` A hole here larger by ${short},`;
  const there = pattern.boltedBy === 'hole' ? ` a hole in the bolted part larger by ${short},` : '';
  return `${looser}${there} or a smaller measuring ± would do; or drill this plate through the bolted part.`
    .trim()
    .replace(/^./, (c) => c.toUpperCase());
}

/** Judges whether the bolted part's holes and this plate's meet. Without the bolted hole's size it says what is missing. */
export function checkBoltUp(pattern: BoltPattern, facts: Facts): readonly Finding[] {
  const first = pattern.holes[0];
  if (first === undefined) return [];
  const place = {
    code: 'bolt-up',
    subject: { featureId: first.featureId },
    anchor: first.at,
    field: `${pattern.fieldPrefix}boltedHole`,
    source: FASTENER_FORMULAS,
  } as const;
  const isFixedThere = pattern.boltedBy !== 'hole';
  if (isFixedThere && pattern.made === 'tapped') {
    return [
      found({
        ...place,
        level: 'stop',
        field: `${pattern.fieldPrefix}holes`,
        title: 'Tapped here and tapped there: the bolts cannot draw up',
        says: 'One of the two parts needs clearance holes.',
      }),
    ];
  }
  const there = isFixedThere ? 'fixed' : pattern.boltedHole;
  if (there === undefined) {
    return [
      found({
        ...place,
        code: 'not-checked',
        level: 'note',
        title: `will it bolt up (${pattern.thread.name})`,
        says: 'Measure one hole of the sprocket, disc or wheel: with it the room for the bolts is weighed against the measured ± and the cutting or drilling error.',
      }),
    ];
  }
  const cut = pattern.made === 'clearance' || pattern.made === 'plain';
  const tolerance = facts.cutTolerance(pattern.circle);
  const bolt = pattern.thread.diameter;
  const budget = budgetBoltUp({
    bolt,
    here:
      pattern.made === 'tapped'
        ? 'fixed'
        : { diameter: pattern.holeDiameter, plusMinus: cut ? facts.holeKerf.plusMinus : 0 },
    there,
    circlePlusMinus: pattern.circlePlusMinus ?? 0,
    placing: cut
      ? { says: 'place of the cut hole', amount: tolerance.amount / 2 }
      : {
          says: 'drift of a drill from its mark',
          amount: facts.drillDrift.amount + facts.drillDrift.plusMinus,
        },
  });
  const level = judge(['stop', budget.room <= 0], ['caution', budget.worst < 0]);
  const kind = pattern.made === 'tapped' || isFixedThere ? 'fixed' : 'floating';
  const mm = (value: number): string => facts.format.length(Math.abs(value));
  const title =
    budget.room <= 0
      ? `Will not bolt up: no room for ${pattern.thread.name}`
      : budget.worst >= 0
        ? `Bolts up with ${mm(budget.worst)} to spare at worst case`
        : budget.likely >= 0
          ? `May not bolt up: ${mm(budget.worst)} short at worst case, ${mm(budget.likely)} to spare as a rule`
          : `Probably will not bolt up: ${mm(budget.likely)} short as a rule, ${mm(budget.worst)} at worst`;
  const list = budget.shares.map(({ says, amount }) => `${says} ${facts.format.length(amount)}`).join(', ');
  return [
    found({
      ...place,
      level,
      title,
      says: `Room beside the bolt ${facts.format.length(budget.room)} (${kind} fastener); used up by ${list || 'nothing stated'}. ${pattern.circlePlusMinus === undefined ? 'The circle’s ± was not given and counts as nothing. ' : ''}${
        level === 'pass'
          ? ''
          : `${remedyWords(pattern, mm(2 * Math.min(budget.worst, 0)))}${cut ? ' The place of a cut hole is counted by ISO 9013 class 2; a table that has been measured is better than that.' : ''}`
      }`.trim(),
      value: quantity(budget.room - budget.worst, 'mm'),
      limit: quantity(budget.room, 'mm'),
      formula: `${[
        ...(pattern.made === 'tapped' ? [] : [pattern.holeDiameter]),
        ...(there === 'fixed' ? [] : [there.diameter]),
      ]
        .map((hole) => `(${digits(hole)} − ${digits(bolt)})/2`)
        .join(
          ' + ',
        )} = ${digits(budget.room, 3)}; ${budget.shares.map(({ amount }) => digits(amount, 3)).join(' + ') || '0'} = ${digits(budget.room - budget.worst, 3)}`,
    }),
  ];
}
