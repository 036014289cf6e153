// DXF R2000 (AC1015): light polylines, line weights; every object with its handle and its owner.
import { decimals } from './decimals.js';
import { comments, headerVariables } from './dxf-common.js';
import { bulgeGroup, fixed, place, section, textOf } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';
import { FIRST_FREE, HANDLES, NO_OWNER, hex } from './dxf-handles.js';
import { tables } from './dxf-r2000-tables.js';
import { extentsOf } from './extents.js';
import { layersOf } from './layers.js';
import { drawnItems, placesIn } from './rounding.js';
import type { DrawnItem } from './rounding.js';
import type { Sheet } from './sheet.js';

/** A sheet as R2000 text, coordinates in `unit`. Same sheet, same bytes. */
export function dxfR2000(sheet: Sheet, unit: 'mm' | 'in'): string {
  const items = drawnItems(sheet, unit);
  const extents = extentsOf(items.map(({ shape }) => shape));
  const layers = layersOf(sheet.kind);
  const firstEntity = FIRST_FREE + layers.length;
  return textOf([
    ...comments(sheet.heading),
    ...section('HEADER', [
      ...headerVariables('AC1015', unit, extents),
      ...fixed('9 $DWGCODEPAGE, 3 ANSI_1252, 9 $HANDSEED'),
      // Above every handle in use, so that a program that adds to the file never takes one twice.
      [5, hex(firstEntity + items.length)],
    ]),
    ...section('CLASSES', []),
    ...section('TABLES', tables(layers, extents, unit)),
    ...section('BLOCKS', [
      ...block('*Model_Space', HANDLES.modelRecord, HANDLES.modelBlock, HANDLES.modelEnd, []),
      ...block('*Paper_Space', HANDLES.paperRecord, HANDLES.paperBlock, HANDLES.paperEnd, [[67, 1]]),
    ]),
    ...section(
      'ENTITIES',
      items.flatMap((item, index) => entity(item, hex(firstEntity + index), unit)),
    ),
    ...section('OBJECTS', [
      ...dictionary(HANDLES.rootDictionary, NO_OWNER),
      [3, 'ACAD_GROUP'],
      [350, HANDLES.groupDictionary],
      ...dictionary(HANDLES.groupDictionary, HANDLES.rootDictionary),
    ]),
    [0, 'EOF'],
  ]);
}

/** The two blocks that every drawing has: empty, since entities name the model's record as their owner. */
const block = (
  name: string,
  owner: string,
  begin: string,
  end: string,
  onPaper: readonly Group[],
): Group[] => [
  [0, 'BLOCK'],
  ...owned(begin, owner),
  ...onPaper,
  ...fixed('8 0, 100 AcDbBlockBegin'),
  [2, name],
  [70, 0],
  ...place(10, 0, 0, 'mm'),
  [3, name],
  [1, ''],
  [0, 'ENDBLK'],
  ...owned(end, owner),
  ...onPaper,
  ...fixed('8 0, 100 AcDbBlockEnd'),
];

const owned = (handle: string, owner: string): Group[] => [
  [5, handle],
  [330, owner],
  [100, 'AcDbEntity'],
];

const dictionary = (handle: string, owner: string): Group[] => [
  [0, 'DICTIONARY'],
  [5, handle],
  [330, owner],
  ...fixed('100 AcDbDictionary, 281 1'),
];

function entity({ layer, shape }: DrawnItem, handle: string, unit: 'mm' | 'in'): Group[] {
  const head = (type: string, subclass: string): Group[] => [
    [0, type],
    ...owned(handle, HANDLES.modelRecord),
    [8, layer.name],
    [100, subclass],
  ];
  if (shape.kind === 'circle')
    return [
      ...head('CIRCLE', 'AcDbCircle'),
      ...place(10, shape.centre.x, shape.centre.y, unit),
      [40, decimals(shape.radius, placesIn(unit))],
    ];
  if (shape.kind === 'point')
    return [...head('POINT', 'AcDbPoint'), ...place(10, shape.at.x, shape.at.y, unit)];
  return [
    ...head('LWPOLYLINE', 'AcDbPolyline'),
    [90, shape.vertices.length],
    [70, shape.kind === 'closed' ? 1 : 0],
    [43, '0'],
    // A light vertex has no z.
    ...shape.vertices.flatMap(({ x, y, bulge }) => [
      ...place(10, x, y, unit).slice(0, 2),
      ...bulgeGroup(bulge),
    ]),
  ];
}
