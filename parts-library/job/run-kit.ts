// A kit run on its own: every member through the one-part flow, and what is found about them together.
import type { Derived, Finding, JsonObject } from '../model/index.js';
import type { Unit } from '../units/index.js';
import { applyChange } from './change.js';
import { kitFindings } from './kit-findings.js';
import { addKit, expandKit, type KitAnswer } from './kits.js';
import { createJob } from './open-job.js';
import { runPart, type PartRun } from './run-part.js';
import { requestForRow } from './run-row.js';
import type { ShopFacts } from './shop.js';

export interface KitMemberRun {
  readonly role: string;
  readonly run: PartRun;
  readonly name: string;
  readonly quantity: number;
}

export interface KitRun {
  /** As read; reading them again gives the same. */
  readonly numbers: JsonObject;
  readonly derived: readonly Derived[];
  /** About the members together. */
  readonly findings: readonly Finding[];
  readonly members: readonly KitMemberRun[];
}

/** Computed by nobody in particular: the job lives only for the run. */
const PASSING = { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 };

/**
 * Runs a kit.
 * @param kit id of the kit, for example `sprocket-carrier`
 * @param numbers as typed or as stored
 * @returns every member's run and what spans them; or the numbers that could not be read
 */
export function runKit(kit: string, numbers: unknown, unit: Unit, shop: ShopFacts): KitAnswer<KitRun> {
  const expanded = expandKit(kit, numbers, unit);
  if (!expanded.ok) return expanded;
  const empty = createJob({ id: 'kit', name: kit, unit, computedWith: PASSING });
  const added = addKit(empty, { id: 'kit', kit, name: kit, numbers });
  if (!added.ok) return added;
  const applied = applyChange(empty, added.value);
  if (!applied.ok) return { ok: false, problems: [{ field: '', says: applied.problem.says }] };
  const { job } = applied;
  const members = job.rows.map((row): KitMemberRun => ({
    role: row.role ?? '',
    name: row.name,
    quantity: row.quantity,
    run: runPart(requestForRow(job, row), shop),
  }));
  const runs = new Map(job.rows.map((row, index) => [row.id, members[index]?.run] as const));
  const known = new Map([...runs].flatMap(([id, run]) => (run === undefined ? [] : [[id, run] as const])));
  return {
    ok: true,
    value: {
      numbers: expanded.value.numbers,
      derived: expanded.value.derived,
      findings: kitFindings(job, 'kit', known),
      members,
    },
  };
}
