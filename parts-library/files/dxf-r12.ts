// DXF R12 (AC1009): polylines of vertices with bulge, circles, points; the version that every program reads.
import { decimals } from './decimals.js';
import { comments, headerVariables } from './dxf-common.js';
import { bulgeGroup, fixed, place, section, textOf } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';
import { extentsOf } from './extents.js';
import { layersOf } from './layers.js';
import { drawnItems, placesIn } from './rounding.js';
import type { DrawnItem } from './rounding.js';
import type { Sheet } from './sheet.js';

/** A sheet as R12 text, coordinates in `unit`. Same sheet, same bytes. */
export function dxfR12(sheet: Sheet, unit: 'mm' | 'in'): string {
  const items = drawnItems(sheet, unit);
  const extents = extentsOf(items.map(({ shape }) => shape));
  const layers = [{ name: '0', colour: 7 }, ...layersOf(sheet.kind)];
  return textOf([
    ...comments(sheet.heading),
    ...section('HEADER', headerVariables('AC1009', unit, extents)),
    ...section('TABLES', [
      ...fixed('0 TABLE, 2 LTYPE, 70 1'),
      ...fixed('0 LTYPE, 2 CONTINUOUS, 70 0, 3 Solid line, 72 65, 73 0, 40 0'),
      ...fixed('0 ENDTAB, 0 TABLE, 2 LAYER'),
      [70, layers.length],
      ...layers.flatMap(({ name, colour }): Group[] => [
        [0, 'LAYER'],
        [2, name],
        [70, 0],
        [62, colour],
        [6, 'CONTINUOUS'],
      ]),
      [0, 'ENDTAB'],
    ]),
    ...section('BLOCKS', []),
    ...section(
      'ENTITIES',
      items.flatMap((item) => entity(item, unit)),
    ),
    [0, 'EOF'],
  ]);
}

function entity({ layer, shape }: DrawnItem, unit: 'mm' | 'in'): Group[] {
  const head = (type: string): Group[] => [
    [0, type],
    [8, layer.name],
  ];
  if (shape.kind === 'circle')
    return [
      ...head('CIRCLE'),
      ...place(10, shape.centre.x, shape.centre.y, unit),
      [40, decimals(shape.radius, placesIn(unit))],
    ];
  if (shape.kind === 'point') return [...head('POINT'), ...place(10, shape.at.x, shape.at.y, unit)];
  return [
    ...head('POLYLINE'),
    [66, 1],
    ...place(10, 0, 0, unit),
    [70, shape.kind === 'closed' ? 1 : 0],
    ...shape.vertices.flatMap(({ x, y, bulge }) => [
      ...head('VERTEX'),
      ...place(10, x, y, unit),
      ...bulgeGroup(bulge),
    ]),
    ...head('SEQEND'),
  ];
}
