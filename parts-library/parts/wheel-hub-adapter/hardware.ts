// What a wheel-hub adapter takes besides its plate: studs and wheel nuts, nuts or bolts of the hub.
import type { Facts } from '../../checks/index.js';
import { boltLength, findGrade, tighteningTorque } from '../../handbook/index.js';
import type { HardwareItem, Part } from '../../model/index.js';
import { boltItems } from '../shared/bolted.js';
import type { WheelHubAdapter } from './parameters.js';
import { resolveHubAdapter, type ResolvedAdapter } from './resolve.js';

function studItems(p: WheelHubAdapter, r: ResolvedAdapter, { format }: Facts): readonly HardwareItem[] {
  const { thread, count } = r.wheel.pattern;
  const { length, bare, torque } = format;
  const grade = findGrade(p.studGrade, thread);
  const tight = grade.found ? torque(tighteningTorque(thread, grade.row, 'dry').value) : 'by its maker';
  const under = r.flange + p.studLength.mm;
  return [
    {
      id: 'studs',
      kind: 'bolt',
      name:
        p.studs === 'pressed'
          ? `${thread.name} × ${bare(under)} wheel stud, knurl ⌀${bare(p.knurl.mm)}, ${p.studGrade}`
          : `${thread.name} × ${bare(under)} stud, ${p.studGrade}`,
      quantity: count,
      says:
        p.studs === 'pressed'
          ? `${length(under)} under the head, ${length(p.studLength.mm)} out of the seat; longer may be cut off.`
          : `${length(r.flange)} in the plate with locking compound, ${length(p.studLength.mm)} out of the seat.`,
    },
    {
      id: 'wheel.nuts',
      kind: 'nut',
      name: `${thread.name} wheel nut, ${p.seat === 'cone' ? '60° cone' : 'flat seat'}`,
      quantity: count,
      says: `Dry, ${tight} by three quarters of proof; the wheel’s own figure wins where it is lower. Crosswise in three rounds; again after the first hour.`,
    },
  ];
}

function hubItems(p: WheelHubAdapter, r: ResolvedAdapter, { format }: Facts): readonly HardwareItem[] {
  const { thread, count, boltedBy } = r.hub.pattern;
  const grip = r.underNuts - r.cone;
  const flange = p.flangeThickness?.mm ?? thread.diameter;
  const wanted = { id: 'hub', bolt: thread.name, count, grade: p.hubGrade } as const;
  const isWasher = ({ kind }: HardwareItem): boolean => kind === 'washer';
  if (boltedBy !== 'stud') {
    const items = boltItems(
      { ...wanted, ...(boltedBy === 'thread' ? { grip, into: flange } : { grip: grip + flange }) },
      format,
    );
    // A cone sits in its countersink itself: no washer under it.
    return p.hubSeat === 'cone'
      ? items
          .filter((item) => !isWasher(item))
          .map((item) => ({ ...item, name: item.name.replace('hexagon bolt', 'bolt with 60° cone') }))
      : items;
  }
  const size = boltLength(thread, grip);
  const grade = findGrade(p.hubGrade, thread);
  if (!size.found || !grade.found) return [];
  const washer = p.hubSeat === 'flat' ? size.row.washer : 0;
  const out = grip + washer + size.row.nut + 2 * thread.pitch;
  return [
    {
      id: 'hub.nuts',
      kind: 'nut',
      name: `${thread.name} ${p.hubSeat === 'cone' ? 'nut, 60° cone' : 'hexagon locknut'}`,
      quantity: count,
      says: `Grip ${format.length(grip)}; dry, ${format.torque(tighteningTorque(thread, grade.row, 'dry').value)}. The hub’s studs stand at least ${format.length(out)} out of its face.`,
    },
    ...(p.hubSeat === 'flat'
      ? [
          {
            id: 'hub.washers',
            kind: 'washer' as const,
            name: `washer for ${thread.size}`,
            quantity: count,
          },
        ]
      : []),
  ];
}

export function wheelHubAdapterHardware(
  _part: Part,
  p: WheelHubAdapter,
  facts: Facts,
): readonly HardwareItem[] {
  const answer = resolveHubAdapter(p);
  return answer.ok ? [...studItems(p, answer.value, facts), ...hubItems(p, answer.value, facts)] : [];
}
