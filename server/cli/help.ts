// Help of the command line, made from the same declarations as the form and the API.
import type { Kit } from '../../parts-library/kits/index.js';
import type { Family, Field } from '../../parts-library/parts/index.js';
import { flagName } from './flags.js';
import { READING_FLAGS } from './import-flags.js';
import { entry, paragraph } from './layout.js';
import { COMMON_FLAGS, DRIVE_FLAGS, KIT_FLAGS, settable } from './part-flags.js';

export const HELP = `fishplate: measured parts in, flat plate parts out

  fishplate part FAMILY [parameters] --out DIR   draw, check and write the files of one part
  fishplate part FAMILY --help                   its parameters, and how to measure them
  fishplate parts [--json]                       the part families
  fishplate import FILE [reading] --out DIR      a part from your own DXF or SVG drawing
  fishplate kit KIT [numbers] --out DIR          the same for several parts from one set of numbers
  fishplate kits [--json]                        the kits
  fishplate drive [numbers] [--json]             chain, speed, pull, other sprockets, the hill
  fishplate serve [--port N] [--data DIR]        open the bench in a browser
  fishplate --version

Exit codes: 0 done, 1 failed, 2 bad input, 3 a stop finding (nothing is written).

Example
  fishplate part adapter-plate --bolts 6 --bolt-circle 110 --bolt M10 --holes drill \\
    --hub 57.15 --fit 0.2 --outside 150 --thickness 6 --material S275 --kerf 1.6 --out adapter
`;

const COLUMN = 28;

const UNITS: Readonly<Record<Field['kind'], string>> = {
  length: 'LENGTH',
  lengths: 'LENGTHS',
  measure: 'MEASURE',
  count: 'N',
  angle: 'DEGREES',
  percent: 'PERCENT',
  torque: 'TORQUE',
  force: 'FORCE',
  mass: 'MASS',
  speed: 'SPEED',
  time: 'TIME',
  rotation: 'RPM',
  thread: 'THREAD',
  material: 'GRADE',
  chain: 'CHAIN',
  holes: 'HOLES',
  choice: 'WORD',
  text: 'TEXT',
  factor: 'NUMBER',
  drawing: '',
  group: '',
};

/** Unit of the bounds of each kind. */
const BOUNDS: Readonly<Partial<Record<Field['kind'], string>>> = {
  length: ' mm',
  lengths: ' mm',
  measure: ' mm',
  holes: ' mm',
  angle: ' degrees',
  percent: ' %',
  torque: ' N·m',
  force: ' N',
  mass: ' kg',
  speed: ' mm/min',
  time: ' s',
  rotation: ' rpm',
};

function factsOf(field: Field): string {
  const { kind, min, max, choices, default: standard, appliesWhen } = field;
  return [
    ...(choices === undefined ? [] : [choices.map(({ value }) => value).join(' | ')]),
    ...(min === undefined || max === undefined ? [] : [`${min} to ${max}${BOUNDS[kind] ?? ''}`]),
    standard === undefined ? 'may be left out' : `default ${standard}`,
    ...(appliesWhen === undefined
      ? []
      : [`for --${flagName(appliesWhen.field)} ${appliesWhen.values.join(', ')}`]),
  ].join('; ');
}

function fieldHelp(field: Field): string {
  const flag = `--${flagName(field.path)} ${UNITS[field.kind]}`;
  return [
    entry(flag, `${field.title}. ${field.help}`, COLUMN),
    paragraph(`${factsOf(field)}.`, COLUMN),
    ...(field.measuring === undefined ? [] : [paragraph(`Measuring: ${field.measuring}`, COLUMN)]),
  ].join('');
}

/** Fields under their headings. */
function sectionsOf(fields: readonly Field[]): readonly string[] {
  const groups = [...new Set(fields.map(({ group }) => group))];
  return groups.map(
    (group) =>
      `\n${group}\n${fields
        .filter((field) => field.group === group)
        .map(fieldHelp)
        .join('')}`,
  );
}

const flagHelp = (flags: typeof COMMON_FLAGS): string =>
  flags
    .map(({ name, value, help }) => entry(`--${name}${value === undefined ? '' : ` ${value}`}`, help, COLUMN))
    .join('');

const LENGTHS = paragraph(
  'A LENGTH is typed as it is read: 35, 35mm, 1-3/8 in, 7/16 in, 2*17.5+3, 57.1±0.1. A number without a unit is in mm, or in inches with --unit in.',
  0,
);

/** Every parameter of a family with unit, bounds, default and where to put the caliper. */
export function familyHelp(family: Family): string {
  return [
    `fishplate part ${family.id} [parameters] [--out DIR] [--json]\n\n`,
    paragraph(`${family.title}. ${family.summary}`, 0),
    LENGTHS,
    ...sectionsOf(settable(family.fields)),
    `\nEvery part\n${flagHelp(COMMON_FLAGS)}`,
  ].join('');
}

/** Every number of a kit, the same way. */
export function kitHelp(kit: Kit): string {
  return [
    `fishplate kit ${kit.id} [numbers] [--out DIR] [--json]\n\n`,
    paragraph(`${kit.title}. ${kit.summary}`, 0),
    LENGTHS,
    ...sectionsOf(settable(kit.fields)),
    `\nEvery kit\n${flagHelp(KIT_FLAGS)}`,
  ].join('');
}

/** Everything that can be said of a drive, the same way. */
export function driveHelp(fields: readonly Field[]): string {
  return [
    'fishplate drive [numbers] [--json]\n\n',
    paragraph(
      'Drive numbers. The chain from what is measured of it, ratio and road speed, what another sprocket does, whether it climbs the hill, the chain’s length, centres and slack, and its pull against its strength. What is left out is left out of the answer.',
      0,
    ),
    LENGTHS,
    ...sectionsOf(settable(fields)),
    `\nEvery drive\n${flagHelp(DRIVE_FLAGS)}`,
    `\nExample\n  fishplate drive --motor-teeth 12 --wheel-teeth 48 --chain 08B --centres 420 --motor-speed 1400 \\\n`,
    '    --motor-torque "38 N·m" --tyre-diameter 406 --mass "310 kg" --grade "18 %" --driven-mass "190 kg"\n',
  ].join('');
}

/** The kits, one entry each. */
export const kitsText = (kits: readonly Kit[]): string =>
  kits.map(({ id, summary }) => entry(id, summary, 20)).join('') +
  '\nTheir numbers: fishplate kit KIT --help\n';

/** The families, one entry each. */
export const familiesText = (families: readonly Family[]): string =>
  families.map(({ id, summary }) => entry(id, summary, 20)).join('') +
  '\nTheir parameters: fishplate part FAMILY --help\n';

/** How a drawing is read; the part's own flags are in its family's help. */
export function importHelp(): string {
  const reading = READING_FLAGS.map(({ name, value, help }) => entry(`--${name} ${value}`, help, COLUMN));
  return [
    'fishplate import FILE [reading] [parameters] [--out DIR] [--json]\n\n',
    paragraph(
      'Brings in a DXF or SVG drawing ("-" reads standard input) and makes a part of it: contours closed and nested, curves as true arcs, layers as what is done along them. What was mended, assumed or left out is told.',
      0,
    ),
    `\nReading\n${reading.join('')}\n`,
    paragraph(
      'Besides, every flag of "fishplate part own-outline --help" but --params and --name, for example --thickness, --material, --kerf, --out.',
      0,
    ),
  ].join('');
}
