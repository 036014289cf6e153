// What already stands on the drawing area: a grid of cells with the heaviest line in each, one bit for each cell and content.
import { norm } from '../geometry/index.js';
import type { Box } from './boxes.js';
import type { Piece } from './pieces.js';

/** What a cell holds, lightest first. */
export const METAL = 1;
export const CENTRE = 2;
export const GHOST = 3;
export const SOLID = 4;

export type Content = typeof METAL | typeof CENTRE | typeof GHOST | typeof SOLID;

/** Contents that have a plane of bits each, and one plane more for the edges of the metal. */
const PLANES = 5;
const EDGES = 4;

/** How much a text minds a cell of metal, a centre line, a ghost; nothing may stand on a solid one. */
const METAL_WEIGHT = 1;
const CENTRE_WEIGHT = 8;
const GHOST_WEIGHT = 12;

export interface Occupancy {
  readonly cell: number;
  readonly columns: number;
  readonly rows: number;
  /** Words of 32 cells in a row. */
  readonly words: number;
  /**
   * One bit for each cell and plane; the planes of a word stand together. Bits make the grid small enough to be
   * filled and read anew for every drawing.
   */
  readonly bits: Int32Array;
}

/** An empty grid over a sheet of this size. */
export function makeOccupancy(width: number, height: number, cell: number): Occupancy {
  const columns = Math.ceil(width / cell) + 1;
  const rows = Math.ceil(height / cell) + 1;
  const words = (columns + 31) >> 5;
  return { cell, columns, rows, words, bits: new Int32Array(words * rows * PLANES) };
}

/** Where the planes of the word that holds a cell begin. */
const wordAt = (grid: Occupancy, column: number, row: number): number =>
  (row * grid.words + (column >> 5)) * PLANES;

/** True when an outline passes the cell. */
export const isSolid = (grid: Occupancy, column: number, row: number): boolean =>
  column >= 0 &&
  row >= 0 &&
  column < grid.columns &&
  row < grid.rows &&
  (((grid.bits[wordAt(grid, column, row) + SOLID - 1] ?? 0) >>> (column & 31)) & 1) === 1;

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
  const i = wordAt(grid, column, row) + content - 1;
  grid.bits[i] = (grid.bits[i] ?? 0) | (1 << (column & 31));
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
      const steps = Math.max(1, Math.ceil((2 * norm(dx, dy)) / grid.cell));
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

/**
 * Notes the edges of the metal, given as points x, y, x, y… of closed contours at full size. `fillMetal`
 * fills between them (even-odd); call it once, after everything is in.
 */
export function addMetal(grid: Occupancy, contours: readonly Float64Array[], placing: Placing): void {
  const { cell, columns, rows, bits } = grid;
  const scale = placing.scale / cell;
  const left = placing.x / cell;
  const top = placing.y / cell - 0.5;
  for (const points of contours) {
    const count = points.length;
    for (let i = 0; i < count; i += 2) {
      const x1 = left + (points[i] ?? 0) * scale;
      const y1 = top + (points[i + 1] ?? 0) * scale;
      const x2 = left + (points[(i + 2) % count] ?? 0) * scale;
      const y2 = top + (points[(i + 3) % count] ?? 0) * scale;
      const last = Math.min(rows - 1, Math.ceil(Math.max(y1, y2)) - 1);
      for (let row = Math.max(0, Math.ceil(Math.min(y1, y2))); row <= last; row++) {
        const column = Math.round(x1 + ((row - y1) * (x2 - x1)) / (y2 - y1));
        const held = Math.min(columns - 1, Math.max(0, column));
        const at = wordAt(grid, held, row) + EDGES;
        bits[at] = (bits[at] ?? 0) ^ (1 << (held & 31));
      }
    }
  }
}

/** Fills the metal in, and leaves in each cell only the heaviest of what it holds. */
export function fillMetal({ words, rows, bits }: Occupancy): void {
  let at = 0;
  for (let row = 0; row < rows; row++) {
    let inside = 0;
    for (let word = 0; word < words; word++, at += PLANES) {
      // Every bit becomes the parity of the edges up to it: even-odd filling of 32 cells at once.
      let metal = bits[at + EDGES] ?? 0;
      metal ^= metal << 1;
      metal ^= metal << 2;
      metal ^= metal << 4;
      metal ^= metal << 8;
      metal ^= metal << 16;
      metal ^= inside;
      inside = metal >> 31;
      const solid = bits[at + SOLID - 1] ?? 0;
      const ghost = bits[at + GHOST - 1] ?? 0;
      const centre = bits[at + CENTRE - 1] ?? 0;
      bits[at + GHOST - 1] = ghost & ~solid;
      bits[at + CENTRE - 1] = centre & ~(solid | ghost);
      bits[at + METAL - 1] = metal & ~(solid | ghost | centre);
    }
  }
}

/** Bits set in a word (Warren, Hacker's Delight, 2nd ed., figure 5-2). */
function countBits(word: number): number {
  let x = word - ((word >>> 1) & 0x55555555);
  x = (x & 0x33333333) + ((x >>> 2) & 0x33333333);
  x = (x + (x >>> 4)) & 0x0f0f0f0f;
  return Math.imul(x, 0x01010101) >>> 24;
}

/** Weights of the cells of one row from one column to another, both included; Infinity over a solid one. */
function weighRow(grid: Occupancy, row: number, from: number, to: number): number {
  const { columns, bits } = grid;
  const first = Math.max(0, from);
  const last = Math.min(columns - 1, to);
  if (last < first) return 0;
  let sum = 0;
  let at = wordAt(grid, first, row);
  const end = wordAt(grid, last, row);
  let mask = -1 << (first & 31);
  for (; at <= end; at += PLANES) {
    if (at === end) mask &= -1 >>> (31 - (last & 31));
    if (((bits[at + SOLID - 1] ?? 0) & mask) !== 0) return Infinity;
    sum +=
      GHOST_WEIGHT * countBits((bits[at + GHOST - 1] ?? 0) & mask) +
      CENTRE_WEIGHT * countBits((bits[at + CENTRE - 1] ?? 0) & mask) +
      METAL_WEIGHT * countBits((bits[at + METAL - 1] ?? 0) & mask);
    mask = -1;
  }
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

/** What a segment meets on its way. */
export interface Walk {
  /** How many solid lines it crosses; a run of solid cells counts once. */
  readonly crossings: number;
  /** How far it runs along a solid line from its very start, sheet units. */
  readonly lead: number;
}

/** Follows a segment from cell to cell. */
export function walk(grid: Occupancy, x1: number, y1: number, x2: number, y2: number): Walk {
  const { cell } = grid;
  const length = norm(x2 - x1, y2 - y1);
  const steps = Math.max(1, Math.ceil(length / cell));
  const dx = (x2 - x1) / steps / cell;
  const dy = (y2 - y1) / steps / cell;
  let x = x1 / cell;
  let y = y1 / cell;
  let crossings = 0;
  let lead = 0;
  let inside = false;
  for (let i = 0; i <= steps; i++) {
    const column = Math.floor(x);
    const row = Math.floor(y);
    const hit = isSolid(grid, column, row);
    if (hit && !inside) crossings++;
    if (hit && lead === i) lead++;
    inside = hit;
    x += dx;
    y += dy;
  }
  return { crossings, lead: (lead * length) / (steps + 1) };
}
