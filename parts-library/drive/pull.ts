// What pulls: torque at sprocket and wheel, pull of the chain, pull at the ground. N, N·m, m/s, W.
import { pitchDiameter } from '../handbook/index.js';
import { tensileOf, type ChainChoice } from './chain-choice.js';
import type { Drive } from './parameters.js';
import type { Turning, Tyre } from './turning.js';

export interface Pull {
  /** At the motor's sprocket, nothing lost: what the chain must stand. */
  readonly sprocketTorque: number;
  /** At the wheel, losses taken off. */
  readonly wheelTorque: number;
  /** At the ground, from the loaded radius; absent without a tyre. */
  readonly groundNewtons?: number;
  /** The same from the steady torque, where that is given. */
  readonly steadyGroundNewtons?: number;
  /** Chain pull F = 2 T / PD; absent without a chain. */
  readonly chainNewtons?: number;
  /** Tensile strength over pull; absent where no source gives the strength. */
  readonly safety?: number;
}

/** @returns undefined when no torque is given */
export function pullOf(
  p: Drive,
  turning: Turning,
  tyre: Tyre | undefined,
  choice: ChainChoice | undefined,
): Pull | undefined {
  if (p.motorTorque === undefined) return undefined;
  const efficiency = p.efficiency.value / 100;
  const sprocketTorque = p.motorTorque.value * p.reduction.value;
  const atGround = (motorTorque: number, { loaded }: Tyre): number =>
    (1000 * motorTorque * turning.ratio * efficiency) / loaded;
  const chainNewtons =
    choice === undefined
      ? undefined
      : (2000 * sprocketTorque) / pitchDiameter(choice.chain.pitch, p.motorTeeth);
  const strength = tensileOf(choice);
  return {
    sprocketTorque,
    wheelTorque: p.motorTorque.value * turning.ratio * efficiency,
    ...(tyre === undefined ? {} : { groundNewtons: atGround(p.motorTorque.value, tyre) }),
    ...(tyre === undefined || p.steadyTorque === undefined
      ? {}
      : { steadyGroundNewtons: atGround(p.steadyTorque.value, tyre) }),
    ...(chainNewtons === undefined ? {} : { chainNewtons }),
    ...(chainNewtons === undefined || strength === undefined ? {} : { safety: strength / chainNewtons }),
  };
}

/**
 * Speed of the chain: p n rpm / 60.
 * @returns m/s; undefined when no speed or no chain is given
 */
export function chainSpeedOf(
  p: Drive,
  turning: Turning,
  choice: ChainChoice | undefined,
): number | undefined {
  return choice === undefined || turning.sprocketRpm === undefined
    ? undefined
    : (choice.chain.pitch * p.motorTeeth * turning.sprocketRpm) / 60_000;
}
