// The circle through three or more hole centres: geometric least squares, and how an even pattern sits on it.

import type { Point } from '../geometry/index.js';

export interface FittedCircle {
  readonly centre: Point;
  readonly radius: number;
}

/** Solve a symmetric 3×3 system by elimination with pivoting; undefined when it is singular for its size. */
function solve3(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): readonly number[] | undefined {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  const at = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  const scale = Math.max(...matrix.flat().map(Math.abs));
  for (let column = 0; column < 3; column += 1) {
    let pivot = column;
    for (let row = column + 1; row < 3; row += 1) {
      if (Math.abs(at(row, column)) > Math.abs(at(pivot, column))) pivot = row;
    }
    const lead = rows[pivot];
    const here = rows[column];
    if (lead === undefined || here === undefined || Math.abs(at(pivot, column)) <= 1e-9 * scale)
      return undefined;
    rows[pivot] = here;
    rows[column] = lead;
    for (let row = 0; row < 3; row += 1) {
      if (row === column) continue;
      const factor = at(row, column) / at(column, column);
      rows[row] = (rows[row] ?? []).map((value, index) => value - factor * (lead[index] ?? 0));
    }
  }
  return [0, 1, 2].map((row) => at(row, 3) / at(row, row));
}

/** Normal equations of rows [a, b, 1] against values. */
function normal(
  rows: readonly (readonly [number, number])[],
  values: readonly number[],
): { readonly matrix: number[][]; readonly right: number[] } {
  const matrix = [
    [0, 0, 0],
    [0, 0, 0],
    [0, 0, 0],
  ];
  const right = [0, 0, 0];
  rows.forEach(([a, b], index) => {
    const terms = [a, b, 1];
    const value = values[index] ?? 0;
    terms.forEach((term, row) => {
      right[row] = (right[row] ?? 0) + term * value;
      terms.forEach((other, column) => {
        const line = matrix[row];
        if (line !== undefined) line[column] = (line[column] ?? 0) + term * other;
      });
    });
  });
  return { matrix, right };
}

/** Steps that a Gauss–Newton fit is allowed; holes on a flange settle in three or four. */
const mostSteps = 50;

/**
 * The circle that comes nearest to the points: least squares of the distances to the circle, started from the
 * algebraic circle x² + y² + ux + vy + w = 0.
 *
 * @param points three or more, mm
 * @returns undefined when there are fewer than three points or they lie on one line
 * @example fitCircle([{x: 10, y: 0}, {x: 0, y: 20}, {x: -15, y: -5}]) // centre (−4.0909, 5.4545), radius 15.1098
 */
export function fitCircle(points: readonly Point[]): FittedCircle | undefined {
  if (points.length < 3) return undefined;
  const middle = {
    x: points.reduce((sum, { x }) => sum + x, 0) / points.length,
    y: points.reduce((sum, { y }) => sum + y, 0) / points.length,
  };
  const near = points.map(({ x, y }) => ({ x: x - middle.x, y: y - middle.y }));
  const reach = Math.max(...near.map(({ x, y }) => Math.hypot(x, y)));
  if (!(reach > 0)) return undefined;
  const unit = near.map(({ x, y }) => ({ x: x / reach, y: y / reach }));
  const start = normal(
    unit.map(({ x, y }) => [x, y]),
    unit.map(({ x, y }) => -(x * x + y * y)),
  );
  const algebraic = solve3(start.matrix, start.right);
  if (algebraic === undefined) return undefined;
  const [u = 0, v = 0, w = 0] = algebraic;
  let centre = { x: -u / 2, y: -v / 2 };
  let radius = Math.sqrt(Math.max(0, (u * u + v * v) / 4 - w));
  for (let step = 0; step < mostSteps; step += 1) {
    const rays = unit.map(({ x, y }) => ({
      x: x - centre.x,
      y: y - centre.y,
      r: Math.hypot(x - centre.x, y - centre.y),
    }));
    if (rays.some(({ r }) => r === 0)) return undefined;
    const { matrix, right } = normal(
      rays.map(({ x, y, r }) => [x / r, y / r]),
      rays.map(({ r }) => r - radius),
    );
    const change = solve3(matrix, right);
    if (change === undefined) return undefined;
    const [dx = 0, dy = 0, dr = 0] = change;
    centre = { x: centre.x + dx, y: centre.y + dy };
    radius += dr;
    if (Math.abs(dx) + Math.abs(dy) + Math.abs(dr) < 1e-14) break;
  }
  return {
    centre: { x: middle.x + centre.x * reach, y: middle.y + centre.y * reach },
    radius: radius * reach,
  };
}

