// Room for what stands still round what turns: caliper over the carrier, rim over the caliper.
import type { Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** Room between what turns and what stands still, mm: play of bearings, flex of rim and stones count. */
const LEAST_ROOM = 3;

const SWING: Source = {
  title: 'Room between turning and standing parts',
  where: '3 mm or more, measured at the nearest point through a whole turn',
  certainty: 'common practice',
};

export interface SwingInput {
  readonly code: 'caliper-room' | 'rim-room';
  readonly field: string;
  /** The outer of the two, and the inner, in a sentence. */
  readonly outer: string;
  readonly inner: string;
  /** Radii from the axle, mm. */
  readonly outerRadius: number;
  readonly innerRadius: number;
}

/** Judges one gap between two radii: below nothing is a stop, below 3 mm a caution. */
export function checkSwingRoom(input: SwingInput, facts: Facts): readonly Finding[] {
  const { outer, inner, outerRadius, innerRadius } = input;
  const room = outerRadius - innerRadius;
  const level = judge(['stop', room <= 0], ['caution', room < LEAST_ROOM]);
  const format = facts.format.length;
  return [
    found({
      code: input.code,
      level,
      anchor: { x: innerRadius * Math.SQRT1_2, y: innerRadius * Math.SQRT1_2 },
      field: input.field,
      title:
        room <= 0
          ? `${inner} runs into ${outer} by ${format(-room)}`
          : `${format(room)} between ${inner} and ${outer}, ${format(LEAST_ROOM)} wanted`,
      says:
        level === 'pass'
          ? 'Turn it by hand once before it is driven.'
          : 'Measure the nearest point from the axle again; a smaller outside, another caliper place, or another rim would do.',
      value: quantity(room, 'mm'),
      limit: quantity(LEAST_ROOM, 'mm'),
      formula: `${digits(outerRadius)} − ${digits(innerRadius)} = ${digits(room)}`,
      source: SWING,
    }),
  ];
}
