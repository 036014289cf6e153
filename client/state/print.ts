// The print on screen: the part as it stands, the last good drawing while an entry is broken, notes and title words.
import { computed, signal, type ReadonlySignal, type Signal } from '@preact/signals';
import { drawPrint, type DisplayList, type TitleBlock } from '../../parts-library/drawing/index.js';
import {
  continueRun,
  createFormat,
  operationsOf,
  requestForRow,
  resultOf,
  startRun,
  titleBlockOf,
  type Job,
  type PartRun,
  type PartValue,
  type Progress,
  type Row,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import type { Family } from '../../parts-library/parts/index.js';
import type {
  Derived,
  Finding,
  Format,
  HardwareItem,
  JsonObject,
  Level,
  ShopStep,
} from '../../parts-library/model/index.js';
import type { Entries } from './entries.js';
import type { LastReading } from './last-reading.js';
import { followInNextFrame } from './next-frame.js';
import { sameData, steady, steadyList } from './steady.js';

export interface NumberedNote {
  readonly number: number;
  readonly level: Exclude<Level, 'pass'>;
  readonly finding: Finding;
}

export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface Print {
  /** The part as the job has it now. */
  readonly run: ReadonlySignal<PartRun | undefined>;
  /** Its parameters as read, starting values filled in. */
  readonly understood: ReadonlySignal<JsonObject>;
  /** The last one that could be drawn. */
  readonly good: ReadonlySignal<PartRun | undefined>;
  /** What is wrong, by field: entries that were not understood, and sizes that give no part. */
  readonly problems: ReadonlySignal<Readonly<Record<string, string>>>;
  /** Why the drawing shown is not what is typed; undefined when it is. */
  readonly brokenSays: ReadonlySignal<string | undefined>;
  readonly notes: ReadonlySignal<readonly NumberedNote[]>;
  readonly passes: ReadonlySignal<readonly Finding[]>;
  readonly passCount: ReadonlySignal<number>;
  readonly title: ReadonlySignal<TitleBlock | undefined>;
  /** What follows from the readings. */
  readonly derived: ReadonlySignal<readonly Derived[]>;
  /** Every operation in order, and what goes with the part. */
  readonly operations: ReadonlySignal<readonly ShopStep[]>;
  readonly hardware: ReadonlySignal<readonly HardwareItem[]>;
  readonly format: ReadonlySignal<Format>;
  /** The room that the drawing has, CSS pixels. */
  readonly room: Signal<Room>;
  readonly drawing: ReadonlySignal<DisplayList | undefined>;
  readonly stop: () => void;
}

/** A row taken as far as its print; what the torch does comes after. */
interface Sketch {
  readonly rowId: string;
  readonly progress: Progress;
  /** Parameters as read, starting values filled in. */
  readonly understood: JsonObject;
}

/** Runs a row up to its print, with the job's choice for the plate that it turns out to need. */
function sketchRow(job: Job, row: Row, shop: ShopFacts, lastReading: LastReading): Sketch {
  const begun = lastReading.find(job, row) ?? startRun(requestForRow(job, row), shop);
  const drawn = continueRun(begun, 'draw');
  const { part } = drawn;
  const chosen = part === undefined ? undefined : requestForRow(job, row, part);
  const progress = continueRun(chosen?.process === undefined ? drawn : startRun(chosen, shop), 'print');
  return { rowId: row.id, progress, understood: progress.read?.parameters ?? row.parameters };
}

/** A sketch taken to its end, and what was found on the way from there. */
interface Whole {
  readonly rowId: string;
  readonly run: PartRun;
  readonly added: readonly Finding[];
}

function finish({ rowId, progress }: Sketch): Whole {
  const done = continueRun(progress);
  return { rowId, run: resultOf(done), added: done.findings.slice(progress.findings.length) };
}

/** A part that cannot be drawn, as problems of the fields that would mend it. */
function drawProblems(run: PartRun | undefined): Readonly<Record<string, string>> {
  if (run === undefined || run.value !== undefined) return {};
  const found: Record<string, string> = {};
  for (const { field, says } of run.problems) found[field] ??= says;
  for (const { level, field, says } of run.findings) {
    if (level === 'stop' && field !== undefined) found[field] ??= says;
  }
  return found;
}

const isNote = (finding: Finding): finding is Finding & { level: Exclude<Level, 'pass'> } =>
  finding.level !== 'pass';

/** The print of the row on screen. */
export function createPrint(from: {
  readonly job: ReadonlySignal<Job>;
  readonly row: ReadonlySignal<Row | undefined>;
  readonly family: ReadonlySignal<Family | undefined>;
  readonly entries: Entries;
  readonly shop: ShopFacts;
  readonly lastReading: LastReading;
  /** Whether everything that the job needs beyond its first drawing is loaded. */
  readonly ready: ReadonlySignal<boolean>;
}): Print {
  const { job, row, family, entries, shop, lastReading, ready } = from;
  const room = signal<Room>({ width: 0, height: 0 });
  const unit = computed(() => job.value.unit);
  const choices = computed(() => job.value.choices);

  const sketch = computed(() => {
    const current = row.value;
    // A family that is still being fetched has nothing to draw yet; one that there is not says so.
    if (current === undefined || (family.value === undefined && !ready.value)) return undefined;
    return sketchRow({ ...job.peek(), unit: unit.value, choices: choices.value }, current, shop, lastReading);
  });

  // The drawing follows every keystroke; the cut and all words about it come with the next picture.
  const followed = followInNextFrame(sketch);
  const whole = computed(() =>
    followed.value.value === undefined || !ready.value ? undefined : finish(followed.value.value),
  );
  const run = computed(() => whole.value?.run);

  let kept: Whole | undefined;
  const good = computed(() => {
    if (whole.value?.run.value !== undefined) kept = whole.value;
    return kept?.rowId === row.value?.id ? kept?.run : undefined;
  });
  const goodValue = computed((): PartValue | undefined => good.value?.value);

  /** What the plan found, until it finds something else: balloons do not vanish while a number is typed. */
  const planFindings = steady(() => whole.value?.added ?? [], sameData);

  let keptSketch: Sketch | undefined;
  const goodSketch = computed(() => {
    if (sketch.value?.progress.print !== undefined) keptSketch = sketch.value;
    return keptSketch?.rowId === row.value?.id ? keptSketch : undefined;
  });

  const problems = computed(() => ({ ...drawProblems(run.value), ...entries.problems.value }));

  const shownSays = (): string =>
    good.value === undefined ? 'There is no drawing yet.' : 'This is the last good drawing.';

  return {
    run,
    understood: computed(() => sketch.value?.understood ?? {}),
    good,
    problems,
    room,
    brokenSays: computed(() => {
      const [field] = Object.keys(problems.value);
      if (field !== undefined) {
        const title = family.value?.fields.find(({ path }) => path === field)?.title ?? field;
        return `${title}: not drawn as typed. ${shownSays()}`;
      }
      return run.value !== undefined && run.value.value === undefined
        ? `These sizes give no part. ${shownSays()}`
        : undefined;
    }),
    notes: steadyList(() =>
      (run.value?.findings ?? [])
        .filter(isNote)
        .map((finding, index) => ({ number: index + 1, level: finding.level, finding })),
    ),
    passCount: computed(() => (run.value?.findings ?? []).filter(({ level }) => level === 'pass').length),
    passes: computed(() => (run.value?.findings ?? []).filter(({ level }) => level === 'pass')),
    title: steady(
      () => (goodValue.value === undefined ? undefined : titleBlockOf(goodValue.value, unit.value, '')),
      sameData,
    ),
    derived: steadyList(() => goodValue.value?.derived ?? []),
    operations: steadyList(() => (good.value === undefined ? [] : operationsOf(good.value))),
    hardware: steadyList(() => goodValue.value?.hardware ?? []),
    format: computed(() => createFormat(unit.value)),
    drawing: computed(() => {
      const progress = goodSketch.value?.progress;
      const size = room.value;
      if (progress?.part === undefined || progress.print === undefined) return undefined;
      if (size.width === 0 || size.height === 0) return undefined;
      const { part, print } = progress;
      const { findings } = resultOf({ ...progress, findings: [...progress.findings, ...planFindings.value] });
      const { dimensions, ghosts } = print;
      return drawPrint({ part, dimensions, ghosts, findings, size, frame: 'drawing', unit: unit.value });
    }),
    stop: followed.stop,
  };
}
