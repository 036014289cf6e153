// Holes of any family as the bolt rules see them, and what is bought to fill them.
import type { BoltPattern } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import {
  boltEnvelope,
  boltLength,
  findGrade,
  findThread,
  tighteningTorque,
  type GradeName,
} from '../../handbook/index.js';
import type { Finding, Format, Ghost, HardwareItem } from '../../model/index.js';
import type { SizedHole } from './holes.js';

export interface PlacedHole {
  readonly featureId: string;
  readonly at: Point;
}

/** What is known of the part that is bolted on. */
export interface BoltedPart {
  readonly boltedBy?: BoltPattern['boltedBy'];
  readonly boltedHole?: { readonly mm: number; readonly plusMinus?: number | undefined } | undefined;
  /** Distance over which the holes' places were measured, mm, and its half range where it was given. */
  readonly across?: number;
  readonly plusMinus?: number | undefined;
}

/** Equal holes as a bolt pattern, whatever figure they stand in. */
export function patternOf(
  size: SizedHole,
  holes: readonly PlacedHole[],
  bolted: BoltedPart = {},
): BoltPattern {
  return {
    id: 'pattern1',
    fieldPrefix: '',
    thread: size.thread,
    count: holes.length,
    circle: bolted.across ?? 0,
    circlePlusMinus: bolted.plusMinus,
    made: size.made,
    holeDiameter: size.diameter,
    holes,
    boltedBy: bolted.boltedBy ?? 'hole',
    ...(bolted.boltedHole === undefined
      ? {}
      : { boltedHole: { diameter: bolted.boltedHole.mm, plusMinus: bolted.boltedHole.plusMinus ?? 0 } }),
  };
}

/**
 * Findings with the fields of the shared rules put under the names that this family has for them.
 * @param names what the rule calls it, and what the family does, for example `{ edge: 'margin', bolts: 'columns' }`
 */
export function underFields(
  findings: readonly Finding[],
  names: Readonly<Record<string, string>>,
): readonly Finding[] {
  return findings.map((finding) => {
    const field = finding.field === undefined ? undefined : names[finding.field];
    return field === undefined ? finding : { ...finding, field };
  });
}

/** The two holes of a figure that stand nearest to each other, in a figure of more than two as the whole of it. */
export function nearestPair(holes: readonly PlacedHole[]): readonly PlacedHole[] {
  let best: { readonly pair: readonly PlacedHole[]; readonly distance: number } | undefined;
  for (const [index, a] of holes.entries()) {
    for (const b of holes.slice(index + 1)) {
      const distance = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
      if (best === undefined || distance < best.distance - 1e-9) best = { pair: [a, b], distance };
    }
  }
  return best?.pair ?? holes;
}

/** Head or washer round each hole, whichever is larger. */
export function headGhosts(size: SizedHole, holes: readonly PlacedHole[]): readonly Ghost[] {
  const envelope = boltEnvelope(size.thread);
  if (!envelope.found) return [];
  const radius = Math.max(envelope.row.washerOutside.value, envelope.row.acrossCorners.value) / 2;
  return holes.map(({ featureId, at }) => ({
    id: `${featureId}.head`,
    kind: 'bolt-head',
    shape: { circle: { centre: at, radius } },
  }));
}

/** Bolts to be bought. */
export interface WantedBolts {
  readonly id: string;
  readonly bolt: string;
  readonly count: number;
  /** What is clamped, mm; what lies before the thread when they go `into` one. */
  readonly grip: number;
  /** Engaged thread of a tapped hole, mm. */
  readonly into?: number;
  readonly grade?: GradeName;
  /** Large washers, as over a slot. */
  readonly overSlot?: boolean;
}

/** Bolts, washers and nuts for a grip, with the torque of a dry reusable joint. */
export function boltItems(wanted: WantedBolts, { length, torque }: Format): readonly HardwareItem[] {
  const { id, bolt, count, grip, into, grade = '8.8', overSlot = false } = wanted;
  const thread = findThread(bolt);
  if (!thread.found || count === 0) return [];
  const size = boltLength(thread.row, grip, into);
  const strength = findGrade(grade, thread.row);
  if (!size.found || !strength.found) return [];
  const { value } = tighteningTorque(thread.row, strength.row, 'dry');
  const washer = overSlot ? 'large washer' : 'washer';
  return [
    {
      id: `${id}.bolts`,
      kind: 'bolt',
      name: `${thread.row.name} × ${size.row.name} hexagon bolt, ${grade}`,
      quantity: count,
      says: `Grip ${length(grip)}; dry, ${torque(value)}.${into === undefined ? '' : ` Into ${length(into)} of thread.`}`,
    },
    {
      id: `${id}.washers`,
      kind: 'washer',
      name: `${washer} for ${thread.row.size}`,
      quantity: count * size.row.washers,
    },
    ...(into === undefined
      ? [
          {
            id: `${id}.nuts`,
            kind: 'nut' as const,
            name: `${thread.row.name} hexagon locknut`,
            quantity: count,
          },
        ]
      : []),
  ];
}
