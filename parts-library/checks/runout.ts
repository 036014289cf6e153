// Runout at the rim of a disc or wheel: what a seat that is out by little on a small circle becomes out there.
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

const LEVER: Source = {
  title: 'Runout grows with the radius',
  where: 'seat error × rim ÷ seat circle, worst places together; measured with a dial indicator, one turn',
  certainty: 'common practice',
};

export interface RunoutInput {
  /** What turns, in a sentence: `disc` or `wheel`. */
  readonly what: 'disc' | 'wheel';
  /** Diameter at which the limit is read, mm. */
  readonly rim: number;
  /** Limit at the rim, full indicator reading, mm. */
  readonly limit: number;
  /** Flatness and parallelism of the machined seat and the circle it bears on, mm. */
  readonly seat: { readonly error: number; readonly circle: number };
  /** The hub's own face, as measured, and the circle on which it was read, mm. */
  readonly hub: { readonly error: number | undefined; readonly circle: number };
}

/**
 * Full indicator reading at the rim, mm: each seat's error times rim over its circle.
 *
 * @example runoutAtRim({ what: 'disc', rim: 240, limit: 0.2, seat: { error: 0.05, circle: 160 }, hub: { error: 0.02, circle: 60 } }) // 0.075 + 0.08 = 0.155
 */
export function runoutAtRim({ rim, seat, hub }: RunoutInput): number {
  return (seat.error * rim) / seat.circle + ((hub.error ?? 0) * rim) / hub.circle;
}

/** Judges what flatness of the seats makes at the rim; says what is missing when the hub was not measured. */
export function checkRunout(input: RunoutInput, facts: Facts): readonly Finding[] {
  const { what, rim, limit, seat, hub } = input;
  const reaches = runoutAtRim(input);
  const format = facts.format.length;
  const level = judge(['caution', reaches > limit + 1e-9]);
  const missing: readonly Finding[] =
    hub.error === undefined
      ? [
          found({
            code: 'not-checked',
            level: 'note',
            field: 'hubRunout',
            title: 'runout of the hub’s own face',
            says: `Put a dial indicator on the hub’s face near its bolts and turn it once: what it shows grows ${digits(rim / hub.circle, 1)} times to the ${what}’s rim.`,
            source: LEVER,
          }),
        ]
      : [];
  return [
    found({
      code: 'runout',
      level,
      field: level === 'pass' ? 'runout' : 'flatness',
      title: `Runout at ⌀${format(rim)} up to ${format(reaches)}, ${format(limit)} allowed`,
      says:
        level === 'pass'
          ? `From flatness of the seats${hub.error === undefined ? '; the hub’s own face counts as true' : ' and the hub’s own face'}.`
          : 'A finer flatness, truing the hub’s face, or a wider seat would do; shims under a seat do not.',
      value: quantity(reaches, 'mm'),
      limit: quantity(limit, 'mm'),
      formula: `${digits(seat.error, 3)} × ${digits(rim)} ÷ ${digits(seat.circle)}${hub.error === undefined ? '' : ` + ${digits(hub.error, 3)} × ${digits(rim)} ÷ ${digits(hub.circle)}`} = ${digits(reaches, 3)}`,
      source: LEVER,
    }),
    ...missing,
  ];
}
