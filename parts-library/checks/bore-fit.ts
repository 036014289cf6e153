// The centre opening after kerf: what slips, what must be bored, and that a plasma-cut bore holds no ISO fit.
import { fitLimits, perpendicularity, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

export interface BoreInput {
  readonly way: 'slip-to-weld' | 'bore-after' | 'turned' | 'plain';
  /** Finished and as cut, mm. */
  readonly finished: number;
  readonly cut: number;
  readonly thickness: number;
  readonly hub?: { readonly diameter: number; readonly plusMinus: number | undefined };
}

/** Gap on a side beyond which a fillet must be made larger by the gap, mm: AWS D1.1 fillet root opening, 1/16 in. */
const LARGEST_GAP = 1.6;
const GAP_SOURCE: Source = {
  title: 'AWS D1.1 fillet root opening',
  where: '1/16 in (1.6 mm); beyond it the leg grows by the gap',
  certainty: 'from memory',
};
const NO_FIT: Source = {
  title: 'ISO 9013 and ISO 286 side by side',
  where: 'class 2 cut tolerance is tens of times an H8 hole’s',
  certainty: 'published',
};
/** A hub this much larger than a bored hole is still pressed in, mm; beyond it the two do not belong together. */
const LARGEST_INTERFERENCE = 0.1;
/** A turned bore with more clearance than this no longer locates the hub, mm: H7/h6 leaves at most 0.05 here. */
const LARGEST_LOCATING = 0.1;
/** Ground off a weld edge per side, mm, within the usual 0.2 to 0.5. */
export const USUAL_GRIND = 0.3;
/** Range of perpendicularity that air plasma usually lands in. */
const USUAL_LEAN = 3;

function checkSlip(input: BoreInput, hub: NonNullable<BoreInput['hub']>, facts: Facts): Finding {
  const clearance = input.finished - hub.diameter;
  const grind = (input.finished - input.cut) / 2;
  const reading = hub.plusMinus ?? 0;
  const range = facts.kerf.plusMinus + reading;
  const tight = clearance - range;
  const loose = clearance + range;
  const level = judge(
    ['stop', loose < 0],
    ['caution', clearance < 0 || loose / 2 > LARGEST_GAP],
    ['note', true],
  );
  const format = facts.format.length;
  return found({
    code: 'bore-fit',
    level,
    subject: { featureId: 'centre' },
    anchor: { x: -input.finished / 2, y: 0 },
    field: 'fit',
    title:
      clearance < 0
        ? `Hub ⌀${format(hub.diameter)} does not enter the bore ⌀${format(input.finished)}`
        : tight < 0
          ? `Hub slips in with ${format(clearance)} ±${format(range)}: may need grinding`
          : `Hub slips in with ${format(clearance)} ±${format(range)} on diameter`,
    says: `${loose < 0 ? 'A larger bore or fit, or a smaller hub would do. ' : ''}A plasma-cut bore holds no ISO fit. Kerf ±${format(facts.kerf.plusMinus)} and the hub’s reading ${hub.plusMinus === undefined ? '(its ± was not given and counts as nothing)' : `±${format(reading)}`} move it between ${format(tight)} and ${format(loose)}; that is at the wide face, and the cut leans up to ${format(perpendicularity(input.thickness, USUAL_LEAN).value)} a side toward the other. ${grind > 0 ? `${format(grind)} per side is left to grind.` : `Grinding the edge bright, as welding wants, opens it by twice what is taken off: ${format(USUAL_GRIND)} per side makes the gap ${format(2 * USUAL_GRIND)} larger; enter it to have the bore cut smaller.`}${loose / 2 > LARGEST_GAP ? ' At its loosest the gap asks for a larger leg.' : ''}`,
    value: quantity(clearance, 'mm', range),
    limit: quantity(2 * LARGEST_GAP, 'mm'),
    formula: `${digits(input.finished)} − ${digits(hub.diameter)} = ${digits(clearance)}; ± ${digits(facts.kerf.plusMinus)} + ${digits(reading)} = ±${digits(range)}`,
    source: loose / 2 > LARGEST_GAP ? GAP_SOURCE : facts.kerf.source,
  });
}

function checkMachined(input: BoreInput, facts: Facts): Finding {
  const toleranceClass = input.way === 'turned' ? 'H7' : 'H8';
  const limits = fitLimits(toleranceClass, input.finished);
  const allowance = input.finished - input.cut;
  const needed =
    facts.cutTolerance(input.cut).amount + 2 * perpendicularity(input.thickness, USUAL_LEAN).value;
  const format = facts.format.length;
  const fine = facts.format.fine;
  const size = limits.found
    ? `${toleranceClass}: ${fine(input.finished + limits.row.lower)} to ${fine(input.finished + limits.row.upper)}`
    : `${toleranceClass}, limits not held for this size`;
  const clearance = input.hub === undefined ? undefined : input.finished - input.hub.diameter;
  const isTooTight = clearance !== undefined && clearance < -LARGEST_INTERFERENCE;
  const isTooLoose = clearance !== undefined && input.way === 'turned' && clearance > LARGEST_LOCATING;
  const fit =
    clearance === undefined
      ? ''
      : isTooTight
        ? `The hub is ${fine(-clearance)} larger than the bore: it does not go in. `
        : isTooLoose
          ? `${fine(clearance)} of clearance is no locating fit; give the hub as measured and a fit of 0. `
          : `Clearance on the hub as measured ${fine(clearance)}. `;
  return found({
    code: 'bore-fit',
    level: judge(['stop', isTooTight], ['caution', allowance < needed || isTooLoose]),
    subject: { featureId: 'centre' },
    anchor: { x: -input.finished / 2, y: 0 },
    field: 'machiningAllowance',
    title: `Cut ⌀${format(input.cut)}, ${input.way === 'turned' ? 'turn' : 'bore'} to ⌀${format(input.finished)} (${size})`,
    says:
      fit +
      (allowance < needed
        ? `${format(allowance)} is left on diameter; the cut’s tolerance and lean can use up ${format(needed)}, and black skin would stay. More allowance would do.`
        : `${format(allowance)} is left on diameter, enough to clean up the cut’s tolerance and lean of ${format(needed)}. Weld shrinkage closes bores: finish after welding where you can.`),
    value: quantity(allowance, 'mm'),
    limit: quantity(needed, 'mm'),
    formula: `${digits(facts.cutTolerance(input.cut).amount)} + 2 × ${digits(perpendicularity(input.thickness, USUAL_LEAN).value)} = ${digits(needed)}`,
    source: limits.found ? limits.row.source : NO_FIT,
  });
}

/** Judges the centre opening in the way it is made. */
export function checkBoreFit(input: BoreInput, facts: Facts): readonly Finding[] {
  if (input.way === 'bore-after' || input.way === 'turned') return [checkMachined(input, facts)];
  if (input.hub !== undefined && input.way === 'slip-to-weld') return [checkSlip(input, input.hub, facts)];
  const tolerance = facts.cutTolerance(input.finished);
  return [
    found({
      code: 'bore-fit',
      level: 'note',
      subject: { featureId: 'centre' },
      anchor: { x: -input.finished / 2, y: 0 },
      field: 'bore',
      title: `Opening ⌀${facts.format.length(input.finished)}, cut: no ISO fit`,
      says: `A plasma-cut bore holds no ISO fit: ±${facts.format.length(tolerance.amount)} by ISO 9013 class 2, and it leans. For a shaft or a pilot choose bore after cutting, or turned.`,
      value: quantity(input.finished, 'mm', tolerance.amount),
      source: tolerance.source,
    }),
  ];
}
