// The command that reproduces what is on screen: family, entries as flags, and where to write.
import type { Field } from '../../parts-library/parts/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { fieldText } from '../list/field-text.js';
import { valueAt } from '../state/values.js';

/** `boltCircle` as a flag: `--bolt-circle`; a group's field keeps its dot, `--pattern2.bolts`. */
export const flagOf = (path: string): string =>
  `--${path.replaceAll(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`;

/** Quoted for a POSIX shell when it needs to be. */
const quote = (text: string): string =>
  /^[A-Za-z0-9_.,:/=+-]+$/.test(text) ? text : `'${text.replaceAll("'", "'\\''")}'`;

/**
 * The command line for a part as it stands: only what was entered, so that starting values stay starting values.
 *
 * @example writeCommand('adapter-plate', fields, { hub: { typed: '57.15', mm: 57.15 } })
 * // "npx fishplate part adapter-plate --hub 57.15 --out adapter-plate"
 */
export function writeCommand(family: string, fields: readonly Field[], parameters: JsonObject): string {
  const flags = fields.flatMap((field) => {
    if (field.kind === 'group') return [];
    // The command line reads a bare number as millimetres, so the text has to mean the same there.
    const text = fieldText(field, valueAt(parameters, field.path), 'mm');
    return text === '' ? [] : [`${flagOf(field.path)} ${quote(text)}`];
  });
  return [`npx fishplate part ${family}`, ...flags, `--out ${quote(family)}`].join(' ');
}
