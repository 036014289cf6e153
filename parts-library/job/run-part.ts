// The one-part flow, written once: read, draw, settle the process, check, print, plan, estimate.
import {
  figuresOf,
  massOf,
  netArea,
  perimeterOf,
  planCuts,
  type CutFigures,
  type CutPlan,
} from '../cutting/index.js';
import { checkNamedUse, checkToolsOnHand } from '../checks/index.js';
import { boundsOf, GeometryError, type Bounds } from '../geometry/index.js';
import { findMaterial } from '../handbook/index.js';
import {
  outlineOf,
  sortFindings,
  type Derived,
  type Dimension,
  type Finding,
  type Format,
  type Ghost,
  type HardwareItem,
  type Part,
  type ShopStep,
  type Stage,
  type Staged,
} from '../model/index.js';
import { findFamily, listFamilies, type FieldProblem, type ReadValue } from '../parts/index.js';
import type { Unit } from '../units/index.js';
import { createFormat } from './format.js';
import { readNaming } from './naming.js';
import { placementOfOne } from './nests.js';
import { readProcess, type GivenProcess, type ProcessInput } from './process-choice.js';
import { settleProcess, type SettledProcess } from './process.js';
import { provePart } from './prove-part.js';
import { wordProblems } from './read-problems.js';
import type { ShopFacts } from './shop.js';

/** What is asked for. Nothing of it is believed. */
export interface PartRequest {
  /** Id of the family, for example `adapter-plate`. */
  readonly family: string;
  /** Parameters as typed, as numbers (mm) or as stored. */
  readonly parameters: unknown;
  /** Unit of a bare number in a text, and of what findings say. */
  readonly unit: Unit;
  readonly name?: string;
  readonly quantity?: number;
  readonly process?: ProcessInput;
  /** The row of the job that it comes from. */
  readonly rowId?: string;
}

/** The same from the network or a file, the process not looked at yet. */
export interface UncheckedRequest extends Omit<PartRequest, 'process'> {
  readonly process?: unknown;
}

/** Stages in order; a run may stop after any of them and go on later. */
export const STAGES = ['read', 'draw', 'settle', 'check', 'print', 'plan', 'estimate'] as const;
export type StageName = (typeof STAGES)[number];

/** A run so far: plain data, so that it can be kept and taken further. */
export interface Progress {
  readonly request: UncheckedRequest;
  readonly shop: ShopFacts;
  readonly format: Format;
  /** Stages done. */
  readonly done: readonly StageName[];
  readonly problems: readonly FieldProblem[];
  readonly findings: readonly Finding[];
  readonly choice?: GivenProcess;
  readonly read?: ReadValue;
  readonly part?: Part;
  readonly process?: SettledProcess;
  readonly plan?: CutPlan;
  readonly figures?: CutFigures;
  readonly print?: PrintSpecs;
}

/** What a print of the part shows besides the part. */
export interface PrintSpecs {
  readonly dimensions: readonly Dimension[];
  readonly ghosts: readonly Ghost[];
  readonly derived: readonly Derived[];
  readonly steps: readonly ShopStep[];
  readonly hardware: readonly HardwareItem[];
}

/** Everything that a whole run gives. Lengths mm, areas mm², mass of one copy in kg. */
export interface PartValue extends PrintSpecs {
  /** Plain JSON to store; reading it again gives the same part. */
  readonly parameters: ReadValue['parameters'];
  readonly part: Part;
  readonly process: SettledProcess;
  readonly plan: CutPlan;
  readonly figures: CutFigures;
  readonly area: number;
  /** Finished outline and openings. */
  readonly perimeter: number;
  readonly mass: number;
  readonly bounds: Bounds;
}

export interface PartRun {
  readonly family: string;
  readonly unit: Unit;
  readonly done: readonly StageName[];
  /** What could not be read. With problems there is no value. */
  readonly problems: readonly FieldProblem[];
  /** Worst first. A stop among them withholds files. */
  readonly findings: readonly Finding[];
  /** Absent while something is missing: a problem, a part that cannot be drawn, or a run that stopped early. */
  readonly value?: PartValue;
}

/** A stage either adds to the progress, or finds that it has nothing to work on. */
type StageRun = (progress: Progress) => Partial<Progress>;

