// Ghosts round a pedal base: cylinder flange, rod, ears and bolts, and the whole pedal seen from the side.
import type { Facts } from '../../checks/index.js';
import { slotContour } from '../../geometry/index.js';
import type { Ghost, Part } from '../../model/index.js';
import { headGhosts } from '../shared/bolted.js';
import { boxGhost, lineGhost } from '../shared/mating.js';
import type { PedalBase } from './parameters.js';
import { earPlace, resolveBase } from './resolve.js';

/** Room between the plate and its side view, as a share of its width. */
const SIDE_ROOM = 0.6;
/** A cylinder's body and its flange's ears, by the bolts' spacing; and its length shown. */
const BODY = 0.6;
const FLANGE_EAR = 0.4;
const BODY_LENGTH = 1.2;
/** Of the pedal's arm, this much is shown. */
const ARM_SHOWN = 0.5;

/** Where the side view stands: the plate's face on the pedal's side, and the pivot before it, x in mm. */
export function sideView(p: PedalBase) {
  const face = p.width.mm * (0.5 + SIDE_ROOM) + p.pivotOut.mm;
  return { face, pivotX: face - p.pivotOut.mm };
}

export function pedalBaseGhosts(_part: Part, p: PedalBase, { format }: Facts): readonly Ghost[] {
  const answer = resolveBase(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { face, pivotX } = sideView(p);
  const back = face + p.thickness.mm;
  const { inner, outer, low, high } = earPlace(p, r.pivotY);
  const [first, second] = r.cylinderHoles;
  const body = (BODY * p.cylinderSpacing.mm) / 2;
  const length = BODY_LENGTH * p.cylinderSpacing.mm;
  const isFar = p.cylinderSide === 'far';
  const flangeFrom = isFar ? back : face - p.flange.mm;
  const arm = p.pivotAt === 'below' ? 1 : -1;
  return [
    ...(first === undefined || second === undefined
      ? []
      : [
          {
            id: 'flange',
            kind: 'mating-part' as const,
            label: 'cylinder flange',
            shape: {
              contour: slotContour(first.at, second.at, FLANGE_EAR * p.cylinderSpacing.mm, 'outline'),
            },
          },
        ]),
    {
      id: 'rod',
      kind: 'mating-part',
      label: `rod ⌀${format.bare(p.rod.mm)}`,
      shape: { circle: { centre: { x: 0, y: 0 }, radius: p.rod.mm / 2 } },
    },
    boxGhost('ear.left', 'mating-part', { x: [-outer, -inner], y: [low, high] }, 'pivot ear'),
    boxGhost('ear.right', 'mating-part', { x: [inner, outer], y: [low, high] }),
    ...headGhosts(r.cylinder, r.cylinderHoles),
    ...headGhosts(r.mount, r.mountHoles),
    boxGhost('side.plate', 'folded', { x: [face, back], y: [-p.below.mm, p.above.mm] }, 'from the side'),
    boxGhost('side.flange', 'mating-part', {
      x: [flangeFrom, flangeFrom + p.flange.mm],
      y: [-1.2 * body, 1.2 * body],
    }),
    boxGhost(
      'side.cylinder',
      'mating-part',
      { x: [back + (isFar ? p.flange.mm : 0), back + length], y: [-body, body] },
      'cylinder',
    ),
    lineGhost('side.rod', 'mating-part', { x: pivotX, y: 0 }, { x: flangeFrom, y: 0 }),
    boxGhost('side.ear', 'mating-part', { x: [pivotX - p.earThickness.mm, face], y: [low, high] }),
    {
      id: 'side.pivot',
      kind: 'hub',
      label: 'pivot',
      shape: { circle: { centre: { x: pivotX, y: r.pivotY }, radius: p.earThickness.mm } },
    },
    lineGhost(
      'side.arm',
      'mating-part',
      { x: pivotX, y: r.pivotY },
      { x: pivotX, y: r.pivotY + arm * Math.min(p.padReach.mm, p.pivotDrop.mm * (1 + 2 * ARM_SHOWN)) },
      'pedal',
    ),
  ];
}
