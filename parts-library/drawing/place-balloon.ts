// Options for numbered balloons: on the spot that a finding points at, or beside it with a short leader.
import type { Finding } from '../model/index.js';
import { crossingsFrom, drawInk, drawLine, pointInArea, toSheet, type Desk } from './desk.js';
import type { DisplayItem } from './display-list.js';
import { makeBox } from './boxes.js';
import { listOptions, type Option, type Options } from './labels.js';
import { costOfRectangle } from './occupancy.js';
import { circlePath } from './pieces.js';
import { round, roundPoint } from './to-sheet.js';

/** A finding with the number of its note. */
export interface Numbered {
  readonly number: number;
  readonly finding: Finding;
}

/** Numbers all but passes from 1, in the order given. */
export function numberFindings(findings: readonly Finding[]): readonly Numbered[] {
  return findings.filter(({ level }) => level !== 'pass').map((finding, i) => ({ number: i + 1, finding }));
}

/** Cost of covering a stretch of outline: better a little farther away. */
const ON_OUTLINE = 9;
/** A text wants clean paper, a balloon carries its own: it minds metal and ghosts far less. */
const SHARE_OF_GROUND = 0.12;
const COST_OF_DISTANCE = 0.9;
/** Cost of hiding the very spot. */
const ON_THE_SPOT = 1;

/** Space round a balloon, in font sizes. */
const BALLOON_SPACE = 0.12;

/** Distances of the balloon's centre from the spot, in balloon radii, and unit vectors of sixteen directions. */
const DISTANCES = [1.9, 2.6, 3.5, 4.6, 6, 8, 11, 15, 20];
const DIRECTIONS = Array.from({ length: 16 }, (_, i) => {
  const angle = (2 * Math.PI * (i + 0.5)) / 16;
  return { ux: Math.cos(angle), uy: Math.sin(angle) };
});

/** Every place, nearest first: on the spot, then ring after ring. */
const PLACES = [
  { ux: 0, uy: 0, away: 0, floor: ON_THE_SPOT },
  ...DISTANCES.flatMap((away) =>
    DIRECTIONS.map(({ ux, uy }) => ({ ux, uy, away, floor: away * COST_OF_DISTANCE })),
  ),
].toSorted((a, b) => a.floor - b.floor);
const FLOORS = Float64Array.from(PLACES, ({ floor }) => floor);

/** All options of one balloon; none for a finding that points nowhere. */
export function balloonOptions(desk: Desk, { number, finding }: Numbered): Options {
  const { anchor, level, code } = finding;
  if (anchor === undefined || level === 'pass') return listOptions([]);
  const { style, grid } = desk;
  const radius = style.balloon;
  const space = style.size * BALLOON_SPACE;
  const spot = toSheet(desk, anchor.x, anchor.y);

  const at = (index: number, below: number): Option | number => {
    const place = PLACES[index];
    if (place === undefined) return Infinity;
    const { ux, uy } = place;
    const x = spot.x + ux * place.away * radius;
    const y = spot.y + uy * place.away * radius;
    if (!pointInArea(desk, x - radius, y - radius) || !pointInArea(desk, x + radius, y + radius))
      return Infinity;
    const ground = costOfRectangle(grid, x - radius, y - radius, x + radius, y + radius);
    const standing =
      ground === Infinity ? ON_OUTLINE : (SHARE_OF_GROUND * ground * grid.cell * grid.cell) / style.size ** 2;
    const led = place.away > 0;
    const edgeX = x - ux * radius;
    const edgeY = y - uy * radius;
    const crossed = led ? crossingsFrom(desk, spot.x, spot.y, edgeX, edgeY) : 0;
    const cost = place.floor + standing + crossed;
    if (cost >= below) return cost;
    const draw = (): readonly DisplayItem[] => [
      ...(led
        ? [
            drawLine(
              'leader',
              [
                ['M', spot.x, spot.y],
                ['L', edgeX, edgeY],
              ],
              {},
            ),
            drawInk('leader', circlePath(spot.x, spot.y, style.size * 0.1), {}),
          ]
        : []),
      { kind: 'balloon', at: roundPoint(x, y), radius: round(radius), number, level, code },
    ];
    return {
      cost,
      box: makeBox(x, y, radius + space, radius + space),
      lines: led ? [spot.x, spot.y, edgeX, edgeY] : [],
      extensions: [],
      strip: null,
      draw,
    };
  };
  return { floors: FLOORS, at };
}
