// What turns how fast: ratio, wheel speed, road speed, and what the tyre rolls on.
import { roadSpeed, rollingRadius } from '../handbook/index.js';
import type { Drive } from './parameters.js';

/** The driven tyre, radii in mm. */
export interface Tyre {
  /** Half the outside diameter; absent when only the loaded radius is known. */
  readonly free?: number;
  /** Axle to ground: the arm of the pull. The free radius when the loaded one is not known. */
  readonly loaded: number;
  /** What one turn rolls, over 2π. */
  readonly rolling: number;
  readonly from: 'both' | 'diameter' | 'loaded';
}

/** @returns undefined when neither reading is given */
export function tyreOf({ tyreDiameter, loadedRadius }: Drive): Tyre | undefined {
  const free = tyreDiameter === undefined ? undefined : tyreDiameter.mm / 2;
  const loaded = loadedRadius?.mm;
  if (free !== undefined && loaded !== undefined)
    return { free, loaded, rolling: rollingRadius(free, loaded), from: 'both' };
  if (free !== undefined) return { free, loaded: free, rolling: free, from: 'diameter' };
  return loaded === undefined ? undefined : { loaded, rolling: loaded, from: 'loaded' };
}

export interface Turning {
  /** Wheel sprocket over motor sprocket. */
  readonly chainRatio: number;
  /** Motor turns for one of the wheel. */
  readonly ratio: number;
  /** rpm of the motor's sprocket and of the wheel; absent when no speed is given. */
  readonly sprocketRpm?: number;
  readonly wheelRpm?: number;
  /** Wheel speed that the motor speed gives, where both were given: for comparison. */
  readonly wheelRpmByMotor?: number;
  /** km/h; absent without a tyre or a speed. */
  readonly roadSpeed?: number;
}

/** A wheel speed that was counted goes before one that is worked out. */
export function turningOf(p: Drive, tyre: Tyre | undefined): Turning {
  const chainRatio = p.wheelTeeth / p.motorTeeth;
  const ratio = chainRatio * p.reduction.value;
  const byMotor = p.motorSpeed === undefined ? undefined : p.motorSpeed.value / ratio;
  const wheelRpm = p.wheelSpeed?.value ?? byMotor;
  const both = p.wheelSpeed !== undefined && byMotor !== undefined;
  return {
    chainRatio,
    ratio,
    ...(wheelRpm === undefined ? {} : { wheelRpm, sprocketRpm: wheelRpm * chainRatio }),
    ...(both ? { wheelRpmByMotor: byMotor } : {}),
    ...(wheelRpm === undefined || tyre === undefined
      ? {}
      : { roadSpeed: roadSpeed(wheelRpm, 2 * tyre.rolling) }),
  };
}
