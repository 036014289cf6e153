// How far out a disc carrier's own metal turns.
import { boltEnvelope } from '../../handbook/index.js';
import type { ResolvedCarrier } from './resolve.js';

/** How far from the axle metal that turns reaches: lobes, or heads and washers of the disc's bolts, mm. */
export function turningReach(r: ResolvedCarrier): number {
  const envelope = boltEnvelope(r.disc.pattern.thread);
  const head = envelope.found
    ? Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2
    : 0;
  return Math.max(r.outside.reach, r.disc.circle.diameter / 2 + head);
}
