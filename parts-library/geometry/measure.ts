// Exact measures: length, area, centroid, extents and second moments of contours and paths, arcs taken as arcs.
// A contour is its chord polygon plus a circular segment per arc; each part has a closed form.
import { segmentBetween, segmentLength, segmentsOf } from './segments.js';
import type { Arc, Bounds, Contour, OpenPath, Point, Segment, Vertex } from './types.js';

/** Length of travel, mm: the perimeter of a contour, the length of a path. A circle of radius 10 is 62.832. */
export function lengthOf(shape: Contour | OpenPath): number {
  let length = 0;
  for (const segment of segmentsOf(shape)) length += segmentLength(segment);
  return length;
}

/**
 * Signed area, mm2: positive for an outline (counter-clockwise), negative for an opening.
 * @example areaOf(circleContour({ x: 0, y: 0 }, 10, 'opening')) is -314.159
 */
export function areaOf(contour: Contour): number {
  return signedAreaOf(contour);
}

/** Signed area of a closed list of vertices that need not be a valid contour, mm2. */
export function signedAreaOf(vertices: readonly Vertex[]): number {
  const origin = vertices[0];
  let from = vertices.at(-1);
  if (origin === undefined || from === undefined) return 0;
  let doubled = 0;
  for (const to of vertices) {
    doubled += (from.x - origin.x) * (to.y - origin.y) - (to.x - origin.x) * (from.y - origin.y);
    if (from.bulge !== 0) {
      const segment = segmentBetween(from, to);
      if (segment.kind === 'arc') doubled += 2 * capArea(segment);
    }
    from = to;
  }
  return doubled / 2;
}

/** True when metal lies inside: the contour runs counter-clockwise. */
export function isOutline(contour: Contour): boolean {
  return signedAreaOf(contour) > 0;
}

/** True when the contour is an opening: it runs clockwise. */
export function isOpening(contour: Contour): boolean {
  return signedAreaOf(contour) < 0;
}

/**
 * Centroid of the area a contour encloses, or of the line a path draws (its centre of length), mm.
 * @example a half disc of radius 3 on the x axis has its centroid at y = 4 * 3 / (3 * pi) = 1.2732
 */
export function centroidOf(shape: Contour | OpenPath): Point {
  if ('vertices' in shape) return centroidOfLine(shape);
  const moments = rawMoments(shape);
  return {
    x: moments.origin.x + moments.x / moments.area,
    y: moments.origin.y + moments.y / moments.area,
  };
}

