// Options for words at the end of a leader: diameters, radii, call-outs, ghost labels (ISO 129-1, ISO 128-22).
import type { DisplayItem, PathCommand } from './display-list.js';
import {
  arrowPath,
  boxOfWords,
  clearanceOf,
  costOfText,
  crossingsFrom,
  drawInk,
  drawLine,
  drawWords,
  pointInArea,
  type Desk,
  type Owner,
  type Words,
} from './desk.js';
import type { Option } from './labels.js';
import { circlePath } from './pieces.js';

/** Where a leader may end and the unit vector along which it leaves, with what that choice costs. */
export interface Tip {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
  readonly cost: number;
}

export type Ending = 'arrow' | 'dot';

/** Lengths of the slanting part, in font sizes. */
const LENGTHS = [0.9, 1.5, 2.2, 3, 4, 5.2, 6.6, 8.4, 10.5, 13, 16, 20, 25];

/** Cost of an outline crossed by a leader, and of a leader that runs nearly level or upright (ISO 128-22). */
const OUTLINE_CROSSED = 2.5;
const NEARLY_SQUARE = 1.5;
const SQUARE_WITHIN = Math.sin((12 * Math.PI) / 180);

/** Options kept for each label; the rest are dearer. */
const KEPT = 60;

function drawLeader(
  desk: Desk,
  words: Words,
  tip: Tip,
  elbow: readonly [number, number],
  side: 1 | -1,
  ending: Ending,
  owner: Owner,
): readonly DisplayItem[] {
  const { style } = desk;
  const [ex, ey] = elbow;
  const role = 'leader' as const;
  const line: readonly PathCommand[] = [
    ['M', tip.x, tip.y],
    ['L', ex, ey],
    ['L', ex + side * style.landing, ey],
  ];
  const length = Math.hypot(tip.x - ex, tip.y - ey);
  const head =
    ending === 'arrow'
      ? arrowPath(tip.x, tip.y, (tip.x - ex) / length, (tip.y - ey) / length, style)
      : circlePath(tip.x, tip.y, style.size * 0.1);
  return [
    drawLine(role, line, owner),
    drawInk(role, head, owner),
    drawWords(
      words,
      ex + side * (style.landing + style.pad),
      ey + words.size * 0.35,
      side === 1 ? 'start' : 'end',
    ),
  ];
}

/** One option, or null where it would stand on an outline or off the sheet. */
function optionAt(
  desk: Desk,
  words: Words,
  tip: Tip,
  elbow: readonly [number, number],
  side: 1 | -1,
  ending: Ending,
  owner: Owner,
): Option | null {
  const { style } = desk;
  const [ex, ey] = elbow;
  const textX = ex + side * (style.landing + style.pad);
  const box = boxOfWords(words, textX, ey + words.size * 0.35, side === 1 ? 'start' : 'end');
  const standing = costOfText(desk, box);
  if (standing === Infinity) return null;
  const length = Math.hypot(ex - tip.x, ey - tip.y);
  const ux = (ex - tip.x) / length;
  const uy = (ey - tip.y) / length;
  const square = Math.min(Math.abs(ux), Math.abs(uy)) < SQUARE_WITHIN ? NEARLY_SQUARE : 0;
  // A leader that doubles back under its own text reads badly.
  const back = ux * side < -0.3 ? 6 : 0;
  const crossed =
    crossingsFrom(desk, tip.x, tip.y, ex, ey) + crossingsFrom(desk, ex, ey, ex + side * style.landing, ey);
  return {
    cost: length / style.size + standing + square + back + tip.cost + crossed * OUTLINE_CROSSED,
    box: clearanceOf(desk, box),
    lines: [tip.x, tip.y, ex, ey, ex, ey, ex + side * style.landing, ey],
    extensions: [],
    strip: null,
    draw: () => drawLeader(desk, words, tip, elbow, side, ending, owner),
  };
}

const cheapest = (options: readonly Option[]): readonly Option[] =>
  options.toSorted((a, b) => a.cost - b.cost).slice(0, KEPT);

/** All useful options near the tips: every tip, every length, text on the side that the leader points to. */
export function leaderOptions(
  desk: Desk,
  words: Words,
  tips: readonly Tip[],
  ending: Ending,
  owner: Owner,
): readonly Option[] {
  const options: Option[] = [];
  for (const tip of tips) {
    for (const length of LENGTHS) {
      const ex = tip.x + tip.ux * length * desk.style.size;
      const ey = tip.y + tip.uy * length * desk.style.size;
      if (!pointInArea(desk, ex, ey)) break;
      if (tip.ux > -0.25) add(tip, ex, ey, 1);
      if (tip.ux < 0.25) add(tip, ex, ey, -1);
    }
  }
  return cheapest(options);

  function add(tip: Tip, ex: number, ey: number, side: 1 | -1): void {
    const option = optionAt(desk, words, tip, [ex, ey], side, ending, owner);
    if (option !== null) options.push(option);
  }
}

/**
 * Options all over the sheet, for a label that found no place near by: elbows on a lattice, each with the leader
 * that `tipFor` gives it.
 */
export function latticeOptions(
  desk: Desk,
  words: Words,
  tipFor: (x: number, y: number) => Tip | null,
  ending: Ending,
  owner: Owner,
): readonly Option[] {
  const { area, style } = desk;
  const options: Option[] = [];
  for (let ey = area.minY + style.size * 0.7; ey < area.maxY; ey += style.size * 1.25) {
    for (let ex = area.minX; ex < area.maxX; ex += style.size * 1.7) {
      const tip = tipFor(ex, ey);
      if (tip === null || Math.hypot(ex - tip.x, ey - tip.y) < style.size) continue;
      const side = ex >= tip.x ? 1 : -1;
      const option = optionAt(desk, words, { ...tip, cost: tip.cost + 4 }, [ex, ey], side, ending, owner);
      if (option !== null) options.push(option);
    }
  }
  return options.toSorted((a, b) => a.cost - b.cost);
}
