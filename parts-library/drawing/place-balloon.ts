// Options for numbered balloons: on the spot that a finding points at, or beside it with a short leader.
import type { Finding } from '../model/index.js';
import { balloonBox, crossingsFrom, drawInk, drawLine, pointInArea, toSheet, type Desk } from './desk.js';
import type { DisplayItem } from './display-list.js';
import { growBox } from './boxes.js';
import type { Option } from './labels.js';
import { costOfBox } from './occupancy.js';
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

/** Distances of the balloon's centre from the spot, in balloon radii, and directions. */
const DISTANCES = [1.9, 2.6, 3.5, 4.6, 6, 8, 11, 15, 20];
const DIRECTIONS = 16;

/** Cost of covering a stretch of outline: better a little farther away. */
const ON_OUTLINE = 9;
/** A text wants clean paper, a balloon carries its own: it minds metal and ghosts far less. */
const SHARE_OF_GROUND = 0.12;

/** All options of one balloon, cheapest first. */
export function balloonOptions(desk: Desk, { number, finding }: Numbered): readonly Option[] {
  const { anchor, level, code } = finding;
  if (anchor === undefined || level === 'pass') return [];
  const { style, grid } = desk;
  const radius = style.balloon;
  const spot = toSheet(desk, anchor.x, anchor.y);
  const options: Option[] = [];

  const add = (x: number, y: number, distance: number, extra: number): void => {
    if (!pointInArea(desk, x - radius, y - radius) || !pointInArea(desk, x + radius, y + radius)) return;
    const box = balloonBox(x, y, radius);
    const ground = costOfBox(grid, box);
    const covers = ground === Infinity;
    const standing = covers
      ? ON_OUTLINE
      : (SHARE_OF_GROUND * ground * grid.cell * grid.cell) / style.size ** 2;
    const led = distance > radius * 1.25;
    const ux = led ? (x - spot.x) / distance : 0;
    const uy = led ? (y - spot.y) / distance : 0;
    const edgeX = x - ux * radius;
    const edgeY = y - uy * radius;
    const crossed = led ? crossingsFrom(desk, spot.x, spot.y, edgeX, edgeY) : 0;
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
    options.push({
      cost: extra + (distance / style.size) * 1.2 + standing + crossed,
      box: growBox(box, style.size * 0.12),
      lines: led ? [spot.x, spot.y, edgeX, edgeY] : [],
      extensions: [],
      strip: null,
      draw,
    });
  };

  add(spot.x, spot.y, 0, 1);
  for (const distance of DISTANCES) {
    for (let i = 0; i < DIRECTIONS; i++) {
      const angle = (2 * Math.PI * (i + 0.5)) / DIRECTIONS;
      const away = distance * radius;
      add(spot.x + away * Math.cos(angle), spot.y + away * Math.sin(angle), away, 0);
    }
  }
  return options.toSorted((a, b) => a.cost - b.cost);
}
