// Whether it climbs: what the hill asks for, what the motor gives, what the tyres hold. N, shares of 1.
import {
  drivenLoad,
  findGround,
  gradeByForce,
  gradeByGrip,
  gradeForce,
  slopeOf,
  tipBackGrade,
  type DrivenLoad,
} from '../handbook/index.js';
import { digits } from '../checks/index.js';
import { STANDARD_GRAVITY } from '../units/index.js';
import type { Drive } from './parameters.js';
import type { Pull } from './pull.js';
import { mm } from './words.js';

export interface Hill {
  /** m g, N. */
  readonly weight: number;
  readonly rolling: number;
  readonly grip: number;
  /** Share of the weight on the driven wheels, level; absent when it is not given. */
  readonly share?: number;
  /** Steepest grade by the greatest torque; absent without torque or tyre. */
  readonly gradeByTorque?: number;
  readonly gradeBySteadyTorque?: number;
  /** Steepest grade by grip; absent when the load on the driven wheels is not known. */
  readonly gradeByGrip?: number;
  /** Where the front wheels lift; absent without wheelbase, height and the load on the rear. */
  readonly tipsAt?: number;
  /** What the grade asked for takes; absent without a grade. */
  readonly asked?: {
    readonly grade: number;
    /** Up it at a steady crawl. */
    readonly newtons: number;
    /** Held still on it, by brake or motor: the grade alone. */
    readonly holdNewtons: number;
    /** What the driven tyres hold there; absent when the load on them is not known. */
    readonly gripNewtons?: number;
    /** Load on the driven wheels there, N. */
    readonly drivenNewtons?: number;
  };
}

/** How the weight lies on the driven wheels; undefined when that was not weighed. */
function loadOf(p: Drive, mass: number): DrivenLoad | undefined {
  const share =
    p.drivenAxle === 'all' ? 1 : p.drivenMass === undefined ? undefined : p.drivenMass.value / mass;
  if (share === undefined) return undefined;
  const { wheelbase, massHeight } = p;
  const height = wheelbase === undefined || massHeight === undefined ? 0 : massHeight.mm / wheelbase.mm;
  return { share, axle: p.drivenAxle, height };
}

/** @returns undefined without a mass */
export function hillOf(p: Drive, pull: Pull | undefined): Hill | undefined {
  if (p.mass === undefined) return undefined;
  const weight = p.mass.value * STANDARD_GRAVITY;
  const ground = findGround(p.ground);
  const rolling = p.rolling === undefined ? (ground?.rolling ?? 0) : p.rolling.value / 100;
  const grip = p.grip?.value ?? ground?.grip ?? 0;
  const load = loadOf(p, p.mass.value);
  const rearShare =
    load === undefined || load.axle === 'all'
      ? undefined
      : load.axle === 'rear'
        ? load.share
        : 1 - load.share;
  const grade = p.grade === undefined ? undefined : p.grade.value / 100;
  const drivenNewtons =
    grade === undefined || load === undefined ? undefined : drivenLoad(weight, grade, load);
  return {
    weight,
    rolling,
    grip,
    ...(load === undefined ? {} : { share: load.share, gradeByGrip: gradeByGrip(grip, rolling, load) }),
    ...(pull?.groundNewtons === undefined
      ? {}
      : { gradeByTorque: gradeByForce(pull.groundNewtons, weight, rolling) }),
    ...(pull?.steadyGroundNewtons === undefined
      ? {}
      : { gradeBySteadyTorque: gradeByForce(pull.steadyGroundNewtons, weight, rolling) }),
    ...(load === undefined || load.height === 0 || rearShare === undefined
      ? {}
      : { tipsAt: tipBackGrade(rearShare, load.height) }),
    ...(grade === undefined
      ? {}
      : {
          asked: {
            grade,
            newtons: gradeForce(weight, grade, rolling),
            holdNewtons: weight * Math.sin(slopeOf(grade)),
            ...(drivenNewtons === undefined ? {} : { drivenNewtons, gripNewtons: grip * drivenNewtons }),
          },
        }),
  };
}

/** The grade at which the front wheels lift, with its numbers in it. */
export function tipFormula(
  { drivenAxle, wheelbase, massHeight }: Drive,
  { share = 0, tipsAt = 0 }: Hill,
): string {
  const front = drivenAxle === 'rear' ? 1 - share : share;
  return `${mm(wheelbase?.mm ?? 0)} mm × ${digits(front, 3)} of the weight in front ÷ ${mm(massHeight?.mm ?? 0)} mm = ${digits(tipsAt, 3)}`;
}
