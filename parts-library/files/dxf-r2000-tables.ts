// The tables of an R2000 file: line types, layers and the records without which a program refuses the drawing.
import type { Bounds } from '../geometry/index.js';
import { decimals } from './decimals.js';
import { fixed } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';
import { FIRST_FREE, HANDLES, NO_OWNER, hex } from './dxf-handles.js';
import type { Layer } from './layers.js';
import { placesIn } from './rounding.js';

/** Line weight of layer 0, on which nothing stands: the format's own default. */
const DEFAULT_WEIGHT = -3;

/** All nine tables, in the order of the DXF reference. */
export function tables(layers: readonly Layer[], extents: Bounds, unit: 'mm' | 'in'): Group[] {
  return [
    ...table('VPORT', HANDLES.vports, 1, activeView(extents, unit)),
    ...table('LTYPE', HANDLES.linetypes, 3, [
      ...linetype('ByBlock', HANDLES.byBlock, ''),
      ...linetype('ByLayer', HANDLES.byLayer, ''),
      ...linetype('Continuous', HANDLES.continuous, 'Solid line'),
    ]),
    ...table('LAYER', HANDLES.layers, layers.length + 1, [
      ...layerRecord('0', HANDLES.layerNought, 7, DEFAULT_WEIGHT),
      ...layers.flatMap(({ name, colour, weight }, index) =>
        layerRecord(name, hex(FIRST_FREE + index), colour, weight),
      ),
    ]),
    ...table('STYLE', HANDLES.styles, 1, [
      ...record('STYLE', HANDLES.standardStyle, HANDLES.styles, 'AcDbTextStyleTableRecord'),
      ...fixed('2 Standard, 70 0, 40 0, 41 1, 50 0, 71 0, 42 2.5, 3 txt'),
      [4, ''],
    ]),
    ...table('VIEW', HANDLES.views, 0, []),
    ...table('UCS', HANDLES.coordinates, 0, []),
    ...table('APPID', HANDLES.applications, 1, [
      ...record('APPID', HANDLES.acad, HANDLES.applications, 'AcDbRegAppTableRecord'),
      ...fixed('2 ACAD, 70 0'),
    ]),
    ...table('DIMSTYLE', HANDLES.dimensionStyles, 1, [
      // This table alone has a second subclass marker and the handles of its records in its head.
      ...fixed('100 AcDbDimStyleTable, 71 1'),
      [340, HANDLES.standardDimension],
      ...record('DIMSTYLE', HANDLES.standardDimension, HANDLES.dimensionStyles, 'AcDbDimStyleTableRecord'),
      ...fixed('2 Standard, 70 0'),
    ]),
    ...table('BLOCK_RECORD', HANDLES.blockRecords, 2, [
      ...blockRecord('*Model_Space', HANDLES.modelRecord),
      ...blockRecord('*Paper_Space', HANDLES.paperRecord),
    ]),
  ];
}

const table = (name: string, handle: string, count: number, records: readonly Group[]): Group[] => [
  [0, 'TABLE'],
  [2, name],
  [5, handle],
  [330, NO_OWNER],
  [100, 'AcDbSymbolTable'],
  [70, count],
  ...records,
  [0, 'ENDTAB'],
];

/** The head of a record. A dimension style has its handle in group 105, since its group 5 means something else. */
const record = (name: string, handle: string, owner: string, subclass: string): Group[] => [
  [0, name],
  [name === 'DIMSTYLE' ? 105 : 5, handle],
  [330, owner],
  [100, 'AcDbSymbolTableRecord'],
  [100, subclass],
];

const linetype = (name: string, handle: string, description: string): Group[] => [
  ...record('LTYPE', handle, HANDLES.linetypes, 'AcDbLinetypeTableRecord'),
  [2, name],
  [70, 0],
  [3, description],
  ...fixed('72 65, 73 0, 40 0'),
];

const layerRecord = (name: string, handle: string, colour: number, weight: number): Group[] => [
  ...record('LAYER', handle, HANDLES.layers, 'AcDbLayerTableRecord'),
  [2, name],
  [70, 0],
  [62, colour],
  [6, 'Continuous'],
  [370, weight],
];

const blockRecord = (name: string, handle: string): Group[] => [
  ...record('BLOCK_RECORD', handle, HANDLES.blockRecords, 'AcDbBlockTableRecord'),
  [2, name],
  [340, '0'],
];

/** The view that a program opens with: the whole drawing with a tenth of room round it. */
function activeView({ minX, minY, maxX, maxY }: Bounds, unit: 'mm' | 'in'): Group[] {
  const number = (value: number): string => decimals(value, placesIn(unit));
  const height = Math.max(maxY - minY, maxX - minX) * 1.1;
  return [
    ...record('VPORT', HANDLES.activeView, HANDLES.vports, 'AcDbViewportTableRecord'),
    ...fixed('2 *Active, 70 0, 10 0, 20 0, 11 1, 21 1'),
    [12, number((minX + maxX) / 2)],
    [22, number((minY + maxY) / 2)],
    ...fixed('13 0, 23 0, 14 10, 24 10, 15 10, 25 10, 16 0, 26 0, 36 1, 17 0, 27 0, 37 0'),
    [40, number(height > 0 ? height : 1)],
    ...fixed('41 1, 42 50, 43 0, 44 0, 50 0, 51 0, 71 0, 72 1000, 73 1, 74 3, 75 0, 76 0, 77 0, 78 0'),
  ];
}
