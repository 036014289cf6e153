// Roller chain by its number: what the chain measures and what it may carry.

import * as data from './chain-data.js';
import { inches, poundsForce } from './inches.js';
import { found, notFound } from './lookup.js';
import type { Lookup } from './lookup.js';
import { sourceOf } from './source.js';
import type { Cited, Source } from './source.js';

export type ChainStandard = 'ANSI B29.1' | 'ISO 606 B' | 'ISO 606 A' | 'small vehicle';

export type ChainField =
  'pitch' | 'roller' | 'innerWidth' | 'pin' | 'plateThickness' | 'plateHeight' | 'tensileNewtons';

/** One single-strand chain, mm and N. A field that no source gives is absent; it is never a sister size's value. */
export interface Chain extends Cited<ChainField> {
  readonly name: string;
  readonly standard: ChainStandard;
  readonly pitch: number;
  /** Roller diameter; the bushing's on 25 and 35, which have no rollers. */
  readonly roller: number;
  /** Between the inner plates. */
  readonly innerWidth: number;
  /** Inner widths that other sources print for this number. */
  readonly otherWidths?: readonly number[];
  readonly pin?: number;
  readonly plateThickness?: number;
  /** Height of the taller (roller link) plate, at most. */
  readonly plateHeight?: number;
  /** Minimum tensile strength. */
  readonly tensileNewtons?: number;
}

const kilonewtons = (value: number): number => Math.round(value * 1000);

function ansi([name, pitch, roller, width, pin, plate, tensile]: data.AnsiRow): Chain {
  return {
    name,
    standard: 'ANSI B29.1',
    pitch: inches(pitch),
    roller: inches(roller),
    innerWidth: inches(width),
    pin: inches(pin),
    plateThickness: inches(plate),
    plateHeight: inches(name === '41' ? 0.39 : 0.95 * pitch),
    tensileNewtons: poundsForce(tensile),
    source: data.ansiChain,
    exceptions: { plateHeight: name === '41' ? data.ansi41PlateHeight : data.ansiPlateHeight },
  };
}

function isoB([name, pitch, roller, innerWidth, pin, plateHeight, tensile]: data.IsoRow): Chain {
  const unseen = data.isoBUnseen.includes(name);
  const tensileUnseen = unseen || data.isoBTensileRemembered.includes(name);
  return {
    name,
    standard: 'ISO 606 B',
    pitch,
    roller,
    innerWidth,
    pin,
    plateHeight,
    tensileNewtons: kilonewtons(tensile),
    source: data.isoB,
    exceptions: {
      ...(unseen ? { pin: data.isoBRemembered, plateHeight: data.isoBRemembered } : {}),
      ...(tensileUnseen ? { tensileNewtons: data.isoBRemembered } : {}),
    },
  };
}

function isoA([name, pitch, roller, innerWidth, pin, plateHeight, tensile]: data.IsoRow): Chain {
  return {
    name,
    standard: 'ISO 606 A',
    pitch,
    roller,
    innerWidth,
    pin,
    plateHeight,
    tensileNewtons: kilonewtons(tensile),
    source: data.isoASeen.includes(name) ? data.isoARead : data.isoA,
    ...(name === '10A' ? { exceptions: { plateHeight: data.isoARead } } : {}),
  };
}

function vehicle([name, pitch, roller, innerWidth]: data.VehicleRow): Chain {
  const others = data.otherWidths[name];
  return {
    name,
    standard: 'small vehicle',
    pitch,
    roller,
    innerWidth,
    ...(others === undefined ? {} : { otherWidths: others }),
    source: data.vehicleChain,
  };
}

const chains: readonly Chain[] = [
  ...data.ansiRows.map(ansi),
  ...data.isoBRows.map(isoB),
  ...data.isoARows.map(isoA),
  ...data.vehicleRows.map(vehicle),
];

/** Every chain known here. */
export function listChains(): readonly Chain[] {
  return chains;
}

/**
 * Find a chain by its number. `08B-1` (one strand) is `08B`; `ANSI 40`, `#40` and `No. 40` are `40`. 40, 08A, 420
 * and 428 are four different chains.
 *
 * @param written the number as stamped on the plates or printed on the box
 * @example findChain('#40') // found: pitch 12.7, roller 7.925, tensile 13 901 N
 */
export function findChain(written: string): Lookup<Chain> {
  const bare = written
    .trim()
    .toUpperCase()
    .replace(/^(ANSI|ASME|ISO|DIN|BS|NO\.?|CHAIN|#)+[\s-]*/g, '')
    .replace(/^#/, '')
    .replace(/\s*CHAIN$/, '')
    .replace(/-1$/, '')
    .trim();
  const chain = chains.find(({ name }) => name === bare);
  if (chain !== undefined) return found(chain);
  return notFound(
    written,
    'chain',
    chains.map(({ name }) => name),
  );
}

const sixth: Source = {
  title: 'Roller chain maker’s technical engineering guide',
  where: 'published: service load at most 1/6 of minimum tensile, never above 1/2 even once',
  certainty: 'published',
};

export interface ServiceLoad {
  /** One sixth of the minimum tensile strength, N: working pull. */
  readonly newtons: number;
  /** One half, N: never, not even once. */
  readonly neverNewtons: number;
  /** Where the strength comes from. */
  readonly strengthSource: Source;
  readonly source: Source;
}

/**
 * The pull a chain may work at: one sixth of its minimum tensile strength.
 *
 * @returns undefined when no source gives the chain's strength
 * @example serviceLoad(chain41)?.newtons // 1112 (250 lbf)
 */
export function serviceLoad(chain: Chain): ServiceLoad | undefined {
  if (chain.tensileNewtons === undefined) return undefined;
  return {
    newtons: chain.tensileNewtons / 6,
    neverNewtons: chain.tensileNewtons / 2,
    strengthSource: sourceOf(chain, 'tensileNewtons'),
    source: sixth,
  };
}
