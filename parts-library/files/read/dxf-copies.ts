// How an INSERT lays out its block: where, how large, turned, in rows and columns.
import { movePoint, type Affine } from './affine.js';
import type { EntityRecord } from './dxf-records.js';
import { numberOf, ownPlane, pointOf } from './dxf-values.js';
import { DrawingProblem } from './problem.js';

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** How an INSERT lays out its block. */
export interface Copies {
  readonly block: string;
  /** One move for each copy, from the block's own coordinates less its base. */
  readonly moves: readonly Affine[];
}

/** Most rows or columns of one array. */
const MOST_IN_A_ROW = 1000;

export function copiesOf(record: EntityRecord): Copies | undefined {
  const { groups, line } = record;
  const plane = ownPlane(groups);
  if (plane === undefined) return undefined;
  const block = groups.find(({ code }) => code === 2)?.value;
  if (typeof block !== 'string' || block === '')
    throw new DrawingProblem(`INSERT of line ${line} names no block; the file is damaged.`);
  const at = pointOf(record, 10, 'place');
  const angle = radians(numberOf(groups, 50) ?? 0);
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const [sx, sy] = [numberOf(groups, 41) ?? 1, numberOf(groups, 42) ?? 1];
  if (sx === 0 || sy === 0)
    throw new DrawingProblem(`INSERT of line ${line} has a scale of 0; accepted is any other.`);
  const columns = Math.max(1, numberOf(groups, 70) ?? 1);
  const rows = Math.max(1, numberOf(groups, 71) ?? 1);
  if (columns > MOST_IN_A_ROW || rows > MOST_IN_A_ROW)
    throw new DrawingProblem(
      `INSERT of line ${line} repeats its block ${columns} × ${rows} times; accepted are up to ${MOST_IN_A_ROW} each way.`,
    );
  const [dx, dy] = [numberOf(groups, 44) ?? 0, numberOf(groups, 45) ?? 0];
  const moves = Array.from({ length: columns * rows }, (_, i): Affine => {
    const offset = { x: (i % columns) * dx, y: Math.floor(i / columns) * dy };
    const origin = {
      x: at.x + offset.x * cosine - offset.y * sine,
      y: at.y + offset.x * sine + offset.y * cosine,
    };
    const placed = movePoint(plane, origin);
    return {
      a: plane.a * cosine * sx,
      b: sine * sx,
      c: plane.a * -sine * sy,
      d: cosine * sy,
      e: placed.x,
      f: placed.y,
    };
  });
  return { block, moves };
}
