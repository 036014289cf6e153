// DXF R2000 (AC1015): light polylines, line weights; every object with its handle and its owner.
import { comments, headerVariables } from './dxf-common.js';
import { decimals } from './decimals.js';
import { flatVertex, place, textOf } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';
import { extentsOf } from './extents.js';
import { layerOf, layersOf } from './layers.js';
import type { Layer } from './layers.js';
import { placesIn, shapeInUnit } from './rounding.js';
import type { Shape, Sheet } from './sheet.js';
import type { Bounds } from '../geometry/index.js';

/** Owner of what belongs to the drawing itself. */
const NO_OWNER = '0';

/** Handles of the fixed objects, hexadecimal; entities count on from FIRST_FREE. */
const HANDLES = {
  vports: '1',
  linetypes: '2',
  layers: '3',
  styles: '4',
  views: '5',
  coordinates: '6',
  applications: '7',
  dimensionStyles: '8',
  blockRecords: '9',
  activeView: 'A',
  byBlock: 'B',
  byLayer: 'C',
  continuous: 'D',
  layerNought: 'E',
  standardStyle: 'F',
  acad: '10',
  standardDimension: '11',
  modelRecord: '12',
  paperRecord: '13',
  modelBlock: '14',
  modelEnd: '15',
  paperBlock: '16',
  paperEnd: '17',
  rootDictionary: '18',
  groupDictionary: '19',
} as const;
const FIRST_FREE = 0x20;

const hex = (value: number): string => value.toString(16).toUpperCase();

/** A sheet as R2000 text, coordinates in `unit`. Same sheet, same bytes. */
export function dxfR2000(sheet: Sheet, unit: 'mm' | 'in'): string {
  const shapes = sheet.items.map(({ shape }) => shapeInUnit(shape, unit));
  const extents = extentsOf(shapes);
  const layers = layersOf(sheet.kind);
  const firstEntity = FIRST_FREE + layers.length;
  const entities = sheet.items.flatMap(({ operation }, index) => {
    const shape = shapes[index];
    return shape === undefined
      ? []
      : entity(shape, hex(firstEntity + index), layerOf(sheet.kind, operation).name, unit);
  });
  return textOf([
    ...comments(sheet.heading),
    ...section('HEADER', [
      ...headerVariables('AC1015', unit, extents),
      [9, '$DWGCODEPAGE'],
      [3, 'ANSI_1252'],
      [9, '$HANDSEED'],
      [5, hex(firstEntity + sheet.items.length)],
    ]),
    ...section('CLASSES', []),
    ...section('TABLES', tables(layers, extents, unit)),
    ...section('BLOCKS', [
      ...block('*Model_Space', HANDLES.modelRecord, HANDLES.modelBlock, HANDLES.modelEnd, false),
      ...block('*Paper_Space', HANDLES.paperRecord, HANDLES.paperBlock, HANDLES.paperEnd, true),
    ]),
    ...section('ENTITIES', entities),
    ...section('OBJECTS', [
      ...dictionary(HANDLES.rootDictionary, NO_OWNER),
      [3, 'ACAD_GROUP'],
      [350, HANDLES.groupDictionary],
      ...dictionary(HANDLES.groupDictionary, HANDLES.rootDictionary),
    ]),
    [0, 'EOF'],
  ]);
}

const section = (name: string, body: readonly Group[]): Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...body,
  [0, 'ENDSEC'],
];

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

/** The head of a table's record; `handleCode` is 105 for a dimension style, 5 for everything else. */
const record = (name: string, handle: string, owner: string, subclass: string, handleCode = 5): Group[] => [
  [0, name],
  [handleCode, handle],
  [330, owner],
  [100, 'AcDbSymbolTableRecord'],
  [100, subclass],
];

const linetype = (name: string, handle: string, description: string): Group[] => [
  ...record('LTYPE', handle, HANDLES.linetypes, 'AcDbLinetypeTableRecord'),
  [2, name],
  [70, 0],
  [3, description],
  [72, 65],
  [73, 0],
  [40, '0'],
];

const layer = (name: string, handle: string, colour: number, weight: number): Group[] => [
  ...record('LAYER', handle, HANDLES.layers, 'AcDbLayerTableRecord'),
  [2, name],
  [70, 0],
  [62, colour],
  [6, 'Continuous'],
  [370, weight],
];

/** Line weight of layer 0, on which nothing stands: the format's own default. */
const DEFAULT_WEIGHT = -3;

function tables(layers: readonly Layer[], extents: Bounds, unit: 'mm' | 'in'): Group[] {
  return [
    ...table('VPORT', HANDLES.vports, 1, activeView(extents, unit)),
    ...table('LTYPE', HANDLES.linetypes, 3, [
      ...linetype('ByBlock', HANDLES.byBlock, ''),
      ...linetype('ByLayer', HANDLES.byLayer, ''),
      ...linetype('Continuous', HANDLES.continuous, 'Solid line'),
    ]),
    ...table('LAYER', HANDLES.layers, layers.length + 1, [
      ...layer('0', HANDLES.layerNought, 7, DEFAULT_WEIGHT),
      ...layers.flatMap(({ name, colour, weight }, index) =>
        layer(name, hex(FIRST_FREE + index), colour, weight),
      ),
    ]),
    ...table('STYLE', HANDLES.styles, 1, [
      ...record('STYLE', HANDLES.standardStyle, HANDLES.styles, 'AcDbTextStyleTableRecord'),
      ...([
        [2, 'Standard'],
        [70, 0],
        [40, '0'],
        [41, '1'],
        [50, '0'],
        [71, 0],
      ] satisfies Group[]),
      ...([
        [42, '2.5'],
        [3, 'txt'],
        [4, ''],
      ] satisfies Group[]),
    ]),
    ...table('VIEW', HANDLES.views, 0, []),
    ...table('UCS', HANDLES.coordinates, 0, []),
    ...table('APPID', HANDLES.applications, 1, [
      ...record('APPID', HANDLES.acad, HANDLES.applications, 'AcDbRegAppTableRecord'),
      [2, 'ACAD'],
      [70, 0],
    ]),
    ...dimensionStyles(),
    ...table('BLOCK_RECORD', HANDLES.blockRecords, 2, [
      ...blockRecord('*Model_Space', HANDLES.modelRecord),
      ...blockRecord('*Paper_Space', HANDLES.paperRecord),
    ]),
  ];
}

