// Which chain it is: every chain of the handbook held against width, roller and twelve pitches.
import { chainElongation, listChains, type Chain } from '../handbook/index.js';

/** A reading and half the width of its range, mm. */
export interface Measured {
  readonly mm: number;
  readonly plusMinus?: number | undefined;
}

export interface ChainReadings {
  readonly innerWidth?: Measured | undefined;
  readonly roller?: Measured | undefined;
  readonly twelvePitches?: Measured | undefined;
}

/** One chain held against the readings. */
export interface Candidate {
  readonly chain: Chain;
  /** Reading less the printed size, mm; absent where nothing was read. */
  readonly offWidth?: number;
  readonly offRoller?: number;
  /** Elongation over twelve pitches that the reading would mean, a share of 1. */
  readonly elongation?: number;
  /** How far all readings are off together, in usual deviations; 0 is the printed size. */
  readonly score: number;
  /** Whether every reading lies where a real chain of this number may. */
  readonly fits: boolean;
}

/**
 * How far real chains and a caliper usually are from the printed size, mm: rollers are printed as the most, widths as
 * the least; common practice.
 */
const USUAL = { width: 0.15, roller: 0.08 } as const;
/** As far as any of that number is. */
const FARTHEST = { width: 0.35, roller: 0.22 } as const;
/** New chain may be short by the pitch tolerance; beyond 4 % the chain would long have jumped. */
const ELONGATION = { least: -0.003, most: 0.04, usual: 0.015 } as const;

/** Readings differ by less than this between chains that no caliper tells apart. */
const ALIKE = 1.2;

/** Deviation from the nearest of the sizes that are printed for the number. */
function offFrom(reading: Measured, printed: readonly number[]): number {
  const offs = printed.map((size) => reading.mm - size).toSorted((a, b) => Math.abs(a) - Math.abs(b));
  return offs[0] ?? 0;
}

function hold(chain: Chain, readings: ChainReadings): Candidate {
  const { innerWidth, roller, twelvePitches } = readings;
  const terms: { readonly share: number; readonly within: boolean }[] = [];
  const size = (off: number, plusMinus: number, usual: number, farthest: number): void => {
    terms.push({
      share: off / Math.hypot(usual, plusMinus),
      within: Math.abs(off) <= farthest + plusMinus,
    });
  };
  const offWidth =
    innerWidth === undefined
      ? undefined
      : offFrom(innerWidth, [chain.innerWidth, ...(chain.otherWidths ?? [])]);
  if (offWidth !== undefined) size(offWidth, innerWidth?.plusMinus ?? 0, USUAL.width, FARTHEST.width);
  const offRoller = roller === undefined ? undefined : roller.mm - chain.roller;
  if (offRoller !== undefined) size(offRoller, roller?.plusMinus ?? 0, USUAL.roller, FARTHEST.roller);
  const elongation = twelvePitches === undefined ? undefined : chainElongation(twelvePitches.mm, chain.pitch);
  if (elongation !== undefined) {
    const doubt = (twelvePitches?.plusMinus ?? 0) / (12 * chain.pitch);
    terms.push({
      share: elongation / Math.hypot(ELONGATION.usual, doubt),
      within: elongation >= ELONGATION.least - doubt && elongation <= ELONGATION.most + doubt,
    });
  }
  return {
    chain,
    ...(offWidth === undefined ? {} : { offWidth }),
    ...(offRoller === undefined ? {} : { offRoller }),
    ...(elongation === undefined ? {} : { elongation }),
    score: Math.hypot(...terms.map(({ share }) => share)),
    fits: terms.length > 0 && terms.every(({ within }) => within),
  };
}

/**
 * Chains of the handbook that the readings may be, the likeliest first. Where none fits, the three nearest.
 *
 * @returns nothing when nothing was read
 * @example rankChains({ innerWidth: { mm: 7.8 }, roller: { mm: 8.5 }, twelvePitches: { mm: 153.2 } })[0] // 08B, 428 next
 */
export function rankChains(readings: ChainReadings): readonly Candidate[] {
  const { innerWidth, roller, twelvePitches } = readings;
  if ([innerWidth, roller, twelvePitches].every((one) => one === undefined)) return [];
  const ranked = listChains()
    .map((chain) => hold(chain, readings))
    .toSorted((a, b) => a.score - b.score);
  const fitting = ranked.filter(({ fits }) => fits);
  return fitting.length > 0 ? fitting : ranked.slice(0, 3);
}

/** Those of the fitting candidates that the readings do not tell from the first. */
export function alikeOf(candidates: readonly Candidate[]): readonly Candidate[] {
  const [first] = candidates;
  return first === undefined || !first.fits
    ? []
    : candidates.filter(({ score }) => score - first.score < ALIKE);
}
