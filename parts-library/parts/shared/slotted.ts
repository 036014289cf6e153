// Holes drawn out to slots, straight or along a circle, so that what is bolted there can be moved.
import { arcSlotContour, slotContour, type Point } from '../../geometry/index.js';
import type { CutFeature, Feature } from '../../model/index.js';
import type { PlacedHole } from './bolted.js';
import { holeFeature, type SizedHole } from './holes.js';

/** How far a hole is drawn out, from middle to middle of its ends, and which way. */
export type Stretch =
  | { readonly kind: 'none' }
  | { readonly kind: 'straight'; readonly travel: number; readonly degrees: number }
  | { readonly kind: 'round'; readonly centre: Point; readonly swingDegrees: number };

const turned = ({ x, y }: Point, about: Point, degrees: number): Point => {
  const [c, s] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return {
    x: about.x + (x - about.x) * c - (y - about.y) * s,
    y: about.y + (x - about.x) * s + (y - about.y) * c,
  };
};

/** The two ends of a stretched hole whose middle is `at`; the same point twice when it is a plain hole. */
export function endsOf(at: Point, stretch: Stretch): readonly [Point, Point] {
  if (stretch.kind === 'none') return [at, at];
  if (stretch.kind === 'round')
    return [
      turned(at, stretch.centre, -stretch.swingDegrees / 2),
      turned(at, stretch.centre, stretch.swingDegrees / 2),
    ];
  const half = stretch.travel / 2;
  const radians = (stretch.degrees * Math.PI) / 180;
  const step = { x: half * Math.cos(radians), y: half * Math.sin(radians) };
  return [
    { x: at.x - step.x, y: at.y - step.y },
    { x: at.x + step.x, y: at.y + step.y },
  ];
}

/** Length of a stretch at a hole, mm. */
export function travelOf(at: Point, stretch: Stretch): number {
  if (stretch.kind === 'none') return 0;
  return stretch.kind === 'straight'
    ? stretch.travel
    : (Math.hypot(at.x - stretch.centre.x, at.y - stretch.centre.y) * stretch.swingDegrees * Math.PI) / 180;
}

/** A travel shorter than this is a plain hole, mm. */
const LEAST_TRAVEL = 0.01;

/**
 * A hole, or the slot it is drawn out to.
 * @throws GeometryError when a round slot meets itself; the caller bounds the swing
 */
export function slottedFeature(
  { featureId, at }: PlacedHole,
  name: string,
  size: SizedHole,
  stretch: Stretch,
): Feature {
  if (stretch.kind === 'none' || travelOf(at, stretch) < LEAST_TRAVEL)
    return holeFeature(featureId, name, at, size);
  const hole: NonNullable<CutFeature['hole']> = {
    size: size.diameter,
    finish: 'cut',
    thread: size.thread.name,
    takes: size.thread.diameter,
  };
  const [from, to] = endsOf(at, stretch);
  if (stretch.kind === 'straight') {
    const contour = slotContour(from, to, size.diameter, 'opening');
    return { id: featureId, name, purpose: 'opening', contour, hole };
  }
  const { centre, swingDegrees } = stretch;
  const middle = (Math.atan2(at.y - centre.y, at.x - centre.x) * 180) / Math.PI;
  const contour = arcSlotContour(
    {
      centre,
      radius: Math.hypot(at.x - centre.x, at.y - centre.y),
      fromDegrees: middle - swingDegrees / 2,
      toDegrees: middle + swingDegrees / 2,
      width: size.diameter,
    },
    'opening',
  );
  return { id: featureId, name, purpose: 'opening', contour, hole };
}
