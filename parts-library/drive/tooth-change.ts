// What another tooth count does, on either sprocket: speed, pull, centres, links, and whether it still climbs.
import { centreDistance, chainLength, wrapDegrees } from '../handbook/index.js';
import type { ChainChoice } from './chain-choice.js';
import { hillOf } from './hill.js';
import type { Line } from './line.js';
import type { Drive } from './parameters.js';
import { pullOf } from './pull.js';
import { otherTeeth } from './read.js';
import { TEETH } from './sprocket-fields.js';
import { turningOf, type Tyre } from './turning.js';

export interface ToothChange {
  readonly motorTeeth: number;
  readonly wheelTeeth: number;
  readonly chainRatio: number;
  /** Of the speed before, a share of 1; the pull at the ground is its inverse. */
  readonly speed: number;
  /** km/h; absent where it is not known before. */
  readonly roadSpeed?: number;
  /** Pull at the ground, N. */
  readonly groundNewtons?: number;
  readonly chainNewtons?: number;
  readonly safety?: number;
  /** With the same links: centres, and how far they move. Absent when that chain does not go round. */
  readonly sameLinks?: { readonly centres: number; readonly moves: number };
  /** With the same centres: the nearest even count, and the centres at which it is straight. */
  readonly sameCentres?: { readonly links: number; readonly centres: number };
  readonly wrapSmall?: number;
  /** By torque and by grip, whichever are known; absent when neither is, or no grade is given. */
  readonly climbs?: boolean;
}

/** Everything that a change is compared with. */
export interface Before {
  readonly p: Drive;
  readonly tyre: Tyre | undefined;
  readonly choice: ChainChoice | undefined;
  readonly line: Line | undefined;
}

function lineAfter(
  motorTeeth: number,
  wheelTeeth: number,
  { pitch, links, mounted, centres }: Line,
): Pick<ToothChange, 'sameLinks' | 'sameCentres' | 'wrapSmall'> {
  const small = Math.min(motorTeeth, wheelTeeth);
  const large = Math.max(motorTeeth, wheelTeeth);
  const same = centreDistance(small, large, links);
  const length = chainLength(small, large, mounted / pitch);
  const even = length === undefined ? undefined : 2 * Math.round(length / 2);
  const then = even === undefined ? undefined : centreDistance(small, large, even);
  const wrap = wrapDegrees(small, large, mounted / pitch);
  return {
    ...(same === undefined ? {} : { sameLinks: { centres: same * pitch, moves: same * pitch - centres } }),
    ...(even === undefined || then === undefined
      ? {}
      : { sameCentres: { links: even, centres: then * pitch } }),
    ...(wrap === undefined ? {} : { wrapSmall: wrap }),
  };
}

function changeTo({ p, tyre, choice, line }: Before, motorTeeth: number, wheelTeeth: number): ToothChange {
  // A counted wheel speed belongs to the sprockets that were on when it was counted; the motor turns as before.
  const motorRpm =
    p.wheelSpeed === undefined
      ? p.motorSpeed
      : { typed: '', value: (p.wheelSpeed.value * p.reduction.value * p.wheelTeeth) / p.motorTeeth };
  const next: Drive = { ...p, motorTeeth, wheelTeeth, motorSpeed: motorRpm, wheelSpeed: undefined };
  const turning = turningOf(next, tyre);
  const pull = pullOf(next, turning, tyre, choice);
  const hill = hillOf(next, pull);
  const limits = [hill?.gradeByTorque, hill?.gradeByGrip].flatMap((limit) => limit ?? []);
  return {
    motorTeeth,
    wheelTeeth,
    chainRatio: turning.chainRatio,
    speed: p.wheelTeeth / p.motorTeeth / turning.chainRatio,
    ...(turning.roadSpeed === undefined ? {} : { roadSpeed: turning.roadSpeed }),
    ...(pull?.groundNewtons === undefined ? {} : { groundNewtons: pull.groundNewtons }),
    ...(pull?.chainNewtons === undefined ? {} : { chainNewtons: pull.chainNewtons }),
    ...(pull?.safety === undefined ? {} : { safety: pull.safety }),
    ...(line === undefined ? {} : lineAfter(motorTeeth, wheelTeeth, line)),
    ...(hill?.asked === undefined || limits.length === 0
      ? {}
      : { climbs: Math.min(...limits) >= hill.asked.grade }),
  };
}

/** One and two teeth either way on the motor, two and four on the wheel: what a shop tries first. */
const NEAR = { motor: [-2, -1, 1, 2], wheel: [-4, -2, 2, 4] } as const;

const near = (teeth: number, steps: readonly number[]): readonly number[] =>
  steps.map((step) => teeth + step).filter((one) => one >= TEETH.least && one <= TEETH.most);

/**
 * The changes worth comparing: those asked for, else the near ones; every pair where both lists were given. The drive
 * as it is comes first.
 */
export function toothChanges(before: Before): readonly ToothChange[] {
  const { p } = before;
  const asked = otherTeeth(p);
  const none = asked.motor.length + asked.wheel.length === 0;
  const motors = none ? near(p.motorTeeth, NEAR.motor) : asked.motor;
  const wheels = none ? near(p.wheelTeeth, NEAR.wheel) : asked.wheel;
  const pairs: readonly (readonly [number, number])[] = [
    [p.motorTeeth, p.wheelTeeth],
    ...motors.map((motor) => [motor, p.wheelTeeth] as const),
    ...wheels.map((wheel) => [p.motorTeeth, wheel] as const),
    ...(none ? [] : motors.flatMap((motor) => wheels.map((wheel) => [motor, wheel] as const))),
  ];
  const seen = new Set<string>();
  return pairs
    .filter(([motor, wheel]) => {
      const key = `${motor}/${wheel}`;
      return seen.has(key) ? false : seen.add(key) !== undefined;
    })
    .map(([motor, wheel]) => changeTo(before, motor, wheel));
}
