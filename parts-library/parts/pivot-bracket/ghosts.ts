// Ghosts round a pivot bracket: tube and bolt, what it stands on, and the pair from its edge, bent feet and all.
import type { Facts } from '../../checks/index.js';
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Ghost, type Part } from '../../model/index.js';
import { headGhosts } from '../shared/bolted.js';
import { bentProfile } from '../shared/bent-profile.js';
import { dropBeside } from '../shared/ear-checks.js';
import { beadGhost, boxGhost, tubeGhost } from '../shared/mating.js';
import { pairView } from '../shared/pair-view.js';
import type { PivotBracket } from './parameters.js';
import { filletOf, gapOf, resolveBracket, type ResolvedBracket } from './resolve.js';

/** Room between the flat part and the view from its edge, as a share of the part’s width: dimensions stand in it. */
const VIEW_ROOM = 0.55;
/** A boss is about this much larger than what it turns on. */
const BOSS = 1.35;

/** Where the view from the edge stands: its left ear’s outside, and the pivot’s height in it. */
export function viewOf(part: Part, p: PivotBracket, r: ResolvedBracket) {
  const box = boundsOf(outlineOf(part).contour);
  const foot = p.foot === 'bent' ? p.footDepth.mm : 0;
  const left = box.maxX + VIEW_ROOM * (box.maxX - box.minX) + foot;
  // The pivot stays level with the flat part’s; what the bracket stands on lies its height below.
  const ground = r.ear.centre.y - p.height.mm;
  return { left, ground, top: r.ear.centre.y + r.nose, right: left + p.thickness.mm };
}

export function pivotBracketGhosts(part: Part, p: PivotBracket, { format }: Facts): readonly Ghost[] {
  const answer = resolveBracket(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { left, ground, top } = viewOf(part, p, r);
  const gap = gapOf(p);
  const t = p.thickness.mm;
  const isWelded = p.foot === 'weld';
  const coped = isWelded && p.edge === 'coped';
  const pivotSize = p.pivot === 'bolt' ? r.pin.diameter : p.outside.mm;
  const centre = r.ear.centre;
  const circle = (id: string, kind: Ghost['kind'], radius: number, label?: string): Ghost => ({
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    shape: { circle: { centre, radius } },
  });
  const axis = left + t + (gap ?? 0) / 2;
  const view = pairView({
    left,
    thickness: t,
    foot: ground,
    top,
    pinHeight: centre.y,
    pin: pivotSize,
    gap,
    ...(gap === undefined ? {} : { between: { width: gap, height: BOSS * pivotSize, label: 'what turns' } }),
  });
  const profile = { thickness: t, footDepth: p.footDepth.mm, radius: p.radius.mm, left, ground, top };
  const bent =
    p.foot === 'bent'
      ? [
          {
            id: 'edge-view.1',
            kind: 'folded' as const,
            label: 'folded, from its edge',
            shape: { contour: bentProfile(profile) },
          },
          ...(gap === undefined
            ? []
            : [
                {
                  id: 'edge-view.2',
                  kind: 'folded' as const,
                  shape: { contour: bentProfile(profile, axis) },
                },
              ]),
        ]
      : [];
  return [
    ...(p.pivot === 'bolt'
      ? headGhosts({ thread: r.pin, made: 'clearance', diameter: r.finished, drill: '' }, [
          { featureId: 'pivot', at: centre },
        ])
      : [
          circle('pivot.outside', 'hub', p.outside.mm / 2, `${p.pivot} ⌀${format.bare(p.outside.mm)}`),
          ...(p.outside.mm > 2 * p.tubeWall.mm
            ? [circle('pivot.inside', 'hub', p.outside.mm / 2 - p.tubeWall.mm)]
            : []),
          ...(p.pivot === 'tube' && p.overhang.mm > 0
            ? [circle('pivot.weld', 'weld', p.outside.mm / 2 + Math.min(p.overhang.mm, t))]
            : []),
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
      : headGhosts(r.size, r.holes)),
    ...(isWelded && p.edge === 'along'
      ? [
          {
            id: 'edge-view.tube',
            kind: 'mating-part' as const,
            shape: {
              circle: {
                centre: {
                  x: gap === undefined ? left + t / 2 : axis,
                  y: ground + (gap === undefined ? 0 : (dropBeside(p.tube.mm, gap / 2) ?? 0)) - p.tube.mm / 2,
                },
                radius: p.tube.mm / 2,
              },
            },
          },
        ]
      : []),
    ...(p.foot === 'flat'
      ? [
          boxGhost('seat', 'mating-part', {
            x: [left - p.seat.mm, left],
            y: [ground, ground + p.footDepth.mm],
          }),
        ]
      : []),
    ...bent,
    ...view.filter(({ id }) => p.foot !== 'bent' || (id !== 'edge-view.1' && id !== 'edge-view.2')),
  ];
}