/**
 * How far the fitted diameter can be off when every coordinate can be off by ±1: the sum of what each coordinate
 * moves it, at its worst.
 *
 * @param points the points that were fitted
 * @param circle their fitted circle
 * @returns mm of diameter per mm of coordinate, 2 or more; undefined when the points do not fix a circle
 */
export function diameterPerCoordinate(points: readonly Point[], circle: FittedCircle): number | undefined {
  const rays = points.map(({ x, y }): readonly [number, number] => {
    const r = Math.hypot(x - circle.centre.x, y - circle.centre.y);
    return [(x - circle.centre.x) / r, (y - circle.centre.y) / r];
  });
  const { matrix } = normal(
    rays,
    rays.map(() => 0),
  );
  const last = solve3(matrix, [0, 0, 1]);
  if (last === undefined) return undefined;
  const [a = 0, b = 0, c = 0] = last;
  return 2 * rays.reduce((sum, [x, y]) => sum + Math.abs(a * x + b * y + c) * (Math.abs(x) + Math.abs(y)), 0);
}

const turn = 2 * Math.PI;

export interface SeatedHole {
  /** The centre as measured. */
  readonly at: Point;
  /** Its direction from the fitted centre, degrees, 0 to 360. */
  readonly degrees: number;
  /** How far outside (+) or inside (−) the fitted circle it lies, mm. */
  readonly radialError: number;
  /** Which of the even places it is nearest to, counted from the first hole. */
  readonly place: number;
  /** Distance from that even place on the fitted circle, mm. */
  readonly error: number;
}

export interface Seating {
  /** Direction of place 0 of the even pattern that fits best, degrees, 0 to 360. */
  readonly clockingDegrees: number;
  readonly holes: readonly SeatedHole[];
}

const wrapped = (angle: number): number => ((angle % turn) + turn) % turn;

/**
 * Lay an even pattern of `count` holes over measured centres: turn it until it fits best and say how far every
 * hole is from its place.
 */
export function seatEvenly(points: readonly Point[], circle: FittedCircle, count: number): Seating {
  const { centre, radius } = circle;
  const pitch = turn / count;
  const angles = points.map(({ x, y }) => Math.atan2(y - centre.y, x - centre.x));
  const first = angles[0] ?? 0;
  const places = angles.map((angle) => Math.round(wrapped(angle - first) / pitch) % count);
  const offsets = angles.map((angle, index) => angle - (places[index] ?? 0) * pitch);
  const clocking = Math.atan2(
    offsets.reduce((sum, offset) => sum + Math.sin(offset), 0),
    offsets.reduce((sum, offset) => sum + Math.cos(offset), 0),
  );
  const toDegrees = (angle: number): number => (wrapped(angle) * 360) / turn;
  return {
    clockingDegrees: toDegrees(clocking),
    holes: points.map((at, index) => {
      const place = places[index] ?? 0;
      const angle = clocking + place * pitch;
      const even = { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
      return {
        at,
        degrees: toDegrees(angles[index] ?? 0),
        radialError: Math.hypot(at.x - centre.x, at.y - centre.y) - radius,
        place,
        error: Math.hypot(at.x - even.x, at.y - even.y),
      };
    }),
  };
}
