// The reading of the last keystroke, so that the print goes on from it instead of reading the same parameters again.
import {
  canonicalJson,
  requestForRow,
  type Job,
  type Progress,
  type Row,
} from '../../parts-library/job/index.js';

export interface LastReading {
  /** Notes that this row, as it is stored now, was read as this. */
  readonly remember: (job: Job, row: Row, read: Progress) => void;
  /** The reading of a row that says the same as the one remembered, asked for by this row. */
  readonly find: (job: Job, row: Row) => Progress | undefined;
}

/** Everything that the reading stage looks at. */
const keyOf = ({ unit }: Job, { family, name, quantity, parameters }: Row): string =>
  canonicalJson({ unit, family, name, quantity, parameters });

/** Remembers one reading. A stored entry reads back as itself, so rows that say the same have the same reading. */
export function createLastReading(): LastReading {
  let last: { readonly key: string; readonly read: Progress } | undefined;
  return {
    remember: (job, row, read) => {
      last = { key: keyOf(job, row), read };
    },
    find: (job, row) =>
      last?.key === keyOf(job, row) ? { ...last.read, request: requestForRow(job, row) } : undefined,
  };
}
