// Whether tab goes into slot, and how loose it then is: clearance against kerf, taper and the tolerance of the cut.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import type { Source } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';

const FIT: Source = {
  title: 'Slot and tab: tab + 0.3 to 0.5 mm on a measured kerf, and t tan θ for the lean',
  where: 'shop rule; lean of 1 to 5° in a vocational course’s figures',
  certainty: 'common practice',
};

const GAP: Source = {
  title: 'Gap at the root of a fillet: 1.6 mm',
  where: 'AWS D1.1 fit-up of fillet welds: beyond 1/16 in the leg grows by the gap; not opened',
  certainty: 'from memory',
};
const LARGEST_GAP = 1.6;

/** Where the fit's numbers stand on the print. */
interface Place {
  readonly subject: { readonly featureId: string };
  readonly anchor: { readonly x: number; readonly y: number };
}

/**
 * Least clearance: what is asked for, less the kerf's ± (a wrong kerf makes every slot that much narrower) and the ± of
 * the other plate's thickness. Where the kerf has been measured that is what counts; the limit deviations of ISO 9013
 * class 2 are wider by far, and are told.
 */
export function checkFit(p: SlotTabJoint, joint: Joint, place: Place, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const measured = (p.draws === 'slotted' ? p.other.plusMinus : p.thickness.plusMinus) ?? 0;
  const worst = p.clearance.mm - facts.kerf.plusMinus - measured;
  const iso = facts.cutTolerance(joint.slotWidth);
  const byStandard = p.clearance.mm - iso.amount;
  const level = judge(['caution', worst < 0], ['note', byStandard < 0]);
  return [
    found({
      ...place,
      code: 'joint-fit',
      level,
      field: 'clearance',
      title:
        worst >= 0
          ? `Tab goes in with ${length(worst)} to spare when the kerf is at its worst`
          : `Tab may not go in: ${length(-worst)} short when the kerf is at its worst`,
      says: `Slot ${length(joint.slotWidth)} for a tab of ${length(joint.tabbed)}; the narrow face leaves ${length(p.clearance.mm)}. ${
        level === 'pass' ? '' : 'Cut a ladder of slots first, or measure the kerf on a coupon. '
      }By ISO 9013 class 2 alone the slot may be ±${length(iso.amount)}: a table that has been measured is better than that.`,
      value: quantity(worst, 'mm'),
      limit: quantity(p.clearance.mm, 'mm', facts.kerf.plusMinus),
      formula: `${digits(joint.tabbed)} + ${digits(p.clearance.mm)} + ${digits(joint.slotted)} × tan ${digits(p.lean.value)}° = ${digits(joint.slotWidth)}; ${digits(p.clearance.mm)} − ${digits(facts.kerf.plusMinus)}${measured > 0 ? ` − ${digits(measured)}` : ''} = ${digits(worst)}; class 2: ${digits(p.clearance.mm)} − ${digits(iso.amount)} = ${digits(byStandard)}`,
      source: FIT,
    }),
    checkGap(p, joint, place, facts),
  ];
}

/** The widest gap, at the wide face of the slot with the kerf at its worst: the weld has to bridge it. */
function checkGap(p: SlotTabJoint, joint: Joint, place: Place, facts: Facts): Finding {
  const gap = p.clearance.mm + 2 * joint.slotTaper + facts.kerf.plusMinus;
  return found({
    ...place,
    code: 'joint-gap',
    level: judge(['caution', gap > LARGEST_GAP]),
    field: p.clearance.mm > joint.slotTaper ? 'clearance' : 'lean',
    title: `Gap at most ${facts.format.length(gap)} at the wide face, both sides together`,
    says:
      gap > LARGEST_GAP
        ? 'Push the tab to one side, weld that side first, and make the other leg larger by the gap; less clearance or a squarer torch would do.'
        : 'A fillet bridges it.',
    value: quantity(gap, 'mm'),
    limit: quantity(LARGEST_GAP, 'mm'),
    formula: `${digits(p.clearance.mm)} + 2 × ${digits(joint.slotTaper, 3)} + ${digits(facts.kerf.plusMinus)} = ${digits(gap)}`,
    source: GAP,
  });
}

