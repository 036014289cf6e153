// Dimensions of a tab, in the order in which it is measured from the parts it goes between.
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { EDGE_VIEW_ROOM } from './ghosts.js';
import type { Tab } from './parameters.js';
import { filletOf, gapOf, resolveTab } from './resolve.js';

export function tabDimensions(part: Part, p: Tab, { format }: DrawContext): readonly Dimension[] {
  const answer = resolveTab(p);
  if (!answer.ok) return [];
  const { outline, size, nose } = answer.value;
  const { centre, edge } = outline;
  const text = format.bare;
  const half = p.base.mm / 2;
  const foot = -edge.drop;
  const box = boundsOf(outlineOf(part).contour);
  const left = box.maxX + EDGE_VIEW_ROOM * (box.maxX - box.minX);
  const gap = gapOf(p);
  let order = 0;
  const next = (): number => (order += 1);
  return [
    {
      id: 'hole',
      kind: 'leader',
      at: centre,
      field: 'bolt',
      order: next(),
      text: holeCallOut(size, 1, format),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: p.edge === 'coped' ? { x: 0, y: 0 } : { x: -half, y: 0 },
      to: centre,
      field: 'height',
      order: next(),
      text: text(p.height.mm),
    },
    {
      id: 'nose',
      kind: 'radius',
      centre,
      radius: nose,
      degrees: 60,
      field: 'nose',
      order: next(),
      text: `R${text(nose)}`,
    },
    {
      id: 'base',
      kind: 'linear',
      along: 'x',
      from: { x: -half, y: foot },
      to: { x: half, y: foot },
      field: 'base',
      order: next(),
      text: text(p.base.mm),
    },
    ...(p.lean.mm === 0
      ? []
      : [
          {
            id: 'lean',
            kind: 'linear' as const,
            along: 'x' as const,
            from: { x: 0, y: 0 },
            to: centre,
            field: 'lean',
            order: next(),
            text: text(Math.abs(p.lean.mm)),
          },
        ]),
    ...(p.edge === 'coped'
      ? [
          {
            id: 'cope',
            kind: 'leader' as const,
            at: { x: 0, y: 0 },
            field: 'tube',
            order: next(),
            text: `cope R${text(p.tube.mm / 2)}, ${text(edge.drop)} deep`,
          },
        ]
      : []),
    {
      id: 'weld',
      kind: 'leader',
      at: { x: half / 2, y: p.edge === 'coped' ? foot / 3 : 0 },
      field: 'weldLeg',
      order: next(),
      text: `fillet ${text(filletOf(p, format.unit))} ${p.weldSides === 'both' ? 'both sides' : 'one side'}`,
    },
    {
      id: 'thickness',
      kind: 'linear',
      along: 'x',
      from: { x: left, y: 0 },
      to: { x: left + p.thickness.mm, y: 0 },
      field: 'thickness',
      order: next(),
      text: text(p.thickness.mm),
    },
    ...(gap === undefined
      ? []
      : [
          {
            id: 'gap',
            kind: 'linear' as const,
            along: 'x' as const,
            from: { x: left + p.thickness.mm, y: box.maxY },
            to: { x: left + p.thickness.mm + gap, y: box.maxY },
            field: 'play',
            order: next(),
            text: `gap ${text(gap)}`,
          },
        ]),
  ];
}
