// DXF R12 (AC1009): polylines of vertices with bulge, circles, points; the version that every program reads.
import { comments, headerVariables } from './dxf-common.js';
import { flatVertex, place, textOf } from './dxf-groups.js';
import type { Group } from './dxf-groups.js';
import { decimals } from './decimals.js';
import { extentsOf } from './extents.js';
import { layerOf, layersOf } from './layers.js';
import { placesIn, shapeInUnit } from './rounding.js';
import type { Shape, Sheet } from './sheet.js';

/** A sheet as R12 text, coordinates in `unit`. Same sheet, same bytes. */
export function dxfR12(sheet: Sheet, unit: 'mm' | 'in'): string {
  const shapes = sheet.items.map(({ shape }) => shapeInUnit(shape, unit));
  const layers = [{ name: '0', colour: 7 }, ...layersOf(sheet.kind)];
  const entities = sheet.items.flatMap(({ operation }, index) => {
    const shape = shapes[index];
    return shape === undefined ? [] : entity(shape, layerOf(sheet.kind, operation).name, unit);
  });
  return textOf([
    ...comments(sheet.heading),
    [0, 'SECTION'],
    [2, 'HEADER'],
    ...headerVariables('AC1009', unit, extentsOf(shapes)),
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'TABLES'],
    ...([
      [0, 'TABLE'],
      [2, 'LTYPE'],
      [70, 1],
      [0, 'LTYPE'],
      [2, 'CONTINUOUS'],
      [70, 0],
    ] satisfies Group[]),
    ...([
      [3, 'Solid line'],
      [72, 65],
      [73, 0],
      [40, '0'],
      [0, 'ENDTAB'],
    ] satisfies Group[]),
    ...([
      [0, 'TABLE'],
      [2, 'LAYER'],
      [70, layers.length],
    ] satisfies Group[]),
    ...layers.flatMap(({ name, colour }): Group[] => [
      [0, 'LAYER'],
      [2, name],
      [70, 0],
      [62, colour],
      [6, 'CONTINUOUS'],
    ]),
    [0, 'ENDTAB'],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'BLOCKS'],
    [0, 'ENDSEC'],
    [0, 'SECTION'],
    [2, 'ENTITIES'],
    ...entities,
    [0, 'ENDSEC'],
    [0, 'EOF'],
  ]);
}

function entity(shape: Shape, layer: string, unit: 'mm' | 'in'): Group[] {
  switch (shape.kind) {
    case 'circle':
      return [
        [0, 'CIRCLE'],
        [8, layer],
        ...place(10, shape.centre.x, shape.centre.y, unit),
        [40, decimals(shape.radius, placesIn(unit))],
      ];
    case 'point':
      return [[0, 'POINT'], [8, layer], ...place(10, shape.at.x, shape.at.y, unit)];
    case 'open':
    case 'closed':
      return [
        [0, 'POLYLINE'],
        [8, layer],
        [66, 1],
        ...place(10, 0, 0, unit),
        [70, shape.kind === 'closed' ? 1 : 0],
        ...shape.vertices.flatMap(({ x, y, bulge }): Group[] => {
          const [atX, atY, ...arc] = flatVertex(x, y, bulge, unit);
          return atX === undefined || atY === undefined
            ? []
            : [[0, 'VERTEX'], [8, layer], atX, atY, [30, '0'], ...arc];
        }),
        [0, 'SEQEND'],
        [8, layer],
      ];
  }
}
