// The command that reproduces what is on screen: family, entries as flags, how it is cut, and where to write.
import { PROCESS_FIELDS, type Job, type Row } from '../../parts-library/job/index.js';
import type { Family } from '../../parts-library/parts/index.js';
import type { Drawing, JsonObject } from '../../parts-library/model/index.js';
import { fieldText } from '../list/field-text.js';
import { isDrawing, operationsByLayer } from '../state/drawing-edits.js';
import { valueAt } from '../state/values.js';

/** `boltCircle` as a flag: `--bolt-circle`; a group's field keeps its dot, `--pattern2.bolts`. */
export const flagOf = (path: string): string =>
  `--${path.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`;

/** Quoted for a POSIX shell when it needs to be. */
const quote = (text: string): string =>
  /^[A-Za-z0-9_.,:/=+-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;

/** A flag with its value; one that starts with a dash is tied to its flag. */
export const flag = (name: string, text: string): string =>
  `${name}${text.startsWith('-') ? '=' : ' '}${quote(text)}`;

const UNIT_WORDS = { mm: 'mm', 'mm/min': 'mm/min', s: 's' } as const;

/** What is on screen. */
export interface OnScreen {
  readonly family: Family;
  readonly row: Row;
  /** What was entered, as it was understood; starting values left out, so that they stay starting values. */
  readonly entered: JsonObject;
  readonly unit: Job['unit'];
  /** What was given about the cut of this plate. */
  readonly process: Partial<Job['choices']['process'][number]>;
}

/** The drawing that was brought in, where the part is made of one. */
function drawingOf(family: Family, entered: JsonObject): Drawing | undefined {
  const field = family.fields.find(({ kind }) => kind === 'drawing');
  const value: unknown = field === undefined ? undefined : valueAt(entered, field.path);
  return isDrawing(value) ? value : undefined;
}

/** Bringing the same file in, read as it was: its unit, the part that was picked, what is done on each layer. */
function importing(drawing: Drawing): readonly string[] {
  const { name, unit, part } = drawing.source;
  const layers = operationsByLayer(drawing).map(([layer, operation]) => `${layer}=${operation}`);
  return [
    `npx fishplate import ${quote(name)}`,
    flag('--file-unit', unit),
    ...(part === 1 ? [] : [flag('--pick', String(part))]),
    ...(layers.length === 0 ? [] : [flag('--layers', layers.join(', '))]),
  ];
}

/**
 * The command line for a part as it stands.
 *
 * @example writeCommand(adapterWithHub5715)
 * // "npx fishplate part adapter-plate --hub 57.15 --name 'Sprocket adapter' --out sprocket-adapter"
 */
export function writeCommand({ family, row, entered, unit, process }: OnScreen): string {
  const entries = family.fields.flatMap((field) => {
    const text = field.kind === 'group' ? '' : fieldText(field, valueAt(entered, field.path), unit);
    return text === '' ? [] : [flag(flagOf(field.path), text)];
  });
  const cut = PROCESS_FIELDS.flatMap(({ name, unit: measuredIn }) => {
    const value = process[name];
    return value === undefined ? [] : [flag(flagOf(name), `${value} ${UNIT_WORDS[measuredIn]}`)];
  });
  const drawing = drawingOf(family, entered);
  return [
    ...(drawing === undefined ? [`npx fishplate part ${family.id}`] : importing(drawing)),
    ...(unit === 'in' ? ['--unit in'] : []),
    ...entries,
    ...(process.processClass === undefined ? [] : [flag('--process', process.processClass)]),
    ...cut,
    flag(drawing === undefined ? '--name' : '--as', row.name),
    ...(row.quantity === 1 ? [] : [flag('--quantity', String(row.quantity))]),
    flag('--out', row.id),
  ].join(' ');
}
