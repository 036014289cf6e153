// The first look at a DXF file: pairs of lines, numbers that are numbers, sections that close; the rest reads only that.
import { READ_LIMITS } from './limits.js';
import { DrawingProblem } from './problem.js';

/** A group with the line of the file that its code stands on, counted from 1. */
export interface FileGroup {
  readonly code: number;
  readonly value: string;
  readonly line: number;
}

export interface DxfSections {
  /** Header variables by name, the value of their first group. */
  readonly header: ReadonlyMap<string, string>;
  /** Layers that are off or frozen. */
  readonly hiddenLayers: ReadonlySet<string>;
  readonly blocks: readonly FileGroup[];
  readonly entities: readonly FileGroup[];
}

const WHOLE = /^\s*[+-]?\d{1,5}\s*$/;
const NUMBER = /^\s*[+-]?(\d+\.?\d*|\.\d+)([eEdD][+-]?\d+)?\s*$/;

/** The longest line of a value, characters. */
const LONGEST_LINE = 4096;

/** Codes of the DXF reference whose values are floating-point numbers or whole numbers, as far as shapes use them. */
const isNumeric = (code: number): boolean =>
  (code >= 10 && code <= 99) || (code >= 210 && code <= 239) || (code >= 270 && code <= 289);

/** Pairs of lines, one by one. Comments (999) and the data of other programs (1000 and up) are passed over. */
function* groupsOf(text: string): Generator<FileGroup> {
  const lines = text.split(/\r\n|\r|\n/);
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = lines[i] ?? '';
    const value = lines[i + 1] ?? '';
    if (!WHOLE.test(code)) {
      if (code.trim() === '' && lines.slice(i).every((line) => line.trim() === '')) return;
      throw new DrawingProblem(
        `Line ${i + 1} is "${code.trim().slice(0, 40)}"; a DXF file has the number of a group there. The file is damaged or no DXF.`,
      );
    }
    if (value.length > LONGEST_LINE) {
      throw new DrawingProblem(`Line ${i + 2} has ${value.length} characters; no DXF value is so long.`);
    }
    const group = { code: Number(code), value: value.trim(), line: i + 1 };
    if (group.code < 999) yield group;
  }
}

function checkNumber({ code, value, line }: FileGroup): void {
  if (!isNumeric(code)) return;
  if (!NUMBER.test(value)) {
    throw new DrawingProblem(
      `Line ${line + 1} is "${value.slice(0, 40)}", which is not a number (group ${code}). The file is damaged.`,
    );
  }
  if (Math.abs(Number(value.replace(/[dD]/, 'e'))) > READ_LIMITS.coordinate) {
    throw new DrawingProblem(
      `Line ${line + 1} is ${value}; numbers beyond ${READ_LIMITS.coordinate} are a slip. Move the drawing near its origin.`,
    );
  }
}

/**
 * Splits a DXF text into what drawings are read from.
 * @throws DrawingProblem with the line, for anything that is not whole
 */
export function dxfSections(text: string): DxfSections {
  const header = new Map<string, string>();
  const hiddenLayers = new Set<string>();
  const blocks: FileGroup[] = [];
  const entities: FileGroup[] = [];
  let section: string | undefined;
  let opened = 0;
  let variable: string | undefined;
  let layer: { name: string; hidden: boolean } | undefined;
  let last = '';
  const closeLayer = (): void => {
    if (layer?.hidden === true) hiddenLayers.add(layer.name);
    layer = undefined;
  };
  for (const group of groupsOf(text)) {
    const { code, value, line } = group;
    if (code === 0) {
      last = value;
      closeLayer();
      if (value === 'EOF') break;
      if (value === 'SECTION') {
        if (section !== undefined)
          throw new DrawingProblem(`Section ${section} of line ${opened} is not closed before line ${line}.`);
        section = '';
        opened = line;
        continue;
      }
      if (value === 'ENDSEC') {
        section = undefined;
        continue;
      }
      if (section === undefined)
        throw new DrawingProblem(`Line ${line + 1}: "${value.slice(0, 40)}" stands outside every section.`);
    }
    if (section === '') {
      if (code !== 2) throw new DrawingProblem(`The section of line ${opened} has no name.`);
      section = value;
      continue;
    }
    if (section === 'HEADER') {
      if (code === 9) variable = value;
      else if (variable !== undefined && !header.has(variable)) header.set(variable, value);
    } else if (section === 'TABLES') {
      if (code === 0) layer = value === 'LAYER' ? { name: '', hidden: false } : undefined;
      else if (layer !== undefined && code === 2) layer.name = value;
      // Off is a negative colour, frozen the first bit of the flags.
      else if (
        layer !== undefined &&
        ((code === 62 && Number(value) < 0) || (code === 70 && Number(value) & 1))
      )
        layer.hidden = true;
    } else if (section === 'BLOCKS' || section === 'ENTITIES') {
      checkNumber(group);
      (section === 'BLOCKS' ? blocks : entities).push(group);
    }
  }
  if (section !== undefined) {
    throw new DrawingProblem(
      `The file ends within section ${section === '' ? 'of no name' : section}, behind ${last}: it was cut off. Save it again.`,
    );
  }
  return { header, hiddenLayers, blocks, entities };
}
