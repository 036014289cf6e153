// Labels and the choice of where each stands: every label brings its options, and the cheapest set that does
// not collide is looked for by greedy choice and repair. Nothing here is random, so the same print comes out alike.
import { boxesOverlap, segmentHitsBox, segmentsCross, type Box } from './boxes.js';
import type { DisplayItem } from './display-list.js';
import type { Extent } from './scene.js';

/** One way to place a label. Lines are x1, y1, x2, y2, … in sheet units. */
export interface Option {
  /** What it costs by itself, in font sizes of leader length. */
  readonly cost: number;
  /** Where its text or balloon stands, clearance included. */
  readonly box: Box;
  /** Leaders and dimension lines, which other texts and lines keep clear of. */
  readonly lines: readonly number[];
  /** Extension lines, which may cross one another. */
  readonly extensions: readonly number[];
  /** The whole length of a dimension line with its text, which other dimension lines keep clear of. */
  readonly strip: Box | null;
  readonly draw: () => readonly DisplayItem[];
}

export interface Label {
  readonly id: string;
  /** A label that may be left out when it would cost more than this. */
  readonly dropAbove: number;
  /** Cheapest first. */
  readonly options: readonly Option[];
}

/** Cost of two texts on each other, of a line through a text: never accepted while anything else is possible. */
const TEXT_ON_TEXT = 4000;
const LINE_THROUGH_TEXT = 2500;
/** Costs of crossing lines, in font sizes of leader length. */
const LINE_ACROSS_LINE = 40;
const STRIP_ON_STRIP = 30;
const EXTENSION_ACROSS_LINE = 14;
const EXTENSION_ACROSS_EXTENSION = 3;

/** Above this an arrangement has a collision in it. */
export const COLLISION = 2000;

function reachOf(option: Option): Extent {
  let { minX, minY, maxX, maxY } = option.box;
  for (const lines of [option.lines, option.extensions]) {
    for (let i = 0; i < lines.length; i += 2) {
      const x = lines[i] ?? 0;
      const y = lines[i + 1] ?? 0;
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
    }
  }
  return { minX, minY, maxX, maxY };
}

function countHits(lines: readonly number[], box: Box): number {
  let hits = 0;
  for (let i = 0; i < lines.length; i += 4) {
    if (segmentHitsBox(box, lines[i] ?? 0, lines[i + 1] ?? 0, lines[i + 2] ?? 0, lines[i + 3] ?? 0)) hits++;
  }
  return hits;
}

function countCrossed(a: readonly number[], b: readonly number[]): number {
  let crossed = 0;
  for (let i = 0; i < a.length; i += 4) {
    const ax = a[i] ?? 0;
    const ay = a[i + 1] ?? 0;
    const bx = a[i + 2] ?? 0;
    const by = a[i + 3] ?? 0;
    for (let j = 0; j < b.length; j += 4) {
      if (segmentsCross(ax, ay, bx, by, b[j] ?? 0, b[j + 1] ?? 0, b[j + 2] ?? 0, b[j + 3] ?? 0)) crossed++;
    }
  }
  return crossed;
}

interface Chosen {
  readonly option: Option;
  readonly reach: Extent;
}

function pairCost(a: Chosen, b: Chosen): number {
  if (a.reach.maxX <= b.reach.minX || b.reach.maxX <= a.reach.minX) return 0;
  if (a.reach.maxY <= b.reach.minY || b.reach.maxY <= a.reach.minY) return 0;
  const one = a.option;
  const two = b.option;
  let cost = boxesOverlap(one.box, two.box) ? TEXT_ON_TEXT : 0;
  const through =
    countHits(one.lines, two.box) +
    countHits(two.lines, one.box) +
    countHits(one.extensions, two.box) +
    countHits(two.extensions, one.box);
  cost += through * LINE_THROUGH_TEXT;
  if (one.strip !== null && two.strip !== null && boxesOverlap(one.strip, two.strip)) cost += STRIP_ON_STRIP;
  cost += countCrossed(one.lines, two.lines) * LINE_ACROSS_LINE;
  cost +=
    (countCrossed(one.lines, two.extensions) + countCrossed(one.extensions, two.lines)) *
    EXTENSION_ACROSS_LINE;
  return cost + countCrossed(one.extensions, two.extensions) * EXTENSION_ACROSS_EXTENSION;
}

export interface Arrangement {
  /** One for each label; null where it was left out. */
  readonly chosen: readonly (Option | null)[];
  readonly cost: number;
  /** Indices of labels that still collide or that have no option at all. */
  readonly colliding: readonly number[];
}

/** How often every label may look again for a better place. */
const SWEEPS = 5;

/** Chooses an option for every label. Earlier labels choose first; then each looks again, knowing the others. */
export function arrange(labels: readonly Label[]): Arrangement {
  const chosen: (Chosen | null)[] = labels.map(() => null);
  const costs: number[] = labels.map(() => 0);

  const choose = (i: number): boolean => {
    const label = labels[i];
    if (label === undefined) return false;
    const before = chosen[i] ?? null;
    let best: Chosen | null = null;
    let bestCost = label.dropAbove;
    for (const option of label.options) {
      if (option.cost >= bestCost) break;
      const candidate = { option, reach: reachOf(option) };
      let cost = option.cost;
      for (let j = 0; j < chosen.length && cost < bestCost; j++) {
        const other = chosen[j] ?? null;
        if (other !== null && j !== i) cost += pairCost(candidate, other);
      }
      if (cost < bestCost) {
        best = candidate;
        bestCost = cost;
      }
    }
    chosen[i] = best;
    costs[i] = bestCost;
    return best?.option !== before?.option;
  };

  labels.forEach((_, i) => choose(i));
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let changed = false;
    labels.forEach((_, i) => {
      if (choose(i)) changed = true;
    });
    if (!changed) break;
  }

  const colliding: number[] = [];
  let total = 0;
  labels.forEach((label, i) => {
    const mine = chosen[i] ?? null;
    if (mine === null) {
      if (label.dropAbove === Infinity) colliding.push(i);
      else total += label.dropAbove;
      return;
    }
    let cost = mine.option.cost;
    for (let j = 0; j < chosen.length; j++) {
      const other = chosen[j] ?? null;
      if (other !== null && j !== i) cost += pairCost(mine, other) / 2;
    }
    if (cost >= COLLISION / 2) colliding.push(i);
    total += cost;
  });
  return { chosen: chosen.map((choice) => choice?.option ?? null), cost: total, colliding };
}
