// Chords: a contour as straight lines, on a stated side of its arcs and within a stated error.
import { isOutline } from './measure.js';
import { segmentsOf } from './segments.js';
import type { Arc, Contour, Point } from './types.js';

/**
 * The contour as a polygon within `tolerance` mm. 'outside' never cuts into the enclosed area, 'inside' never reaches
 * out of it, 'on' has every vertex on the contour. The points run as the contour does; ends of segments are kept.
 * @example a circle of radius 10 with 0.01 mm 'on' takes 72 points
 */
export function chordContour(
  contour: Contour,
  tolerance: number,
  side: 'outside' | 'inside' | 'on',
): Point[] {
  const points: Point[] = [];
  const outward = isOutline(contour) ? 1 : -1;
  for (const segment of segmentsOf(contour)) {
    points.push({ x: segment.from.x, y: segment.from.y });
    if (segment.kind === 'line') continue;
    // An arc that bulges out of the area lies outside its chords: tangents are needed to keep outside of it.
    const bulgesOut = Math.sign(segment.sweep) === outward;
    const tangents = side !== 'on' && bulgesOut === (side === 'outside');
    addArc(points, segment, tolerance, tangents);
  }
  return points;
}

/**
 * How many equal chords an arc needs so that none is farther than `tolerance` from it, mm.
 * A step of 2 acos(1 - t / r) has a sagitta of t.
 */
export function chordCount(radius: number, sweep: number, tolerance: number): number {
  const step = tolerance >= radius ? Math.PI / 2 : 2 * Math.acos(1 - tolerance / radius);
  return Math.max(1, Math.ceil(Math.abs(sweep) / Math.min(step, Math.PI / 2)));
}

function addArc(points: Point[], arc: Arc, tolerance: number, tangents: boolean): void {
  const { centre, radius, start, sweep } = arc;
  if (!tangents) {
    const count = chordCount(radius, sweep, tolerance);
    for (let i = 1; i < count; i++) {
      const angle = start + (sweep * i) / count;
      points.push({ x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) });
    }
    return;
  }
  // Neighbouring tangents meet r / cos(step / 2) from the centre; that excess is the error, so the step is
  // 2 acos(r / (r + t)).
  const step = Math.min(2 * Math.acos(radius / (radius + tolerance)), Math.PI / 2);
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / step));
  const reach = radius / Math.cos(sweep / count / 2);
  for (let i = 0; i < count; i++) {
    const angle = start + (sweep * (i + 0.5)) / count;
    points.push({ x: centre.x + reach * Math.cos(angle), y: centre.y + reach * Math.sin(angle) });
  }
}
