// What is being typed: each keystroke is read at once; what is understood goes into the job, what is not waits beside it.
import { batch, signal, type ReadonlySignal } from '@preact/signals';
import {
  continueRun,
  replaceParameters,
  requestForRow,
  startRun,
  type Progress,
  type Row,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import type { Family, FieldProblem } from '../../parts-library/parts/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import type { Edits } from './edits.js';
import type { LastReading } from './last-reading.js';
import { valueAt, withValue } from './values.js';

type Texts = Readonly<Record<string, string>>;

export interface Entries {
  /** Texts as they stand in the inputs, where they differ from what is stored. */
  readonly drafts: ReadonlySignal<Texts>;
  /** What is wrong, by field. */
  readonly problems: ReadonlySignal<Texts>;
  readonly type: (path: string, text: string) => void;
  /** The field is left: a text that was understood is now shown as it is stored. */
  readonly settle: (path: string) => void;
  /** Forgets every text that was not understood; true when there was one. */
  readonly dropBroken: () => boolean;
  readonly dropAll: () => void;
}

const without = (texts: Texts, path: string): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([other]) => other !== path));

/** The first problem of each field; one that names a group belongs to the group. */
const byField = (problems: readonly FieldProblem[]): Texts => {
  const found: Record<string, string> = {};
  for (const { field, says } of problems) found[field] ??= says;
  return found;
};

/** Entries of the row on screen. */
export function createEntries(from: {
  readonly edits: Edits;
  readonly row: ReadonlySignal<Row | undefined>;
  readonly family: ReadonlySignal<Family | undefined>;
  readonly shop: ShopFacts;
  readonly lastReading: LastReading;
}): Entries {
  const { edits, row, family, shop, lastReading } = from;
  const drafts = signal<Texts>({});
  const problems = signal<Texts>({});

  /** What the drafts of these fields amount to, on top of what is stored. An optional field left empty is taken away. */
  const candidateOf = (stored: JsonObject, paths: readonly string[]): JsonObject =>
    paths.reduce((parameters, path) => {
      const text = drafts.value[path] ?? '';
      const optional = family.value?.fields.find((field) => field.path === path)?.optional === true;
      return withValue(parameters, path, optional && text.trim() === '' ? undefined : text);
    }, stored);

  const read = (current: Row, paths: readonly string[]): Progress => {
    const request = requestForRow(edits.job.value, current);
    return continueRun(
      startRun({ ...request, parameters: candidateOf(current.parameters, paths) }, shop),
      'read',
    );
  };

  /** Stores what these fields were understood as. */
  const store = (rowId: string, reading: Progress, paths: readonly string[]): void => {
    const understood = reading.read?.parameters ?? {};
    edits.make(
      (job) => {
        const stored = job.rows.find((one) => one.id === rowId)?.parameters ?? {};
        const next = paths.reduce(
          (parameters, path) => withValue(parameters, path, valueAt(understood, path)),
          stored,
        );
        return replaceParameters(job, rowId, next);
      },
      `entry ${paths.join(' ')}`,
    );
    const job = edits.job.value;
    const stored = job.rows.find(({ id }) => id === rowId);
    if (stored !== undefined) lastReading.remember(job, stored, reading);
  };

  return {
    drafts,
    problems,
    type: (path, text) =>
      batch(() => {
        drafts.value = { ...drafts.value, [path]: text };
        const current = row.value;
        if (current === undefined) return;
        const paths = Object.keys(drafts.value);
        const all = read(current, paths);
        if (all.read !== undefined) {
          problems.value = {};
          store(current.id, all, paths);
          drafts.value = { [path]: text };
          return;
        }
        problems.value = byField(all.problems);
        // Another entry may be the broken one; this one still counts.
        const alone = paths.length > 1 ? read(current, [path]) : undefined;
        if (alone?.read !== undefined) store(current.id, alone, [path]);
      }),
    settle: (path) =>
      batch(() => {
        edits.endVisit();
        if (problems.value[path] === undefined) drafts.value = without(drafts.value, path);
      }),
    dropBroken: () => {
      const broken = Object.keys(problems.value).length > 0;
      batch(() => {
        drafts.value = {};
        problems.value = {};
      });
      return broken;
    },
    dropAll: () =>
      batch(() => {
        drafts.value = {};
        problems.value = {};
      }),
  };
}
