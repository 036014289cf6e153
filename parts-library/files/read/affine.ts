// Moves of a drawing: six numbers that turn, scale, skew, mirror and shift, as blocks and SVG groups use them.
import type { Point } from '../../geometry/index.js';

/** x' = a x + c y + e, y' = b x + d y + f: the order in which SVG writes them. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** First `inner`, then `outer`. */
export const after = (outer: Affine, inner: Affine): Affine => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

export const shift = (x: number, y: number): Affine => ({ ...IDENTITY, e: x, f: y });

export const stretch = (x: number, y: number): Affine => ({ ...IDENTITY, a: x, d: y });

/** Counter-clockwise where y points up; exact at quarter turns. */
export function turned(degrees: number): Affine {
  const whole = ((degrees % 360) + 360) % 360;
  const quarter = [0, 90, 180, 270].indexOf(whole);
  const angle = (whole * Math.PI) / 180;
  const cosine = quarter < 0 ? Math.cos(angle) : [1, 0, -1, 0][quarter];
  const sine = quarter < 0 ? Math.sin(angle) : [0, 1, 0, -1][quarter];
  return { a: cosine ?? 1, b: sine ?? 0, c: -(sine ?? 0), d: cosine ?? 1, e: 0, f: 0 };
}

export const movePoint = (move: Affine, { x, y }: Point): Point => ({
  x: move.a * x + move.c * y + move.e,
  y: move.b * x + move.d * y + move.f,
});

/** A direction with its length: not shifted. */
export const moveVector = (move: Affine, { x, y }: Point): Point => ({
  x: move.a * x + move.c * y,
  y: move.b * x + move.d * y,
});

/** Area of the moved unit square; negative when it mirrors. */
export const determinant = ({ a, b, c, d }: Affine): number => a * d - b * c;

/** True when circles stay circles: the moved axes are equally long and square to each other. */
export function keepsCircles({ a, b, c, d }: Affine): boolean {
  const size = a * a + b * b;
  return Math.abs(c * c + d * d - size) <= 1e-9 * size && Math.abs(a * c + b * d) <= 1e-9 * size;
}
