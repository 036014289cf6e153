// Making contours: circles, polygons, and validated contours from loose vertices.
import { norm } from './norm.js';
import { GeometryError } from './errors.js';
import { findFaults, type InspectionOptions } from './faults.js';
import { signedAreaOf } from './measure.js';
import { segmentBetween, vertexAt } from './segments.js';
import { coincidentPoints, halfCircleSlack, largestBulge } from './tolerances.js';
import { trustedContour } from './trust.js';
import type { Contour, Point, Vertex } from './types.js';

/** Which way a contour is to run: an outline counter-clockwise, an opening clockwise. */
export type Direction = 'outline' | 'opening';

export interface ContourOptions extends InspectionOptions {
  /** Turns the contour to run this way, keeping its first vertex. Left as drawn when absent. */
  readonly direction?: Direction;
}

/**
 * A validated contour. Arcs over half a circle are split in two; nothing is merged or repaired.
 * @throws GeometryError with every fault found
 * @example makeContour(square, { direction: 'opening' }) runs clockwise whichever way the square was drawn
 */
export function makeContour(vertices: readonly Vertex[], options: ContourOptions = {}): Contour {
  const split = splitLargeArcs(vertices);
  const faults = findFaults(split, options);
  const firstFault = faults[0];
  if (firstFault !== undefined) throw new GeometryError(firstFault.says, faults);
  return directContour(trustedContour(split), options.direction);
}

/** The contour, turned to run the stated way if it does not. */
export function directContour(contour: Contour, direction: Direction | undefined): Contour {
  if (direction === undefined || signedAreaOf(contour) > 0 === (direction === 'outline')) return contour;
  return reverseContour(contour);
}

/**
 * The same contour travelled the other way from the same first vertex: an outline becomes an opening.
 * Segment i of the result is segment n - 1 - i of the source.
 */
export function reverseContour(contour: Contour): Contour {
  return trustedContour(reverseVertices(contour));
}

/** Closed vertices travelled the other way from the same first vertex. */
export function reverseVertices(vertices: readonly Vertex[]): Vertex[] {
  const count = vertices.length;
  return vertices.map((_, i) => {
    const { x, y } = vertexAt(vertices, count - i);
    // -0 and 0 would compare unequal in stored data.
    const { bulge } = vertexAt(vertices, count - i - 1);
    return { x, y, bulge: bulge === 0 ? 0 : -bulge };
  });
}

/**
 * A circle as a contour: two half circles, starting at its right-hand quadrant.
 * @throws GeometryError for a radius that is not positive and finite
 */
export function circleContour(centre: Point, radius: number, direction: Direction): Contour {
  if (!(radius > coincidentPoints)) {
    throw new GeometryError(`A circle needs a radius above zero; ${radius} mm was given.`);
  }
  const bulge = direction === 'outline' ? 1 : -1;
  return makeContour([
    { x: centre.x + radius, y: centre.y, bulge },
    { x: centre.x - radius, y: centre.y, bulge },
  ]);
}

/** The centre and radius of a contour that is one circle (two half circles), else undefined. */
export function isCircle(contour: Contour): { centre: Point; radius: number } | undefined {
  const [a, b] = contour;
  if (a === undefined || b === undefined || contour.length !== 2) return undefined;
  if (!isHalfCircle(a) || !isHalfCircle(b) || a.bulge * b.bulge < 0) return undefined;
  return {
    centre: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    radius: norm(a.x - b.x, a.y - b.y) / 2,
  };
}

function isHalfCircle(v: Vertex): boolean {
  return Math.abs(Math.abs(v.bulge) - 1) <= halfCircleSlack;
}

/** A contour of straight lines through the points, in their order. */
export function polygonContour(points: readonly Point[], options: ContourOptions = {}): Contour {
  return makeContour(
    points.map(({ x, y }) => ({ x, y, bulge: 0 })),
    options,
  );
}

/** Vertices with every arc over half a circle split at its middle; a half circle's rounding is trimmed to exactly 1. */
function splitLargeArcs(vertices: readonly Vertex[]): Vertex[] {
  const result: Vertex[] = [];
  vertices.forEach((v, i) => {
    const { x, y } = v;
    const size = Math.abs(v.bulge);
    if (size <= 1 || !(size <= largestBulge)) {
      result.push({ x, y, bulge: v.bulge });
    } else if (size <= 1 + halfCircleSlack) {
      result.push({ x, y, bulge: Math.sign(v.bulge) });
    } else {
      const arc = segmentBetween(v, vertexAt(vertices, i + 1));
      if (arc.kind === 'line') {
        result.push({ x, y, bulge: v.bulge });
        return;
      }
      const bulge = Math.tan(arc.sweep / 8);
      const middle = arc.start + arc.sweep / 2;
      result.push({ x, y, bulge });
      result.push({
        x: arc.centre.x + arc.radius * Math.cos(middle),
        y: arc.centre.y + arc.radius * Math.sin(middle),
        bulge,
      });
    }
  });
  return result;
}
