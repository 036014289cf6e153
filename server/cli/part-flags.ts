// The flags of `fishplate part FAMILY`: those of the family's parameters and those of every part.
import { PROCESS_FIELDS } from '../../parts-library/job/index.js';
import type { Kit } from '../../parts-library/kits/index.js';
import type { Family, Field } from '../../parts-library/parts/index.js';
import { flagName, type Flag } from './flags.js';

/** Flags that every family has, with their help. */
export const COMMON_FLAGS: readonly (Flag & { readonly value?: string; readonly help: string })[] = [
  {
    name: 'params',
    takesValue: true,
    value: 'FILE',
    help: 'Parameters from a JSON file; flags win over it. "-" reads standard input.',
  },
  {
    name: 'unit',
    takesValue: true,
    value: 'mm|in',
    help: 'Unit of numbers without one, and of the report. Default mm.',
  },
  {
    name: 'name',
    takesValue: true,
    value: 'TEXT',
    help: 'What the part is called; the files take it too. Default: the family.',
  },
  { name: 'quantity', takesValue: true, value: 'N', help: 'How many are wanted. Default 1.' },
  {
    name: 'process',
    takesValue: true,
    value: 'CLASS',
    help: 'Process class of the cut chart, for example air-45A. Default: by thickness.',
  },
  ...PROCESS_FIELDS.map(({ name, title, help, unit }) => ({
    name: flagName(name),
    takesValue: true,
    value: unit === 's' ? 'SECONDS' : unit === 'mm' ? 'LENGTH' : 'SPEED',
    help: `${title}. ${help}`,
  })),
  {
    name: 'out',
    takesValue: true,
    value: 'DIR',
    help: 'Folder for the files; made if missing. Without it nothing is written.',
  },
  {
    name: 'template',
    takesValue: true,
    value: 'a4|letter',
    help: 'A paper template at true size beside the files, as PDF and SVG, to try on the real parts.',
  },
  { name: 'dxf', takesValue: true, value: 'r12|r2000', help: 'Version of the DXF files. Default r12.' },
  { name: 'dxf-unit', takesValue: true, value: 'mm|in', help: 'Unit of the DXF files. Default mm.' },
  {
    name: 'despite-findings',
    takesValue: false,
    help: 'Write files although a finding says stop; the files say so too.',
  },
  { name: 'json', takesValue: false, help: 'One JSON object instead of the report. Lengths in mm.' },
  { name: 'help', takesValue: false, help: 'This list.' },
];

/** Parameters that take a value on the command line: a group only gathers others, a drawing is brought in by itself. */
export const settable = (fields: readonly Field[]): readonly Field[] =>
  fields.filter(({ kind }) => kind !== 'group' && kind !== 'drawing');

const fieldFlags = (fields: readonly Field[]): readonly Flag[] =>
  settable(fields).map(({ path }) => ({ name: flagName(path), takesValue: true }));

export const flagsOf = (family: Family): readonly Flag[] => [...fieldFlags(family.fields), ...COMMON_FLAGS];

/** Of the common flags, those that mean something for several parts at once. */
const OF_KITS: ReadonlySet<string> = new Set([
  'unit',
  'out',
  'dxf',
  'dxf-unit',
  'despite-findings',
  'json',
  'help',
]);
export const KIT_FLAGS = COMMON_FLAGS.filter(({ name }) => OF_KITS.has(name));

export const flagsOfKit = ({ fields }: Kit): readonly Flag[] => [...fieldFlags(fields), ...KIT_FLAGS];

/** Of the common flags, those that mean something where nothing is cut. */
const OF_DRIVES: ReadonlySet<string> = new Set(['params', 'unit', 'json', 'help']);
export const DRIVE_FLAGS = COMMON_FLAGS.filter(({ name }) => OF_DRIVES.has(name));

export const flagsOfDrive = (fields: readonly Field[]): readonly Flag[] => [
  ...fieldFlags(fields),
  ...DRIVE_FLAGS,
];

/** The flag behind the name of a field in a problem. */
export function flagOfField(field: string): string {
  if (field === 'process.processClass') return '--process';
  return `--${flagName(field.replace(/^process\./, ''))}`;
}
