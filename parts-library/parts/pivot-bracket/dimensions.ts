// Dimensions of a pivot bracket, in the order in which it is measured.
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { footDimensions } from '../shared/foot-dimensions.js';
import { inOrder } from '../shared/in-order.js';
import { viewOf } from './ghosts.js';
import type { PivotBracket } from './parameters.js';
import { filletOf, gapOf, resolveBracket } from './resolve.js';

export function pivotBracketDimensions(
  part: Part,
  p: PivotBracket,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = resolveBracket(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { ear, bend } = r;
  const view = viewOf(part, p, r);
  const text = format.bare;
  const half = p.base.mm / 2;
  const gap = gapOf(p);
  const isWelded = p.foot === 'weld';
  const coped = isWelded && p.edge === 'coped';
  const low = isWelded ? -ear.edge.drop : r.footEnd;
  const pivotText =
    p.pivot === 'bush'
      ? `cut ⌀${text(r.cut)}, bore ⌀${text(r.finished)} H7`
      : p.pivot === 'tube'
        ? `⌀${text(r.cut)} for tube ⌀${text(p.outside.mm)}`
        : `⌀${text(r.cut)} for ${r.pin.name}`;
  return inOrder([
    {
      id: 'pivot',
      kind: 'leader',
      at: ear.centre,
      field: p.pivot === 'bolt' ? 'pin' : 'outside',
      text: pivotText,
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: coped ? { x: 0, y: 0 } : { x: -half, y: low },
      to: ear.centre,
      field: 'height',
      text: `${bend === undefined ? '' : 'flat '}${text(ear.centre.y - (isWelded ? 0 : r.footEnd))}`,
    },
    {
      id: 'nose',
      kind: 'radius',
      centre: ear.centre,
      radius: r.nose,
      degrees: 55,
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
    coped
      ? {
          id: 'cope',
          kind: 'leader',
          at: { x: 0, y: 0 },
          field: 'tube',
          text: `cope R${text(p.tube.mm / 2)}, ${text(ear.edge.drop)} deep`,
        }
      : undefined,
    isWelded
      ? {
          id: 'weld',
          kind: 'leader',
          at: { x: half / 2, y: coped ? low / 3 : 0 },
          field: 'weldLeg',
          text: `fillet ${text(filletOf(p, format.unit))} ${p.weldSides === 'both' ? 'both sides' : 'one side'}`,
        }
      : undefined,
    ...footDimensions(p, { ...r, base: p.base.mm }, format),
    {
      id: 'thickness',
      kind: 'linear',
      along: 'x',
      from: { x: view.left, y: view.ground },
      to: { x: view.right, y: view.ground },
      field: 'thickness',
      text: text(p.thickness.mm),
    },
    gap === undefined
      ? undefined
      : {
          id: 'gap',
          kind: 'linear',
          along: 'x',
          from: { x: view.right, y: view.top },
          to: { x: view.right + gap, y: view.top },
          field: 'gap',
          text: `gap ${text(gap)}`,
        },
  ]);
}
