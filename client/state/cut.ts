// How this plate is cut: figures from the chart until somebody gives their own, kept per material and thickness.
import { computed, signal, type ReadonlySignal } from '@preact/signals';
import {
  PROCESS_FIELDS,
  requestForRow,
  runPart,
  type Change,
  type Job,
  type PartRun,
  type ProcessField,
  type Row,
  type ShopFacts,
} from '../../parts-library/job/index.js';
import {
  echoLength,
  echoSpeed,
  writeLength,
  writeSpeed,
  type Unit,
} from '../../parts-library/units/index.js';
import type { Part } from '../../parts-library/model/index.js';
import type { Edits } from './edits.js';

export interface CutFigure {
  readonly field: ProcessField;
  readonly text: string;
  readonly echo: readonly string[];
  readonly problem: string | undefined;
  /** True while the chart's value counts. */
  readonly isStart: boolean;
}

export interface Cut {
  /** What was given for this plate; everything else is the chart's. */
  readonly given: ReadonlySignal<Given>;
  readonly figures: ReadonlySignal<readonly CutFigure[]>;
  readonly processClass: ReadonlySignal<string>;
  readonly classes: readonly string[];
  readonly type: (name: ProcessField['name'], text: string) => void;
  readonly settle: (name: ProcessField['name']) => void;
  readonly choose: (processClass: string) => void;
}

type Member = ProcessField['name'] | 'processClass';

export type Given = Omit<Partial<Job['choices']['process'][number]>, 'material' | 'thickness'>;

interface PlateKey {
  readonly material: string;
  readonly thickness: number;
}

/** Rows of a material share one choice per thickness; as near as this is the same, mm. */
const SAME_THICKNESS = 0.05;

function written(field: ProcessField, value: number, unit: Unit): string {
  if (field.unit === 'mm') return writeLength(value, { unit });
  return field.unit === 's' ? `${value} s` : writeSpeed(value, { unit });
}

const echoed = (field: ProcessField, value: number): readonly string[] =>
  field.unit === 's' ? [] : (field.unit === 'mm' ? echoLength(value) : echoSpeed(value)).split(' · ');

/** Where the job keeps what was given for this plate; -1 when nothing was. */
const choiceIndex = (job: Job, plate: PlateKey): number =>
  job.choices.process.findIndex(
    (one) => one.material === plate.material && Math.abs(one.thickness - plate.thickness) <= SAME_THICKNESS,
  );

/** The change that gives one figure of the cut, or with `undefined` leaves it to the chart again. */
function giveFigure(job: Job, plate: PlateKey, member: Member, value: number | string | undefined): Change {
  const index = choiceIndex(job, plate);
  const says = `Set ${member} of ${plate.thickness} mm ${plate.material}`;
  const path = `/choices/process/${index}/${member}`;
  const before = job.choices.process[index];
  if (before === undefined) {
    const choice = { material: plate.material, thickness: plate.thickness };
    const made = value === undefined ? choice : { ...choice, [member]: value };
    return { says, patch: [{ op: 'add', path: '/choices/process/-', value: made }] };
  }
  if (value !== undefined) return { says, patch: [{ op: 'add', path, value }] };
  return before[member] === undefined
    ? { says, patch: [{ op: 'test', path: `/choices/process/${index}/material`, value: plate.material }] }
    : { says, patch: [{ op: 'remove', path }] };
}

const without = (texts: Readonly<Record<string, string>>, name: string): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(texts).filter(([other]) => other !== name));

/** The cut of the plate on screen. */
export function createCut(from: {
  readonly edits: Edits;
  readonly row: ReadonlySignal<Row | undefined>;
  readonly good: ReadonlySignal<PartRun | undefined>;
  readonly shop: ShopFacts;
}): Cut {
  const { edits, row, good, shop } = from;
  const drafts = signal<Readonly<Record<string, string>>>({});
  const problems = signal<Readonly<Record<string, string>>>({});
  const value = computed(() => good.value?.value);

  /** The plate on screen and what was given for it. */
  const givenNow = (): { readonly plate: Part; readonly row: Row; readonly given: Given } | undefined => {
    const current = row.value;
    const plate = value.value?.part;
    if (current === undefined || plate === undefined) return undefined;
    const choice = edits.job.value.choices.process[choiceIndex(edits.job.value, plate)];
    if (choice === undefined) return { plate, row: current, given: {} };
    const { material: _material, thickness: _thickness, ...given } = choice;
    return { plate, row: current, given };
  };

  return {
    classes: shop.chart.classes.map(({ id }) => id),
    given: computed(() => givenNow()?.given ?? {}),
    processClass: computed(() => value.value?.process.processClass ?? ''),
    figures: computed(() => {
      const settled = value.value?.process.settings;
      const given = givenNow()?.given;
      const { unit } = edits.job.value;
      if (settled === undefined) return [];
      return PROCESS_FIELDS.map((field): CutFigure => ({
        field,
        text: drafts.value[field.name] ?? written(field, settled[field.name], unit),
        echo: echoed(field, settled[field.name]),
        problem: problems.value[field.name],
        isStart: given?.[field.name] === undefined && drafts.value[field.name] === undefined,
      }));
    }),
    type: (name, text) => {
      const now = givenNow();
      if (now === undefined) return;
      drafts.value = { ...drafts.value, [name]: text };
      const process = { ...now.given, [name]: text.trim() === '' ? undefined : text };
      const tried = runPart({ ...requestForRow(edits.job.value, now.row), process }, shop);
      const problem = tried.problems.find(({ field }) => field === `process.${name}`);
      problems.value = {
        ...without(problems.value, name),
        ...(problem === undefined ? {} : { [name]: problem.says }),
      };
      if (problem !== undefined) return;
      const figure = process[name] === undefined ? undefined : tried.value?.process.settings[name];
      edits.make((job) => giveFigure(job, now.plate, name, figure), `cut ${name}`);
    },
    settle: (name) => {
      edits.endVisit();
      if (problems.value[name] === undefined) drafts.value = without(drafts.value, name);
    },
    choose: (processClass) => {
      const now = givenNow();
      if (now !== undefined) edits.make((job) => giveFigure(job, now.plate, 'processClass', processClass));
    },
  };
}