const TABS: Source = {
  title: 'Width of tabs',
  where: 'at least one and a half thicknesses, or the tab melts into its weld',
  certainty: 'common practice',
};

/** A tab wide enough to survive its weld, and enough plate left between the slots. */
export function checkTabs(p: SlotTabJoint, joint: Joint, place: Place, facts: Facts): readonly Finding[] {
  const least = 1.5 * joint.tabbed;
  const share = 1 - (joint.centres.length * joint.slotLength) / p.length.mm;
  return [
    found({
      ...place,
      code: 'tab-width',
      level: judge(['caution', joint.tabWidth < joint.tabbed], ['note', joint.tabWidth < least]),
      field: 'tabWidth',
      title: `Tabs ${facts.format.length(joint.tabWidth)} wide, ${facts.format.length(least)} at least for ${facts.format.length(joint.tabbed)} plate`,
      says: 'A narrow tab burns away and bends when the plates are knocked together.',
      value: quantity(joint.tabWidth, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `1.5 × ${digits(joint.tabbed)} = ${digits(least)}`,
      source: TABS,
    }),
    found({
      ...place,
      code: 'slotted-share',
      level: judge(['caution', share < 0.25], ['note', share < 0.5]),
      field: 'tabs',
      title: `${digits(100 * share, 0)} % of the slotted plate is left along the joint`,
      says:
        share < 0.5
          ? 'Across the joint the slotted plate carries by what is left between its slots until the weld has filled them. Fewer or narrower tabs would do.'
          : 'The slots leave more than half of the plate.',
      value: quantity(100 * share, '%'),
      limit: quantity(50, '%'),
      formula: `1 − ${joint.centres.length} × ${digits(joint.slotLength)} ÷ ${digits(p.length.mm)} = ${digits(share)}`,
      source: TABS,
    }),
  ];
}

const RELIEF: Source = {
  title: 'Relief at inside corners',
  where: 'the torch leaves half a kerf of radius in every inside corner; a square part stands on it',
  certainty: 'common practice',
};

/** A relief that the torch can cut, or what its own radius does to the seat. */
export function checkRelief(p: SlotTabJoint, place: Place, facts: Facts): readonly Finding[] {
  const least = facts.kerf.amount / 2;
  const { length } = facts.format;
  const none = p.relief.mm === 0;
  const small = !none && p.relief.mm < least;
  return [
    found({
      ...place,
      code: 'corner-relief',
      level: judge(['caution', none || small]),
      field: 'relief',
      title: none
        ? `Corners come out with the torch’s radius of ${length(least)}`
        : small
          ? `Relief of ${length(p.relief.mm)} is smaller than the torch can turn, ${length(least)}`
          : `Corner relief ${length(p.relief.mm)}: square corners seat`,
      says: none
        ? 'The tab’s corners stand on it and the shoulder stays off the plate by as much. A relief of one kerf, or a file on every tab, would do.'
        : small
          ? 'The path closes over it. A relief of one kerf would do.'
          : `It reaches ${length(p.relief.mm * (1 - Math.SQRT1_2))} past both sides of its corner.`,
      value: quantity(p.relief.mm, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `kerf ÷ 2 = ${digits(facts.kerf.amount)} ÷ 2 = ${digits(least)}`,
      source: RELIEF,
      ...(none || small
        ? {
            remedies: [
              {
                says: `Relieve corners by ${length(Number(facts.kerf.amount.toFixed(1)))}`,
                change: [
                  { op: 'add' as const, path: '/relief', value: Number(facts.kerf.amount.toFixed(1)) },
                ],
              },
            ],
          }
        : {}),
    }),
  ];
}
