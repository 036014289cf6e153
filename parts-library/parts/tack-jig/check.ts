// The rules of a tack jig, in the order in which they are read.
import {
  checkLabel,
  checkMaterialCaution,
  checkOldTube,
  checkPlateSize,
  checkSlotWidth,
  checkSmallHoles,
  checkTapping,
  checkWebs,
  digits,
  found,
  judge,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, weldAngle, weldAngleSource, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf, underFields } from '../shared/bolted.js';
import type { Bed } from './bed.js';
import { heldAngle } from './frame.js';
import type { TackJig } from './parameters.js';
import { resolveJig, type ResolvedJig } from './resolve.js';

const DEGREES = 180 / Math.PI;

/**
 * How far a leg may stand off its angle: a stop leans by its clearance and stands where the cut put it, both over the
 * distance between the two stops of the leg; a square by the tolerance of its edge over its length. Both legs add.
 */
function angleError(
  p: TackJig,
  r: ResolvedJig,
  facts: Facts,
): { readonly degrees: number; readonly formula: string } {
  const legs = (['a', 'b'] as const).map((id) => {
    const span =
      r.bed === undefined
        ? (id === 'a' ? p.legA.mm : p.legB.mm) - p.weldRoom.mm
        : r.bed.spans[id].far - r.bed.spans[id].near;
    const off = facts.cutTolerance(span).amount + (r.bed === undefined ? 0 : p.clearance.mm);
    return { span, off, degrees: Math.atan(off / span) * DEGREES };
  });
  return {
    degrees: legs.reduce((sum, { degrees }) => sum + degrees, 0),
    formula: legs
      .map(({ off, span, degrees }) => `atan(${digits(off)} ÷ ${digits(span)}) = ${digits(degrees)}°`)
      .join(' + '),
  };
}

function checkSquareness(p: TackJig, r: ResolvedJig, facts: Facts): Finding {
  const shorter = Math.min(p.legA.mm, p.legB.mm);
  const error = angleError(p, r, facts);
  const [fine, usual] = [weldAngle('A', shorter), weldAngle('B', shorter)];
  const level = judge(['caution', error.degrees > usual], ['note', error.degrees > fine]);
  const minutes = (degrees: number): string => `${Math.round(degrees * 60)}′`;
  return found({
    code: 'squareness',
    level,
    field: p.legA.mm <= p.legB.mm ? 'legA' : 'legB',
    title: `Holds ${digits(heldAngle(p))}° within ${minutes(error.degrees)} at worst; frames want ${minutes(usual)} (class B), ${minutes(fine)} (class A)`,
    says: `Counted with the cut at its limit deviation. Measure the diagonal on the first frame and ${r.bed === undefined ? 'dress an edge' : 'shim a stop'}${level === 'pass' ? '' : `; ${r.bed === undefined ? 'longer legs' : 'stops further apart, less clearance,'} or a table that has been measured would do`}.`,
    value: quantity(error.degrees, 'degrees'),
    limit: quantity(usual, 'degrees'),
    formula: error.formula,
    source: weldAngleSource,
  });
}

const FIT: Source = {
  title: 'Stops in slots: stop + 0.2 to 0.4 mm on a measured kerf, and t tan θ for the lean',
  where: 'shop rule',
  certainty: 'common practice',
};

function checkStops(p: TackJig, bed: Bed, facts: Facts): readonly Finding[] {
  const first = bed.slots[0];
  const anchor = first === undefined ? {} : { anchor: first.leg.at(first.u, first.v) };
  const worst = p.clearance.mm - facts.kerf.plusMinus - (p.stop.plusMinus ?? 0);
  const { length } = facts.format;
  return [
    found({
      code: 'stop-fit',
      level: judge(['note', worst < 0]),
      subject: { featureId: 'stop.a.1' },
      ...anchor,
      field: 'clearance',
      title:
        worst < 0
          ? `Stops may want a file: ${length(-worst)} short when the kerf is at its worst`
          : `Stops go in with ${length(worst)} to spare when the kerf is at its worst`,
      says: `Slot ${length(bed.slotWidth)} for a stop of ${length(p.stop.mm)}. Tight is right here: a stop that is driven in stands square; weld it from below.`,
      value: quantity(worst, 'mm'),
      limit: quantity(p.clearance.mm, 'mm', facts.kerf.plusMinus),
      formula: `${digits(p.stop.mm)} + ${digits(p.clearance.mm)} + ${digits(p.thickness.mm)} × tan ${digits(p.lean.value)}° = ${digits(bed.slotWidth)}; ${digits(p.clearance.mm)} − ${digits(facts.kerf.plusMinus)} = ${digits(worst)}`,
      source: FIT,
    }),
    found({
      code: 'wedge-room',
      level: judge(['caution', p.wedgeGap.mm < 3], ['note', p.wedgeGap.mm > 20]),
      subject: { featureId: 'wedge.a' },
      field: 'wedgeGap',
      title: `${length(p.wedgeGap.mm)} between tube and wedge stop`,
      says:
        p.wedgeGap.mm < 3
          ? 'A thicker tube, or a bead on it, does not go in, and no wedge holds in so little.'
          : 'A strip of plate ground to a taper of 1 in 10 locks there.',
      value: quantity(p.wedgeGap.mm, 'mm'),
      limit: quantity(3, 'mm'),
      source: { title: 'Wedges in jigs', where: 'shop practice', certainty: 'common practice' },
    }),
  ];
}

