// The two tubes and a way to speak of places along them: u along the tube from the corner, v inwards from its outer side.
import type { Point, Vertex } from '../../geometry/index.js';
import type { TackJig } from './parameters.js';

export interface Leg {
  readonly id: 'a' | 'b';
  /** Length of the jig along it, and width of its tube, mm. */
  readonly length: number;
  readonly tube: number;
  readonly lengthField: 'legA' | 'legB';
  /** From u and v to the plate. */
  readonly at: (u: number, v: number) => Point;
  /** How far inwards a point lies from the tube's outer side, mm. */
  readonly inwards: (point: Point) => number;
  /** Vertices of a shape drawn in u and v. */
  readonly place: (vertices: readonly Vertex[], u: number, v: number) => readonly Vertex[];
  /** Direction of the tube, degrees. */
  readonly degrees: number;
}

/** Angle that the jig holds, degrees. */
export const heldAngle = (p: TackJig): number => p.angle.value + p.preset.value;

/** The two legs. The second is mirrored: its inside is on the other side of its own direction. */
export function legsOf(p: TackJig): readonly [Leg, Leg] {
  const theta = (heldAngle(p) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(theta), Math.sin(theta)];
  const along = (u: number, v: number): Point => ({ x: u, y: v });
  const across = (u: number, v: number): Point => ({ x: u * cos + v * sin, y: u * sin - v * cos });
  return [
    {
      id: 'a',
      length: p.legA.mm,
      tube: p.tubeA.mm,
      lengthField: 'legA',
      at: along,
      inwards: ({ y }) => y,
      place: (vertices, u, v) => vertices.map(({ x, y, bulge }) => ({ ...along(x + u, y + v), bulge })),
      degrees: 0,
    },
    {
      id: 'b',
      length: p.legB.mm,
      tube: p.tubeB.mm,
      lengthField: 'legB',
      at: across,
      inwards: ({ x, y }) => x * sin - y * cos,
      place: (vertices, u, v) =>
        vertices.map(({ x, y, bulge }) => ({ ...across(x + u, y + v), bulge: bulge === 0 ? 0 : -bulge })),
      degrees: heldAngle(p),
    },
  ];
}

/**
 * Where a line v = `first` along the first tube meets a line v = `second` along the second.
 * @example at 90° and 40, 40: (40, 40)
 */
export function crossing(p: TackJig, first: number, second: number): Point {
  const theta = (heldAngle(p) * Math.PI) / 180;
  return { x: (second + first * Math.cos(theta)) / Math.sin(theta), y: first };
}

/** How far along the second leg a point lies. */
export const alongB = (p: TackJig, { x, y }: Point): number => {
  const theta = (heldAngle(p) * Math.PI) / 180;
  return x * Math.cos(theta) + y * Math.sin(theta);
};

/** The opening round the joint: about the middle of the line from outer to inner corner. */
export function weldOpening(p: TackJig): { readonly centre: Point; readonly radius: number } {
  const inner = crossing(p, p.tubeA.mm, p.tubeB.mm);
  return {
    centre: { x: inner.x / 2, y: inner.y / 2 },
    radius: Math.hypot(inner.x, inner.y) / 2 + p.weldRoom.mm,
  };
}
