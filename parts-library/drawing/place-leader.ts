// Options for words at the end of a leader: diameters, radii, call-outs, ghost labels (ISO 129-1, ISO 128-22).
import { norm } from '../geometry/index.js';
import type { DisplayItem } from './display-list.js';
import {
  arrowPath,
  boxOfWords,
  clearanceOf,
  costOfUprightText,
  crossingsFrom,
  drawInk,
  drawLine,
  drawWords,
  pointInArea,
  type Desk,
  type Owner,
  type Words,
} from './desk.js';
import { listOptions, type Option, type Options } from './labels.js';
import { INK_ABOVE, INK_BELOW } from './measure-text.js';
import { circlePath } from './pieces.js';

/** Where a leader may end and the unit vector along which it leaves. */
export interface Tip {
  readonly x: number;
  readonly y: number;
  readonly ux: number;
  readonly uy: number;
}

export type Ending = 'arrow' | 'dot';

/** Lengths of the slanting part, in font sizes; the second is the one that looks best. */
const LENGTHS = [1.5, 2.1, 2.9, 4, 5.4, 7.2, 9.5, 12.5, 16, 20.5, 26];
const BEST_LENGTH = 2.1;
const costOfLength = (length: number): number =>
  length < BEST_LENGTH ? (BEST_LENGTH - length) * 1.5 : length - BEST_LENGTH;

/** Cost of an outline crossed by a leader, and of a leader that runs nearly level or upright (ISO 128-22). */
const OUTLINE_CROSSED = 2.5;
const NEARLY_SQUARE = 1.5;
const SQUARE_WITHIN = Math.sin((12 * Math.PI) / 180);

/** Steeper leaders may turn their text to either side; the side away from the slant costs a little. */
const STEEP = 0.25;
const WRONG_SIDE = 0.3;

/** The order in which tips, lengths and sides are tried; it depends on what each tip costs and on nothing else. */
export interface LeaderPlan {
  readonly steps: readonly {
    readonly tip: number;
    readonly length: number;
    readonly natural: boolean;
    readonly floor: number;
  }[];
  readonly floors: Float64Array;
}

/** A plan for tips that cost this much, cheapest first; without steep tips there is one side to each. */
export function planLeaders(tipCosts: readonly number[], steep: boolean): LeaderPlan {
  const unsorted = tipCosts.flatMap((tipCost, tip) =>
    LENGTHS.flatMap((length) =>
      (steep ? [true, false] : [true]).map((natural) => ({
        tip,
        length,
        natural,
        floor: tipCost + costOfLength(length) + (natural ? 0 : WRONG_SIDE),
      })),
    ),
  );
  const steps = unsorted.toSorted((a, b) => a.floor - b.floor);
  return { steps, floors: Float64Array.from(steps, ({ floor }) => floor) };
}

/** What a set of leaders belongs to and how it ends. */
export interface LeaderText {
  readonly words: Words;
  readonly ending: Ending;
  readonly owner: Owner;
}

type Side = 1 | -1;

/** From the middle of a line of capitals down to its baseline, in font sizes: half of 0.7. */
const TO_BASELINE = 0.35;

function drawLeader(
  desk: Desk,
  { words, ending, owner }: LeaderText,
  tip: Tip,
  ex: number,
  ey: number,
  side: Side,
): readonly DisplayItem[] {
  const { style } = desk;
  const length = norm(tip.x - ex, tip.y - ey);
  const head =
    ending === 'arrow'
      ? arrowPath(tip.x, tip.y, (tip.x - ex) / length, (tip.y - ey) / length, style)
      : circlePath(tip.x, tip.y, style.size * 0.1);
  return [
    drawLine(
      'leader',
      [
        ['M', tip.x, tip.y],
        ['L', ex, ey],
        ['L', ex + side * style.landing, ey],
      ],
      owner,
    ),
    drawInk('leader', head, owner),
    drawWords(
      words,
      ex + side * (style.landing + style.pad),
      ey + words.size * TO_BASELINE,
      side === 1 ? 'start' : 'end',
    ),
  ];
}

/** One option, or a floor under its cost. `floor` is what is known before looking. */
function optionAt(
  desk: Desk,
  leader: LeaderText,
  tip: Tip,
  ex: number,
  ey: number,
  side: Side,
  floor: number,
  below: number,
): Option | number {
  if (!pointInArea(desk, ex, ey)) return Infinity;
  const { style } = desk;
  const { words } = leader;
  const landed = ex + side * style.landing;
  const near = landed + side * style.pad;
  const far = near + side * words.width;
  const baseline = ey + words.size * TO_BASELINE;
  const standing = costOfUprightText(
    desk,
    Math.min(near, far),
    baseline - words.size * INK_ABOVE,
    Math.max(near, far),
    baseline + words.size * INK_BELOW,
  );
  const length = norm(ex - tip.x, ey - tip.y);
  const slant = Math.min(Math.abs(ex - tip.x), Math.abs(ey - tip.y)) / length;
  let cost = floor + standing + (slant < SQUARE_WITHIN ? NEARLY_SQUARE : 0);
  if (cost >= below) return cost;
  const crossed = crossingsFrom(desk, tip.x, tip.y, ex, ey) + crossingsFrom(desk, ex, ey, landed, ey);
  cost += crossed * OUTLINE_CROSSED;
  if (cost >= below) return cost;
  return {
    cost,
    box: clearanceOf(desk, boxOfWords(words, near, baseline, side === 1 ? 'start' : 'end')),
    lines: [tip.x, tip.y, ex, ey, ex, ey, landed, ey],
    extensions: [],
    strip: null,
    draw: () => drawLeader(desk, leader, tip, ex, ey, side),
  };
}

/** Options near the tips, in the order of the plan. A missing tip is one that may not be used. */
export function leaderOptions(
  desk: Desk,
  leader: LeaderText,
  tips: readonly (Tip | undefined)[],
  { steps, floors }: LeaderPlan,
): Options {
  return {
    floors,
    at: (index, below) => {
      const step = steps[index];
      const tip = step === undefined ? undefined : tips[step.tip];
      if (step === undefined || tip === undefined) return Infinity;
      if (!step.natural && Math.abs(tip.ux) > STEEP) return Infinity;
      const side: Side = tip.ux >= 0 === step.natural ? 1 : -1;
      const reach = step.length * desk.style.size;
      return optionAt(
        desk,
        leader,
        tip,
        tip.x + tip.ux * reach,
        tip.y + tip.uy * reach,
        side,
        step.floor,
        below,
      );
    },
  };
}

/** What a place far from its tip costs beyond the length of its leader. */
const FAR = 4;

/**
 * Options all over the sheet, for a label that found no place near by: elbows on a lattice, each with the leader
 * that `tipFor` gives it.
 */
export function latticeOptions(
  desk: Desk,
  leader: LeaderText,
  tipFor: (x: number, y: number) => Tip | null,
): Options {
  const { area, style } = desk;
  const options: Option[] = [];
  for (let ey = area.minY + style.size * 0.7; ey < area.maxY; ey += style.size * 1.25) {
    for (let ex = area.minX; ex < area.maxX; ex += style.size * 1.7) {
      const tip = tipFor(ex, ey);
      if (tip === null) continue;
      const length = norm(ex - tip.x, ey - tip.y);
      if (length < style.size) continue;
      const cost = costOfLength(length / style.size) + FAR;
      const option = optionAt(desk, leader, tip, ex, ey, ex >= tip.x ? 1 : -1, cost, Infinity);
      if (typeof option !== 'number') options.push(option);
    }
  }
  return listOptions(options);
}
