// The drive's own bench: the same fields, notes and edits as a print's, over the drive that the job keeps.
import { batch, computed, effect, signal, type ReadonlySignal } from '@preact/signals';
import { driveNumbers, driveReader, readDrive, type DriveNumbers } from '../../parts-library/drive/index.js';
import { setDrive } from '../../parts-library/job/index.js';
import type { Json, JsonObject, Remedy } from '../../parts-library/model/index.js';
import type { FieldProblem } from '../../parts-library/parts/index.js';
import type { Bench, Focus } from '../state/bench.js';
import { createFieldView, fieldApplies, type FieldView } from '../state/field-views.js';
import type { NumberedNote } from '../state/print.js';
import { sameItems, steady, steadyList } from '../state/steady.js';
import { valueAt, withValue } from '../state/values.js';

type Texts = Readonly<Record<string, string>>;

export interface DriveBench {
  /** Handed to the fields and notes in place of the print's. */
  readonly bench: Bench;
  /** The last drive that could be read. */
  readonly numbers: ReadonlySignal<DriveNumbers>;
  /** Why the numbers shown are not what is typed; undefined when they are. */
  readonly brokenSays: ReadonlySignal<string | undefined>;
  /** Sets several fields at once, for example a pair of tooth counts from a table. */
  readonly take: (values: Readonly<Record<string, Json>>, says: string) => void;
  readonly stop: () => void;
}

const without = (texts: Texts, path: string): Texts =>
  Object.fromEntries(Object.entries(texts).filter(([other]) => other !== path));

const byField = (problems: readonly FieldProblem[]): Texts => {
  const found: Record<string, string> = {};
  for (const { field, says } of problems) found[field] ??= says;
  return found;
};

const fieldOf = (path: string | undefined) => driveReader.fields.find((field) => field.path === path);

/** The numbered notes and the checks that passed, as the notes column wants them. */
function notesOf(numbers: ReadonlySignal<DriveNumbers>) {
  const passes = computed(() => numbers.value.findings.filter(({ level }) => level === 'pass'));
  return {
    notes: steadyList(() =>
      numbers.value.findings
        .flatMap((finding): readonly Omit<NumberedNote, 'number'>[] =>
          finding.level === 'pass' ? [] : [{ level: finding.level, finding }],
        )
        .map((note, index): NumberedNote => ({ number: index + 1, ...note })),
    ),
    passes,
    passCount: computed(() => passes.value.length),
  };
}

