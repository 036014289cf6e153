// The outside of a round-nosed ear: a weld edge, two sides that run tangent into a nose about the hole.
import type { Contour, Point, Vertex } from '../../geometry/index.js';
import type { EdgeUse } from '../../model/index.js';
import { contourOf, copedEdge, type CopedEdge } from './coped-edge.js';

export interface EarShape {
  /** Corner to corner of the edge, mm. */
  readonly base: number;
  /** From the edge (a coped one: from the tube's crest) to the hole's centre, mm. */
  readonly height: number;
  /** Radius about the hole's centre, mm. */
  readonly nose: number;
  /** How far the hole stands to the right of the edge's middle, mm. */
  readonly lean: number;
  /** Tube that the edge is coped to, outside diameter, mm. */
  readonly tube?: number | undefined;
  /** A straight foot as wide as the edge below it, mm; its lower edge is not welded. */
  readonly foot?: number | undefined;
  /** The hole runs out of the nose by a slot. */
  readonly keyhole?: Keyhole | undefined;
}

/** A hole that is open to the nose. */
export interface Keyhole {
  /** Diameter of the hole, and width of the slot, mm. */
  readonly hole: number;
  readonly slot: number;
  /** Way of the slot from straight up, degrees; to the right above 0. */
  readonly degrees: number;
}

export interface EarOutline {
  readonly contour: Contour;
  /** The edge that is welded, and the sides of a keyhole. */
  readonly edges: readonly EdgeUse[];
  readonly edge: CopedEdge;
  readonly centre: Point;
}

export type EarResult =
  | { readonly ok: true; readonly value: EarOutline }
  | {
      readonly ok: false;
      readonly field: 'base' | 'height' | 'nose' | 'slotAngle';
      readonly says: string;
    };

/** Shortest side between corner and nose that is worth having, mm. */
const SHORTEST_SIDE = 0.5;

interface Tangent {
  readonly at: Point;
  readonly side: number;
}

/** Where the line from `corner` touches the nose; the nose lies on its left for `turn` 1, on its right for −1. */
function tangentFrom(corner: Point, centre: Point, radius: number, turn: 1 | -1): Tangent | undefined {
  const [dx, dy] = [centre.x - corner.x, centre.y - corner.y];
  const distance = Math.hypot(dx, dy);
  if (distance <= radius) return undefined;
  const side = Math.sqrt(distance * distance - radius * radius);
  const heading = Math.atan2(dy, dx) - turn * Math.asin(radius / distance);
  return {
    at: { x: corner.x + side * Math.cos(heading), y: corner.y + side * Math.sin(heading) },
    side,
  };
}

/**
 * Draws the ear, counter-clockwise from the edge's left corner; the crest of the edge's middle is the origin and the
 * edge is segment 0.
 *
 * @example base 40, nose 20, height 30: straight sides 30 high under a half circle
 */
export function drawEar({ base, height, nose, lean, tube, foot = 0, keyhole }: EarShape): EarResult {
  const edge = copedEdge(base, tube);
  if (edge === undefined) {
    return {
      ok: false,
      field: 'base',
      says: `An edge ${base.toFixed(2)} mm wide cannot be coped to a tube of ⌀${(tube ?? 0).toFixed(2)} mm; a narrower edge, or a straight one along the tube would do.`,
    };
  }
  const centre = { x: lean, y: height };
  const left = { x: -base / 2, y: -edge.drop };
  const right = { x: base / 2, y: -edge.drop };
  const up = tangentFrom(right, centre, nose, 1);
  const down = tangentFrom(left, centre, nose, -1);
  if (up === undefined || down === undefined || up.side < SHORTEST_SIDE || down.side < SHORTEST_SIDE) {
    return {
      ok: false,
      field: 'height',
      says: `A nose of radius ${nose.toFixed(2)} mm that stands ${height.toFixed(2)} mm above the edge swallows the edge’s corners; more height, a wider edge, or a smaller nose would do.`,
    };
  }
  const start = Math.atan2(up.at.y - centre.y, up.at.x - centre.x);
  const end = Math.atan2(down.at.y - centre.y, down.at.x - centre.x);
  const opened = noseOf(centre, nose, start, end, keyhole);
  if (opened === undefined) {
    return {
      ok: false,
      field: 'slotAngle',
      says: `A slot at ${keyhole?.degrees ?? 0}° does not leave through the round nose; a steeper one, a narrower slot, or a larger nose would do.`,
    };
  }
  const before: readonly Vertex[] = [
    ...(foot === 0
      ? [{ ...left, bulge: edge.bulge }]
      : [
          { x: left.x, y: -foot, bulge: 0 },
          { x: right.x, y: -foot, bulge: 0 },
        ]),
    { ...right, bulge: 0 },
  ];
  const vertices: readonly Vertex[] = [
    ...before,
    ...opened.vertices,
    { ...down.at, bulge: 0 },
    ...(foot === 0 ? [] : [{ ...left, bulge: 0 }]),
  ];
  const contour = contourOf(vertices, 'outline');
  if (contour === undefined) {
    return {
      ok: false,
      field: 'nose',
      says: `The edge and a nose of radius ${nose.toFixed(2)} mm run into each other; more height or a larger nose would do.`,
    };
  }
  return {
    ok: true,
    value: {
      contour,
      edges: [
        ...(foot === 0 ? [{ segment: 0, role: 'weld' as const }] : []),
        ...opened.mating.map((segment) => ({ segment: before.length + segment, role: 'mating' as const })),
      ],
      edge,
      centre,
    },
  };
}

/**
 * The nose from its first tangent point, at angle `start`, to its last at `end`: one arc, or two with a keyhole between.
 * Also which of its segments are the keyhole; an arc of more than half a circle counts as the two it becomes.
 */
function noseOf(
  centre: Point,
  nose: number,
  start: number,
  end: number,
  keyhole: Keyhole | undefined,
): { readonly vertices: readonly Vertex[]; readonly mating: readonly number[] } | undefined {
  const turn = (from: number, to: number): number => (to - from + 4 * Math.PI) % (2 * Math.PI);
  const at = (angle: number, reach: number): Point => ({
    x: centre.x + reach * Math.cos(angle),
    y: centre.y + reach * Math.sin(angle),
  });
  const sweep = turn(start, end);
  if (keyhole === undefined)
    return { vertices: [{ ...at(start, nose), bulge: Math.tan(sweep / 4) }], mating: [] };
  const middle = Math.PI / 2 - (keyhole.degrees * Math.PI) / 180;
  const outer = Math.asin(keyhole.slot / 2 / nose);
  const inner = Math.asin(keyhole.slot / keyhole.hole);
  const first = turn(start, middle - outer);
  const second = turn(middle + outer, end);
  // Out of the round part, one of the arcs would run all the way round.
  if (!(first + second < sweep) || first < 1e-3 || second < 1e-3) return undefined;
  const round = 2 * Math.PI - 2 * inner;
  const firstCount = first > Math.PI ? 2 : 1;
  return {
    vertices: [
      { ...at(start, nose), bulge: Math.tan(first / 4) },
      { ...at(middle - outer, nose), bulge: 0 },
      { ...at(middle - inner, keyhole.hole / 2), bulge: -Math.tan(round / 4) },
      { ...at(middle + inner, keyhole.hole / 2), bulge: 0 },
      { ...at(middle + outer, nose), bulge: Math.tan(second / 4) },
    ],
    // Slot, the hole in two arcs, slot.
    mating: [0, 1, 2, 3].map((step) => firstCount + step),
  };
}
