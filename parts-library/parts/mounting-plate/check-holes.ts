// The plate's own bolts and the motor's: edges, spacing, bolting up, slots, room for the motor's body.
import {
  checkBoltUp,
  checkEdgeDistance,
  checkSlip,
  checkSlotWidth,
  checkSpacing,
  checkTakeUp,
  checkTapping,
  checkThreadEngagement,
  digits,
  found,
  judge,
  quantity,
  type BoltPattern,
  type Facts,
} from '../../checks/index.js';
import { boltEnvelope, findChain, type Material, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { nearestPair, patternOf, underFields, type BoltedPart, type PlacedHole } from '../shared/bolted.js';
import { endsOf } from '../shared/slotted.js';
import { motorMiddle, motorStretch, type HoleSet } from './holes.js';
import type { MountingPlate } from './parameters.js';
import type { ResolvedPlate } from './resolve.js';

/** Both ends of every slot, as far as a bolt can come to an edge. */
const endHoles = ({ holes, stretch }: HoleSet): readonly PlacedHole[] =>
  stretch.kind === 'none'
    ? holes
    : holes.flatMap(({ featureId, at }) => endsOf(at, stretch).map((end) => ({ featureId, at: end })));

/** Longest distance between two holes, over which their places add up, mm. */
const acrossOf = (holes: readonly PlacedHole[]): number =>
  Math.max(
    ...holes.flatMap(({ at }, index) =>
      holes.slice(index + 1).map((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y)),
    ),
    0,
  );

const edgeFields = (p: MountingPlate, own: string): Readonly<Record<string, string>> => ({
  edge: p.shape === 'hull' ? 'edge' : own,
});

/** Without the holes of rail or floor there is nothing to weigh. */
const boltUp = (pattern: BoltPattern, facts: Facts): readonly Finding[] =>
  pattern.boltedHole === undefined
    ? [
        found({
          code: 'not-checked',
          level: 'note',
          field: 'bolted',
          title: `will it bolt up (${pattern.thread.name})`,
          says: 'Measure one hole of what the plate is bolted to: with it the room for the bolts is weighed against the measured ± and the cutting error.',
          source: { title: 'Holes of rail or floor', where: 'not given', certainty: 'common practice' },
        }),
      ]
    : checkBoltUp(pattern, facts);

/** The plate's own bolts. */
export function checkBase(
  part: Part,
  p: MountingPlate,
  { base }: ResolvedPlate,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  if (base === undefined) return [];
  const { size, holes, stretch, circle } = base;
  const own = p.figure === 'circle' ? 'boltCircle' : p.columns > 1 ? 'pitchX' : 'pitchY';
  const bolted: BoltedPart = {
    boltedHole: p.bolted,
    across: circle?.diameter ?? acrossOf(holes),
    ...(circle === undefined
      ? { plusMinus: Math.max(p.pitchX.plusMinus ?? 0, p.pitchY.plusMinus ?? 0) }
      : { plusMinus: circle.plusMinus }),
  };
  const pattern = patternOf(size, holes, bolted);
  const names = { ...edgeFields(p, own), bolts: own, boltedHole: 'bolted' };
  const pair = nearestPair(holes);
  return underFields(
    [
      ...checkEdgeDistance(part, patternOf(size, endHoles(base)), facts),
      ...checkSpacing(patternOf(size, pair), facts),
      ...(stretch.kind === 'none' && holes.length > 1 ? boltUp(pattern, facts) : []),
      ...checkTapping(pattern, p.thickness.mm, facts),
      ...checkThreadEngagement(pattern, { material, thickness: p.thickness.mm }, '8.8', facts),
      ...(stretch.kind === 'none' ? [] : checkSlotWidth(slotsOf(base), 'bolt', facts)),
    ],
    names,
  );
}

const slotsOf = ({ holes, size }: HoleSet) =>
  holes.map(({ featureId, at }) => ({ featureId, at, width: size.diameter }));

const BODY: Source = {
  title: 'Room for the motor’s body',
  where: 'head or washer of each plate bolt beside the body, at both ends of its travel',
  certainty: 'common practice',
};

/** Heads of the plate's own bolts beside the motor's body, wherever it slides. */
function checkBody(p: MountingPlate, base: HoleSet | undefined, facts: Facts): readonly Finding[] {
  if (base === undefined || p.motorBody === undefined) return [];
  const envelope = boltEnvelope(base.size.thread);
  if (!envelope.found) return [];
  const seat = Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2;
  const middles = endsOf(motorMiddle(p), motorStretch(p));
  const nearest = endHoles(base)
    .flatMap((hole) => middles.map((m) => ({ hole, gap: Math.hypot(hole.at.x - m.x, hole.at.y - m.y) })))
    .reduce((a, b) => (b.gap < a.gap ? b : a));
  const room = nearest.gap - p.motorBody.mm / 2;
  const level = judge(['stop', room < seat], ['caution', room < envelope.row.socketOutside.value / 2]);
  return [
    found({
      code: 'motor-room',
      level,
      subject: { featureId: nearest.hole.featureId },
      anchor: nearest.hole.at,
      field: 'motorBody',
      title:
        level === 'pass'
          ? `Bolts of ${base.size.thread.name} stand clear of the motor’s body`
          : level === 'caution'
            ? 'A socket does not go on beside the motor’s body; a spanner does'
            : 'A bolt’s head runs into the motor’s body',
      says: `From bolt centre to body ${facts.format.length(room)} at the worst end of its travel; head or washer needs ${facts.format.length(seat)}, a hand socket about ${facts.format.length(envelope.row.socketOutside.value / 2)}. Holes further out, countersunk heads, or bolts from the other face would do.`,
      value: quantity(room, 'mm'),
      limit: quantity(envelope.row.socketOutside.value / 2, 'mm'),
      formula: `${digits(nearest.gap)} − ${digits(p.motorBody.mm)} ÷ 2 = ${digits(room)}; seat ${digits(seat)}`,
      source: BODY,
    }),
  ];
}

/** The motor's bolts: tapped holes in its face, slots in the plate. */
export function checkMotor(
  part: Part,
  p: MountingPlate,
  { base, motor }: ResolvedPlate,
  facts: Facts,
): readonly Finding[] {
  if (motor === undefined) return [];
  const { size, holes, stretch, circle } = motor;
  const first = holes[0];
  const pattern = patternOf(size, holes, {
    boltedBy: 'thread',
    across: circle?.diameter ?? 0,
    plusMinus: circle?.plusMinus,
  });
  const shared = underFields(
    [
      ...checkEdgeDistance(part, patternOf(size, endHoles(motor)), facts),
      ...checkSpacing(patternOf(size, nearestPair(holes)), facts),
      ...checkBoltUp(pattern, facts),
    ],
    { ...edgeFields(p, 'motorX'), bolts: 'motorCircle', boltedHole: 'motorFit', holes: 'motorFit' },
  );
  const chain = p.chain === undefined ? undefined : findChain(p.chain);
  const slots =
    stretch.kind === 'none' || first === undefined
      ? []
      : [
          ...checkSlotWidth(slotsOf(motor), 'motorBolt', facts),
          ...(stretch.kind === 'straight'
            ? checkSlip(
                {
                  thread: size.thread,
                  grade: '8.8',
                  count: holes.length,
                  pullNewtons: p.pull?.value,
                  at: first.at,
                  featureId: first.featureId,
                  field: 'pull',
                },
                facts,
              )
            : []),
        ];
  const takeUp =
    p.face === 'sliding' && chain?.found === true && first !== undefined
      ? checkTakeUp(
          {
            travel: p.travel.mm,
            pitch: chain.row.pitch,
            chain: chain.row.name,
            field: 'travel',
            at: motorMiddle(p),
          },
          facts,
        )
      : [];
  return [...shared, ...slots, ...takeUp, ...checkBody(p, base, facts)];
}