/** The drive of the job that a bench shows. */
export function createDriveBench(of: Bench): DriveBench {
  const { edits } = of;
  const unit = computed(() => edits.job.value.unit);
  const stored = computed((): JsonObject => edits.job.value.drive ?? {});
  const drafts = signal<Texts>({});
  const refused = signal<Texts>({});
  const focus = signal<Focus | undefined>(undefined);
  const reading = computed(() => readDrive(stored.value, unit.value));

  /** What the drafts of these fields amount to; an optional field left empty is taken away. */
  const candidateOf = (paths: readonly string[]): JsonObject =>
    paths.reduce((parameters, path) => {
      const text = drafts.value[path] ?? '';
      const left = fieldOf(path)?.optional === true && text.trim() === '';
      return withValue(parameters, path, left ? undefined : text);
    }, stored.value);

  /** What was stored last from here; anything else that is stored later came from elsewhere. */
  let own: JsonObject | undefined;
  const store = (understood: JsonObject, paths: readonly string[], says?: string): void => {
    const next = paths.reduce(
      (parameters, path) => withValue(parameters, path, valueAt(understood, path)),
      stored.peek(),
    );
    own = next;
    edits.make(
      (job) => ({ ...setDrive(job, next), ...(says === undefined ? {} : { says }) }),
      says === undefined ? `drive ${paths.join(' ')}` : undefined,
    );
    own = edits.job.peek().drive;
  };

  const dropAll = (): void =>
    batch(() => {
      drafts.value = {};
      refused.value = {};
    });

  // Undone, redone or brought in from elsewhere: what was half typed belonged to the drive before.
  const stopFollowing = effect(() => {
    const { drive } = edits.job.value;
    if (drive !== own && own !== undefined) dropAll();
    own = drive;
  });

  let kept = driveNumbers(emptyDrive(), of.print.format.peek());
  const numbers = computed(() => {
    if (reading.value.ok) kept = driveNumbers(reading.value.value.parameters, of.print.format.value);
    return kept;
  });
  const understood = computed((): JsonObject => (reading.value.ok ? reading.value.value.json : stored.value));
  const problems = computed((): Texts => ({
    ...(reading.value.ok ? {} : byField(reading.value.problems)),
    ...refused.value,
  }));

  const type = (path: string, text: string): void =>
    batch(() => {
      drafts.value = { ...drafts.value, [path]: text };
      const paths = Object.keys(drafts.value);
      const all = readDrive(candidateOf(paths), unit.value);
      if (all.ok) {
        refused.value = {};
        store(all.value.json, paths);
        drafts.value = { [path]: text };
        return;
      }
      refused.value = byField(all.problems);
      // Another entry may be the broken one; this one still counts.
      const alone = paths.length > 1 ? readDrive(candidateOf([path]), unit.value) : undefined;
      if (alone?.ok === true) store(alone.value.json, [path]);
    });

  const take = (values: Readonly<Record<string, Json>>, says: string): void => {
    dropAll();
    const next = Object.entries(values).reduce<JsonObject>(
      (parameters, [path, value]) => withValue(parameters, path, value),
      stored.peek(),
    );
    const read = readDrive(next, unit.peek());
    if (read.ok) store(read.value.json, Object.keys(values), says);
  };

  const views = new Map<string, ReadonlySignal<FieldView | undefined>>();
  const viewOf = (path: string): ReadonlySignal<FieldView | undefined> => {
    const known = views.get(path);
    if (known !== undefined) return known;
    const field = fieldOf(path);
    const made = createFieldView(() =>
      field === undefined
        ? undefined
        : {
            field,
            entered: stored.value,
            understood: understood.value,
            draft: drafts.value[path],
            problem: problems.value[path],
            derived: [],
            unit: unit.value,
          },
    );
    views.set(path, made);
    return made;
  };

  const bench: Bench = {
    ...of,
    focus,
    viewOf,
    fieldOf,
    nameOf: (path) => fieldOf(path)?.title.toLowerCase(),
    print: { ...of.print, ...notesOf(numbers) },
    applying: steady(
      () => driveReader.fields.filter((field) => fieldApplies(field, understood.value)),
      sameItems,
    ),
    goTo: (path) => {
      const control = document.getElementById(`list-${path}`);
      control?.closest('details')?.setAttribute('open', '');
      control?.focus();
      control?.scrollIntoView({ block: 'nearest' });
    },
    enter: (path, where) => {
      focus.value = { field: path, where };
    },
    leave: (path) => {
      edits.endVisit();
      if (problems.peek()[path] === undefined) drafts.value = without(drafts.peek(), path);
      if (focus.peek()?.field === path) focus.value = undefined;
    },
    type,
    mend: ({ says, change }: Remedy) =>
      take(
        Object.fromEntries(
          change.flatMap((operation) =>
            operation.op === 'add' ? [[operation.path.slice(1), operation.value] as const] : [],
          ),
        ),
        says,
      ),
    undo: () => {
      if (Object.keys(refused.peek()).length > 0) dropAll();
      else of.undo();
    },
  };

  return {
    bench,
    numbers,
    brokenSays: computed(() => {
      const [path] = Object.keys(problems.value);
      return path === undefined
        ? undefined
        : `${fieldOf(path)?.title ?? path}: not counted as typed. These are the last good numbers.`;
    }),
    take,
    stop: stopFollowing,
  };
}

/** A drive of starting values only: always readable. */
function emptyDrive() {
  const reading = readDrive({}, 'mm');
  if (!reading.ok) throw new Error('The starting values of a drive cannot be read.');
  return reading.value.parameters;
}
