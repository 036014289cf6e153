// `fishplate import FILE`: reads a drawing, tells what was mended, and makes a part of it as `part own-outline` would.
import { readFile, stat } from 'node:fs/promises';
import { basename, dirname, resolve } from 'node:path';
import { buffer } from 'node:stream/consumers';
import { readDrawing, type ReadDrawing } from '../../parts-library/files/index.js';
import {
  DRAWING_FAMILY,
  drawingRow,
  runPart,
  startingShop,
  type UncheckedRequest,
} from '../../parts-library/job/index.js';
import { findFamily, type Family } from '../../parts-library/parts/index.js';
import { writeDecimal } from '../../parts-library/units/index.js';
import { readFlags } from './flags.js';
import { importHelp } from './help.js';
import { flagOfOption, importFlags, readingOptions } from './import-flags.js';
import { badInput, type InputProblem, type Outcome } from './outcome.js';
import { finish } from './part-command.js';
import { flagOfField } from './part-flags.js';
import { askedPart, textOf, type AskedPart, type Flags } from './part-request.js';
import { entry } from './layout.js';
import { writeFiles, WriteProblem } from './write-files.js';

/** Largest drawing, bytes; what is read of it is bounded besides. */
const LARGEST_FILE = 16_000_000;

/** The bytes of a file, or of standard input for `-`; undefined when there are none, with the reason. */
async function bytesOf(path: string): Promise<{ readonly bytes?: Uint8Array; readonly says: string }> {
  try {
    if (path === '-') return { bytes: await buffer(process.stdin), says: '' };
    const { size } = await stat(path);
    if (size > LARGEST_FILE)
      return {
        says: `"${path}" has ${size} bytes; accepted are up to ${LARGEST_FILE}. Leave out what is not cut.`,
      };
    return { bytes: await readFile(path), says: '' };
  } catch {
    return { says: `"${path}" cannot be read; accepted is the path of a DXF or SVG file.` };
  }
}

/** What was read, before the report of the part. */
function readingText({ drawing, layers, parts }: ReadDrawing): string {
  const { name, format, unit } = drawing.source;
  const size = ({ width, height }: { readonly width: number; readonly height: number }): string =>
    `${writeDecimal(width, 2)} × ${writeDecimal(height, 2)} mm`;
  return [
    'Drawing\n',
    entry('file', `${name} (${format.toUpperCase()}), numbers in ${unit}`, 16),
    entry(
      'layers',
      layers.map((layer) => `${layer.name}: ${layer.operation} (${layer.count})`).join('; '),
      16,
    ),
    ...(parts.length < 2
      ? []
      : [
          entry(
            'parts',
            parts
              .slice(0, 12)
              .map((part) => `${part.number}: ${size(part)}`)
              .join('; '),
            16,
          ),
        ]),
    '\n',
  ].join('');
}

/** Keeps the request as a file for `part own-outline --params`. */
async function save(
  path: string,
  { family: _family, ...request }: UncheckedRequest,
): Promise<InputProblem | undefined> {
  const file = resolve(path);
  try {
    await writeFiles(dirname(file), [{ name: basename(file), text: `${JSON.stringify(request)}\n` }]);
    return undefined;
  } catch (error) {
    if (error instanceof WriteProblem) return { field: 'save', flag: '--save', says: error.message };
    throw error;
  }
}

function askFor(family: Family, flags: Flags, { drawing }: ReadDrawing): AskedPart {
  const { name, parameters } = drawingRow(drawing);
  return askedPart(family, flags, { parameters, name: textOf(flags, 'as') ?? name });
}

/** Runs the command on the arguments behind `import`. */
export async function importCommand(args: readonly string[]): Promise<Outcome> {
  const json = args.includes('--json');
  const family = findFamily(DRAWING_FAMILY);
  if (family === undefined) throw new Error('The catalogue has no family for drawings.');
  const flags = readFlags(args, importFlags(family));
  if (flags.values.has('help')) return { code: 0, out: importHelp() };
  const [path, ...stray] = flags.positionals;
  const reading = readingOptions(flags.values);
  const problems: readonly InputProblem[] = [
    ...flags.problems,
    ...(path === undefined ? [{ field: 'file', says: 'Name the drawing, for example bracket.dxf.' }] : []),
    ...stray.map((word) => ({
      field: 'arguments',
      says: `"${word}" stands alone; one drawing is brought in at a time.`,
    })),
    ...reading.problems,
  ];
  if (path === undefined || problems.length > 0) return badInput(problems, json);
  const { bytes, says } = await bytesOf(path);
  if (bytes === undefined) return badInput([{ field: 'file', says }], json);
  const name = path === '-' ? 'drawing' : basename(path);
  const { value, findings } = await readDrawing(bytes, { ...reading.options, name });
  if (value === undefined) {
    const refused = findings.map(({ field = 'file', says: why }): InputProblem => {
      const flag = flagOfOption(field);
      return { field, says: why, ...(flag === undefined ? {} : { flag }) };
    });
    return badInput(refused, json);
  }
  const asked = askFor(family, flags.values, value);
  if (asked.problems.length > 0) return badInput(asked.problems, json);
  const kept = textOf(flags.values, 'save');
  const unkept = kept === undefined ? undefined : await save(kept, asked.request);
  if (unkept !== undefined) return badInput([unkept], json);
  const run = runPart(asked.request, startingShop);
  if (run.problems.length > 0) {
    const refused = run.problems.map((problem) => ({ ...problem, flag: flagOfField(problem.field) }));
    return badInput(refused, json);
  }
  return finish(run, asked, {
    json,
    out: textOf(flags.values, 'out'),
    despiteFindings: flags.values.has('despite-findings'),
    before: {
      text: readingText(value),
      json: { reading: { layers: value.layers, parts: value.parts, findings } },
    },
  });
}
