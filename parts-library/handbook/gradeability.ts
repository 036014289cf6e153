// What a vehicle climbs at a steady crawl: by torque, by grip, and where it tips over backwards.

import type { Source } from './source.js';

export const gradeSource: Source = {
  title: 'Grade and rolling resistance',
  where: 'F = m g sin θ + f m g cos θ; mechanics, as in ground-vehicle textbooks',
  certainty: 'published',
};

export const gripGradeSource: Source = {
  title: 'Traction limit on a grade',
  where: 'axle loads by moments about the tyres’ feet, as in ground-vehicle textbooks; steady, no slip',
  certainty: 'published',
};

/** Grades are not told apart beyond 1000 % (84°): that is a wall. A share of 1. */
export const WALL = 10;

/** A grade as an angle: 100 % is 45°. Radians. */
export const slopeOf = (grade: number): number => Math.atan(grade);

/**
 * Force at the tyres that holds a steady crawl up a grade.
 *
 * @param weight m g, N
 * @param grade rise over run, a share of 1
 * @param rolling rolling resistance, a share of the load
 * @returns N
 * @example gradeForce(155.7, Math.tan((2 * Math.PI) / 180), 0.01) // 6.99 (35 lbf up 2°)
 */
export function gradeForce(weight: number, grade: number, rolling: number): number {
  const slope = slopeOf(grade);
  return weight * (Math.sin(slope) + rolling * Math.cos(slope));
}

/**
 * Steepest grade that a force at the tyres climbs, a share of 1; negative when it does not even roll on the level.
 *
 * @returns `WALL` when the force would lift the weight straight up
 * @example gradeByForce(500, 1000, 0) // 0.57735: sin θ = 0.5, 30°
 */
export function gradeByForce(force: number, weight: number, rolling: number): number {
  const friction = Math.atan(rolling);
  const sine = (force * Math.cos(friction)) / weight;
  return sine >= 1 ? WALL : Math.min(Math.tan(Math.asin(sine) - friction), WALL);
}

/** How the driven wheels are loaded. */
export interface DrivenLoad {
  /** Share of the weight on the driven wheels, standing level. */
  readonly share: number;
  /** Height of the mass centre over the wheelbase; 0 when the shift of load on a hill is not counted. */
  readonly height: number;
  readonly axle: 'rear' | 'front' | 'all';
}

/** Uphill the rear wheels gain what the front ones lose; four driven wheels lose nothing together. */
const shiftOf = ({ height, axle }: DrivenLoad): number =>
  axle === 'rear' ? height : axle === 'front' ? -height : 0;

/**
 * Load on the driven wheels on a grade.
 *
 * @param weight m g, N
 * @returns N square to the ground; never more than the weight holds down, never less than nothing
 */
export function drivenLoad(weight: number, grade: number, load: DrivenLoad): number {
  const slope = slopeOf(grade);
  const square = weight * (load.share * Math.cos(slope) + shiftOf(load) * Math.sin(slope));
  return Math.min(Math.max(square, 0), weight * Math.cos(slope));
}

/**
 * Steepest grade that the tyres hold: tan θ = (μ s − f) ÷ (1 ∓ μ h/L), minus for the rear axle, plus for the front.
 *
 * @param grip friction of tyre on ground
 * @param rolling rolling resistance, a share of the load, all of it asked of the driven tyres
 * @returns a share of 1, at most μ − f, where the driven wheels carry everything; negative when they slip on the level
 * @example gradeByGrip(0.6, 0, { share: 1, height: 0, axle: 'all' }) // 0.6: a block slides at tan θ = μ
 */
export function gradeByGrip(grip: number, rolling: number, load: DrivenLoad): number {
  const below = 1 - grip * shiftOf(load);
  const whole = grip - rolling;
  const level = grip * load.share - rolling;
  // What slips on the level never gets to the hill that would load its wheels.
  if (level < 0) return level;
  return below <= 0 ? whole : Math.min(level / below, whole);
}

/**
 * Grade at which the front wheels lift: tan θ = (distance of the mass centre ahead of the rear axle) ÷ height.
 *
 * @param rearShare share of the weight on the rear wheels, standing level
 * @param height height of the mass centre over the wheelbase
 * @example tipBackGrade(0.6, 0.4) // 1: at 100 %
 */
export function tipBackGrade(rearShare: number, height: number): number {
  return (1 - rearShare) / height;
}
