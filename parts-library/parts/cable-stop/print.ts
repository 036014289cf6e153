// Dimensions and ghosts of a cable stop.
import type { Facts } from '../../checks/index.js';
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Ghost, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { bentProfile } from '../shared/bent-profile.js';
import { headGhosts } from '../shared/bolted.js';
import { footDimensions } from '../shared/foot-dimensions.js';
import { inOrder } from '../shared/in-order.js';
import { beadGhost, boxGhost, lineGhost, tubeGhost } from '../shared/mating.js';
import type { CableStop } from './parameters.js';
import { filletOf, resolveStop, type ResolvedStop } from './resolve.js';

/** Room between the flat part and the view from its edge, as a share of the part’s width. */
const VIEW_ROOM = 0.7;
/** Housing and cable shown beside the plate, in shoulder diameters. */
const HOUSING = 1.6;

function viewOf(part: Part, p: CableStop, r: ResolvedStop) {
  const box = boundsOf(outlineOf(part).contour);
  const foot = p.foot === 'bent' ? p.footDepth.mm : HOUSING * p.shoulder.mm;
  const left = box.maxX + VIEW_ROOM * (box.maxX - box.minX) + foot;
  return {
    left,
    right: left + p.thickness.mm,
    ground: r.ear.centre.y - p.height.mm,
    top: r.ear.centre.y + r.nose,
  };
}

export function cableStopDimensions(part: Part, p: CableStop, { format }: DrawContext): readonly Dimension[] {
  const answer = resolveStop(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { ear } = r;
  const view = viewOf(part, p, r);
  const text = format.bare;
  const half = p.base.mm / 2;
  const isWelded = p.foot === 'weld';
  const coped = isWelded && p.edge === 'coped';
  const low = isWelded ? -ear.edge.drop : r.footEnd;
  const angle = Math.PI / 2 - (p.slotAngle.value * Math.PI) / 180;
  const between = (r.nose + r.hole / 2) / 2;
  return inOrder([
    {
      id: 'neck',
      kind: 'leader',
      at: { x: ear.centre.x, y: ear.centre.y - (p.seat === 'slot' ? r.hole / 2 : 0) },
      field: p.seat === 'thread' ? 'adjuster' : 'neck',
      text:
        p.seat === 'thread'
          ? `${p.adjuster}, drill ⌀${text(r.hole)}`
          : `⌀${text(r.hole)} for neck ⌀${text(p.neck.mm)}`,
    },
    p.seat === 'slot'
      ? {
          id: 'slot',
          kind: 'leader',
          at: {
            x: ear.centre.x + between * Math.cos(angle) + (p.slot.mm / 2) * Math.sin(angle),
            y: ear.centre.y + between * Math.sin(angle) - (p.slot.mm / 2) * Math.cos(angle),
          },
          field: 'slot',
          text: `slot ${text(p.slot.mm)}`,
        }
      : undefined,
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: coped ? { x: 0, y: 0 } : { x: -half, y: low },
      to: ear.centre,
      field: 'height',
      text: `${r.laid.bend === undefined ? '' : 'flat '}${text(ear.centre.y - (isWelded ? 0 : r.footEnd))}`,
    },
    {
      id: 'nose',
      kind: 'radius',
      centre: ear.centre,
      radius: r.nose,
      degrees: p.slotAngle.value > 0 ? 150 : 25,
      field: 'nose',
      text: `R${text(r.nose)}`,
    },
    {
      id: 'base',
      kind: 'linear',
      along: 'x',
      from: { x: -half, y: low },
      to: { x: half, y: low },
      field: 'base',
      text: text(p.base.mm),
    },
    p.lean.mm === 0
      ? undefined
      : {
          id: 'lean',
          kind: 'linear',
          along: 'x',
          from: { x: 0, y: low },
          to: ear.centre,
          field: 'lean',
          text: text(Math.abs(p.lean.mm)),
        },
    isWelded
      ? {
          id: 'weld',
          kind: 'leader',
          at: { x: half / 2, y: coped ? low / 3 : 0 },
          field: 'weldLeg',
          text: `fillet ${text(filletOf(p, format.unit))} ${p.weldSides === 'both' ? 'both sides' : 'one side'}`,
        }
      : undefined,
    ...footDimensions(
      p,
      { base: p.base.mm, footEnd: r.footEnd, bend: r.laid.bend, size: r.foot, holes: r.laid.holes },
      format,
    ),
    {
      id: 'thickness',
      kind: 'linear',
      along: 'x',
      from: { x: view.left, y: view.top },
      to: { x: view.right, y: view.top },
      field: 'thickness',
      text: text(p.thickness.mm),
    },
  ]);
}

export function cableStopGhosts(part: Part, p: CableStop, { format }: Facts): readonly Ghost[] {
  const answer = resolveStop(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { centre } = r.ear;
  const { left, right, ground, top } = viewOf(part, p, r);
  const isWelded = p.foot === 'weld';
  const coped = isWelded && p.edge === 'coped';
  const shoulder = p.shoulder.mm;
  return [
    {
      id: 'shoulder',
      kind: 'mating-part',
      label: p.seat === 'thread' ? 'nut' : `shoulder ⌀${format.bare(shoulder)}`,
      shape: { circle: { centre, radius: shoulder / 2 } },
    },
    ...(r.thread === undefined
      ? []
      : [
          {
            id: 'adjuster',
            kind: 'thread' as const,
            shape: { circle: { centre, radius: r.thread.diameter / 2 } },
          },
        ]),
    ...(isWelded
      ? [
          tubeGhost(
            coped,
            p.tube.mm,
            p.base.mm,
            `tube ${p.edge === 'flat' ? '' : '⌀'}${format.bare(p.tube.mm)}`,
          ),
          beadGhost(r.ear.edge, p.base.mm, filletOf(p, format.unit)),
        ]
      : headGhosts(r.foot, r.laid.holes)),
    p.foot === 'bent'
      ? {
          id: 'edge-view.plate',
          kind: 'folded',
          label: 'folded, from its edge',
          shape: {
            contour: bentProfile({
              thickness: p.thickness.mm,
              footDepth: p.footDepth.mm,
              radius: p.radius.mm,
              left,
              ground,
              top,
            }),
          },
        }
      : boxGhost('edge-view.plate', 'folded', { x: [left, right], y: [ground, top] }, 'from the edge'),
    boxGhost(
      'edge-view.housing',
      'mating-part',
      {
        x: [left - HOUSING * shoulder, left],
        y: [centre.y - shoulder / 2, centre.y + shoulder / 2],
      },
      'housing',
    ),
    lineGhost(
      'edge-view.cable',
      'mating-part',
      { x: right, y: centre.y },
      { x: right + HOUSING * shoulder, y: centre.y },
      'cable',
    ),
  ];
}
