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

/**
 * The options of a label, in the order of a floor under their cost that needs no look at the sheet, so that most
 * of them are never worked out.
 */
export interface Options {
  readonly count: number;
  readonly floor: (index: number) => number;
  /**
   * The option, if it costs less than `below`; else a better floor under its cost, Infinity where the label cannot
   * stand at all: on an outline, off the sheet.
   */
  readonly at: (index: number, below: number) => Option | number;
}

export interface Label {
  readonly id: string;
  /** A label that may be left out when it would cost more than this. */
  readonly dropAbove: number;
  readonly options: Options;
}

/** Options that are already worked out, cheapest first. */
export function listOptions(options: readonly Option[]): Options {
  const sorted = options.toSorted((a, b) => a.cost - b.cost);
  return {
    count: sorted.length,
    floor: (i) => sorted[i]?.cost ?? Infinity,
    at: (i) => sorted[i] ?? Infinity,
  };
}

/** Two sets of options, the second only looked at after the first. */
export const moreOptions = (first: Options, second: Options): Options => ({
  count: first.count + second.count,
  floor: (i) => (i < first.count ? 0 : second.floor(i - first.count)),
  at: (i, below) => (i < first.count ? first.at(i, below) : second.at(i - first.count, below)),
});

/** Cost of two texts on each other, of a line through a text: never accepted while anything else is possible. */
const TEXT_ON_TEXT = 4000;
const LINE_THROUGH_TEXT = 2500;
/** Costs of crossing lines, in font sizes of leader length. */
const LINE_ACROSS_LINE = 40;
const STRIP_ON_STRIP = 30;
const EXTENSION_ACROSS_LINE = 10;
const EXTENSION_ACROSS_EXTENSION = 3;

/** At or above this a pair of labels collides. */
const COLLISION = LINE_THROUGH_TEXT;

interface Chosen {
  readonly option: Option;
  readonly reach: Extent;
}

function reachOf(option: Option): Extent {
  let { minX, minY, maxX, maxY } = option.strip ?? option.box;
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
  const { box } = option;
  return {
    minX: Math.min(minX, box.minX),
    minY: Math.min(minY, box.minY),
    maxX: Math.max(maxX, box.maxX),
    maxY: Math.max(maxY, box.maxY),
  };
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

/** How many of the dearest labels may insist on their own best place, and from which cost on. */
const INSISTING = 4;
const WORTH_INSISTING = 10;

/** What a label that must stand and has no place adds to the whole. */
const NO_PLACE = 5000;

/** Chooses an option for every label. Earlier labels choose first; then each looks again, knowing the others. */
export function arrange(labels: readonly Label[]): Arrangement {
  /** What is known of each option: itself, or a floor under its cost. */
  const made: (Chosen | number)[][] = labels.map(() => []);
  const chosen: (Chosen | null)[] = labels.map(() => null);

  const candidateOf = (
    label: Label,
    known: (Chosen | number)[],
    index: number,
    below: number,
  ): Chosen | null => {
    const before = known[index];
    if (before !== undefined) {
      if (typeof before !== 'number') return before;
      if (before >= below) return null;
    }
    const option = label.options.at(index, below);
    if (typeof option === 'number') {
      known[index] = option;
      return null;
    }
    const candidate = { option, reach: reachOf(option) };
    known[index] = candidate;
    return candidate;
  };

  /** Cost of a choice for label i among the others; stops adding once it reaches `enough`. */
  const costAmong = (candidate: Chosen, i: number, enough: number): number => {
    let cost = candidate.option.cost;
    for (let j = 0; j < chosen.length && cost < enough; j++) {
      const other = chosen[j] ?? null;
      if (other !== null && j !== i) cost += pairCost(candidate, other);
    }
    return cost;
  };

  const choose = (i: number): boolean => {
    const label = labels[i];
    const known = made[i];
    if (label === undefined || known === undefined) return false;
    const before = chosen[i] ?? null;
    let best: Chosen | null = null;
    let bestCost = label.dropAbove;
    if (before !== null) {
      // What it has already is the mark to beat.
      const now = costAmong(before, i, Infinity);
      if (now < bestCost) {
        best = before;
        bestCost = now;
      }
    }
    for (let index = 0; index < label.options.count; index++) {
      if (label.options.floor(index) >= bestCost) break;
      const candidate = candidateOf(label, known, index, bestCost);
      if (candidate === null || candidate === before || candidate.option.cost >= bestCost) continue;
      const cost = costAmong(candidate, i, bestCost);
      if (cost < bestCost) {
        best = candidate;
        bestCost = cost;
      }
    }
    chosen[i] = best;
    return best !== before;
  };

  /** Lets labels look again until nothing moves; a label looks only if another has moved since it last looked. */
  const settle = (sweeps: number): void => {
    const lookedAt = labels.map(() => 0);
    let moves = 1;
    for (let sweep = 0; sweep < sweeps; sweep++) {
      const before = moves;
      labels.forEach((_, i) => {
        if (lookedAt[i] === moves) return;
        if (choose(i)) moves++;
        lookedAt[i] = moves;
      });
      if (moves === before) break;
    }
  };

  const total = (): number => {
    let sum = 0;
    labels.forEach(({ dropAbove }, i) => {
      const mine = chosen[i] ?? null;
      if (mine === null) {
        sum += dropAbove === Infinity ? NO_PLACE : dropAbove;
        return;
      }
      sum += mine.option.cost;
      for (let j = 0; j < i; j++) {
        const other = chosen[j] ?? null;
        if (other !== null) sum += pairCost(mine, other);
      }
    });
    return sum;
  };

  /** Gives a label the place it would have alone and lets those it crowds make room; undone if that is no better. */
  const insist = (i: number, now: number): number => {
    const before = chosen.slice();
    chosen.fill(null);
    choose(i);
    const alone = chosen[i] ?? null;
    before.forEach((choice, j) => {
      chosen[j] = j === i ? alone : choice;
    });
    if (alone === null || alone === before[i]) return now;
    const crowded = labels.flatMap((_, j) => {
      const other = j === i ? null : (chosen[j] ?? null);
      return other !== null && pairCost(alone, other) > 0 ? [j] : [];
    });
    for (const j of [...crowded, i, ...crowded]) choose(j);
    const after = total();
    if (after < now - 1e-9) return after;
    before.forEach((choice, j) => {
      chosen[j] = choice;
    });
    return now;
  };

  settle(SWEEPS);
  let cost = total();
  const worst = labels
    .map((_, i) => {
      const mine = chosen[i] ?? null;
      return { i, cost: mine === null ? 0 : costAmong(mine, i, Infinity) };
    })
    .filter((one) => one.cost > WORTH_INSISTING)
    .toSorted((a, b) => b.cost - a.cost || a.i - b.i)
    .slice(0, INSISTING);
  for (const { i } of worst) cost = insist(i, cost);

  const colliding = labels.flatMap((label, i) => {
    const mine = chosen[i] ?? null;
    if (mine === null) return label.dropAbove === Infinity ? [i] : [];
    return costAmong(mine, i, Infinity) - mine.option.cost >= COLLISION ? [i] : [];
  });
  return { chosen: chosen.map((choice) => choice?.option ?? null), cost, colliding };
}
