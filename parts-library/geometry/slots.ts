// Slots and rectangles as contours: straight slots, slots along a circle, rectangles with round corners.
import { GeometryError } from './errors.js';
import { makeContour, type Direction } from './make.js';
import { norm } from './norm.js';
import { coincidentPoints, shortestSegment } from './tolerances.js';
import type { Contour, Point, Vertex } from './types.js';

/** Bulge of a quarter circle to the left. */
const QUARTER = Math.tan(Math.PI / 8);

/**
 * A straight slot with half-circle ends.
 * @param from centre of one end
 * @param to centre of the other
 * @param width mm
 * @throws GeometryError when the ends fall on one point or the width is not above zero
 * @example from (0, 0) to (20, 0), 10 wide: length 2 × 20 + 10 π = 71.42, area 200 + 25 π = 278.54
 */
export function slotContour(from: Point, to: Point, width: number, direction: Direction): Contour {
  const length = norm(to.x - from.x, to.y - from.y);
  if (!(width > coincidentPoints) || !(length > shortestSegment)) {
    throw new GeometryError(
      `A slot needs a width and a length above zero; ${width} and ${length} mm were given.`,
    );
  }
  const across = {
    x: ((to.y - from.y) / length) * (width / 2),
    y: (-(to.x - from.x) / length) * (width / 2),
  };
  return makeContour(
    [
      { x: from.x + across.x, y: from.y + across.y, bulge: 0 },
      { x: to.x + across.x, y: to.y + across.y, bulge: 1 },
      { x: to.x - across.x, y: to.y - across.y, bulge: 0 },
      { x: from.x - across.x, y: from.y - across.y, bulge: 1 },
    ],
    { direction },
  );
}

/** A slot whose middle line is an arc. */
export interface ArcSlot {
  readonly centre: Point;
  /** Of the middle line, mm. */
  readonly radius: number;
  /** From the centre of one end to that of the other, counter-clockwise, degrees. */
  readonly fromDegrees: number;
  readonly toDegrees: number;
  readonly width: number;
}

/**
 * A slot along a circle, with half-circle ends: four arcs.
 * @throws GeometryError when the slot is wider than its circle or its ends meet
 * @example radius 50, 0 to 90 degrees, 10 wide: area 10 × 50 × π/2 + 25 π = 863.94
 */
export function arcSlotContour(slot: ArcSlot, direction: Direction): Contour {
  const { centre, radius, width } = slot;
  const start = (slot.fromDegrees * Math.PI) / 180;
  const sweep = ((slot.toDegrees - slot.fromDegrees) * Math.PI) / 180;
  const endsApart =
    sweep < Math.PI ? sweep * radius > shortestSegment : 2 * radius * Math.sin(sweep / 2) > width;
  if (!(width > coincidentPoints) || !(radius > width / 2) || !(sweep < 2 * Math.PI) || !endsApart) {
    throw new GeometryError(
      `A slot ${width} mm wide does not go ${slot.toDegrees - slot.fromDegrees}° round a circle of radius ${radius} mm.`,
    );
  }
  const at = (angle: number, reach: number): Point => ({
    x: centre.x + reach * Math.cos(angle),
    y: centre.y + reach * Math.sin(angle),
  });
  const along = Math.tan(sweep / 4);
  const [outer, inner] = [radius + width / 2, radius - width / 2];
  return makeContour(
    [
      { ...at(start, outer), bulge: along },
      { ...at(start + sweep, outer), bulge: 1 },
      { ...at(start + sweep, inner), bulge: -along },
      { ...at(start, inner), bulge: 1 },
    ],
    { direction },
  );
}

/** An upright rectangle. */
export interface Rectangle {
  readonly centre: Point;
  readonly width: number;
  readonly height: number;
  /** Radius of its corners; 0 or left out for sharp ones, mm. */
  readonly corner?: number;
}

/**
 * An upright rectangle with round corners, counter-clockwise from the lower left when it is an outline. A corner
 * radius of half a side leaves no straight piece there.
 * @throws GeometryError when the corners do not fit
 * @example 100 × 60 with corners of 10: length 240 + 20 π = 302.83
 */
export function rectangleContour(rectangle: Rectangle, direction: Direction): Contour {
  const { centre, width, height, corner = 0 } = rectangle;
  const [w, h] = [width / 2, height / 2];
  if (corner < 0 || corner > Math.min(w, h) + shortestSegment) {
    throw new GeometryError(`Corners of radius ${corner} mm do not fit on ${width} × ${height} mm.`);
  }
  const at = (x: number, y: number, bulge: number): Vertex => ({ x: centre.x + x, y: centre.y + y, bulge });
  if (corner === 0) {
    return makeContour([at(-w, -h, 0), at(w, -h, 0), at(w, h, 0), at(-w, h, 0)], { direction });
  }
  const isRoundAcross = w - corner < shortestSegment;
  const isRoundUp = h - corner < shortestSegment;
  const round = [
    ...(isRoundAcross ? [] : [at(-w + corner, -h, 0)]),
    at(w - corner, -h, QUARTER),
    ...(isRoundUp ? [] : [at(w, -h + corner, 0)]),
    at(w, h - corner, QUARTER),
    ...(isRoundAcross ? [] : [at(w - corner, h, 0)]),
    at(-w + corner, h, QUARTER),
    ...(isRoundUp ? [] : [at(-w, h - corner, 0)]),
    at(-w, -h + corner, QUARTER),
  ];
  return makeContour(round, { direction });
}
