// The outside of a lobed plate: a round ear at every bolt, hollows tangent to two neighbouring ears between them.
import type { Point, Vertex } from '../../geometry/index.js';

/** One ear, by the angle and distance of its bolt from the middle; degrees and mm. */
export interface Lobe {
  readonly degrees: number;
  readonly reach: number;
}

export interface LobedOutside {
  /** Counter-clockwise; two arcs for each ear (a long arc is split) and one for each hollow. */
  readonly vertices: readonly Vertex[];
  /** Radius of each hollow, mm, in the order of the lobes. */
  readonly scallops: readonly number[];
  /** Least distance from the middle to a hollow, mm. */
  readonly leastReach: number;
}

export type LobedResult =
  | { readonly ok: true; readonly value: LobedOutside }
  | { readonly ok: false; readonly field: 'edge' | 'scallop' | 'web' | 'bolts'; readonly says: string };

const RADIANS = Math.PI / 180;

/**
 * Radius of the hollow whose floor lies `floor` from the middle, tangent to two ears of radius `ear` whose centres
 * lie `reach` from the middle and `spread` radians apart. Undefined when no such hollow exists.
 *
 * With q the floor, R the reach, ρ the ear, β half the spread, c = q + s the hollow's centre distance:
 * (q + s)² + R² − 2 R (q + s) cos β = (ρ + s)², which is linear in s.
 *
 * @example scallopForFloor(30, 47.5, 12, 72 * Math.PI / 180)
 */
export function scallopForFloor(
  floor: number,
  reach: number,
  ear: number,
  spread: number,
): number | undefined {
  const half = Math.cos(spread / 2);
  const below = 2 * (floor - reach * half - ear);
  const radius = (ear * ear - floor * floor - reach * reach + 2 * reach * floor * half) / below;
  return Number.isFinite(radius) && radius > 0 ? radius : undefined;
}

/**
 * The hollow that comes nearest to `floor` without passing it. Between close ears even the smallest hollow, a half
 * circle on the line of their centres, stays above the floor; then that one is taken.
 */
function deepestScallop(floor: number, reach: number, ear: number, spread: number): number | undefined {
  const smallest = reach * Math.sin(spread / 2) - ear;
  const lowest = reach * Math.cos(spread / 2) - smallest;
  return floor <= lowest ? smallest : scallopForFloor(floor, reach, ear, spread);
}

/** Distance from the middle to the floor of a hollow of radius `scallop`; undefined when the ears are too far apart for it. */
export function floorOfScallop(
  scallop: number,
  reach: number,
  ear: number,
  spread: number,
): number | undefined {
  const inside = (ear + scallop) ** 2 - (reach * Math.sin(spread / 2)) ** 2;
  if (inside < 0) return undefined;
  return reach * Math.cos(spread / 2) + Math.sqrt(inside) - scallop;
}

const polar = (radians: number, reach: number): Point => ({
  x: reach * Math.cos(radians),
  y: reach * Math.sin(radians),
});

/** Unit vectors along exact axes stay exact, so that a symmetrical plate comes out symmetrical. */
const between = (a: Point, b: Point, share: number): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

function bulgeFor(from: Point, to: Point, centre: Point, leftTurn: boolean): number {
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const end = Math.atan2(to.y - centre.y, to.x - centre.x);
  const turn = (((leftTurn ? end - start : start - end) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  return (leftTurn ? 1 : -1) * Math.tan(turn / 4);
}

interface Hollow {
  readonly centre: Point;
  readonly radius: number;
  readonly floor: number;
}

function hollowBetween(
  a: Lobe,
  b: Lobe,
  ear: number,
  wanted: { readonly scallop?: number | undefined; readonly floor: number },
): Hollow | undefined {
  const spread = (((b.degrees - a.degrees) % 360) + 360) % 360 || 360;
  const radius = wanted.scallop ?? deepestScallop(wanted.floor, a.reach, ear, spread * RADIANS);
  if (radius === undefined) return undefined;
  const floor = floorOfScallop(radius, a.reach, ear, spread * RADIANS);
  if (floor === undefined) return undefined;
  return { centre: polar((a.degrees + spread / 2) * RADIANS, floor + radius), radius, floor };
}

/**
 * Draws the lobed outside. All lobes share one reach (their bolt circle); `floor` is the least distance from the
 * middle that a hollow may come to when no scallop radius is given.
 */
export function drawLobes(
  lobes: readonly Lobe[],
  ear: number,
  wanted: { readonly scallop?: number | undefined; readonly floor: number },
): LobedResult {
  const around = [...lobes].sort((a, b) => a.degrees - b.degrees);
  const pairs = around.map((lobe, index) => [lobe, around[(index + 1) % around.length] ?? lobe] as const);
  for (const [a, b] of pairs) {
    const spread = ((((b.degrees - a.degrees) % 360) + 360) % 360) * RADIANS;
    if (2 * a.reach * Math.sin(spread / 2) <= 2 * ear) {
      return {
        ok: false,
        field: 'edge',
        says: `Lobes of radius ${ear.toFixed(2)} mm on neighbouring bolts run into each other; an edge distance below ${(a.reach * Math.sin(spread / 2)).toFixed(2)} mm, fewer bolts, or a round outside would do.`,
      };
    }
  }
  const hollows = pairs.map(([a, b]) => hollowBetween(a, b, ear, wanted));
  const failing = hollows.findIndex((hollow) => hollow === undefined);
  if (failing >= 0) {
    return wanted.scallop === undefined
      ? {
          ok: false,
          field: 'web',
          says: `No hollow fits between the lobes and a web that starts ${wanted.floor.toFixed(2)} mm from the middle; a smaller web or edge distance, or a round outside would do.`,
        }
      : {
          ok: false,
          field: 'scallop',
          says: `A scallop of radius ${wanted.scallop.toFixed(2)} mm does not reach two neighbouring lobes; a larger radius would do.`,
        };
  }
  const vertices: Vertex[] = [];
  const sound = hollows.filter((hollow): hollow is Hollow => hollow !== undefined);
  around.forEach((lobe, index) => {
    const before = sound[(index + sound.length - 1) % sound.length];
    const after = sound[index];
    const next = around[(index + 1) % around.length];
    if (before === undefined || after === undefined || next === undefined) return;
    const middle = polar(lobe.degrees * RADIANS, lobe.reach);
    const entry = between(middle, before.centre, ear / (ear + before.radius));
    const leave = between(middle, after.centre, ear / (ear + after.radius));
    const tip = polar(lobe.degrees * RADIANS, lobe.reach + ear);
    const land = between(polar(next.degrees * RADIANS, next.reach), after.centre, ear / (ear + after.radius));
    vertices.push(
      { ...entry, bulge: bulgeFor(entry, tip, middle, true) },
      { ...tip, bulge: bulgeFor(tip, leave, middle, true) },
      { ...leave, bulge: bulgeFor(leave, land, after.centre, false) },
    );
  });
  return {
    ok: true,
    value: {
      vertices,
      scallops: sound.map(({ radius }) => radius),
      leastReach: Math.min(...sound.map(({ floor }) => floor)),
    },
  };
}