/** Second moments of the enclosed area about its centroid, mm4: `xx` is the integral of y^2, `yy` of x^2, `xy` of x y. */
export interface SecondMoments {
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/**
 * Second moments of area about the centroid, always positive in `xx` and `yy` whichever way the contour runs.
 * @example a rectangle 60 wide and 20 high has xx = 60 * 20^3 / 12 = 40000, yy = 360000, xy = 0
 */
export function secondMoments(contour: Contour): SecondMoments {
  const m = rawMoments(contour);
  const sign = Math.sign(m.area);
  return {
    xx: sign * (m.xx - (m.y * m.y) / m.area),
    yy: sign * (m.yy - (m.x * m.x) / m.area),
    xy: sign * (m.xy - (m.x * m.y) / m.area),
  };
}

/** The extents, exact for arcs, mm. */
export function boundsOf(shape: Contour | OpenPath): Bounds {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const segment of segmentsOf(shape)) {
    const box = segmentBounds(segment);
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  return { minX, minY, maxX, maxY };
}

/** The extents of one segment, exact for an arc: its ends and those of its quadrant points that it passes. */
export function segmentBounds(segment: Segment): Bounds {
  const { from, to } = segment;
  let minX = Math.min(from.x, to.x);
  let minY = Math.min(from.y, to.y);
  let maxX = Math.max(from.x, to.x);
  let maxY = Math.max(from.y, to.y);
  if (segment.kind === 'arc') {
    const { centre, radius, sweep } = segment;
    // Walk counter-clockwise from the arc's low angle and note every quadrant point on the way.
    const low = sweep > 0 ? segment.start : segment.start + sweep;
    const high = low + Math.abs(sweep);
    for (let quarter = Math.ceil(low / (Math.PI / 2)); quarter * (Math.PI / 2) <= high; quarter++) {
      const which = ((quarter % 4) + 4) % 4;
      if (which === 0) maxX = centre.x + radius;
      else if (which === 1) maxY = centre.y + radius;
      else if (which === 2) minX = centre.x - radius;
      else minY = centre.y - radius;
    }
  }
  return { minX, minY, maxX, maxY };
}

function centroidOfLine(path: OpenPath): Point {
  let length = 0;
  let x = 0;
  let y = 0;
  for (const segment of segmentsOf(path)) {
    const own = segmentLength(segment);
    let at = { x: (segment.from.x + segment.to.x) / 2, y: (segment.from.y + segment.to.y) / 2 };
    if (segment.kind === 'arc') {
      // The centre of an arc's length lies on its bisector, r sin(a) / a from the centre, a being half the sweep.
      const half = Math.abs(segment.sweep) / 2;
      const bisector = segment.start + segment.sweep / 2;
      const reach = (segment.radius * Math.sin(half)) / half;
      at = {
        x: segment.centre.x + reach * Math.cos(bisector),
        y: segment.centre.y + reach * Math.sin(bisector),
      };
    }
    length += own;
    x += at.x * own;
    y += at.y * own;
  }
  return { x: x / length, y: y / length };
}

interface RawMoments {
  readonly origin: Point;
  readonly area: number;
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/** Signed moments about the first vertex; measuring from there keeps far-away parts as accurate as near ones. */
function rawMoments(contour: Contour): RawMoments {
  const origin = contour[0] ?? { x: 0, y: 0 };
  let area = 0;
  let x = 0;
  let y = 0;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  for (const segment of segmentsOf(contour)) {
    const ax = segment.from.x - origin.x;
    const ay = segment.from.y - origin.y;
    const bx = segment.to.x - origin.x;
    const by = segment.to.y - origin.y;
    const cross = ax * by - bx * ay;
    area += cross / 2;
    x += (cross * (ax + bx)) / 6;
    y += (cross * (ay + by)) / 6;
    xx += (cross * (ay * ay + ay * by + by * by)) / 12;
    yy += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
    xy += (cross * (ax * by + 2 * ax * ay + 2 * bx * by + bx * ay)) / 24;
    if (segment.kind === 'arc') {
      const cap = capMoments(segment, origin);
      area += cap.area;
      x += cap.x;
      y += cap.y;
      xx += cap.xx;
      yy += cap.yy;
      xy += cap.xy;
    }
  }
  return { origin, area, x, y, xx, yy, xy };
}

/** Area between an arc and its chord, signed like the sweep: r^2 / 2 (sweep - sin sweep). */
function capArea(arc: Arc): number {
  return ((arc.radius * arc.radius) / 2) * angleLessSine(arc.sweep);
}

/** x - sin x, by its series where subtraction would lose figures. */
function angleLessSine(angle: number): number {
  if (Math.abs(angle) > 0.05) return angle - Math.sin(angle);
  const square = angle * angle;
  return ((angle * square) / 6) * (1 - (square / 20) * (1 - (square / 42) * (1 - square / 72)));
}

/** Signed moments about `origin` of the cap between an arc and its chord (circular segment; Roark, table A.1). */
function capMoments(arc: Arc, origin: Point): Omit<RawMoments, 'origin'> {
  const sign = Math.sign(arc.sweep);
  const half = Math.abs(arc.sweep) / 2;
  const r = arc.radius;
  const sine = Math.sin(half);
  const cosine = Math.cos(half);
  const area = Math.abs(capArea(arc));
  // Along the bisector, measured from the chord: closed form, or its series for a flat arc.
  const rise =
    half > 1e-3
      ? r ** 3 * ((2 / 3) * sine ** 3) - r * cosine * area
      : r ** 3 * half ** 5 * (2 / 15 - (11 / 315) * half * half);
  const angle = arc.start + arc.sweep / 2;
  const ux = Math.cos(angle);
  const uy = Math.sin(angle);
  const midX = (arc.from.x + arc.to.x) / 2 - origin.x;
  const midY = (arc.from.y + arc.to.y) / 2 - origin.y;
  const x = area * midX + rise * ux;
  const y = area * midY + rise * uy;
  // Second moments about the circle's centre along (aa) and across (tt) the bisector, then moved to the cap's centroid.
  const base = angleLessSine(2 * half) / 2;
  const aaCentre = (r ** 4 / 4) * (base + 2 * sine ** 3 * cosine);
  const tt = (r ** 4 / 12) * (3 * base - 2 * sine ** 3 * cosine);
  const reach = r * cosine + rise / area;
  const aa = aaCentre - area * reach * reach;
  const cx = x / area;
  const cy = y / area;
  return {
    area: sign * area,
    x: sign * x,
    y: sign * y,
    xx: sign * (aa * uy * uy + tt * ux * ux + area * cy * cy),
    yy: sign * (aa * ux * ux + tt * uy * uy + area * cx * cx),
    xy: sign * ((aa - tt) * ux * uy + area * cx * cy),
  };
}
