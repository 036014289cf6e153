// Levers and pedals: ratio, line pressure, published control forces.

import type { CitedNumber, Source } from './source.js';

/** A lever's moment balance needs no standard; what it is used for does. */
export const leverSource: Source = {
  title: 'Lever: moments about the pivot',
  where: 'ratio = distance of the foot’s line over distance of the rod’s line, both square from the pivot',
  certainty: 'published',
};

/**
 * Pressure in a line from the force on its piston: F / (π/4 d²), MPa. Pistons on a balance bar share the force.
 *
 * @param newtons push on all pistons together
 * @param bore mm
 * @param cylinders that share it
 * @example linePressure(2500, 19.05).value // 8.77: 500 N at 5 to 1 into a 3/4 in bore
 */
export function linePressure(newtons: number, bore: number, cylinders: 1 | 2 = 1): CitedNumber {
  return {
    value: newtons / (cylinders * (Math.PI / 4) * bore * bore),
    source: {
      title: 'Master-cylinder pressure F / (π/4 d²)',
      where: 'two public tables of bores at 100 lbf and 6 to 1, agreeing within 0.1 %',
      certainty: 'published',
    },
  };
}

/** What a pedal is loaded with in a published rule. */
export interface PedalForce {
  readonly rule: string;
  readonly newtons: number;
  readonly use: string;
  readonly source: Source;
}

const pedalForces = {
  proof: {
    rule: 'Formula SAE Rules 2019, T.5.1.10',
    newtons: 2000,
    use: 'brake pedal and pedal box carry it without failure',
    source: {
      title: 'Formula SAE Rules 2019, T.5.1.10',
      where: '2000 N on the brake pedal without failure; public copy, earlier text T7.1.8 the same',
      certainty: 'published',
    },
  },
  performance: {
    rule: 'ECE braking text, secondary brake by foot, category M1',
    newtons: 500,
    use: 'greatest force allowed to reach the performance',
    source: {
      title: 'ECE braking regulation',
      where: 'secondary brake by foot, M1: 500 N; bilingual extract',
      certainty: 'published',
    },
  },
} as const satisfies Record<string, PedalForce>;

/** Proof load of a brake pedal (2000 N), or the foot force that performance is measured at (500 N). */
export const pedalForce = (which: keyof typeof pedalForces): PedalForce => pedalForces[which];

/** Static safety factor on yield that is wanted at the proof load. */
export const pedalFactor: CitedNumber = {
  value: 1.5,
  source: {
    title: 'Pedal at its proof load',
    where: 'factor of at least 1.5 on yield of the net section at 2000 N',
    certainty: 'common practice',
  },
};

/**
 * Greatest height over thickness of an arm that is loaded on edge; beyond it the arm may buckle sideways and wants a
 * flange.
 */
export const slendernessLimit: CitedNumber = {
  value: 8,
  source: {
    title: 'Thin tall arms in bending',
    where: 'height at most 8 thicknesses against lateral-torsional buckling, or a flange',
    certainty: 'from memory',
  },
};

/** Free play of the push rod at rest, mm: least, usual, most. */
export const freePlayRule = {
  least: 0.5,
  usual: 1,
  most: 2,
  source: {
    title: 'Brake pedal rest stop',
    where: 'leaves about 1 mm of push-rod free play, so that the piston comes back past its port',
    certainty: 'common practice',
  } satisfies Source,
} as const;

/** A forward stop on a brake pedal takes the pedal away from the brake. */
export const forwardStopSource: Source = {
  title: 'Brake pedal forward stop',
  where:
    'never acts before the cylinder’s full stroke, reserve included; a working forward stop is a throttle’s',
  certainty: 'common practice',
};

/** Return springs wanted on a throttle, each able to close it alone. */
export const throttleSprings: CitedNumber = {
  value: 2,
  source: {
    title: 'Throttle return springs',
    where: 'two, each able to close the throttle alone, as competition rules ask; not opened',
    certainty: 'from memory',
  },
};

/** Pedal ratios that hand-made brakes without a booster usually have. */
export const usualBrakeRatio = {
  least: 4,
  most: 7,
  source: {
    title: 'Brake pedal ratio without a booster',
    where: 'about 4 to 7 to 1; bore tables are printed for 6 to 1',
    certainty: 'from memory',
  } satisfies Source,
} as const;
