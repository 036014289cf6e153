// What two versions of a job differ in, worded for a person who has to choose between them.
import { findFamily } from '../../parts-library/parts/index.js';
import type { Job, Row } from '../../parts-library/job/index.js';
import { fieldText } from '../list/field-text.js';
import { isObject, plainText, valueAt } from '../state/values.js';

export interface Difference {
  readonly what: string;
  readonly mine: string;
  readonly theirs: string;
}

const ABSENT = 'not given';

function rowDifferences(
  mine: Row,
  theirs: Row,
  mineUnit: Job['unit'],
  theirUnit: Job['unit'],
): readonly Difference[] {
  const fields = findFamily(mine.family)?.fields ?? [];
  const plain: readonly Difference[] = [
    { what: `Name of ${mine.name}`, mine: mine.name, theirs: theirs.name },
    { what: `${mine.name}: quantity`, mine: String(mine.quantity), theirs: String(theirs.quantity) },
  ];
  const entries = fields
    .filter((field) => field.kind !== 'group')
    .map((field): Difference => {
      const text = (row: Row, unit: Job['unit']): string =>
        fieldText(field, valueAt(row.parameters, field.path), unit) || ABSENT;
      return {
        what: `${mine.name}: ${field.title.toLowerCase()}`,
        mine: text(mine, mineUnit),
        theirs: text(theirs, theirUnit),
      };
    });
  return [...plain, ...entries];
}

/** An entry of the drive as it was typed; its fields are fetched only with its sheet. */
function driveText(job: Job, name: string): string {
  const value = job.drive?.[name];
  return plainText(isObject(value) ? value['typed'] : value) || ABSENT;
}

function driveDifferences(mine: Job, theirs: Job): readonly Difference[] {
  const names = new Set([...Object.keys(mine.drive ?? {}), ...Object.keys(theirs.drive ?? {})]);
  return [...names].map((name) => ({
    what: `Drive: ${name.replaceAll(/[A-Z]/g, (capital) => ` ${capital.toLowerCase()}`)}`,
    mine: driveText(mine, name),
    theirs: driveText(theirs, name),
  }));
}

/** Everything that differs, one line each; empty when the two say the same. */
export function differences(mine: Job, theirs: Job): readonly Difference[] {
  const all: Difference[] = [
    { what: 'Name of the job', mine: mine.name, theirs: theirs.name },
    { what: 'Unit', mine: mine.unit, theirs: theirs.unit },
  ];
  for (const row of mine.rows) {
    const other = theirs.rows.find(({ id }) => id === row.id);
    if (other === undefined) all.push({ what: row.name, mine: 'in the cut list', theirs: 'not there' });
    else all.push(...rowDifferences(row, other, mine.unit, theirs.unit));
  }
  for (const row of theirs.rows) {
    if (!mine.rows.some(({ id }) => id === row.id))
      all.push({ what: row.name, mine: 'not there', theirs: 'in the cut list' });
  }
  all.push(...driveDifferences(mine, theirs));
  return all.filter((one) => one.mine !== one.theirs);
}
