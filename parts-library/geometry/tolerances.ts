// Every tolerance of plane geometry, with its reason. Functions take them as named arguments; nothing changes them.

/** Two points closer than this are one point, mm. Files are written to 1e-6 mm, so a tenth of that is below what a file can say. */
export const coincidentPoints = 1e-7;

/** The shortest segment a contour may have, mm. A shorter one would collapse when a file is rounded to 1e-6 mm. */
export const shortestSegment = 1e-6;

/** An arc that rises less than this above its chord is taken as a straight line, mm: its centre would lie so far
 * away that double precision would put more error on its radius than the rise itself. */
export const flattestRise = 5e-7;

/** A point this close to a contour lies on it, mm: the resolution of the files. */
export const onContour = 1e-6;

/** Two neighbours may overlap this deep beside their common vertex, mm: a tangent join read from a file with four
 * decimals crosses itself by less, and no torch can tell. */
export const tangentOverlap = 1e-4;

/** A bulge may exceed 1 by this much and still be a half circle: the rounding of tan(pi/4) and of nine decimals. */
export const halfCircleSlack = 1e-9;

/** The largest bulge `makeContour` will split. Beyond it the gap of the arc is under 0.004 of its radius and the centre is
 * guesswork: such data means a full circle and must be drawn as one. */
export const largestBulge = 1000;

/** Coordinates beyond this are a mistake in units, mm (100 m); it also keeps products of coordinates exact enough. */
export const farthestCoordinate = 1e5;

/** How far an offset marked exact may lie from the ideal, mm. */
export const exactOffset = 1e-6;

/** An exact piece shorter than this is left out and its neighbours joined, mm: half of what an exact offset may be off. */
export const negligible = 5e-7;

/** How far an offset that is a chord polyline may lie from the ideal, on the scrap side, mm. */
export const inexactOffset = 0.01;

/** Chord error of the polygons whose only work is to settle which curves survive an offset, mm. Measured: the largest
 * at which no pocket wider than 0.02 mm was lost. */
export const topologyChord = 0.005;

/** A mitred corner reaches at most this many times the offset distance before it is rounded instead. */
export const mitreLimit = 4;
