// The etched label of a blank: off heads and washers, and gone once the faces are machined.
import { found } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { ResolvedPattern } from './pattern.js';

/** Asks of a point whether it lies outside every head and washer of the patterns. */
export function clearOfHeads(patterns: readonly ResolvedPattern[]): (point: Point) => boolean {
  const seats = patterns.flatMap(({ pattern }) => {
    const envelope = boltEnvelope(pattern.thread);
    const reach = envelope.found
      ? Math.max(envelope.row.acrossCorners.value, envelope.row.washerOutside.value) / 2
      : pattern.thread.diameter;
    return pattern.holes.map(({ at }) => ({ at, reach }));
  });
  return ({ x, y }) => seats.every(({ at, reach }) => Math.hypot(at.x - x, at.y - y) >= reach);
}

/** Said when a label is etched on a face that will be machined. */
export const labelIsFaced = (label: string | undefined): readonly Finding[] =>
  label === undefined || label === ''
    ? []
    : [
        found({
          code: 'label-faced',
          level: 'note',
          field: 'label',
          title: `The label “${label}” goes when the face is machined`,
          says: 'It tells blanks apart until then; stamp or engrave the finished part on its edge.',
          source: { title: 'Marking', where: 'on faces that stay', certainty: 'common practice' },
        }),
      ];
