// The table and torch as a record: travel, motion, height sensing; starting values until the shop has timed its own.

import type { Cited, Source } from '../handbook/index.js';

export type MachineField =
  | 'travel'
  | 'rapidSpeed'
  | 'acceleration'
  | 'junctionDeviation'
  | 'probeSeconds'
  | 'transferSeconds'
  | 'dropSeconds'
  | 'retractSeconds'
  | 'squareSide'
  | 'slatPitch';

export interface MachineRecord extends Cited<MachineField> {
  readonly name: string;
  /** True until the shop has entered its own figures. */
  readonly starting: boolean;
  /** Cutting travel, mm. */
  readonly travel: { readonly x: number; readonly y: number };
  /** Rapid speed, mm/min. */
  readonly rapidSpeed: number;
  /** mm/s². */
  readonly acceleration: number;
  /** How far a corner may be rounded to keep moving, mm. */
  readonly junctionDeviation: number;
  /** Finding the plate's height at each pierce. */
  readonly probeSeconds: number;
  /** Arc start to transfer into the plate. */
  readonly transferSeconds: number;
  /** From pierce height down to cut height. */
  readonly dropSeconds: number;
  readonly retractSeconds: number;
  /** Seen from above, the side of travel that the torch cuts square. */
  readonly squareSide: 'right' | 'left';
  /** Distance between slats, mm: smaller parts can tip. */
  readonly slatPitch: number;
}

const remembered = (title: string, where: string): Source => ({ title, where, certainty: 'from memory' });

const motion = remembered('Small-table motion', '0.05 to 0.3 g, rapids 5 to 20 m/min');
const heights = remembered(
  'Height sensing',
  '2 to 4 s a pierce; transfer 0.1–0.4 s; drop 0.1–0.3 s; retract 0.5 s',
);

/** A 4 × 4 ft table with a belt or rack drive, as a place to start. */
export const startingMachine: MachineRecord = {
  name: 'Table, starting values',
  starting: true,
  travel: { x: 1250, y: 1250 },
  rapidSpeed: 10_000,
  acceleration: 1000,
  junctionDeviation: 0.01,
  probeSeconds: 3,
  transferSeconds: 0.25,
  dropSeconds: 0.2,
  retractSeconds: 0.5,
  squareSide: 'right',
  slatPitch: 100,
  source: motion,
  exceptions: {
    travel: { title: 'Table size', where: 'a 4 × 4 ft sheet', certainty: 'common practice' },
    probeSeconds: heights,
    transferSeconds: heights,
    dropSeconds: heights,
    retractSeconds: heights,
    squareSide: {
      title: 'Square side of the cut',
      where:
        'clockwise swirl cuts square on the right of travel; published course and manuals. Some torches reverse it',
      certainty: 'published',
    },
    slatPitch: { title: 'Slat pitch', where: 'about 100 mm', certainty: 'common practice' },
  },
};
