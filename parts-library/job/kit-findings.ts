// Findings that span the parts of a kit: what its numbers say, joints that do not meet, hands that are not a pair.
import { checkJoint, found } from '../checks/index.js';
import type { Finding } from '../model/index.js';
import { createFormat } from './format.js';
import { expandKit } from './kits.js';
import type { PartRun } from './run-part.js';
import type { Job, Row } from './types.js';

const HANDED = /^(left|right)-(.+)$/;

/** Members of one kind for both sides, of which one has to be the mirror image of the other. */
function checkHands(rows: readonly Row[], runs: ReadonlyMap<string, PartRun>): readonly Finding[] {
  return rows.flatMap((row): readonly Finding[] => {
    const [, side, rest] = HANDED.exec(row.role ?? '') ?? [];
    if (side !== 'left') return [];
    const other = rows.find(({ role }) => role === `right-${rest ?? ''}`);
    const [mine, theirs] = [runs.get(row.id)?.value?.part, runs.get(other?.id ?? '')?.value?.part];
    if (other === undefined || mine === undefined || theirs === undefined) return [];
    if ((mine.mirrored ?? false) !== (theirs.mirrored ?? false)) return [];
    return [
      found({
        code: 'hands',
        level: 'caution',
        subject: { rowId: other.id },
        title: `${row.name} and ${other.name} are the same hand`,
        says: 'One of a pair is the mirror image of the other; these two are alike. Mirror one, or cut two of one where it does not matter.',
        source: {
          title: 'Handed parts',
          where: 'left and right mirror each other',
          certainty: 'common practice',
        },
      }),
    ];
  });
}

/**
 * What is found about a kit as a whole.
 * @param runs the run of each row, by its id
 */
export function kitFindings(job: Job, kitId: string, runs: ReadonlyMap<string, PartRun>): readonly Finding[] {
  const use = job.kits.find(({ id }) => id === kitId);
  const expanded = use === undefined ? undefined : expandKit(use.kit, use.numbers, job.unit);
  if (use === undefined || expanded?.ok !== true) return [];
  const rows = job.rows.filter((row) => row.kitId === kitId);
  const format = createFormat(job.unit);
  const sideOf = ({ role, holes }: { readonly role: string; readonly holes: string }) => {
    const row = rows.find((one) => one.role === role);
    const part = row === undefined ? undefined : runs.get(row.id)?.value?.part;
    return row === undefined || part === undefined ? undefined : { name: row.name, part, holes };
  };
  const joints = expanded.value.joints.flatMap(({ a, b }): readonly Finding[] => {
    const [one, two] = [sideOf(a), sideOf(b)];
    return one === undefined || two === undefined ? [] : checkJoint(one, two, format);
  });
  return [...expanded.value.findings, ...joints, ...checkHands(rows, runs)];
}
