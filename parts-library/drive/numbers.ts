// The numbers of a drive put together: figures, judgements, other sprockets. One pure function from what was read.
import { checkUse, mergeNotChecked } from '../checks/index.js';
import { sortFindings, type Finding, type Format } from '../model/index.js';
import { workOut } from './answer.js';
import { checkChain } from './check-chain.js';
import { checkHill } from './check-hill.js';
import { checkLine } from './check-line.js';
import { checkPull } from './check-pull.js';
import { checkTurning } from './check-turning.js';
import type { ChainStandard } from '../handbook/index.js';
import type { Figure } from './figure.js';
import { figuresOf } from './figures.js';
import type { LinkChoice } from './line.js';
import type { Drive } from './parameters.js';
import type { ToothChange } from './tooth-change.js';
import { createWords } from './words.js';

/** A chain that the readings may be, sizes in mm. */
export interface ChainCandidate {
  readonly name: string;
  readonly standard: ChainStandard;
  readonly pitch: number;
  readonly roller: number;
  readonly innerWidth: number;
  readonly tensileNewtons?: number;
  /** Reading less the printed size, mm. */
  readonly offWidth?: number;
  readonly offRoller?: number;
  /** %, below 0 when shorter than new. */
  readonly wearPercent?: number;
  readonly fits: boolean;
}

/** Where the chain runs, for a picture to scale; mm. */
export interface DrivePicture {
  readonly pitch: number;
  readonly motorTeeth: number;
  readonly wheelTeeth: number;
  readonly centres: number;
  readonly links: number;
  readonly sag: number;
}

/** What follows from a drive. Plain JSON: lengths mm, N, N·m, km/h, m/s. */
export interface DriveNumbers {
  /** The chain that was counted with. */
  readonly chain?: { readonly name: string; readonly from: 'name' | 'readings' };
  readonly candidates: readonly ChainCandidate[];
  readonly figures: readonly Figure[];
  /** Even counts around the exact length, and the odd one between. */
  readonly linkChoices: readonly LinkChoice[];
  /** Other tooth counts; the drive as it is comes first. */
  readonly changes: readonly ToothChange[];
  /** Worst first. */
  readonly findings: readonly Finding[];
  readonly picture?: DrivePicture;
}

/** The usual caution. It names no field: a drive is a drive. */
const useCaution = (): readonly Finding[] =>
  checkUse('drive').map(({ code, level, stage, subject, title, says, source }) => ({
    code,
    level,
    stage,
    subject,
    title,
    says,
    source,
  }));

/**
 * The numbers of a drive.
 *
 * @param p as read by `readDrive`
 * @param format how the job words lengths and forces
 * @example 12 to 48 teeth at 1500 rpm on a 406 mm tyre: ratio 4, 375 rpm, 28.7 km/h
 */
export function driveNumbers(p: Drive, format: Format): DriveNumbers {
  const worked = workOut(p);
  const words = createWords(format);
  const { choice, line, candidates, changes } = worked;
  return {
    ...(choice === undefined ? {} : { chain: { name: choice.chain.name, from: choice.from } }),
    candidates: candidates.map(({ chain, offWidth, offRoller, elongation, fits }) => ({
      name: chain.name,
      standard: chain.standard,
      pitch: chain.pitch,
      roller: chain.roller,
      innerWidth: chain.innerWidth,
      ...(chain.tensileNewtons === undefined ? {} : { tensileNewtons: chain.tensileNewtons }),
      ...(offWidth === undefined ? {} : { offWidth }),
      ...(offRoller === undefined ? {} : { offRoller }),
      ...(elongation === undefined ? {} : { wearPercent: elongation * 100 }),
      fits,
    })),
    figures: figuresOf(worked, words),
    linkChoices: line?.choices ?? [],
    changes,
    findings: sortFindings(
      mergeNotChecked([
        ...useCaution(),
        ...checkChain(worked, words),
        ...checkTurning(worked, words),
        ...checkLine(worked, words),
        ...checkPull(worked, words),
        ...checkHill(worked, words),
      ]),
    ),
    ...(line === undefined
      ? {}
      : {
          picture: {
            pitch: line.pitch,
            motorTeeth: p.motorTeeth,
            wheelTeeth: p.wheelTeeth,
            centres: line.mounted,
            links: line.links,
            sag: line.slack === undefined ? 0 : Math.max(line.slack.sag, 0),
          },
        }),
  };
}
