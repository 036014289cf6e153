// The reading of the last keystroke, so that the print goes on from it instead of reading the same parameters again.
import { requestForRow, type Job, type Progress, type Row } from '../../parts-library/job/index.js';

export interface LastReading {
  /** Notes that this row, as the job now holds it, was read as this. */
  readonly remember: (job: Job, row: Row, read: Progress) => void;
  /** The reading of that very row of the job in the same unit; undefined for any other. */
  readonly find: (job: Job, row: Row) => Progress | undefined;
}

/** Remembers one reading. A stored entry reads back as itself, so the row has the reading it was stored from. */
export function createLastReading(): LastReading {
  let last: { readonly row: Row; readonly unit: Job['unit']; readonly read: Progress } | undefined;
  return {
    remember: ({ unit }, row, read) => {
      last = { row, unit, read };
    },
    find: (job, row) =>
      last?.row === row && last.unit === job.unit
        ? { ...last.read, request: requestForRow(job, row) }
        : undefined,
  };
}
