// The flags of `fishplate import FILE`: how a drawing is read, and those of the part that it becomes.
import { DRAWING_UNITS, LAYER_OPERATIONS } from '../../parts-library/files/index.js';
import type { DrawingOptions, LayerOperation } from '../../parts-library/files/index.js';
import type { Family } from '../../parts-library/parts/index.js';
import { readLength } from '../../parts-library/units/index.js';
import type { Flag } from './flags.js';
import type { InputProblem } from './outcome.js';
import { flagsOf } from './part-flags.js';
import { textOf, type Flags } from './part-request.js';

/** Flags of reading, with their help. */
export const READING_FLAGS: readonly (Flag & { readonly value: string; readonly help: string })[] = [
  {
    name: 'as',
    takesValue: true,
    value: 'NAME',
    help: 'What the part is called; the files take it too. Default: the file’s name.',
  },
  {
    name: 'file-unit',
    takesValue: true,
    value: 'UNIT',
    help: `What the file’s numbers are in: ${[...DRAWING_UNITS.keys()].join(', ')}. Needed where the file does not say.`,
  },
  {
    name: 'pick',
    takesValue: true,
    value: 'N',
    help: 'Which of several parts in the file, the largest being 1. Default 1.',
  },
  {
    name: 'layers',
    takesValue: true,
    value: 'LIST',
    help: `What is done along the lines of a layer: "bend=score, notes=ignore"; ${LAYER_OPERATIONS.join(', ')}. Default: by its name.`,
  },
  {
    name: 'lines',
    takesValue: true,
    value: 'WORD',
    help: 'What becomes of lines that close nothing: ignore, score or etch. Default ignore.',
  },
  {
    name: 'gap',
    takesValue: true,
    value: 'LENGTH',
    help: 'Ends no farther apart than this are joined. Default 0.05 mm.',
  },
  {
    name: 'arc-tolerance',
    takesValue: true,
    value: 'LENGTH',
    help: 'Farthest that arcs may lie from a curve they stand for. Default 0.01 mm.',
  },
  {
    name: 'save',
    takesValue: true,
    value: 'FILE',
    help: 'Keeps the drawing as a JSON file for "part own-outline --params FILE", and as the parameters of a row.',
  },
];

/** Flags of the part that mean nothing here: the drawing is the parameter file, its name is given with --as. */
const WITHOUT: ReadonlySet<string> = new Set(['params', 'name']);

export const importFlags = (family: Family): readonly Flag[] => [
  ...READING_FLAGS,
  ...flagsOf(family).filter(({ name }) => !WITHOUT.has(name)),
];

const OPTION_FLAGS: Readonly<Record<string, string>> = {
  unit: '--file-unit',
  part: '--pick',
  layers: '--layers',
  gap: '--gap',
  arcTolerance: '--arc-tolerance',
  lines: '--lines',
};

/** The flag behind an option of the reader. */
export const flagOfOption = (option: string): string | undefined => OPTION_FLAGS[option];

/** `bend=score, notes=ignore`; a name may hold anything but a comma, and an equals sign when another follows. */
function readLayers(text: string, problems: InputProblem[]): Readonly<Record<string, LayerOperation>> {
  const entries = text.split(',').flatMap((one): readonly (readonly [string, LayerOperation])[] => {
    const at = one.lastIndexOf('=');
    const word = one.slice(at + 1).trim();
    const operation = LAYER_OPERATIONS.find((known) => known === word);
    if (at > 0 && operation !== undefined) return [[one.slice(0, at).trim(), operation]];
    problems.push({
      field: 'layers',
      flag: '--layers',
      says: `is "${one.trim()}"; accepted is NAME=OPERATION with ${LAYER_OPERATIONS.join(', ')}.`,
    });
    return [];
  });
  return Object.fromEntries(entries);
}

/** What is said of the reading, or what is wrong with it. */
export function readingOptions(flags: Flags): {
  readonly options: DrawingOptions;
  readonly problems: readonly InputProblem[];
} {
  const problems: InputProblem[] = [];
  const unit = textOf(flags, 'unit') === 'in' ? 'in' : 'mm';
  const length = (name: string): number | undefined => {
    const text = textOf(flags, name);
    if (text === undefined) return undefined;
    const reading = readLength(text, { unit });
    if (reading.ok) return reading.value.mm;
    problems.push({ field: name, flag: `--${name}`, says: reading.problem.says });
    return undefined;
  };
  const pick = textOf(flags, 'pick');
  if (pick !== undefined && !/^\s*\d{1,6}\s*$/.test(pick))
    problems.push({
      field: 'pick',
      flag: '--pick',
      says: `is "${pick}"; accepted is a whole number from 1.`,
    });
  const lines = textOf(flags, 'lines');
  const made = (['ignore', 'score', 'etch'] as const).find((word) => word === lines);
  if (lines !== undefined && made === undefined)
    problems.push({
      field: 'lines',
      flag: '--lines',
      says: `is "${lines}"; accepted is ignore, score or etch.`,
    });
  const layers = textOf(flags, 'layers');
  const fileUnit = textOf(flags, 'file-unit');
  const gap = length('gap');
  const arcTolerance = length('arc-tolerance');
  return {
    options: {
      ...(fileUnit === undefined ? {} : { unit: fileUnit }),
      ...(pick === undefined ? {} : { part: Number(pick) }),
      ...(made === undefined ? {} : { lines: made }),
      ...(layers === undefined ? {} : { layers: readLayers(layers, problems) }),
      ...(gap === undefined ? {} : { gap }),
      ...(arcTolerance === undefined ? {} : { arcTolerance }),
    },
    problems,
  };
}
