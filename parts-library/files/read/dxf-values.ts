// Numbers and points of an entity by their group codes, and the plane that it lies in.
import type { Point } from '../../geometry/index.js';
import { IDENTITY, stretch, type Affine } from './affine.js';
import type { Group, EntityRecord } from './dxf-records.js';
import { DrawingProblem } from './problem.js';

/** The first number of a group code; undefined where the entity has none. */
export const numberOf = (groups: readonly Group[], code: number): number | undefined => {
  const value = groups.find((group) => group.code === code)?.value;
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
};

/** All numbers of a group code, in their order. */
export const numbersOf = (groups: readonly Group[], code: number): readonly number[] =>
  groups.flatMap((group) => (group.code === code && typeof group.value === 'number' ? [group.value] : []));

/**
 * A number that the entity cannot be without.
 * @throws DrawingProblem that names it by `what`
 */
export function need(record: EntityRecord, code: number, what: string): number {
  const value = numberOf(record.groups, code);
  if (value === undefined)
    throw new DrawingProblem(
      `${record.type} of line ${record.line} has no ${what} (group ${code}); the file is damaged.`,
    );
  return value;
}

/** A point by the code of its x; y stands ten codes higher. */
export const pointOf = (record: EntityRecord, code: number, what: string): Point => ({
  x: need(record, code, what),
  y: need(record, code + 10, what),
});

/** Points that stand in a row, x and y each with their code. */
export function pointsOf(record: EntityRecord, code: number): readonly Point[] {
  const xs = numbersOf(record.groups, code);
  const ys = numbersOf(record.groups, code + 10);
  if (xs.length !== ys.length)
    throw new DrawingProblem(
      `${record.type} of line ${record.line} has ${xs.length} x and ${ys.length} y values; the file is damaged.`,
    );
  return xs.map((x, i) => ({ x, y: ys[i] ?? 0 }));
}

/** A direction counts as straight up or down when it leans less than this. */
const UPRIGHT = 1e-6;

/**
 * The move from an entity's own plane (OCS) to the drawing's. Seen from behind, x is mirrored: the reference's
 * arbitrary axis of (0, 0, -1) is (-1, 0, 0).
 * @returns undefined for a plane that leans
 */
export function ownPlane(groups: readonly Group[]): Affine | undefined {
  const [x, y, z] = [numberOf(groups, 210) ?? 0, numberOf(groups, 220) ?? 0, numberOf(groups, 230) ?? 1];
  if (Math.abs(x) > UPRIGHT * Math.abs(z) || Math.abs(y) > UPRIGHT * Math.abs(z) || z === 0) return undefined;
  return z < 0 ? stretch(-1, 1) : IDENTITY;
}