const RUNS: Readonly<Record<StageName, StageRun>> = {
  read: ({ request }) => {
    const family = findFamily(request.family);
    if (family === undefined) {
      const known = listFamilies().map(({ id }) => id);
      return {
        problems: [
          {
            field: 'family',
            says: `There is no part family "${request.family}"; there are ${known.join(', ')}.`,
          },
        ],
      };
    }
    const read = family.read(request.parameters, request.unit);
    const process = readProcess(request.process, request.unit);
    const problems = [
      ...(read.ok ? [] : wordProblems(read.problems, family, request.parameters)),
      ...process.problems,
      ...readNaming(request),
    ];
    return problems.length > 0 || !read.ok ? { problems } : { read: read.value, choice: process.value };
  },

  draw: ({ request, read, format }) => {
    if (read === undefined) return {};
    const drawn = guarded('draw', undefined, () => read.draw({ format }));
    const part = drawn.value;
    if (part === undefined) return { findings: drawn.findings };
    const unsound = provePart(part);
    if (unsound.length > 0) return { findings: [...drawn.findings, ...unsound] };
    const named: Part = {
      ...part,
      ...(request.name === undefined ? {} : { name: request.name }),
      ...(request.quantity === undefined ? {} : { quantity: request.quantity }),
    };
    return { part: named, findings: drawn.findings };
  },

  settle: ({ part, choice, shop, format }) => {
    if (part === undefined || choice === undefined) return {};
    const settled = settleProcess(part, choice, shop, format);
    return settled.ok
      ? { process: settled.value, findings: settled.value.findings }
      : { problems: [settled.problem] };
  },

  check: ({ read, part, process }) => {
    if (read === undefined || part === undefined || process === undefined) return {};
    const own = read.check(part, process.facts);
    return {
      findings: [...own, ...checkToolsOnHand(part, process.facts), ...checkNamedUse(part, own)],
    };
  },

  print: ({ read, part, process, format }) =>
    read === undefined || part === undefined || process === undefined
      ? {}
      : {
          print: {
            dimensions: read.dimensions(part, { format }),
            ghosts: read.ghosts(part, process.facts),
            derived: read.derived(part, { format }),
            steps: read.steps(part, process.facts),
            hardware: read.hardware(part, process.facts),
          },
        },

  plan: ({ request, part, process, format }) => {
    if (part === undefined || process === undefined) return {};
    // One unplaced part is a nest of one: its cut file takes the same path as a plate's.
    const placement = placementOfOne(request.rowId ?? request.family);
    const planned = guarded('plan', undefined, () =>
      planCuts([{ placement, part }], process.settings, format),
    );
    return planned.value === undefined
      ? { findings: planned.findings }
      : { plan: planned.value, findings: planned.findings };
  },

  estimate: ({ plan }) => (plan === undefined ? {} : { figures: figuresOf(plan) }),
};

/** Runs a stage whose geometry may turn out impossible; that is a stop finding, not a failure of the program. */
function guarded<T>(stage: Stage, nothing: T, run: () => Staged<T>): Staged<T> {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    return {
      value: nothing,
      findings: [
        {
          code: 'impossible-shape',
          level: 'stop',
          stage,
          subject: {},
          title: 'These sizes give no part that can be cut',
          says: error.message,
          source: {
            title: 'Plane geometry',
            where: 'contours may not cross or touch themselves',
            certainty: 'common practice',
          },
        },
      ],
    };
  }
}

/** A run at its start. */
export function startRun(request: UncheckedRequest, shop: ShopFacts): Progress {
  return { request, shop, format: createFormat(request.unit), done: [], problems: [], findings: [] };
}

/**
 * Takes a run further, up to and including a stage. Stages that are done are not done again.
 * @param until the last stage to do
 */
export function continueRun(progress: Progress, until: StageName = 'estimate'): Progress {
  let current = progress;
  for (const stage of STAGES.slice(progress.done.length, STAGES.indexOf(until) + 1)) {
    const added = RUNS[stage](current);
    current = {
      ...current,
      ...added,
      done: [...current.done, stage],
      problems: [...current.problems, ...(added.problems ?? [])],
      findings: [...current.findings, ...(added.findings ?? [])],
    };
  }
  return current;
}

/** What a run has come to: findings sorted and tied to their row, and the value if it is whole. */
export function resultOf(progress: Progress): PartRun {
  const { request, done, problems, read, part, process, plan, figures, print } = progress;
  const { family, unit, rowId } = request;
  const findings = sortFindings(
    progress.findings.map((finding) => ({
      ...finding,
      ...(rowId === undefined ? {} : { subject: { ...finding.subject, rowId } }),
      // Formulas are worked in millimetres whatever the job's unit, and must not read as inches.
      ...(unit === 'in' && finding.formula !== undefined ? { formula: `in mm: ${finding.formula}` } : {}),
    })),
  );
  const run: PartRun = { family, unit, done, problems, findings };
  if (
    problems.length > 0 ||
    read === undefined ||
    part === undefined ||
    process === undefined ||
    plan === undefined ||
    figures === undefined ||
    print === undefined
  ) {
    return run;
  }
  const material = findMaterial(part.material);
  return {
    ...run,
    value: {
      parameters: read.parameters,
      part,
      process,
      plan,
      figures,
      ...print,
      area: netArea(part),
      perimeter: perimeterOf(part),
      mass: massOf(part, material.found ? material.row.kilogramsPerCubicMetre : Number.NaN),
      bounds: boundsOf(outlineOf(part).contour),
    },
  };
}

/**
 * Runs the whole flow for one part.
 * @param request family, parameters and what is known of the cut; it may come from anywhere
 * @param shop chart, machine and rack; `startingShop` before anything is entered
 * @returns problems with the fields that could not be read, findings worst first, and the value when there is one;
 * never throws on what was typed
 * @example runPart({ family: 'adapter-plate', parameters: { outside: 150 }, unit: 'mm' }, startingShop)
 */
export function runPart(request: UncheckedRequest, shop: ShopFacts): PartRun {
  return resultOf(continueRun(startRun(request, shop)));
}