const WELD_ROOM: Source = {
  title: 'Room under a tack',
  where: 'at least 10 mm past the joint: spatter and the back of the tack must not reach the jig',
  certainty: 'common practice',
};
const LEAST_WELD_ROOM = 10;

function checkWeldRoom(p: TackJig, facts: Facts): Finding {
  const level = judge(['caution', p.weldRoom.mm === 0], ['note', p.weldRoom.mm < LEAST_WELD_ROOM]);
  return found({
    code: 'weld-room',
    level,
    field: 'weldRoom',
    title:
      p.weldRoom.mm === 0
        ? 'Nothing keeps the tack off the jig'
        : `${facts.format.length(p.weldRoom.mm)} of room round the joint`,
    says:
      level === 'pass'
        ? 'Tacks reach all sides and the frame lifts out.'
        : 'The first tack welds the frame to its jig. More room, or a strip of copper under the joint, would do.',
    value: quantity(p.weldRoom.mm, 'mm'),
    limit: quantity(LEAST_WELD_ROOM, 'mm'),
    source: WELD_ROOM,
  });
}

function checkShrink(p: TackJig): Finding {
  return found({
    code: 'shrinkage',
    level: p.preset.value === 0 ? 'note' : 'pass',
    field: 'preset',
    title:
      p.preset.value === 0
        ? 'The weld pulls the corner to: find out by how much'
        : `Held at ${digits(heldAngle(p))}° for a corner of ${digits(p.angle.value)}°`,
    says: 'Tack all four sides before welding, weld opposite sides in turn, let it cool in the jig. What the first corner closes by is what the jig is opened by.',
    source: { title: 'Shrinkage of corner welds', where: 'shop practice', certainty: 'common practice' },
  });
}

/** All findings of the jig. */
export function checkTackJig(part: Part, p: TackJig, facts: Facts): readonly Finding[] {
  const answer = resolveJig(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const { bed } = r;
  const first = bed?.slots[0];
  const fieldOf = ({ id }: { readonly id: string }) =>
    id.startsWith('strap')
      ? {
          field: 'clampHoles',
          remedies: [
            {
              says: 'Mark the holes and drill them',
              change: [{ op: 'add' as const, path: '/clampHoles', value: 'drill' }],
            },
          ],
        }
      : { field: id.startsWith('clamp') ? 'clampOpening' : 'weldRoom' };
  return [
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOf),
    ...checkWebs(part, facts).map((web) => ({ ...web, field: p.kind === 'bed' ? 'legA' : 'clampLand' })),
    ...(bed === undefined || first === undefined
      ? []
      : [
          ...checkSlotWidth(
            [
              {
                featureId: first.id,
                at: first.leg.at(first.u, first.v),
                width: bed.slotWidth,
                eye: p.eye?.mm,
              },
            ],
            'eye',
            facts,
          ),
          ...checkStops(p, bed, facts),
          ...(bed.straps === undefined
            ? []
            : underFields(checkTapping(patternOf(bed.straps.size, bed.straps.holes), p.thickness.mm, facts), {
                holes: 'clampHoles',
              })),
        ]),
    checkSquareness(p, r, facts),
    checkWeldRoom(p, facts),
    checkShrink(p),
    ...checkOldTube('tubeA'),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: 'legA' }),
  ];
}
