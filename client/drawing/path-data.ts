// Path commands of a display list as an SVG path's d attribute.
import type { PathCommand } from '../../parts-library/drawing/index.js';

/** Hundredths of a pixel: finer than any screen shows, short enough to compare and set quickly. */
const round = (value: number): number => Math.round(value * 100) / 100;

/**
 * The `d` attribute of a display list's path, in sheet units; an arc stays an arc (equal radii, no rotation).
 *
 * @example writePathData([['M', 0, 0], ['A', 5, 0, 1, 10, 0]]) // 'M0 0A5 5 0 0 1 10 0'
 */
export function writePathData(path: readonly PathCommand[]): string {
  let data = '';
  for (const command of path) {
    if (command[0] === 'Z') data += 'Z';
    else if (command[0] === 'A') {
      const [, radius, large, sweep, x, y] = command;
      data += `A${round(radius)} ${round(radius)} 0 ${large} ${sweep} ${round(x)} ${round(y)}`;
    } else data += `${command[0]}${round(command[1])} ${round(command[2])}`;
  }
  return data;
}
