// The command that reproduces what is on screen: family, entries as flags, how it is cut, and where to write.
import { PROCESS_FIELDS, type Job, type Row } from '../../parts-library/job/index.js';
import type { Family } from '../../parts-library/parts/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { fieldText } from '../list/field-text.js';
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
  return [
    `npx fishplate part ${family.id}`,
    ...(unit === 'in' ? ['--unit in'] : []),
    ...entries,
    ...(process.processClass === undefined ? [] : [flag('--process', process.processClass)]),
    ...cut,
    flag('--name', row.name),
    ...(row.quantity === 1 ? [] : [flag('--quantity', String(row.quantity))]),
    flag('--out', row.id),
  ].join(' ');
}
