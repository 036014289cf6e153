// The folded profile as a closed contour seen from its edge, for the ghost beside the flat pattern.
import { makeContour, GeometryError, type Contour, type Point, type Vertex } from '../../geometry/index.js';
import type { FlatPattern } from './profile.js';

interface Pen {
  readonly at: Point;
  /** Direction of travel, radians. */
  readonly heading: number;
}

const step = ({ at, heading }: Pen, length: number): Pen => ({
  at: { x: at.x + length * Math.cos(heading), y: at.y + length * Math.sin(heading) },
  heading,
});

const beside = ({ at, heading }: Pen, left: number): Point => ({
  x: at.x - left * Math.sin(heading),
  y: at.y + left * Math.cos(heading),
});

/**
 * Walks along the middle of the plate and writes down both faces; arcs of the bends have the inside radius on one
 * face and inside radius plus thickness on the other.
 *
 * @param degrees rotation of every bend
 * @param origin where the first leg's end stands
 * @returns undefined when the legs run into each other
 */
export function foldedProfile(
  flat: FlatPattern,
  degrees: number,
  thickness: number,
  origin: Point,
): Contour | undefined {
  const half = thickness / 2;
  const angle = (degrees * Math.PI) / 180;
  const leftFace: Vertex[] = [];
  const rightFace: Vertex[] = [];
  let pen: Pen = { at: origin, heading: 0 };
  const write = (bulge: number): void => {
    leftFace.push({ ...beside(pen, half), bulge });
    rightFace.push({ ...beside(pen, -half), bulge });
  };
  flat.legs.forEach((leg, index) => {
    write(0);
    pen = step(pen, leg.straight);
    const bend = flat.bends[index];
    if (bend === undefined) {
      write(0);
      return;
    }
    const turn = bend.direction === 'up' ? angle : -angle;
    write(Math.tan(turn / 4));
    const radius = flat.radius + half;
    const centre = beside(pen, Math.sign(turn) * radius);
    const heading = pen.heading + turn;
    pen = {
      heading,
      at: {
        x: centre.x + Math.sign(turn) * radius * Math.sin(heading),
        y: centre.y - Math.sign(turn) * radius * Math.cos(heading),
      },
    };
  });
  // Walked back, each segment leaves the vertex that it reached and turns the other way.
  const back = rightFace
    .map((vertex, index): Vertex => ({ ...vertex, bulge: -(rightFace[index - 1]?.bulge ?? 0) }))
    .reverse();
  try {
    return makeContour(withoutPoints([...leftFace, ...back]), { direction: 'outline' });
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}

/** A sharp bend has no arc on its inside: vertices that fall together are one. */
function withoutPoints(vertices: readonly Vertex[]): readonly Vertex[] {
  return vertices.filter((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length];
    return next === undefined || Math.hypot(next.x - vertex.x, next.y - vertex.y) > 1e-6;
  });
}
