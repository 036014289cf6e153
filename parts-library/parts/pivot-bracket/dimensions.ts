// Dimensions of a pivot bracket, in the order in which it is measured.
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
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
  const first = r.holes[0];
  const last = r.holes.at(-1);
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
    first === undefined
      ? undefined
      : {
          id: 'foot.holes',
          kind: 'leader',
          at: last?.at ?? first.at,
          field: 'bolt',
          text: holeCallOut(r.size, r.holes.length, format),
        },
    first === undefined || last === undefined || last === first
      ? undefined
      : {
          id: 'spacing',
          kind: 'linear',
          along: 'x',
          from: first.at,
          to: r.holes[1]?.at ?? last.at,
          field: 'spacing',
          text: text(p.spacing.mm),
        },
    last === undefined
      ? undefined
      : {
          id: 'inset',
          kind: 'linear',
          along: 'y',
          from: { x: half, y: r.footEnd },
          to: last.at,
          field: 'inset',
          text: text(p.inset.mm),
        },
    bend === undefined
      ? p.foot === 'flat'
        ? {
            id: 'foot',
            kind: 'linear',
            along: 'y',
            from: { x: half, y: r.footEnd },
            to: { x: half, y: 0 },
            field: 'footDepth',
            text: text(p.footDepth.mm),
          }
        : undefined
      : {
          id: 'bend.at',
          kind: 'linear',
          along: 'y',
          from: { x: half, y: r.footEnd },
          to: { x: half, y: bend.bendAt },
          field: 'footDepth',
          text: text(bend.bendAt - r.footEnd),
        },
    bend === undefined
      ? undefined
      : {
          id: 'bend',
          kind: 'leader',
          at: { x: -half / 2, y: bend.bendAt },
          field: 'radius',
          text: `bend up 90° R${text(p.radius.mm)}`,
        },
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
