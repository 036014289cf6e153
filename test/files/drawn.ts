// Small DXF and SVG texts for the tests of their readers, and what came of them in few words.
import { readDrawing, type DrawingOptions, type ReadDrawing } from '../../parts-library/files/index.js';
import { areaOf, lengthOf, makeContour } from '../../parts-library/geometry/index.js';
import type { DrawnShape, Finding } from '../../parts-library/model/index.js';

type Value = string | number;

/** Groups of one entity: `entity('CIRCLE', 'holes', [10, 5], [20, 5], [40, 3])`. */
export const entity = (
  type: string,
  layer: string,
  ...groups: readonly (readonly [number, Value])[]
): string => [[0, type], [8, layer], ...groups].map(([code, value]) => `${code}\n${value}`).join('\n');

export const line = (layer: string, x: number, y: number, u: number, v: number): string =>
  entity('LINE', layer, [10, x], [20, y], [11, u], [21, v]);

export const circle = (layer: string, x: number, y: number, r: number, z = 1): string =>
  entity('CIRCLE', layer, [10, x], [20, y], [40, r], [210, 0], [220, 0], [230, z]);

export const polyline = (
  layer: string,
  corners: readonly (readonly [x: number, y: number, bulge?: number])[],
  closed = true,
  ...more: readonly (readonly [number, Value])[]
): string =>
  entity(
    'LWPOLYLINE',
    layer,
    [90, corners.length],
    [70, closed ? 1 : 0],
    ...more,
    ...corners.flatMap(([x, y, bulge]): readonly (readonly [number, Value])[] => [
      [10, x],
      [20, y],
      ...(bulge === undefined ? [] : [[42, bulge] as const]),
    ]),
  );

export const box = (layer: string, x: number, y: number, width: number, height: number): string =>
  polyline(layer, [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ]);

export const insert = (block: string, ...groups: readonly (readonly [number, Value])[]): string =>
  entity('INSERT', '0', [2, block], ...groups);

export const block = (
  name: string,
  base: readonly [number, number],
  ...entities: readonly string[]
): string =>
  [`0\nBLOCK\n8\n0\n2\n${name}\n70\n0\n10\n${base[0]}\n20\n${base[1]}`, ...entities, '0\nENDBLK\n8\n0'].join(
    '\n',
  );

const section = (name: string, content: readonly string[]): string =>
  [`0\nSECTION\n2\n${name}`, ...content, '0\nENDSEC'].join('\n');

/** A whole file; `units` is the value of $INSUNITS, 4 for millimetres, and is left out when undefined. */
export function dxf(
  entities: readonly string[],
  more: {
    readonly units?: number | undefined;
    readonly blocks?: readonly string[];
    readonly tables?: readonly string[];
  } = {
    units: 4,
  },
): string {
  const { blocks, tables } = more;
  const units = 'units' in more ? more.units : 4;
  return [
    section('HEADER', units === undefined ? [] : [`9\n$INSUNITS\n70\n${units}`]),
    ...(tables === undefined ? [] : [section('TABLES', tables)]),
    ...(blocks === undefined ? [] : [section('BLOCKS', blocks)]),
    section('ENTITIES', entities),
    '0\nEOF\n',
  ].join('\n');
}

/** An SVG of 100 x 100 mm whose user unit is a millimetre. */
export const svg = (
  content: string,
  attributes = 'width="100mm" height="100mm" viewBox="0 0 100 100"',
): string => `<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg" ${attributes}>${content}</svg>`;

export interface Told {
  readonly read: ReadDrawing;
  readonly findings: readonly Finding[];
  readonly codes: readonly string[];
  /** Shapes of one operation. */
  readonly of: (operation: DrawnShape['operation']) => readonly DrawnShape[];
  /** Area of the outline less its openings, mm². */
  readonly net: number;
}

export const areaOfShape = (shape: DrawnShape): number => areaOf(makeContour(shape.vertices));
export const lengthOfShape = (shape: DrawnShape): number =>
  shape.closed ? lengthOf(makeContour(shape.vertices)) : lengthOf({ vertices: shape.vertices });

/** Reads a drawing that can be read, or fails with what stands in its way. */
export async function readWell(text: string | Uint8Array, options: DrawingOptions = {}): Promise<Told> {
  const { value, findings } = await readDrawing(text, options);
  if (value === undefined) throw new Error(findings.map(({ says }) => says).join(' '));
  const of = (operation: DrawnShape['operation']): readonly DrawnShape[] =>
    value.drawing.shapes.filter((shape) => shape.operation === operation);
  const net = [...of('outline'), ...of('opening')].reduce((sum, shape) => sum + areaOfShape(shape), 0);
  return { read: value, findings, codes: findings.map(({ code }) => code), of, net };
}

/** Why a drawing cannot be read, and the option that would help. */
export async function refusalOf(
  text: string | Uint8Array,
  options: DrawingOptions = {},
): Promise<{ readonly says: string; readonly field: string }> {
  const { value, findings } = await readDrawing(text, options);
  const [first] = findings;
  if (value !== undefined || first === undefined) throw new Error('The drawing was read.');
  return { says: first.says, field: first.field ?? '' };
}
