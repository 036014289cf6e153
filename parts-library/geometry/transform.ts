// Turning, mirroring, scaling and moving; starting a contour elsewhere; splitting a segment.
import { norm } from './norm.js';
import { nearestOnContour } from './distance.js';
import { GeometryError } from './errors.js';
import { reverseVertices } from './make.js';
import { pointAlong, segmentAt, vertexAt } from './segments.js';
import { coincidentPoints, onContour } from './tolerances.js';
import { trustedContour } from './trust.js';
import type { Contour, OpenPath, Point, Vertex } from './types.js';

/** Mirror and scale first, then turn, then move. */
export interface Transform {
  /** The same in x and y, positive; 1 when absent. */
  readonly scale?: number;
  /** Counter-clockwise about the origin. Multiples of 90 are exact. */
  readonly rotateDegrees?: number;
  /** Left becomes right: x changes sign. */
  readonly mirror?: boolean;
  readonly dx?: number;
  readonly dy?: number;
}

/**
 * A point mirrored, turned and moved.
 * @example transformPoint({ x: 1, y: 0 }, { rotateDegrees: 90, dx: 5 }) is (5, 1)
 */
export function transformPoint(point: Point, transform: Transform): Point {
  return pointMover(transform)(point);
}

/**
 * A contour mirrored, turned and moved. A mirrored contour is travelled the other way, so an outline stays an outline;
 * its first vertex stays first, and segment i comes from segment n - 1 - i.
 */
export function transformContour(contour: Contour, transform: Transform): Contour {
  const move = pointMover(transform);
  const moved = contour.map((v) => ({
    ...move(v),
    bulge: transform.mirror === true ? flip(v.bulge) : v.bulge,
  }));
  return trustedContour(transform.mirror === true ? reverseVertices(moved) : moved);
}

/** A path mirrored, turned and moved; it keeps its direction of travel. */
export function transformPath(path: OpenPath, transform: Transform): OpenPath {
  const move = pointMover(transform);
  return {
    vertices: path.vertices.map((v) => ({
      ...move(v),
      bulge: transform.mirror === true ? flip(v.bulge) : v.bulge,
    })),
  };
}

/**
 * The same contour, beginning at vertex `start`, or at a point on its line (splitting the segment it falls on).
 * @throws GeometryError when the point is more than `tolerance` mm off the line
 */
export function startContourAt(
  contour: Contour,
  start: number | Point,
  tolerance: number = onContour,
): Contour {
  if (typeof start === 'number') return trustedContour(rotateList(contour, start));
  const near = nearestOnContour(contour, start);
  if (near.distance > tolerance) {
    throw new GeometryError(
      `The contour cannot start at (${start.x}, ${start.y}): that is ${near.distance.toFixed(4)} mm off its line.`,
    );
  }
  const { x, y } = near.point;
  const close = (v: Point): boolean => norm(v.x - x, v.y - y) <= Math.max(coincidentPoints, tolerance);
  if (close(vertexAt(contour, near.segment))) return startContourAt(contour, near.segment);
  if (close(vertexAt(contour, near.segment + 1))) return startContourAt(contour, near.segment + 1);
  return startContourAt(splitSegment(contour, near.segment, near.parameter), near.segment + 1);
}

/**
 * The same contour with one more vertex, at `parameter` (between 0 and 1) of segment `index`.
 * @throws GeometryError for a parameter at or beyond the ends
 */
export function splitSegment(contour: Contour, index: number, parameter: number): Contour {
  if (!(parameter > 0 && parameter < 1)) {
    throw new GeometryError(`Segment ${index} can be split between 0 and 1 only; ${parameter} was given.`);
  }
  const segment = segmentAt(contour, index);
  const at = ((index % contour.length) + contour.length) % contour.length;
  const quarterSweep = Math.atan(vertexAt(contour, at).bulge);
  const result: Vertex[] = [];
  contour.forEach((v, i) => {
    if (i !== at) {
      result.push(v);
      return;
    }
    result.push({ x: v.x, y: v.y, bulge: Math.tan(quarterSweep * parameter) });
    result.push({ ...pointAlong(segment, parameter), bulge: Math.tan(quarterSweep * (1 - parameter)) });
  });
  return trustedContour(result);
}

function flip(bulge: number): number {
  return bulge === 0 ? 0 : -bulge;
}

function rotateList(vertices: readonly Vertex[], start: number): Vertex[] {
  return vertices.map((_, i) => vertexAt(vertices, i + start));
}

function pointMover(transform: Transform): (p: Point) => Point {
  const { rotateDegrees = 0, mirror = false, scale = 1, dx = 0, dy = 0 } = transform;
  const { cosine, sine } = turnOf(rotateDegrees);
  return (p) => {
    const x = (mirror ? -p.x : p.x) * scale;
    const y = p.y * scale;
    return { x: x * cosine - y * sine + dx, y: x * sine + y * cosine + dy };
  };
}

/** Cosine and sine of an angle, exact at the quarter turns. */
function turnOf(degrees: number): { cosine: number; sine: number } {
  const turn = ((degrees % 360) + 360) % 360;
  if (turn === 0) return { cosine: 1, sine: 0 };
  if (turn === 90) return { cosine: 0, sine: 1 };
  if (turn === 180) return { cosine: -1, sine: 0 };
  if (turn === 270) return { cosine: 0, sine: -1 };
  const angle = (turn * Math.PI) / 180;
  return { cosine: Math.cos(angle), sine: Math.sin(angle) };
}
