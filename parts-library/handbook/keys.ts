// Keys and keyways: the size for a shaft, the depths to cut, and the stress that a torque puts in.

import { inches } from './inches.js';
import * as data from './key-data.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import type { Source } from './source.js';

/** A key and its seats, mm. */
export interface Key {
  /** `8 x 7`, `1/4 in square`. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Depth in the shaft below its surface. */
  readonly shaftDepth: number;
  /** Depth in the hub above the bore: bore + this is what a caliper reads across bore and keyway. */
  readonly hubDepth: number;
  /** Plus tolerance of the depths. */
  readonly depthPlus: number;
  readonly source: Source;
}

/** Clearance over a B17.1 key, inches. */
const inchClearance = 0.005;

/**
 * Keyseat control of a square key, ASME B17.1: S from the keyseat's floor to the far side of the shaft,
 * T from the hub's keyway floor to the far side of the bore, mm.
 *
 * @param shaft mm
 * @param width key width, mm
 * @param height key height, mm
 * @example keyseatControl(25.4, 6.35, 6.35) // S 21.82 (0.859 in), T 28.30 (1.114 in)
 */
export function keyseatControl(
  shaft: number,
  width: number,
  height: number,
): { readonly S: number; readonly T: number; readonly source: Source } {
  const S = (shaft - height + Math.sqrt(shaft * shaft - width * width)) / 2;
  return { S, T: S + height + inches(inchClearance), source: data.b171 };
}

const fractions: Readonly<Record<string, string>> = {
  [3 / 32]: '3/32',
  [1 / 8]: '1/8',
  [3 / 16]: '3/16',
  [1 / 4]: '1/4',
  [5 / 16]: '5/16',
  [3 / 8]: '3/8',
  [1 / 2]: '1/2',
  [5 / 8]: '5/8',
};

function metricKey(shaft: number): Key | undefined {
  const row = data.metricKeys.find(([over, upTo]) => shaft > over && shaft <= upTo);
  if (row === undefined) return undefined;
  const [, , width, height, shaftDepth, hubDepth, depthPlus] = row;
  return {
    name: `${width} x ${height}`,
    width,
    height,
    shaftDepth,
    hubDepth,
    depthPlus,
    source: data.din6885,
  };
}

function inchKey(shaft: number): Key | undefined {
  const row = data.inchKeys.find(([over, upTo]) => shaft > inches(over) && shaft <= inches(upTo));
  if (row === undefined) return undefined;
  const [, , size] = row;
  const width = inches(size);
  const { S, T } = keyseatControl(shaft, width, width);
  return {
    name: `${fractions[size] ?? size} in square`,
    width,
    height: width,
    shaftDepth: shaft - S,
    hubDepth: T - shaft,
    depthPlus: inches(0.01),
    source: data.b171,
  };
}

/**
 * The key for a shaft: DIN 6885-1 for metric, a square ASME B17.1 key for inch.
 *
 * @param shaft diameter, mm
 * @param system which table
 * @returns the key, or the range of shafts that have one
 * @example findKey(25, 'metric') // found: 8 x 7, hub depth 3.3
 */
export function findKey(shaft: number, system: 'metric' | 'inch'): Lookup<Key> {
  const key = system === 'metric' ? metricKey(shaft) : inchKey(shaft);
  if (key !== undefined) return found(key);
  return notFound(`${shaft} mm`, `${system} key for a shaft of`, [
    system === 'metric' ? 'shafts over 6 to 58 mm' : 'shafts over 5/16 to 2 3/4 in',
  ]);
}

export interface KeyStress {
  /** 2 T/(D w L), MPa. */
  readonly shear: number;
  /** 4 T/(D h L) on the half height that the shaft or hub holds, MPa. */
  readonly crushing: number;
  readonly source: Source;
}

/**
 * Stress in a key, MPa.
 *
 * @param newtonMetres torque
 * @param shaft diameter, mm
 * @param key its width and height, mm
 * @param length bearing length, mm: in a plate no more than the plate's thickness
 * @example keyStress(112.985, 19.05, {width: 4.7625, height: 4.7625}, 38.1) // shear 65.4, crushing 130.7 MPa
 */
export function keyStress(
  newtonMetres: number,
  shaft: number,
  key: { readonly width: number; readonly height: number },
  length: number,
): KeyStress {
  const force = (2000 * newtonMetres) / shaft;
  return {
    shear: force / (key.width * length),
    crushing: (2 * force) / (key.height * length),
    source: {
      title: 'Key stress',
      where: 'shear 2T/(D w L), crushing 4T/(D h L), machine design textbooks',
      certainty: 'common practice',
    },
  };
}
