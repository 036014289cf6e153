// The holes of a bearing flange plate: housing bolts, clamp ring screws, mounting bolts.
import type { Point } from '../../geometry/index.js';
import { boltCircleFrom, boltHoles, type BoltCircle } from '../../handbook/index.js';
import type { Feature } from '../../model/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { holeFeature, sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { BearingFlange } from './parameters.js';

/** Equal holes of the plate. */
export interface Holes {
  readonly size: SizedHole;
  readonly holes: readonly PlacedHole[];
}

/** Metal beside an opening, in thicknesses: the plasma design guideline. */
export const USUAL_WEB = 1.5;

const named = (prefix: string, points: readonly Point[]): readonly PlacedHole[] =>
  points.map((at, index) => ({ featureId: `${prefix}.${index + 1}`, at }));

const shifted = (points: readonly Point[], by: Point): readonly Point[] =>
  points.map(({ x, y }) => ({ x: x + by.x, y: y + by.y }));

export const shaftOf = (p: BearingFlange): Point => ({ x: p.shaftX.mm, y: p.shaftY.mm });

/** The bolts of a bought housing. */
export function flangeHoles(
  p: BearingFlange,
): Resolved<(Holes & { readonly circle: BoltCircle }) | undefined> {
  if (p.bearing !== 'flanged') return { ok: true, value: undefined };
  const size = sizeHole(p);
  if (typeof size === 'string') return refusal('holes', size);
  const count = Number(p.flangeBolts);
  const answer = boltCircleFrom(p.boltCircle.measure, count);
  if (!answer.ok) return refusal('boltCircle', answer.problem.says);
  const circle = answer.value;
  if (!(circle.diameter > 10 && circle.diameter < 2000)) {
    return refusal(
      'boltCircle',
      `That gives a circle of ${roundText(circle.diameter)} mm; accepted is 10 to 2000 mm. Measure again, or check the number of bolts.`,
    );
  }
  const points = shifted(boltHoles(circle.diameter, count, p.clocking.value), shaftOf(p));
  return { ok: true, value: { size, circle, holes: named('flange.hole', points) } };
}

/** The screws of the clamp ring, outside the finished bore. */
export function clampHoles(
  p: BearingFlange,
  finished: number,
): Resolved<(Holes & { readonly circle: number }) | undefined> {
  if (p.bearing !== 'seat' || p.retainer !== 'ring') return { ok: true, value: undefined };
  const size = sizeHole({ bolt: p.clampBolt, holes: p.clampHoles, holeFit: 'normal' });
  if (typeof size === 'string') return refusal('clampHoles', size);
  // Thread or hole, whichever is larger, keeps its web to the finished bore.
  const hole = Math.max(size.diameter, size.thread.diameter);
  const circle = finished + hole + 2 * Math.max(USUAL_WEB * p.thickness.mm, 3);
  const points = shifted(boltHoles(circle, p.clampBolts, 45), shaftOf(p));
  return { ok: true, value: { size, circle, holes: named('clamp.hole', points) } };
}

/** The four bolts that hold the plate. */
export function mountHoles(p: BearingFlange): Resolved<Holes | undefined> {
  if (p.mount !== 'bolted') return { ok: true, value: undefined };
  const size = sizeHole({ bolt: p.mountBolt, holes: p.mountHoles, holeFit: p.mountFit });
  if (typeof size === 'string') return refusal('mountHoles', size);
  const [w, h] = [p.mountX.mm / 2, p.mountY.mm / 2];
  const corners = [
    { x: -w, y: -h },
    { x: w, y: -h },
    { x: w, y: h },
    { x: -w, y: h },
  ];
  return { ok: true, value: { size, holes: named('mount.hole', corners) } };
}

/** A set as features. */
export const holesOf = (set: Holes | undefined, name: string): readonly Feature[] =>
  set === undefined
    ? []
    : set.holes.map(({ featureId, at }, index) =>
        holeFeature(featureId, `${name} ${index + 1}`, at, set.size),
      );

/** Radius of the clamp ring: one and a half screws outside their circle, mm. */
export const clampRingRadius = ({ size, circle }: Holes & { readonly circle: number }): number =>
  circle / 2 + 1.5 * size.thread.diameter;
