// Room beside the hub and its weld: for the bolted part's bore, and for head, washer and socket of each bolt.
import { boltEnvelope, weakestSource, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
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
  const needed = beside.hub + 2 * beside.leg + SEAT_CLEARANCE;
  const place = { code: 'seat', field: `${pattern.fieldPrefix}boltedBore`, source: SEAT_SOURCE } as const;
  if (pattern.boltedBore === undefined) {
    return [
      found({
        ...place,
        level: 'note',
        title: 'Bore of the bolted part not given',
        says: `On the face where it seats it must clear hub and weld: at least ⌀${facts.format.length(needed)} over a fillet of ${facts.format.length(beside.leg)}.`,
        limit: quantity(needed, 'mm'),
      }),
    ];
  }
  const bore = pattern.boltedBore.diameter - pattern.boltedBore.plusMinus;
  const clearsWeld = bore >= needed;
  const clearsHub = bore >= beside.hub;
  const level = judge(
    ['pass', clearsWeld],
    ['caution', beside.sides === 'one' && clearsHub],
    ['stop', beside.sides === 'both'],
    ['caution', true],
  );
  return [
    found({
      ...place,
      level,
      anchor: { x: -beside.hub / 2 - beside.leg / 2, y: 0 },
      title: clearsWeld
        ? `Bolted part seats clear of hub and weld, ${facts.format.length(bore - needed + SEAT_CLEARANCE)} to spare on diameter`
        : `Bolted part’s bore ⌀${facts.format.length(pattern.boltedBore.diameter)} sits on the weld`,
      says: clearsWeld
        ? 'Counted on the face where it seats.'
        : clearsHub
          ? `It passes over the hub but not over a fillet of ${facts.format.length(beside.leg)} on the seating face. Weld the far face only, chamfer the bolted bore, or put a ring spacer between.`
          : 'It does not pass over the hub either: let the hub end flush with the seating face and weld the far face only.',
      value: quantity(pattern.boltedBore.diameter, 'mm', pattern.boltedBore.plusMinus),
      limit: quantity(needed, 'mm'),
      formula: `${digits(beside.hub)} + 2 × ${digits(beside.leg)} + ${SEAT_CLEARANCE} = ${digits(needed)}`,
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
  const pitch = Math.min(
    ...pattern.holes.map((hole, index) => {
      const next = pattern.holes[(index + 1) % pattern.holes.length] ?? first;
      return Math.hypot(next.at.x - hole.at.x, next.at.y - hole.at.y);
    }),
  );
  const rooms = [
    ...(beside === undefined
      ? []
      : [
          {
            code: 'head-room-hub',
            what: 'the hub and its weld',
            room: Math.hypot(first.at.x, first.at.y) - beside.hub / 2 - beside.leg,
            field: 'hub',
          },
        ]),
    {
      code: 'head-room-neighbour',
      what: 'the neighbouring bolt',
      room: pitch - acrossCorners.value / 2,
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
