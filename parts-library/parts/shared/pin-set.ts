// A bolt that something turns on: its shank, its washers, a nut that does not come off.
import { boltLength, type GradeName, type Thread } from '../../handbook/index.js';
import type { Format, HardwareItem } from '../../model/index.js';

export interface PinSet {
  readonly thread: Thread;
  readonly grade: GradeName;
  readonly quantity: number;
  /** What stands between the washers, mm. */
  readonly grip: number;
}

/** Bolt, washers and self-locking nut; nothing for a thread without a nut height in the handbook. */
export function pinSet({ thread, grade, quantity, grip }: PinSet, format: Format): readonly HardwareItem[] {
  const length = boltLength(thread, grip);
  if (!length.found) return [];
  return [
    {
      id: 'pin.bolt',
      kind: 'bolt',
      name: `${thread.name} × ${length.row.name} hexagon bolt, ${grade}`,
      quantity,
      says: `Grip ${format.length(grip)}: plain shank wherever it bears, threads only under the nut.`,
    },
    { id: 'pin.washers', kind: 'washer', name: `washer for ${thread.size}`, quantity: 2 * quantity },
    {
      id: 'pin.nut',
      kind: 'nut',
      name: `${thread.name} self-locking nut`,
      quantity,
      says: 'Tight enough that nothing rattles, loose enough that it turns.',
    },
  ];
}
