// Room beside the hub and its weld: for the bolted part's bore, and for head, washer and socket of each bolt.
import { boltEnvelope, weakestSource, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import { leastPitch } from './edge.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** Room left around hub and weld on the seating face, on diameter, mm. */
const SEAT_CLEARANCE = 1;

const SEAT_SOURCE: Source = {
  title: 'Weld-on hub through a plate',
  where: 'bolted part’s bore at least hub outside + 2 legs + clearance on the seating face',
  certainty: 'common practice',
};

export interface HubBeside {
  /** Hub outside, mm. */
  readonly hub: number;
  readonly leg: number;
  readonly sides: 'one' | 'both';
}

/** The bolted part must seat on the plate, not on the fillet. */
export function checkSeat(pattern: BoltPattern, beside: HubBeside, facts: Facts): readonly Finding[] {
  // Welded on the far face only, nothing but the hub comes through the seating face.
  const leg = beside.sides === 'both' ? beside.leg : 0;
  const needed = beside.hub + 2 * leg + SEAT_CLEARANCE;
  const place = { code: 'seat', field: `${pattern.fieldPrefix}boltedBore`, source: SEAT_SOURCE } as const;
  if (pattern.boltedBore === undefined) {
    return [
      found({
        ...place,
        code: 'not-checked',
        level: 'note',
        title: 'bore of the bolted part over hub and weld',
        says: `On the face where it seats it must clear hub and weld: at least ⌀${facts.format.length(needed)} over a fillet of ${facts.format.length(beside.leg)}.`,
        limit: quantity(needed, 'mm'),
      }),
    ];
  }
  const bore = pattern.boltedBore.diameter - pattern.boltedBore.plusMinus;
  const clearsWeld = bore >= needed;
  const clearsHub = bore >= beside.hub;
  const level = judge(['pass', clearsWeld], ['stop', beside.sides === 'both'], ['caution', true]);
  return [
    found({
      ...place,
      level,
      anchor: { x: -beside.hub / 2 - beside.leg / 2, y: 0 },
      title: clearsWeld
        ? `Bolted part seats clear of hub${beside.sides === 'both' ? ' and weld' : ', welded on the far face'}, ${facts.format.length(bore - needed + SEAT_CLEARANCE)} to spare on diameter`
        : `Bolted part’s bore ⌀${facts.format.length(pattern.boltedBore.diameter)} ${clearsHub && beside.sides === 'both' ? 'sits on the weld' : 'does not clear the hub'}`,
      says: clearsWeld
        ? 'Counted on the face where it seats.'
        : clearsHub && beside.sides === 'both'
          ? `It passes over the hub but not over a fillet of ${facts.format.length(beside.leg)} on the seating face. Weld the far face only, chamfer the bolted bore, or put a ring spacer between.`
          : 'Let the hub end flush with the seating face, or below it, and weld the far face only.',
      value: quantity(pattern.boltedBore.diameter, 'mm', pattern.boltedBore.plusMinus),
      limit: quantity(needed, 'mm'),
      formula: `${digits(beside.hub)}${leg > 0 ? ` + 2 × ${digits(leg)}` : ''} + ${SEAT_CLEARANCE} = ${digits(needed)}`,
      ...(!clearsWeld && beside.sides === 'both'
        ? {
            remedies: [
              {
                says: 'Weld the far face only',
                change: [{ op: 'add' as const, path: '/weldSides', value: 'one' }],
              },
            ],
          }
        : {}),
    }),
  ];
}

/** Head, washer and socket beside hub and weld, and between neighbouring bolts. */
export function checkHeadRoom(
  pattern: BoltPattern,
  beside: HubBeside | undefined,
  facts: Facts,
): readonly Finding[] {
  const envelope = boltEnvelope(pattern.thread);
  const first = pattern.holes[0];
  const second = pattern.holes[1];
  if (!envelope.found || first === undefined || second === undefined) return [];
  const { acrossCorners, washerOutside, socketOutside } = envelope.row;
  const seat = Math.max(acrossCorners.value, washerOutside.value) / 2;
  const socket = socketOutside.value / 2;
  const source = weakestSource(acrossCorners.source, washerOutside.source, socketOutside.source);
  const pitch = leastPitch(pattern);
  const rooms = [
    ...(beside === undefined
      ? []
      : [
          {
            code: 'head-room-hub',
            what: 'the hub and its weld',
            room:
              Math.min(...pattern.holes.map(({ at }) => Math.hypot(at.x, at.y))) -
              beside.hub / 2 -
              beside.leg,
            field: 'hub',
          },
        ]),
    {
      code: 'head-room-neighbour',
      what: 'the neighbouring bolt',
      // Beside a neighbour that has its own head and washer.
      room: pitch - seat,
      field: `${pattern.fieldPrefix}bolts`,
    },
  ];
  return rooms.map(({ code, what, room, field }) => {
    const level = judge(['stop', room < seat], ['caution', room < socket]);
    return found({
      code,
      level,
      subject: { featureId: first.featureId },
      anchor: first.at,
      field,
      title:
        level === 'pass'
          ? `Head, washer and socket of ${pattern.thread.name} clear ${what}`
          : level === 'caution'
            ? `A socket does not go on beside ${what}; a spanner does`
            : `Head or washer of ${pattern.thread.name} does not seat beside ${what}`,
      says: `From bolt centre to ${what} ${facts.format.length(room)}; head or washer needs ${facts.format.length(seat)}, a hand socket about ${facts.format.length(socket)} (measure yours).`,
      value: quantity(room, 'mm'),
      limit: quantity(socket, 'mm'),
      formula: `room ${digits(room)}; seat ${digits(seat)}; socket ${digits(socket)}`,
      source,
    });
  });
}

/** Two patterns in one plate: heads and washers beside each other, and the inner one's heads under the bolted part. */
export function checkPatternsTogether(patterns: readonly BoltPattern[], facts: Facts): readonly Finding[] {
  const [first, second] = patterns;
  if (first === undefined || second === undefined) return [];
  const seats = [first, second].map((pattern) => {
    const envelope = boltEnvelope(pattern.thread);
    return envelope.found
      ? {
          half: Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2,
          source: weakestSource(envelope.row.acrossCorners.source, envelope.row.washerOutside.source),
        }
      : undefined;
  });
  const [a, b] = seats;
  if (a === undefined || b === undefined) return [];
  const pairs = first.holes.flatMap((one) =>
    second.holes.map((other) => ({
      other,
      distance: Math.hypot(one.at.x - other.at.x, one.at.y - other.at.y),
    })),
  );
  const nearest = pairs.reduce((x, y) => (y.distance < x.distance ? y : x));
  const needed = a.half + b.half;
  const beside = found({
    code: 'heads-of-both-patterns',
    level: judge(['stop', nearest.distance < needed]),
    subject: { featureId: nearest.other.featureId },
    anchor: nearest.other.at,
    field: 'pattern2.clocking',
    title:
      nearest.distance < needed
        ? 'Heads or washers of the two patterns run into each other'
        : 'Heads and washers of the two patterns clear each other',
    says: `Nearest bolts ${facts.format.length(nearest.distance)} apart; their heads or washers need ${facts.format.length(needed)} on one face. Turning one pattern, or another circle, would do.`,
    value: quantity(nearest.distance, 'mm'),
    limit: quantity(needed, 'mm'),
    formula: `${digits(a.half)} + ${digits(b.half)} = ${digits(needed)}`,
    source: weakestSource(a.source, b.source),
  });
  const [outer, inner, innerHalf] =
    first.circle >= second.circle ? [first, second, b.half] : [second, first, a.half];
  const bore = outer.boltedBore?.diameter;
  const reach = inner.circle + 2 * innerHalf;
  if (bore === undefined || reach <= bore) return [beside];
  const at = inner.holes[0];
  return [
    beside,
    found({
      code: 'heads-under-bolted-part',
      level: 'caution',
      ...(at === undefined ? {} : { subject: { featureId: at.featureId }, anchor: at.at }),
      field: `${inner.fieldPrefix}holes`,
      title: `Heads of ${inner.thread.name} lie under the bolted part`,
      says: `They reach ⌀${facts.format.length(reach)}, its bore is ⌀${facts.format.length(bore)}. Countersink them, tap the plate and bolt from the other face, or put a ring spacer between.`,
      value: quantity(reach, 'mm'),
      limit: quantity(bore, 'mm'),
      source: SEAT_SOURCE,
    }),
  ];
}