/** The dimension style table alone has a second subclass marker and the handles of its styles in its head. */
const dimensionStyles = (): Group[] => [
  [0, 'TABLE'],
  [2, 'DIMSTYLE'],
  [5, HANDLES.dimensionStyles],
  [330, NO_OWNER],
  [100, 'AcDbSymbolTable'],
  [70, 1],
  [100, 'AcDbDimStyleTable'],
  [71, 1],
  [340, HANDLES.standardDimension],
  ...record('DIMSTYLE', HANDLES.standardDimension, HANDLES.dimensionStyles, 'AcDbDimStyleTableRecord', 105),
  [2, 'Standard'],
  [70, 0],
  [0, 'ENDTAB'],
];

const blockRecord = (name: string, handle: string): Group[] => [
  ...record('BLOCK_RECORD', handle, HANDLES.blockRecords, 'AcDbBlockTableRecord'),
  [2, name],
  [340, '0'],
];

/** The view that a program opens with: the whole drawing with a tenth of room round it. */
function activeView({ minX, minY, maxX, maxY }: Bounds, unit: 'mm' | 'in'): Group[] {
  const number = (value: number): string => decimals(value, placesIn(unit));
  const height = Math.max(maxY - minY, maxX - minX, 1) * 1.1;
  return [
    ...record('VPORT', HANDLES.activeView, HANDLES.vports, 'AcDbViewportTableRecord'),
    ...([
      [2, '*Active'],
      [70, 0],
      [10, '0'],
      [20, '0'],
      [11, '1'],
      [21, '1'],
    ] satisfies Group[]),
    [12, number((minX + maxX) / 2)],
    [22, number((minY + maxY) / 2)],
    ...([
      [13, '0'],
      [23, '0'],
      [14, '10'],
      [24, '10'],
      [15, '10'],
      [25, '10'],
    ] satisfies Group[]),
    ...([
      [16, '0'],
      [26, '0'],
      [36, '1'],
      [17, '0'],
      [27, '0'],
      [37, '0'],
    ] satisfies Group[]),
    [40, number(height)],
    ...([
      [41, '1'],
      [42, '50'],
      [43, '0'],
      [44, '0'],
      [50, '0'],
      [51, '0'],
    ] satisfies Group[]),
    ...([
      [71, 0],
      [72, 1000],
      [73, 1],
      [74, 3],
      [75, 0],
      [76, 0],
      [77, 0],
      [78, 0],
    ] satisfies Group[]),
  ];
}

/** The two blocks that every drawing has; nothing stands in them but the entities that name the model as owner. */
const block = (name: string, owner: string, begin: string, end: string, paper: boolean): Group[] => [
  [0, 'BLOCK'],
  [5, begin],
  [330, owner],
  [100, 'AcDbEntity'],
  ...(paper ? [[67, 1] satisfies Group] : []),
  [8, '0'],
  [100, 'AcDbBlockBegin'],
  [2, name],
  [70, 0],
  ...place(10, 0, 0, 'mm'),
  [3, name],
  [1, ''],
  [0, 'ENDBLK'],
  [5, end],
  [330, owner],
  [100, 'AcDbEntity'],
  ...(paper ? [[67, 1] satisfies Group] : []),
  [8, '0'],
  [100, 'AcDbBlockEnd'],
];

const dictionary = (handle: string, owner: string): Group[] => [
  [0, 'DICTIONARY'],
  [5, handle],
  [330, owner],
  [100, 'AcDbDictionary'],
  [281, 1],
];

function entity(shape: Shape, handle: string, layerName: string, unit: 'mm' | 'in'): Group[] {
  const head = (type: string, subclass: string): Group[] => [
    [0, type],
    [5, handle],
    [330, HANDLES.modelRecord],
    [100, 'AcDbEntity'],
    [8, layerName],
    [100, subclass],
  ];
  switch (shape.kind) {
    case 'circle':
      return [
        ...head('CIRCLE', 'AcDbCircle'),
        ...place(10, shape.centre.x, shape.centre.y, unit),
        [40, decimals(shape.radius, placesIn(unit))],
      ];
    case 'point':
      return [...head('POINT', 'AcDbPoint'), ...place(10, shape.at.x, shape.at.y, unit)];
    case 'open':
    case 'closed':
      return [
        ...head('LWPOLYLINE', 'AcDbPolyline'),
        [90, shape.vertices.length],
        [70, shape.kind === 'closed' ? 1 : 0],
        [43, '0'],
        ...shape.vertices.flatMap(({ x, y, bulge }) => flatVertex(x, y, bulge, unit)),
      ];
  }
}
