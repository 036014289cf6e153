// Where the plate's own holes and the motor's stand, how large they are, and how far they are drawn out.
import { roundText } from '../shared/words.js';
import { boltCircleFrom, boltHoles, type BoltCircle } from '../../handbook/index.js';
import type { Point } from '../../geometry/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { LARGEST_CIRCLE, SMALLEST_CIRCLE } from '../shared/pattern-fields.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { travelOf, type Stretch } from '../shared/slotted.js';
import type { MountingPlate } from './parameters.js';

/** One set of equal holes or slots. */
export interface HoleSet {
  readonly size: SizedHole;
  readonly holes: readonly PlacedHole[];
  readonly stretch: Stretch;
  /** Longest travel of a bolt in its slot, mm. */
  readonly travel: number;
  /** The circle that they stand on, as it was measured. */
  readonly circle?: BoltCircle;
}

const PLAIN: Stretch = { kind: 'none' };

function circleFrom(entry: MountingPlate['boltCircle'], bolts: number, field: string): Resolved<BoltCircle> {
  const answer = boltCircleFrom(entry.measure, bolts);
  if (!answer.ok) return refusal(field, answer.problem.says);
  const { diameter } = answer.value;
  return diameter < SMALLEST_CIRCLE || diameter > LARGEST_CIRCLE
    ? refusal(
        field,
        `That gives a circle of ${roundText(diameter)} mm; accepted is ${SMALLEST_CIRCLE} to ${LARGEST_CIRCLE} mm. Measure again, or check the number of bolts.`,
      )
    : { ok: true, value: answer.value };
}

const named = (prefix: string, points: readonly Point[]): readonly PlacedHole[] =>
  points.map((at, index) => ({ featureId: `${prefix}.${index + 1}`, at }));

function gridOf({ columns, rows, pitchX, pitchY }: MountingPlate): readonly Point[] {
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => ({
      x: (column - (columns - 1) / 2) * pitchX.mm,
      y: (row - (rows - 1) / 2) * pitchY.mm,
    })),
  ).flat();
}

/** The plate's own holes; none when the figure is none. */
export function baseHoles(p: MountingPlate): Resolved<HoleSet | undefined> {
  if (p.figure === 'none') return { ok: true, value: undefined };
  const size = sizeHole(p);
  if (typeof size === 'string') return refusal('holes', size);
  const stretch: Stretch =
    p.slot.mm > 0 ? { kind: 'straight', travel: p.slot.mm, degrees: p.slotDirection.value } : PLAIN;
  if (stretch.kind !== 'none' && (size.made === 'tapped' || size.made === 'drill')) {
    return refusal(
      'slot',
      `A slot is cut; holes that are ${size.made === 'tapped' ? 'tapped' : 'drilled from a mark'} have no travel. Clearance holes, or a travel of 0, would do.`,
    );
  }
  if (p.figure === 'grid') {
    return {
      ok: true,
      value: { size, stretch, travel: p.slot.mm, holes: named('hole', gridOf(p)) },
    };
  }
  const circle = circleFrom(p.boltCircle, p.bolts, 'boltCircle');
  if (!circle.ok) return circle;
  const holes = named('hole', boltHoles(circle.value.diameter, p.bolts, p.clocking.value));
  return { ok: true, value: { size, stretch, travel: p.slot.mm, holes, circle: circle.value } };
}

/** Where the shaft stands in the middle of its travel. */
export const motorMiddle = (p: MountingPlate): Point => ({ x: p.motorX.mm, y: p.motorY.mm });

/** How the whole motor moves. */
export function motorStretch(p: MountingPlate): Stretch {
  if (p.face === 'sliding' && p.travel.mm > 0)
    return { kind: 'straight', travel: p.travel.mm, degrees: p.travelDirection.value };
  return p.face === 'turning'
    ? { kind: 'round', centre: motorMiddle(p), swingDegrees: p.swing.value }
    : PLAIN;
}

/** Least metal between the ends of neighbouring round slots, degrees of the circle beyond their width. */
function turningRefusal(p: MountingPlate, circle: number, width: number): Resolved<never> | undefined {
  if (p.face !== 'turning') return undefined;
  const between = 360 / p.motorBolts;
  const end = (2 * Math.asin(Math.min(1, width / circle)) * 180) / Math.PI;
  return p.swing.value + end < between
    ? undefined
    : refusal(
        'swing',
        `Slots that turn ${roundText(p.swing.value)}° run into each other: ${p.motorBolts} bolts leave less than ${roundText(Math.max(0, between - end))}°. A smaller swing would do.`,
      );
}

/** The motor's holes; none without a motor face. */
export function motorHoles(p: MountingPlate): Resolved<HoleSet | undefined> {
  if (p.face === 'none') return { ok: true, value: undefined };
  const size = sizeHole({ bolt: p.motorBolt, holes: { kind: 'clearance' }, holeFit: p.motorFit });
  if (typeof size === 'string') return refusal('motorBolt', size);
  const circle = circleFrom(p.motorCircle, p.motorBolts, 'motorCircle');
  if (!circle.ok) return circle;
  const { diameter } = circle.value;
  const crowded = turningRefusal(p, diameter, size.diameter);
  if (crowded !== undefined) return crowded;
  const middle = motorMiddle(p);
  const points = boltHoles(diameter, p.motorBolts, p.motorClocking.value).map(({ x, y }) => ({
    x: x + middle.x,
    y: y + middle.y,
  }));
  const stretch = motorStretch(p);
  const travel = travelOf(points[0] ?? middle, stretch);
  return {
    ok: true,
    value: { size, stretch, travel, holes: named('motor.hole', points), circle: circle.value },
  };
}
