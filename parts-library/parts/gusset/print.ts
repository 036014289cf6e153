// Dimensions, ghosts, derived values and steps of a gusset.
import type { Facts } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import type { Derived, Dimension, Ghost, Part, ShopStep } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { DEBURR, edgeWeldSteps } from '../shared/weld-steps.js';
import { beadAlong, lineGhost, memberGhost } from '../shared/mating.js';
import type { Gusset } from './parameters.js';
import { filletOf, resolveGusset, type WeldedEdge } from './resolve.js';

export function gussetDimensions(_part: Part, p: Gusset, { format }: DrawContext): readonly Dimension[] {
  const answer = resolveGusset(p);
  if (!answer.ok) return [];
  const { welds, freeFrom, freeTo, relief, middle } = answer.value;
  const [a, b] = welds;
  const text = format.bare;
  let order = 0;
  const next = (): number => (order += 1);
  const isSquare = p.angle.value === 90;
  const corner: Point = { x: 0, y: 0 };
  return [
    {
      id: 'legA',
      kind: 'linear',
      along: 'x',
      from: corner,
      to: a.far,
      field: 'legA',
      order: next(),
      text: text(p.legA.mm),
    },
    {
      id: 'legB',
      kind: 'linear',
      along: isSquare ? 'y' : 'aligned',
      from: corner,
      to: isSquare ? b.far : { x: b.along.x * p.legB.mm, y: b.along.y * p.legB.mm },
      field: 'legB',
      order: next(),
      text: text(p.legB.mm),
    },
    {
      id: 'angle',
      kind: 'angle',
      centre: corner,
      radius: Math.max(relief * 1.6, 0.35 * Math.min(p.legA.mm, p.legB.mm)),
      fromDegrees: 0,
      toDegrees: p.angle.value,
      field: 'angle',
      order: next(),
      text: `${Number(p.angle.value.toFixed(1))}°`,
    },
    ...(p.toe.mm === 0
      ? []
      : [
          {
            id: 'toe',
            kind: 'linear' as const,
            along: 'y' as const,
            from: { x: p.legA.mm, y: 0 },
            to: freeFrom,
            field: 'toe',
            order: next(),
            text: text(p.toe.mm),
          },
        ]),
    ...(p.shape === 'trapezoid'
      ? [
          {
            id: 'top',
            kind: 'linear' as const,
            along: isSquare ? ('x' as const) : ('aligned' as const),
            from: { x: b.along.x * p.legB.mm, y: b.along.y * p.legB.mm },
            to: freeTo,
            field: 'top',
            order: next(),
            text: text(p.top.mm),
          },
        ]
      : []),
    ...(relief === 0
      ? []
      : [
          {
            id: 'relief',
            kind: 'leader' as const,
            at:
              p.relief === 'round'
                ? {
                    x: relief * Math.cos((p.angle.value * Math.PI) / 360),
                    y: relief * Math.sin((p.angle.value * Math.PI) / 360),
                  }
                : { x: (a.near.x + b.near.x) / 2, y: (a.near.y + b.near.y) / 2 },
            field: 'reliefSize',
            order: next(),
            text: p.relief === 'round' ? `relief R${text(relief)}` : `snip ${text(relief)} × ${text(relief)}`,
          },
        ]),
    ...(p.hollow.mm === 0
      ? []
      : [
          {
            id: 'hollow',
            kind: 'leader' as const,
            at: hollowMiddle(freeFrom, freeTo, p.hollow.mm),
            field: 'hollow',
            order: next(),
            text: `hollow ${text(p.hollow.mm)}`,
          },
        ]),
    ...(p.hole === undefined
      ? []
      : [
          {
            id: 'hole',
            kind: 'diameter' as const,
            centre: middle,
            radius: p.hole.mm / 2,
            field: 'hole',
            order: next(),
            text: `⌀${text(p.hole.mm)}`,
          },
        ]),
    {
      id: 'weld',
      kind: 'leader',
      at: { x: a.near.x + 0.75 * (a.far.x - a.near.x), y: a.tube === undefined ? 0 : a.far.y / 2 },
      field: 'weldLeg',
      order: next(),
      text: `fillet ${text(filletOf(p, format.unit))} ${p.weldSides === 'both' ? 'both sides' : 'one side'}`,
    },
  ];
}

/** Deepest point of a hollow free edge: `depth` to the left of the line from its first end to its second. */
function hollowMiddle(from: Point, to: Point, depth: number): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return {
    x: (from.x + to.x) / 2 - (depth * (to.y - from.y)) / length,
    y: (from.y + to.y) / 2 + (depth * (to.x - from.x)) / length,
  };
}

function sideGhosts(side: WeldedEdge, tube: number, leg: number, text: string): readonly Ghost[] {
  return [memberGhost(side.field, side, tube, text), beadAlong(`weld.${side.field}`, side, leg)];
}

export function gussetGhosts(_part: Part, p: Gusset, { format }: Facts): readonly Ghost[] {
  const answer = resolveGusset(p);
  if (!answer.ok) return [];
  const [a, b] = answer.value.welds;
  const leg = filletOf(p, format.unit);
  const joint = p.jointLeg.mm;
  return [
    ...sideGhosts(a, p.tubeA.mm, leg, `tube ${a.tube === undefined ? '' : '⌀'}${format.bare(p.tubeA.mm)}`),
    ...sideGhosts(b, p.tubeB.mm, leg, `tube ${b.tube === undefined ? '' : '⌀'}${format.bare(p.tubeB.mm)}`),
    ...(joint === 0
      ? []
      : [
          lineGhost(
            'weld.corner',
            'weld',
            { x: joint, y: 0 },
            { x: b.along.x * joint, y: b.along.y * joint },
          ),
        ]),
  ];
}

export function gussetDerived(_part: Part, p: Gusset, { format }: DrawContext): readonly Derived[] {
  const answer = resolveGusset(p);
  if (!answer.ok) return [];
  const { welds, freeLength } = answer.value;
  const [a, b] = welds;
  const total = a.edge.length + b.edge.length;
  return [
    {
      id: 'free',
      title: 'free edge',
      value: { amount: freeLength, unit: 'mm' },
      text: `${format.length(freeLength)} from toe to toe`,
    },
    {
      id: 'weld',
      field: 'weldLeg',
      title: 'weld',
      value: { amount: total, unit: 'mm' },
      text: `${format.length(a.edge.length)} and ${format.length(b.edge.length)}, leg ${format.length(filletOf(p, format.unit))}${p.weldSides === 'both' ? ', both sides' : ''}`,
    },
  ];
}

export function gussetSteps(_part: Part, p: Gusset, { format }: Facts): readonly ShopStep[] {
  if (!resolveGusset(p).ok) return [];
  return [
    DEBURR,
    {
      kind: 'measure',
      says: `Measure both legs, ${format.length(p.legA.mm)} and ${format.length(p.legB.mm)}, and try the ${Number(p.angle.value.toFixed(1))}° in the corner before cutting the rest.`,
    },
    ...edgeWeldSteps(
      {
        leg: filletOf(p, format.unit),
        sides: p.weldSides,
        to: 'both members',
        fit: 'Dry fit in the corner, on the members’ middle lines; the relief clears the corner’s bead.',
      },
      format,
    ),
    {
      kind: 'indicate',
      says: 'Check the corner’s angle when cold: a gusset welded on one side first pulls it shut.',
    },
    { kind: 'paint', says: 'Wire-brush the beads, paint; the relief drains, leave it open.' },
  ];
}
