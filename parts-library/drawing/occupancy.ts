// What already stands on the drawing area: a grid of cells with the heaviest line in each.
import type { Box } from './boxes.js';
import type { Piece } from './pieces.js';

/** What a cell holds, lightest first. */
export const EMPTY = 0;
export const METAL = 1;
export const CENTRE = 2;
export const GHOST = 3;
export const SOLID = 4;

export type Content = typeof EMPTY | typeof METAL | typeof CENTRE | typeof GHOST | typeof SOLID;

/** How much a text minds a cell; nothing may stand on a solid one. */
const WEIGHT: readonly number[] = [0, 1, 8, 12, Infinity];

export interface Occupancy {
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint8Array;
}

/** An empty grid over a sheet of this size. */
export function makeOccupancy(width: number, height: number, cell: number): Occupancy {
  const columns = Math.ceil(width / cell) + 1;
  const rows = Math.ceil(height / cell) + 1;
  return { cell, columns, rows, cells: new Uint8Array(columns * rows) };
}

/** Turns a piece at full size into places on the sheet: scaled, then moved. */
export interface Placing {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

function put(grid: Occupancy, x: number, y: number, content: Content): void {
  const column = Math.floor(x / grid.cell);
  const row = Math.floor(y / grid.cell);
  if (column < 0 || row < 0 || column >= grid.columns || row >= grid.rows) return;
  const i = row * grid.columns + column;
  if ((grid.cells[i] ?? 0) < content) grid.cells[i] = content;
}

/** Marks every cell that a line passes; samples stand half a cell apart. */
export function addPieces(
  grid: Occupancy,
  pieces: readonly Piece[],
  placing: Placing,
  content: Content,
): void {
  const { scale } = placing;
  for (const piece of pieces) {
    if (piece.kind === 'line') {
      const x = placing.x + piece.x1 * scale;
      const y = placing.y + piece.y1 * scale;
      const dx = (piece.x2 - piece.x1) * scale;
      const dy = (piece.y2 - piece.y1) * scale;
      const steps = Math.max(1, Math.ceil((2 * Math.hypot(dx, dy)) / grid.cell));
      for (let i = 0; i <= steps; i++) put(grid, x + (dx * i) / steps, y + (dy * i) / steps, content);
      continue;
    }
    const radius = piece.radius * scale;
    const x = placing.x + piece.x * scale;
    const y = placing.y + piece.y * scale;
    const steps = Math.max(2, Math.ceil((2 * radius * Math.abs(piece.sweep)) / grid.cell));
    // Turning a vector by a fixed angle is cheaper than a sine for each sample.
    const cos = Math.cos(piece.sweep / steps);
    const sin = Math.sin(piece.sweep / steps);
    let vx = radius * Math.cos(piece.start);
    let vy = radius * Math.sin(piece.start);
    for (let i = 0; i <= steps; i++) {
      put(grid, x + vx, y + vy, content);
      const turned = vx * cos - vy * sin;
      vy = vx * sin + vy * cos;
      vx = turned;
    }
  }
}

/** Fills the inside of closed edges (even-odd) that are given as points x, y, x, y… of each contour on the sheet. */
export function addMetal(grid: Occupancy, contours: readonly Float64Array[]): void {
  const crossings: number[][] = Array.from({ length: grid.rows }, () => []);
  for (const points of contours) {
    const count = points.length;
    for (let i = 0; i < count; i += 2) {
      const x1 = points[i] ?? 0;
      const y1 = (points[i + 1] ?? 0) / grid.cell - 0.5;
      const x2 = points[(i + 2) % count] ?? 0;
      const y2 = (points[(i + 3) % count] ?? 0) / grid.cell - 0.5;
      const last = Math.min(grid.rows - 1, Math.ceil(Math.max(y1, y2)) - 1);
      for (let row = Math.max(0, Math.ceil(Math.min(y1, y2))); row <= last; row++) {
        crossings[row]?.push(x1 + ((row - y1) * (x2 - x1)) / (y2 - y1));
      }
    }
  }
  crossings.forEach((xs, row) => {
    xs.sort((a, b) => a - b);
    for (let i = 0; i + 1 < xs.length; i += 2) {
      const first = Math.max(0, Math.round((xs[i] ?? 0) / grid.cell));
      const last = Math.min(grid.columns, Math.round((xs[i + 1] ?? 0) / grid.cell));
      if (last > first) {
        const start = row * grid.columns;
        for (let j = start + first; j < start + last; j++) if (grid.cells[j] === EMPTY) grid.cells[j] = METAL;
      }
    }
  });
}

/** Weights of the cells of one row from one column to another, both included. */
function weighRow({ columns, cells }: Occupancy, row: number, from: number, to: number): number {
  let sum = 0;
  const start = row * columns;
  const last = start + Math.min(columns - 1, to);
  for (let i = start + Math.max(0, from); i <= last; i++) sum += WEIGHT[cells[i] ?? 0] ?? 0;
  return sum;
}

/**
 * How much a text minds standing in an upright rectangle: Infinity over a solid line, else weights per cell.
 * A quarter of a cell is added on every side because samples of a line stand that far from it.
 */
export function costOfRectangle(
  grid: Occupancy,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): number {
  const { cell } = grid;
  const left = Math.floor(minX / cell - 0.25);
  const right = Math.floor(maxX / cell + 0.25);
  const bottom = Math.min(grid.rows - 1, Math.floor(maxY / cell + 0.25));
  let sum = 0;
  for (let row = Math.max(0, Math.floor(minY / cell - 0.25)); row <= bottom && sum < Infinity; row++) {
    sum += weighRow(grid, row, left, right);
  }
  return sum;
}

/** Left and right ends of a turned box within a band of rows, or null when it does not reach the band. */
function spanInBand(box: Box, top: number, bottom: number): readonly [number, number] | null {
  const corners: number[] = [];
  for (const [w, h] of [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const) {
    corners.push(
      box.x + w * box.ux * box.halfWidth - h * box.uy * box.halfHeight,
      box.y + w * box.uy * box.halfWidth + h * box.ux * box.halfHeight,
    );
  }
  let left = Infinity;
  let right = -Infinity;
  for (let i = 0; i < 8; i += 2) {
    const x1 = corners[i] ?? 0;
    const y1 = corners[i + 1] ?? 0;
    const x2 = corners[(i + 2) % 8] ?? 0;
    const y2 = corners[(i + 3) % 8] ?? 0;
    const low = Math.max(top, Math.min(y1, y2));
    const high = Math.min(bottom, Math.max(y1, y2));
    if (low > high) continue;
    const slope = y2 === y1 ? 0 : (x2 - x1) / (y2 - y1);
    const a = y2 === y1 ? x1 : x1 + (low - y1) * slope;
    const b = y2 === y1 ? x2 : x1 + (high - y1) * slope;
    left = Math.min(left, a, b);
    right = Math.max(right, a, b);
  }
  return left > right ? null : [left, right];
}

/** The same for a box at any angle. */
export function costOfBox(grid: Occupancy, box: Box): number {
  if (Math.abs(box.uy) < 1e-9 || Math.abs(box.ux) < 1e-9) {
    return costOfRectangle(grid, box.minX, box.minY, box.maxX, box.maxY);
  }
  const { cell } = grid;
  const spare = cell / 4;
  const bottom = Math.min(grid.rows - 1, Math.floor((box.maxY + spare) / cell));
  let sum = 0;
  for (let row = Math.max(0, Math.floor((box.minY - spare) / cell)); row <= bottom && sum < Infinity; row++) {
    const span = spanInBand(box, row * cell - spare, (row + 1) * cell + spare);
    if (span === null) continue;
    sum += weighRow(grid, row, Math.floor((span[0] - spare) / cell), Math.floor((span[1] + spare) / cell));
  }
  return sum;
}

/** How many solid lines a segment crosses; a run of solid cells counts once. */
export function countCrossings(grid: Occupancy, x1: number, y1: number, x2: number, y2: number): number {
  const { cell, columns, rows, cells } = grid;
  const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / cell));
  const dx = (x2 - x1) / steps / cell;
  const dy = (y2 - y1) / steps / cell;
  let x = x1 / cell;
  let y = y1 / cell;
  let count = 0;
  let inside = false;
  for (let i = 0; i <= steps; i++) {
    const column = Math.floor(x);
    const row = Math.floor(y);
    const solid =
      column >= 0 && row >= 0 && column < columns && row < rows && cells[row * columns + column] === SOLID;
    if (solid && !inside) count++;
    inside = solid;
    x += dx;
    y += dy;
  }
  return count;
}

/** The share of a segment that lies on solid lines, 0 to 1. */
export function shareOnLines(grid: Occupancy, x1: number, y1: number, x2: number, y2: number): number {
  const { cell, columns, cells } = grid;
  const steps = Math.max(1, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / cell));
  let solid = 0;
  for (let i = 0; i <= steps; i++) {
    const column = Math.floor((x1 + ((x2 - x1) * i) / steps) / cell);
    const row = Math.floor((y1 + ((y2 - y1) * i) / steps) / cell);
    if (cells[row * columns + column] === SOLID) solid++;
  }
  return solid / (steps + 1);
}
