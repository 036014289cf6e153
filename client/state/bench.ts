// The bench's state: the job, the print on screen, the field in hand, and what can be done with them.
import { computed, effect, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import {
  addRow,
  applyRemedy,
  bringInDrawing,
  duplicateRow,
  removeRow,
  renameJob,
  renameRow,
  setParameter,
  setQuantity,
  type Job,
  type Row,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import {
  findFamily,
  listAbouts,
  loadFamilies,
  type About,
  type Family,
  type Field,
} from '../../parts-library/parts/index.js';
import type { Drawing, Remedy } from '../../parts-library/model/index.js';
import type { Unit } from '../../parts-library/units/index.js';
import { createCut, type Cut } from './cut.js';
import { createEdits, type Edits } from './edits.js';
import { createEntries, type Entries } from './entries.js';
import { createFieldView, fieldApplies, type FieldView } from './field-views.js';
import { createLastReading } from './last-reading.js';
import { followInNextFrame } from './next-frame.js';
import { createKit, type KitOnScreen } from './kit.js';
import { createPrint, type Print } from './print.js';
import { nameNewRow } from './new-row.js';
import { writeRoute, type Route } from './route.js';
import { hasBareNumbers, turnUnit } from './turn-unit.js';
import { createSaver, type Put, type Saver } from './saving.js';
import { sameItems, steady } from './steady.js';
import { valueAt } from './values.js';

/** The field in hand, and where it is held. */
export interface Focus {
  readonly field: string;
  readonly where: 'drawing' | 'list';
}

export interface Bench {
  readonly edits: Edits;
  readonly entries: Entries;
  readonly saver: Saver;
  readonly print: Print;
  readonly cut: Cut;
  readonly kit: KitOnScreen;
  readonly families: readonly About[];
  /** Whether everything that the job needs beyond its first drawing is loaded. */
  readonly ready: ReadonlySignal<boolean>;
  readonly row: ReadonlySignal<Row | undefined>;
  readonly family: ReadonlySignal<Family | undefined>;
  /** What is on screen in place of the part's print. */
  readonly beside: ReadonlySignal<Route['beside']>;
  readonly focus: Signal<Focus | undefined>;
  /** How a field stands; the same signal for the drawing, the list and the card. */
  readonly viewOf: (path: string) => ReadonlySignal<FieldView | undefined>;
  /** What a field is called in a sentence; undefined for what no field sets. */
  readonly nameOf: (path: string | undefined) => string | undefined;
  readonly fieldOf: (path: string | undefined) => Field | undefined;
  /** Puts the focus on a field: on the drawing when it stands there, else in the list. */
  readonly goTo: (path: string) => void;
  /** The fields that matter now, in the family's order. */
  readonly applying: ReadonlySignal<readonly Field[]>;
  /** Groups that are there although they may be left out. */
  readonly givenGroups: ReadonlySignal<readonly string[]>;
  readonly enter: (path: string, where: Focus['where']) => void;
  readonly leave: (path: string) => void;
  readonly type: (path: string, text: string) => void;
  readonly setGroup: (path: string, given: boolean) => void;
  readonly mend: (remedy: Remedy) => void;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly rename: (name: string) => void;
  readonly renameJob: (name: string) => void;
  readonly setQuantity: (quantity: number) => void;
  readonly setUnit: (unit: Unit) => void;
  /** Gives the part on screen another drawing, and its name where it had none of its own. */
  readonly setDrawing: (path: string, drawing: Drawing) => void;
  readonly addPart: (family: About) => Promise<void>;
  readonly duplicate: () => void;
  readonly remove: () => void;
  readonly stop: () => void;
}

export interface BenchStart {
  readonly job: Job;
  /** The stored version's tag. */
  readonly tag: string;
  readonly put: Put;
  readonly shop: ShopFacts;
  readonly route: ReadonlySignal<Route>;
  /** Shows another part. */
  readonly go: (fragment: string) => void;
  /** Turns true when the job's other families and the kerf's engine are loaded; they are at once when left out. */
  readonly ready?: ReadonlySignal<boolean>;
}

/** Findings about the cut name this instead of a parameter. */
const CUT = 'process';

/** Everything that the page shows and does for one job. */
export function createBench({
  job: start,
  tag,
  put,
  shop,
  route,
  go,
  ready = signal(true),
}: BenchStart): Bench {
  const edits = createEdits(start);
  const saver = createSaver(edits.job, tag, put);
  const { job } = edits;
  const row = computed(() => job.value.rows.find(({ id }) => id === route.value.rowId) ?? job.value.rows[0]);
  const family = computed(() => {
    const id = row.value?.family;
    const found = id === undefined ? undefined : findFamily(id);
    // One that is still being fetched is looked up again when it is there.
    return found ?? (ready.value && id !== undefined ? findFamily(id) : undefined);
  });
  const lastReading = createLastReading();
  const entries = createEntries({ edits, row, family, shop, lastReading });
  const focus = signal<Focus | undefined>(undefined);
  const print = createPrint({ job, row, family, entries, shop, lastReading, ready });

  const views = new Map<string, ReadonlySignal<FieldView | undefined>>();
  const fieldOf = (path: string | undefined): Field | undefined =>
    family.value?.fields.find((field) => field.path === path);
  // Views wait for the next picture, as the components that show them do.
  const entered = followInNextFrame(
    computed(() => ({
      parameters: row.value?.parameters ?? {},
      understood: print.understood.value,
      drafts: entries.drafts.value,
      problems: print.problems.value,
      derived: print.derived.value,
      unit: job.value.unit,
    })),
  );
  const viewOf = (path: string): ReadonlySignal<FieldView | undefined> => {
    const known = views.get(path);
    if (known !== undefined) return known;
    const made = createFieldView(() => {
      const field = fieldOf(path);
      if (field === undefined) return undefined;
      const { parameters, understood, drafts, problems, derived, unit } = entered.value.value;
      return {
        field,
        entered: parameters,
        understood,
        draft: drafts[path],
        problem: problems[path],
        derived,
        unit,
      };
    });
    views.set(path, made);
    return made;
  };

  const onRow = (act: (id: string) => void): void => {
    const current = row.value;
    if (current !== undefined) act(current.id);
  };

  // Another part on screen: what was half typed belonged to the one before.
  const stopFollowing = effect(() => {
    if (route.value.rowId !== undefined) entries.dropAll();
    focus.value = undefined;
  });

  return {
    edits,
    entries,
    saver,
    print,
    cut: createCut({ edits, row, good: print.good, shop }),
    kit: createKit({ edits, row, shop, go, ready }),
    families: listAbouts(),
    ready,
    row,
    family,
    beside: computed(() => route.value.beside),
    focus,
    viewOf,
    fieldOf,
    nameOf: (path) => (path === CUT ? 'kerf and speed' : fieldOf(path)?.title.toLowerCase()),
    applying: steady(
      () => (family.value?.fields ?? []).filter((field) => fieldApplies(field, print.understood.value)),
      sameItems,
    ),
    goTo: (path) => {
      const ids = path === CUT ? ['cut-kerf'] : [`drawn-${path}`, `list-${path}`];
      const control = ids.map((id) => document.getElementById(id)).find((found) => found !== null);
      control?.closest('details')?.setAttribute('open', '');
      control?.focus();
      control?.scrollIntoView({ block: 'nearest' });
    },
    givenGroups: steady(
      () =>
        (family.value?.fields ?? [])
          .filter(
            ({ kind, path }) => kind === 'group' && valueAt(row.value?.parameters ?? {}, path) !== undefined,
          )
          .map(({ path }) => path),
      sameItems,
    ),
    enter: (path, where) => {
      focus.value = { field: path, where };
    },
    leave: (path) => {
      entries.settle(path);
      if (focus.value?.field === path) focus.value = undefined;
    },
    type: entries.type,
    setGroup: (path, given) =>
      onRow((id) => {
        entries.dropAll();
        edits.make((now) => setParameter(now, id, path, given ? {} : undefined));
      }),
    mend: (remedy) =>
      onRow((id) => {
        entries.dropAll();
        edits.make((now) => applyRemedy(now, id, remedy));
      }),
    canUndo: computed(
      () => edits.canUndo.value !== undefined || Object.keys(entries.problems.value).length > 0,
    ),
    undo: () => {
      // A broken entry is the last thing that was done: taking it back is the first step.
      if (!entries.dropBroken()) edits.undo();
    },
    redo: () => {
      entries.dropAll();
      edits.redo();
    },
    rename: (name) =>
      onRow((id) => {
        if (name.trim() !== '') edits.make((now) => renameRow(now, id, name), `rename ${id}`);
      }),
    renameJob: (name) => {
      if (name.trim() !== '') edits.make((now) => renameJob(now, name), 'rename job');
    },
    setQuantity: (quantity) =>
      onRow((id) => {
        if (Number.isInteger(quantity) && quantity >= 1 && quantity <= 10_000) {
          edits.make((now) => setQuantity(now, id, quantity), `quantity ${id}`);
        }
      }),
    setUnit: (unit) => {
      if (unit === job.value.unit) return;
      entries.dropAll();
      if (!hasBareNumbers(job.value.drive)) {
        edits.make((now) => turnUnit(now, unit));
        return;
      }
      // What a bare number of the drive means, only the drive's own reader knows.
      void import('../../parts-library/drive/index.js').then(({ readDrive }) =>
        edits.make((now) => turnUnit(now, unit, readDrive)),
      );
    },
    setDrawing: (path, drawing) =>
      onRow((id) => {
        entries.dropAll();
        const named = family.value?.title ?? '';
        edits.make((now) => bringInDrawing(now, id, { path, drawing, unnamed: named }));
      }),
    addPart: async (made) => {
      await loadFamilies([made.id]);
      const { id, name } = nameNewRow(job.value, made.title);
      edits.make(() => addRow({ id, family: made.id, name, quantity: 1, parameters: {} }));
      go(writeRoute(job.value.id, id));
    },
    duplicate: () =>
      onRow((rowId) => {
        const named = nameNewRow(job.value, row.value?.name ?? '');
        edits.make((now) => duplicateRow(now, rowId, named));
        go(writeRoute(job.value.id, named.id));
      }),
    remove: () =>
      onRow((id) => {
        edits.make((now) => removeRow(now, id));
        go(writeRoute(job.value.id, job.value.rows[0]?.id));
      }),
    stop: () => {
      stopFollowing();
      entered.stop();
      print.stop();
      saver.stop();
    },
  };
}
