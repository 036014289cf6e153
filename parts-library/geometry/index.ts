// The public face of plane geometry: points, contours with arcs, exact measures, offsets.
export type * from './types.js';
export { norm } from './norm.js';
export { GeometryError } from './errors.js';
export * as tolerances from './tolerances.js';
export {
  arcFromBulge,
  bulgeOf,
  directionAlong,
  parallelSegment,
  pointAlong,
  reverseSegment,
  segmentAt,
  segmentLength,
  segmentsOf,
  vertexAt,
} from './segments.js';
export {
  areaOf,
  boundsOf,
  centroidOf,
  isOpening,
  isOutline,
  lengthOf,
  secondMoments,
  segmentBounds,
  signedAreaOf,
  type SecondMoments,
} from './measure.js';
export { findFaults, type InspectionOptions } from './faults.js';
export {
  circleContour,
  isCircle,
  makeContour,
  polygonContour,
  reverseContour,
  type ContourOptions,
  type Direction,
} from './make.js';
export {
  splitSegment,
  startContourAt,
  transformContour,
  transformPath,
  transformPoint,
  type Transform,
} from './transform.js';
export { intersectSegments, type Intersection, type Meeting, type Overlap } from './intersect.js';
export {
  distanceBetweenContours,
  distanceBetweenPaths,
  distanceBetweenSegments,
  distanceToSegment,
  nearestOnContour,
  nearestOnSegment,
  type Gap,
  type Nearest,
} from './distance.js';
export { reachAlong } from './reach.js';
export { containsContour, containsPoint, distanceWithin, type Side } from './contain.js';
export { roundCorners } from './fillet.js';
export { hullContour, type Disc } from './hull.js';
export { turnedContour } from './turned.js';
export { biteContour, joinContours, type Spliced } from './splice.js';
export { tangentChain, type ChainOptions, type TangentChain } from './tangent-chain.js';
export { relieveCorners } from './relief.js';
export { arcSlotContour, rectangleContour, slotContour, type ArcSlot, type Rectangle } from './slots.js';
export { chordContour, chordCount } from './chord.js';
export { biarc, fitArcs, type Curve, type FittedCurve } from './fit-arcs.js';
export {
  nearestWithin,
  packContours,
  packSegments,
  packedContains,
  packedDistance,
  packedSeparation,
  packedStride,
  type PackedContours,
} from './pack.js';
export { loadPolygonEngine } from './offset/engine.js';
export { offsetContour } from './offset/offset-contour.js';
export type { OffsetOptions } from './offset/offset-group.js';
export type { Join } from './offset/carriers.js';
export {
  offsetRegion,
  type Collision,
  type RegionContour,
  type RegionOffset,
  type RegionPiece,
  type RegionResult,
} from './offset/offset-region.js';
