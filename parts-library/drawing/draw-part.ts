// The part and its ghosts on the sheet: what is painted under the labels, and the desk that labels are placed on.
import { norm } from '../geometry/index.js';
import type { DisplayItem } from './display-list.js';
import { centreLines, weldTicks } from './centre-lines.js';
import type { Desk } from './desk.js';
import {
  addMetal,
  addPieces,
  CENTRE,
  GHOST,
  makeOccupancy,
  SOLID,
  fillMetal,
  type Placing,
} from './occupancy.js';
import { circlePath, piecesOf, type Piece } from './pieces.js';
import type { Extent, Scene } from './scene.js';
import type { Style } from './style.js';
import { placePath, roundPath } from './to-sheet.js';

/** Cells per font size of the grid that labels are tried on: fine enough that a text slips between two lines. */
const CELLS_PER_SIZE = 3.5;

/** The scene's middle in the area's middle. */
export function placeScene(scene: Scene, area: Extent, scale: number): Placing {
  const { whole } = scene;
  return {
    scale,
    x: (area.minX + area.maxX) / 2 - ((whole.minX + whole.maxX) / 2) * scale,
    y: (area.minY + area.maxY) / 2 - ((whole.minY + whole.maxY) / 2) * scale,
  };
}

const IN_PLACE: Placing = { scale: 1, x: 0, y: 0 };

/** A small cross that keeps texts off a mark. */
function crossPieces(x: number, y: number, half: number): readonly Piece[] {
  return [
    { kind: 'line', x1: x - half, y1: y, x2: x + half, y2: y },
    { kind: 'line', x1: x, y1: y - half, x2: x, y2: y + half },
  ];
}

/** Half the cross of a mark and the radius of its dot, in font sizes. */
const MARK_ARM = 0.42;
const MARK_DOT = 0.12;

/** Everything already drawn at one scale, ready for labels. */
export function makeDesk(
  scene: Scene,
  placing: Placing,
  style: Style,
  area: Extent,
  size: { readonly width: number; readonly height: number },
): Desk {
  const grid = makeOccupancy(size.width, size.height, style.size / CELLS_PER_SIZE);
  for (const { pieces, content } of scene.shapes) addPieces(grid, pieces, placing, content);
  for (const { path } of centreLines(scene, placing, style)) {
    addPieces(grid, piecesOf(path), IN_PLACE, CENTRE);
  }
  for (const { x, y, radius } of scene.welds) {
    addPieces(grid, [{ kind: 'arc', x, y, radius, start: 0, sweep: 2 * Math.PI }], placing, GHOST);
  }
  for (const { x, y, radius } of scene.marks) {
    // The hole that will be drilled there is drawn too.
    if (radius > 0) {
      addPieces(grid, [{ kind: 'arc', x, y, radius, start: 0, sweep: 2 * Math.PI }], placing, SOLID);
    }
    const cross = crossPieces(
      placing.x + x * placing.scale,
      placing.y + y * placing.scale,
      style.size * MARK_ARM,
    );
    addPieces(grid, cross, IN_PLACE, SOLID);
  }
  addMetal(grid, scene.contours, placing);
  fillMetal(grid);
  return { scene, placing, style, grid, area };
}

function drawMarks({ scene, placing, style }: Desk): readonly DisplayItem[] {
  return scene.marks.flatMap(({ id, x, y, radius }): readonly DisplayItem[] => {
    const cx = placing.x + x * placing.scale;
    const cy = placing.y + y * placing.scale;
    const arm = style.size * MARK_ARM;
    const base = { kind: 'stroke', role: 'mark', weight: 'narrow', featureId: id } as const;
    // The hole that will be drilled here: the finished part inside the blank, ISO 128-2 line 05.
    const threaded = scene.threads.some((thread) => norm(thread.x - x, thread.y - y) < radius * 0.1);
    const later: readonly DisplayItem[] =
      radius > 0 && !threaded
        ? [
            {
              ...base,
              type: 'long-dashed-double-dotted',
              path: placePath(circlePath(x, y, radius), placing),
            },
          ]
        : [];
    return [
      ...later,
      {
        ...base,
        type: 'continuous',
        path: roundPath([
          ['M', cx - arm, cy],
          ['L', cx + arm, cy],
          ['M', cx, cy - arm],
          ['L', cx, cy + arm],
        ]),
      },
      {
        ...base,
        type: 'continuous',
        path: roundPath(circlePath(cx, cy, style.size * MARK_DOT)),
        fill: 'ink',
      },
    ];
  });
}

/** What is painted under the labels: metal, ghosts, welds, centre lines, marks, openings, outline. */
export function drawPart(desk: Desk): readonly DisplayItem[] {
  const { scene, placing, style } = desk;
  const metal: DisplayItem = {
    kind: 'stroke',
    role: 'metal',
    type: 'continuous',
    weight: 'narrow',
    path: placePath(scene.metal, placing),
    fill: 'metal',
  };
  const shapes = scene.shapes.map(({ role, type, weight, path, featureId, ghostId }): DisplayItem => ({
    kind: 'stroke',
    role,
    type,
    weight,
    path: placePath(path, placing),
    ...(featureId === undefined ? {} : { featureId }),
    ...(ghostId === undefined ? {} : { ghostId }),
  }));
  const visible = (item: DisplayItem): boolean =>
    item.kind === 'stroke' && (item.role === 'outline' || item.role === 'opening');
  return [
    metal,
    ...shapes.filter((item) => !visible(item)),
    ...scene.welds.map((weld): DisplayItem => ({
      kind: 'stroke',
      role: 'weld',
      type: 'continuous',
      weight: 'narrow',
      path: roundPath(weldTicks(weld, scene, placing, style)),
      ghostId: weld.id,
    })),
    ...centreLines(scene, placing, style).map(({ path }): DisplayItem => ({
      kind: 'stroke',
      role: 'centre',
      type: 'long-dashed-dotted',
      weight: 'narrow',
      path: roundPath(path),
    })),
    ...drawMarks(desk),
    ...shapes.filter(visible),
  ];
}
