// Which scales a print may be drawn to: any on a screen, the preferred ones of ISO 5455 on paper.
import type { Extent } from './scene.js';

export interface Scale {
  /** Sheet units per mm of part. */
  readonly scale: number;
  /** How it is stated, for example `1:2`; empty on a screen, where the bar tells. */
  readonly stated: string;
}

/** ISO 5455, table 1, and their decades that plate parts need. */
const PREFERRED: readonly (readonly [number, number])[] = [
  [50, 1],
  [20, 1],
  [10, 1],
  [5, 1],
  [2, 1],
  [1, 1],
  [1, 2],
  [1, 5],
  [1, 10],
  [1, 20],
  [1, 50],
  [1, 100],
  [1, 200],
  [1, 500],
  [1, 1000],
];

/** Steps down from the largest scale that fits, as room for labels runs short. */
const STEPS = [1, 0.82, 0.67, 0.55, 0.45, 0.37, 0.3, 0.24];

/** Room wanted on each side, sheet units. */
export interface Margin {
  readonly x: number;
  readonly y: number;
}

/** The largest scale at which an extent in mm fits an area of sheet units with a margin on every side. */
export function fullScale(extent: Extent, area: Extent, { x, y }: Margin): number {
  const width = Math.max(extent.maxX - extent.minX, 1e-6);
  const height = Math.max(extent.maxY - extent.minY, 1e-6);
  return Math.max(
    1e-6,
    Math.min((area.maxX - area.minX - 2 * x) / width, (area.maxY - area.minY - 2 * y) / height),
  );
}

/** Scales for a window, largest first. */
export const screenScales = (full: number): readonly Scale[] =>
  STEPS.map((step) => ({ scale: full * step, stated: '' }));

/** A scale as it is stated on a sheet, for example `1:2` or `2 : 1`, in sheet mm per mm; null if it is not one. */
export function readScale(text: string): number | null {
  const match = /^\s*(\d+(?:\.\d+)?)\s*:\s*(\d+(?:\.\d+)?)\s*$/.exec(text);
  const [, sheet, part] = match ?? [];
  if (sheet === undefined || part === undefined || Number(part) === 0 || Number(sheet) === 0) return null;
  return Number(sheet) / Number(part);
}

/**
 * Scales for paper in mm, largest first: the preferred ones that fit, none larger than the one wanted. If the
 * part is too large for all of them, the last one stands alone.
 */
export function paperScales(full: number, wanted: number | null): readonly Scale[] {
  const scales = PREFERRED.map(([sheet, part]) => ({ scale: sheet / part, stated: `${sheet}:${part}` }));
  const fitting = scales.filter(({ scale }) => scale <= full * (1 + 1e-9) && scale <= (wanted ?? Infinity));
  return fitting.length > 0 ? fitting : scales.slice(-1);
}
