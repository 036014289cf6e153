// What the print of a tack jig shows to be measured and edited, in the order in which a person measures.
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import { roundText } from '../shared/words.js';
import type { Bed } from './bed.js';
import { heldAngle, legsOf, weldOpening, type Leg } from './frame.js';
import type { TackJig } from './parameters.js';
import { resolveJig } from './resolve.js';

function bedDimensions(
  p: TackJig,
  bed: Bed,
  { format }: DrawContext,
): readonly (DimensionSpec | undefined)[] {
  const [a, b] = legsOf(p);
  const { near, far } = bed.spans.a;
  const datum = -p.stop.mm / 2;
  const opening = weldOpening(p);
  const strap = bed.straps?.holes[0];
  return [
    {
      id: 'near',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: 0 },
      to: a.at(near, datum),
      field: 'near',
      text: format.bare(near),
    },
    {
      id: 'span',
      kind: 'linear',
      along: 'x',
      from: a.at(near, datum),
      to: a.at(far, datum),
      text: format.bare(far - near),
    },
    {
      id: 'tubeA',
      kind: 'linear',
      along: 'y',
      from: a.at(a.length, 0),
      to: a.at(a.length, a.tube),
      field: 'tubeA',
      text: format.bare(a.tube),
    },
    {
      id: 'tubeB',
      kind: 'linear',
      along: 'aligned',
      from: b.at(b.length, 0),
      to: b.at(b.length, b.tube),
      field: 'tubeB',
      text: format.bare(b.tube),
    },
    {
      id: 'wedgeGap',
      kind: 'leader',
      at: a.at((near + far) / 2, a.tube + p.wedgeGap.mm),
      field: 'wedgeGap',
      text: `wedge stop ${format.bare(p.wedgeGap.mm)} off the tube`,
    },
    {
      id: 'slot',
      kind: 'leader',
      at: a.at(far, datum - bed.slotWidth / 2),
      field: 'clearance',
      text: `${bed.slots.length} slots ${format.bare(bed.slotLength)} × ${format.bare(bed.slotWidth)} for stops of ${format.bare(p.stop.mm)}`,
    },
    p.weldRoom.mm === 0
      ? undefined
      : {
          id: 'opening',
          kind: 'diameter',
          centre: opening.centre,
          radius: opening.radius,
          field: 'weldRoom',
          text: `⌀${format.bare(2 * opening.radius)}`,
        },
    strap === undefined || bed.straps === undefined
      ? undefined
      : {
          id: 'strap',
          kind: 'leader',
          at: strap.at,
          field: 'clampBolt',
          text: holeCallOut(bed.straps.size, bed.straps.holes.length, format),
        },
  ];
}

function squareDimensions(p: TackJig, { format }: DrawContext): readonly (DimensionSpec | undefined)[] {
  const answer = resolveJig(p);
  const square = answer.ok ? answer.value.square : undefined;
  const opening = square?.openings[0];
  const [a] = legsOf(p);
  const half = (heldAngle(p) / 2) * (Math.PI / 180);
  return [
    {
      id: 'tip',
      kind: 'linear',
      along: 'y',
      from: a.at(a.length, 0),
      to: a.at(a.length, p.tip.mm),
      field: 'tip',
      text: format.bare(p.tip.mm),
    },
    p.weldRoom.mm === 0
      ? undefined
      : {
          id: 'bite',
          kind: 'leader',
          at: { x: p.weldRoom.mm * Math.cos(half), y: p.weldRoom.mm * Math.sin(half) },
          field: 'weldRoom',
          text: `R${format.bare(p.weldRoom.mm)} for the weld`,
        },
    opening === undefined
      ? undefined
      : {
          id: 'clamp',
          kind: 'diameter',
          centre: opening.leg.at(opening.u, opening.v),
          radius: p.clampOpening.mm / 2,
          field: 'clampOpening',
          text: `${(square?.openings.length ?? 0) > 1 ? `${square?.openings.length ?? 0} × ` : ''}⌀${format.bare(p.clampOpening.mm)}`,
        },
    opening === undefined
      ? undefined
      : {
          id: 'clampLand',
          kind: 'linear',
          along: 'y',
          from: a.at(opening.u, 0),
          to: a.at(opening.u, p.clampLand.mm),
          field: 'clampLand',
          text: format.bare(p.clampLand.mm),
        },
  ];
}

/** Length of a leg, along its outer side on a bed and along its edge on a square. */
function legDimension(leg: Leg, low: number, { format }: DrawContext): DimensionSpec {
  return {
    id: leg.lengthField,
    kind: 'linear',
    along: leg.id === 'a' ? 'x' : 'aligned',
    from: leg.at(0, leg.id === 'a' ? low : 0),
    to: leg.at(leg.length, leg.id === 'a' ? low : 0),
    field: leg.lengthField,
    text: format.bare(leg.length),
  };
}

export function tackJigDimensions(part: Part, p: TackJig, context: DrawContext): readonly Dimension[] {
  const answer = resolveJig(p);
  if (!answer.ok) return [];
  const { bed } = answer.value;
  const [a, b] = legsOf(p);
  const { minY } = boundsOf(outlineOf(part).contour);
  return inOrder([
    {
      id: 'angle',
      kind: 'angle',
      centre: { x: 0, y: 0 },
      radius: 0.5 * Math.min(p.legA.mm, p.legB.mm),
      fromDegrees: 0,
      toDegrees: heldAngle(p),
      field: p.preset.value === 0 ? 'angle' : 'preset',
      text: `${roundText(heldAngle(p))}°`,
    },
    legDimension(a, Math.min(minY, 0), context),
    legDimension(b, 0, context),
    ...(bed === undefined ? squareDimensions(p, context) : bedDimensions(p, bed, context)),
    thicknessLeader(part, context.format, 0.9),
  ]);
}
