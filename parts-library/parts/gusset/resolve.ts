// A gusset worked out: its corners, edges and welds, or what does not go together.
import { centroidOf, type Contour, type Point, type Vertex } from '../../geometry/index.js';
import type { EdgeUse } from '../../model/index.js';
import type { Unit } from '../../units/index.js';
import { contourOf, copedEdge, type CopedEdge } from '../shared/coped-edge.js';
import { legOf } from '../shared/weld-edge-fields.js';
import type { Gusset } from './parameters.js';

/** One welded edge: from the relief to its end. */
export interface WeldedEdge {
  readonly field: 'legA' | 'legB';
  readonly near: Point;
  readonly far: Point;
  /** Along the member, away from the corner, and square to it into the metal; unit vectors. */
  readonly along: Point;
  readonly inward: Point;
  readonly edge: CopedEdge;
  readonly tube: number | undefined;
  /** On the member, half way along the edge. */
  readonly middle: Point;
}

export interface ResolvedGusset {
  readonly contour: Contour;
  readonly edges: readonly EdgeUse[];
  readonly welds: readonly [WeldedEdge, WeldedEdge];
  /** Ends of the free edge, on the first and on the second member’s side. */
  readonly freeFrom: Point;
  readonly freeTo: Point;
  readonly freeLength: number;
  readonly relief: number;
  /** Centre of the plate’s area: where a lightening hole takes the least. */
  readonly middle: Point;
}

type Answer =
  | { readonly ok: true; readonly value: ResolvedGusset }
  | { readonly ok: false; readonly field: string; readonly says: string };

const plus = (p: Point, d: Point, by: number): Point => ({ x: p.x + d.x * by, y: p.y + d.y * by });

const refusal = (field: string, says: string): Answer => ({ ok: false, field, says });

/** Shorter ends than this are left out, mm. */
const NOTHING = 1e-3;

function weldedEdge(
  field: 'legA' | 'legB',
  along: Point,
  inward: Point,
  relief: number,
  leg: number,
  tube: number | undefined,
): WeldedEdge | undefined {
  const edge = copedEdge(leg - relief, tube);
  if (edge === undefined) return undefined;
  const at = (distance: number, below: number): Point =>
    plus(plus({ x: 0, y: 0 }, along, distance), inward, -below);
  return {
    field,
    near: at(relief, edge.drop),
    far: at(leg, edge.drop),
    along,
    inward,
    edge,
    tube,
    middle: at((leg + relief) / 2, 0),
  };
}

/** The plate’s size of relief along each edge, mm. */
export const reliefOf = (p: Gusset): number => (p.relief === 'none' ? 0 : p.reliefSize.mm);

export const thinnerOf = (p: Gusset): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: Gusset, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);

export function resolveGusset(p: Gusset): Answer {
  const radians = (p.angle.value * Math.PI) / 180;
  // A square corner has no rounding of the cosine in it.
  const [cosine, sine] = p.angle.value === 90 ? [0, 1] : [Math.cos(radians), Math.sin(radians)];
  const relief = reliefOf(p);
  for (const [field, leg] of [
    ['legA', p.legA.mm],
    ['legB', p.legB.mm],
  ] as const) {
    if (leg <= relief + 1)
      return refusal(
        relief > 0 ? 'reliefSize' : field,
        `A relief of ${relief.toFixed(2)} mm takes up a leg of ${leg.toFixed(2)} mm; a smaller relief or a longer leg would do.`,
      );
  }
  const sides = [
    weldedEdge(
      'legA',
      { x: 1, y: 0 },
      { x: 0, y: 1 },
      relief,
      p.legA.mm,
      p.edgeA === 'coped' ? p.tubeA.mm : undefined,
    ),
    weldedEdge(
      'legB',
      { x: cosine, y: sine },
      { x: sine, y: -cosine },
      relief,
      p.legB.mm,
      p.edgeB === 'coped' ? p.tubeB.mm : undefined,
    ),
  ] as const;
  const [a, b] = sides;
  if (a === undefined || b === undefined) {
    const [field, leg, tube] =
      a === undefined
        ? (['tubeA', p.legA.mm, p.tubeA.mm] as const)
        : (['tubeB', p.legB.mm, p.tubeB.mm] as const);
    return refusal(
      field,
      `An edge ${(leg - relief).toFixed(2)} mm long cannot be coped to a tube of ⌀${tube.toFixed(2)} mm; a shorter leg or a straight edge would do.`,
    );
  }
  const topWidth = p.shape === 'trapezoid' ? p.top.mm : p.toe.mm;
  const freeFrom = plus(a.far, a.inward, p.toe.mm + a.edge.drop);
  const freeTo = plus(b.far, b.inward, topWidth + b.edge.drop);
  const freeLength = Math.hypot(freeTo.x - freeFrom.x, freeTo.y - freeFrom.y);
  const isRound = p.relief === 'round' && a.edge.drop === 0 && b.edge.drop === 0;
  // Counter-clockwise: along the first member, its toe, the free edge, the other toe, back along the second, the relief.
  const corners: readonly Vertex[] = [
    { ...a.near, bulge: a.edge.bulge },
    { ...a.far, bulge: 0 },
    ...(Math.hypot(freeFrom.x - a.far.x, freeFrom.y - a.far.y) < NOTHING ? [] : [{ ...freeFrom, bulge: 0 }]),
    ...(Math.hypot(freeTo.x - b.far.x, freeTo.y - b.far.y) < NOTHING ? [] : [{ ...freeTo, bulge: 0 }]),
    { ...b.far, bulge: b.edge.bulge },
    ...(relief === 0 && a.edge.drop === 0 && b.edge.drop === 0
      ? []
      : [{ ...b.near, bulge: isRound ? -Math.tan(radians / 4) : 0 }]),
  ];
  const freeIndex = corners.findIndex((corner) => corner.x === freeFrom.x && corner.y === freeFrom.y);
  const from = freeIndex < 0 ? 1 : freeIndex;
  const bulged = corners.map((corner, index) =>
    index === from && p.hollow.mm > 0
      ? { ...corner, bulge: (-2 * p.hollow.mm) / Math.max(freeLength, NOTHING) }
      : corner,
  );
  const contour = contourOf(bulged, 'outline');
  if (contour === undefined || freeLength < NOTHING || p.hollow.mm > freeLength / 2) {
    return p.hollow.mm > 0
      ? refusal(
          'hollow',
          `A free edge hollowed ${p.hollow.mm.toFixed(2)} mm over ${freeLength.toFixed(2)} mm runs into the corner or its ends; a shallower hollow would do.`,
        )
      : refusal(
          p.shape === 'trapezoid' ? 'top' : 'toe',
          'The ends of the plate run into each other; smaller ends, longer legs or another angle would do.',
        );
  }
  const secondEdge = corners.findIndex((corner) => corner.x === b.far.x && corner.y === b.far.y);
  return {
    ok: true,
    value: {
      contour,
      edges: [
        { segment: 0, role: 'weld' },
        { segment: secondEdge, role: 'weld' },
      ],
      welds: [a, b],
      freeFrom,
      freeTo,
      freeLength,
      relief,
      middle: centroidOf(contour),
    },
  };
}
