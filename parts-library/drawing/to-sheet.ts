// From full size to the sheet: paths and points scaled and moved, and coordinates rounded for a stable file.
import type { PathCommand, SheetPoint } from './display-list.js';
import type { Corners } from './boxes.js';
import type { Placing } from './occupancy.js';

/** Thousandths of a sheet unit: finer than any printer or screen, coarse enough to give the same bytes everywhere. */
export const round = (value: number): number => {
  const rounded = Math.round(value * 1000) / 1000;
  return rounded === 0 ? 0 : rounded;
};

export const roundPoint = (x: number, y: number): SheetPoint => ({ x: round(x), y: round(y) });

export const roundCorners = ([a, b, c, d]: Corners): Corners => [
  roundPoint(a.x, a.y),
  roundPoint(b.x, b.y),
  roundPoint(c.x, c.y),
  roundPoint(d.x, d.y),
];

/** A path at full size as it stands on the sheet. */
export function placePath(path: readonly PathCommand[], { scale, x, y }: Placing): readonly PathCommand[] {
  return path.map((command): PathCommand => {
    if (command[0] === 'Z') return command;
    if (command[0] === 'A') {
      return [
        'A',
        round(command[1] * scale),
        command[2],
        command[3],
        round(x + command[4] * scale),
        round(y + command[5] * scale),
      ];
    }
    return [command[0], round(x + command[1] * scale), round(y + command[2] * scale)];
  });
}

/** A path that is already in sheet units. */
export const roundPath = (path: readonly PathCommand[]): readonly PathCommand[] =>
  placePath(path, { scale: 1, x: 0, y: 0 });
