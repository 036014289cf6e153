// Ghosts round a tab: the tube, the bead, the bolt’s head, and the pair with its eye seen from the edge.
import type { Facts } from '../../checks/index.js';
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Ghost, type Part } from '../../model/index.js';
import { headGhosts } from '../shared/bolted.js';
import { dropBeside } from '../shared/ear-checks.js';
import { beadGhost, tubeGhost } from '../shared/mating.js';
import { pairView } from '../shared/pair-view.js';
import type { Tab } from './parameters.js';
import { filletOf, gapOf, resolveTab } from './resolve.js';

/** Room between the flat part and the view from its edge, as a share of the part's width: dimensions stand in it. */
export const EDGE_VIEW_ROOM = 0.6;
/** An eye is about twice as high as its bolt. */
const EYE_OVER_BOLT = 2.2;

export function tabGhosts(part: Part, p: Tab, { format }: Facts): readonly Ghost[] {
  const answer = resolveTab(p);
  if (!answer.ok) return [];
  const { outline, size } = answer.value;
  const box = boundsOf(outlineOf(part).contour);
  const coped = p.edge === 'coped';
  const round = p.edge === 'flat' ? '' : '⌀';
  const gap = gapOf(p);
  const left = box.maxX + EDGE_VIEW_ROOM * (box.maxX - box.minX);
  const middle = left + (gap === undefined ? p.thickness.mm / 2 : p.thickness.mm + gap / 2);
  const drop = gap === undefined ? 0 : (dropBeside(p.tube.mm, gap / 2) ?? 0);
  return [
    // Along a round tube the view from the edge looks into it: the ears stand beside its crest.
    ...(p.edge === 'along'
      ? [
          {
            id: 'edge-view.tube',
            kind: 'mating-part' as const,
            shape: {
              circle: { centre: { x: middle, y: drop - p.tube.mm / 2 }, radius: p.tube.mm / 2 },
            },
          },
        ]
      : []),
    tubeGhost(coped, p.tube.mm, p.base.mm, `tube ${round}${format.bare(p.tube.mm)}`),
    beadGhost(outline.edge, p.base.mm, filletOf(p, format.unit)),
    ...headGhosts(size, [{ featureId: 'hole', at: outline.centre }]),
    ...pairView({
      left,
      thickness: p.thickness.mm,
      foot: coped ? 0 : -outline.edge.drop,
      top: box.maxY,
      pinHeight: outline.centre.y,
      pin: size.thread.diameter,
      gap,
      ...(p.ears === 'pair'
        ? {
            between: {
              width: p.eye.mm,
              height: EYE_OVER_BOLT * size.thread.diameter,
              label: `eye ${format.bare(p.eye.mm)}`,
            },
          }
        : {}),
    }),
  ];
}
