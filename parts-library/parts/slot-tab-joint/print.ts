// Derived values, ghosts and steps of a slot-and-tab joint.
import type { Facts } from '../../checks/index.js';
import { leastFilletLeg } from '../../handbook/index.js';
import type { Derived, Ghost, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { boxGhost, lineGhost } from '../shared/mating.js';
import { DEBURR } from '../shared/weld-steps.js';
import { roundText } from '../shared/words.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';
import { resolveJoint } from './resolve.js';
import { jointLine } from './slotted.js';

export function slotTabJointDerived(
  _part: Part,
  p: SlotTabJoint,
  { format }: DrawContext,
): readonly Derived[] {
  const answer = resolveJoint(p);
  if (!answer.ok) return [];
  const { joint } = answer.value;
  return [
    {
      id: 'slot.width',
      field: 'clearance',
      title: 'slot width',
      value: { amount: joint.slotWidth, unit: 'mm' },
      text: `${format.length(joint.slotWidth)}: tab ${format.length(joint.tabbed)}, clearance ${format.length(p.clearance.mm)}, taper ${format.length(joint.slotTaper)}`,
    },
    {
      id: 'slot.length',
      field: 'tabWidth',
      title: 'slot length',
      value: { amount: joint.slotLength, unit: 'mm' },
      text: `${format.length(joint.slotLength)}: tab ${format.length(joint.tabWidth)}, clearance ${format.length(p.clearance.mm)}, taper of both plates ${format.length(joint.slotTaper + joint.tabTaper)}`,
    },
    {
      id: 'tab',
      field: 'proud',
      title: 'tabs',
      value: { amount: joint.projection, unit: 'mm' },
      text: `${joint.centres.length} tabs ${format.length(joint.tabWidth)} wide, ${format.length(joint.projection)} long through ${format.length(joint.slotted)}`,
    },
  ];
}

/** The other plate: seen from its edge under the tabs, or standing on the slots. */
export function slotTabJointGhosts(_part: Part, p: SlotTabJoint, facts: Facts): readonly Ghost[] {
  const answer = resolveJoint(p);
  if (!answer.ok) return [];
  const { joint } = answer.value;
  const half = p.length.mm / 2;
  const leg = legOf(joint, facts);
  if (p.draws === 'tabbed') {
    const beyond = half + 1.5 * joint.slotted;
    return [
      boxGhost(
        'slotted',
        'mating-part',
        { x: [-beyond, beyond], y: [-joint.slotted, 0] },
        `slotted plate, ${facts.format.bare(joint.slotted)}`,
      ),
      lineGhost('weld', 'weld', { x: -half, y: leg }, { x: half, y: leg }),
    ];
  }
  const y = jointLine(p);
  const thick = joint.tabbed / 2;
  return [
    boxGhost(
      'tabbed',
      'mating-part',
      { x: [-half, half], y: [y - thick, y + thick] },
      `tabbed plate, ${facts.format.bare(joint.tabbed)}`,
    ),
    ...[-1, 1].map((side) =>
      lineGhost(
        `weld.${side < 0 ? 'below' : 'above'}`,
        'weld',
        { x: -half, y: y + side * (thick + leg) },
        { x: half, y: y + side * (thick + leg) },
      ),
    ),
  ];
}

/** Least leg of the fillets along the joint, mm. */
const legOf = (joint: Joint, facts: Facts): number =>
  leastFilletLeg(Math.min(joint.tabbed, joint.slotted), facts.format.unit).leg;

export function slotTabJointSteps(_part: Part, p: SlotTabJoint, facts: Facts): readonly ShopStep[] {
  const answer = resolveJoint(p);
  if (!answer.ok) return [];
  const { joint } = answer.value;
  const { length } = facts.format;
  const ids = p.draws === 'slotted' ? joint.centres.map((_, index) => `slot.${index + 1}`) : ['outline'];
  return [
    DEBURR,
    {
      kind: 'measure',
      says:
        p.draws === 'slotted'
          ? `Measure a slot on its narrow face: ${length(joint.tabbed + p.clearance.mm)} wide is meant; try a tab before the plate leaves the table.`
          : `Measure a tab on its wide face: ${length(joint.tabWidth + joint.tabTaper)} is meant; shoulders free of nubs.`,
      featureIds: ids,
    },
    {
      kind: 'grind',
      says: 'Grind the joint to bright metal on both plates, lead-in nubs and dross gone; nitrided edges make porous welds.',
      featureIds: ids,
    },
    {
      kind: 'fit',
      says: `Knock the tabs in from the wide face of the slots until the shoulders seat; a feeler of ${length(0.5)} must not go under.`,
    },
    {
      kind: 'tack',
      says: `Square it, tack both ends, then the middle${joint.centres.length > 2 ? ', then beside each tab' : ''}.`,
    },
    {
      kind: 'weld',
      says: `Weld ${length(legOf(joint, facts))} fillets on both sides in short runs from the middle out${p.proud.mm < 0 ? `, fill the slots from the far face` : ', close the tabs from the far face'}.`,
    },
    ...(p.proud.mm > 0
      ? [{ kind: 'grind' as const, says: `Grind the tabs flush: they stand ${length(p.proud.mm)} proud.` }]
      : []),
    {
      kind: 'caution',
      says: `Plates of ${roundText(joint.tabbed)} and ${roundText(joint.slotted)} mm were counted: another plate changes the slots. Zinc, cadmium and paint off before welding.`,
    },
  ];
}
