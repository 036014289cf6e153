// The kit that the part on screen belongs to: its numbers, what is set by hand, and what spans its members.
import { computed, signal, type ReadonlySignal } from '@preact/signals';
import {
  addKit,
  expandKit,
  followKit,
  kitFindings,
  removeKit,
  requestForRow,
  runPart,
  setKitNumbers,
  type Change,
  type Job,
  type KitAnswer,
  type KitUse,
  type PartRun,
  type Row,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import { findKit, listKitAbouts, loadKits, type Kit } from '../../parts-library/kits/index.js';
import { loadFamilies, type About, type Field } from '../../parts-library/parts/index.js';
import type { Derived, Finding } from '../../parts-library/model/index.js';
import { fieldEcho, fieldText } from '../list/field-text.js';
import type { Edits } from './edits.js';
import { nameNewRow } from './new-row.js';
import { writeRoute } from './route.js';
import { sameData, steady } from './steady.js';
import { valueAt, withValue } from './values.js';

export interface KitField {
  readonly field: Field;
  readonly text: string;
  readonly echo: readonly string[];
  readonly problem: string | undefined;
}

export interface KitOnScreen {
  readonly kits: readonly About[];
  readonly use: ReadonlySignal<KitUse | undefined>;
  readonly fields: ReadonlySignal<readonly KitField[]>;
  readonly derived: ReadonlySignal<readonly Derived[]>;
  /** What is found about the members together; passed checks left out. */
  readonly findings: ReadonlySignal<readonly Finding[]>;
  /** Parameters of the part on screen that no longer follow the kit. */
  readonly overridden: ReadonlySignal<readonly string[]>;
  readonly type: (path: string, text: string) => void;
  readonly settle: () => void;
  readonly follow: (parameter: string) => void;
  readonly add: (kit: About) => Promise<void>;
  readonly remove: () => void;
}

/** The kit of the row on screen. */
export function createKit(from: {
  readonly edits: Edits;
  readonly row: ReadonlySignal<Row | undefined>;
  readonly shop: ShopFacts;
  readonly go: (fragment: string) => void;
  readonly ready: ReadonlySignal<boolean>;
}): KitOnScreen {
  const { edits, row, shop, go, ready } = from;
  const { job } = edits;
  const drafts = signal<Readonly<Record<string, string>>>({});
  const problems = signal<Readonly<Record<string, string>>>({});
  const use = computed(() => job.value.kits.find(({ id }) => id === row.value?.kitId));
  const kit = computed((): Kit | undefined => (use.value === undefined ? undefined : findKit(use.value.kit)));

  const take = (answer: KitAnswer<Change>, visit?: string): boolean => {
    if (!answer.ok) return false;
    return edits.make(() => answer.value, visit).ok;
  };

  // A member that did not change is not run again.
  const known = new WeakMap<Row, PartRun>();
  const runOf = (now: Job, one: Row): PartRun => {
    const before = known.get(one);
    if (before !== undefined && before.unit === now.unit) return before;
    const run = runPart(requestForRow(now, one), shop);
    known.set(one, run);
    return run;
  };

  return {
    kits: listKitAbouts(),
    use,
    fields: computed(() => {
      const { unit } = job.value;
      return (kit.value?.fields ?? []).map((field): KitField => {
        const value = valueAt(use.value?.numbers ?? {}, field.path);
        return {
          field,
          text: drafts.value[field.path] ?? fieldText(field, value, unit),
          echo: fieldEcho(field, value),
          problem: problems.value[field.path],
        };
      });
    }),
    derived: computed(() => {
      if (use.value === undefined) return [];
      const expanded = expandKit(use.value.kit, use.value.numbers, job.value.unit);
      return expanded.ok ? expanded.value.derived : [];
    }),
    findings: steady(() => {
      const now = job.value;
      const id = use.value?.id;
      if (id === undefined || !ready.value) return [];
      const rows = now.rows.filter(({ kitId }) => kitId === id);
      const runs = new Map(rows.map((one) => [one.id, runOf(now, one)]));
      return kitFindings(now, id, runs).filter(({ level }) => level !== 'pass');
    }, sameData),
    overridden: computed(() => Object.keys(row.value?.overrides ?? {})),
    type: (path, text) => {
      const current = use.value;
      if (current === undefined) return;
      drafts.value = { ...drafts.value, [path]: text };
      const numbers = Object.entries(drafts.value).reduce(
        (all, [name, draft]) => withValue(all, name, draft),
        current.numbers,
      );
      const answer = setKitNumbers(job.value, current.id, numbers);
      problems.value = answer.ok
        ? {}
        : Object.fromEntries(answer.problems.map(({ field, says }) => [field, says]));
      if (take(answer, `kit ${current.id} ${path}`)) drafts.value = { [path]: text };
    },
    settle: () => {
      edits.endVisit();
      if (Object.keys(problems.value).length === 0) drafts.value = {};
    },
    follow: (parameter) => {
      if (row.value !== undefined) take(followKit(job.value, row.value.id, parameter));
    },
    add: async (made) => {
      await loadKits([made.id]);
      const expanded = expandKit(made.id, {}, job.value.unit);
      if (!expanded.ok) return;
      await loadFamilies(expanded.value.members.map(({ family }) => family));
      const { id, name } = nameNewRow(job.value, made.title);
      if (!take(addKit(job.value, { id, kit: made.id, name, numbers: {} }))) return;
      const first = job.value.rows.find(({ kitId }) => kitId === id);
      go(writeRoute(job.value.id, first?.id));
    },
    remove: () => {
      const current = use.value;
      if (current === undefined) return;
      edits.make((now) => removeKit(now, current.id));
      go(writeRoute(job.value.id, job.value.rows[0]?.id));
    },
  };
}
