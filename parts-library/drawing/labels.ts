// Labels and the choice of where each stands: every label brings its options, and the cheapest set that does
// not collide is looked for by greedy choice and repair. Nothing here is random, so the same print comes out alike.
import type { Box } from './boxes.js';
import type { DisplayItem } from './display-list.js';
import { COLLISION, pairCost, reachOf, type Chosen } from './label-pairs.js';

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
  /** A floor under the cost of each option. */
  readonly floors: ArrayLike<number>;
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
    floors: sorted.map(({ cost }) => cost),
    at: (i) => sorted[i] ?? Infinity,
  };
}

/** Two sets of options, the second only looked at after the first. */
export const moreOptions = (first: Options, second: Options): Options => ({
  floors: [...Array.from(first.floors, () => 0), ...Array.from(second.floors)],
  at: (i, below) =>
    i < first.floors.length ? first.at(i, below) : second.at(i - first.floors.length, below),
});

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
const WORTH_GAINING = 4;

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
      if (other !== null && j !== i) cost += pairCost(candidate, other, enough - cost);
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
    const { floors } = label.options;
    for (let index = 0; index < floors.length; index++) {
      if ((floors[index] ?? Infinity) >= bestCost) break;
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
    const restore = (): number => {
      before.forEach((choice, j) => {
        chosen[j] = choice;
      });
      return now;
    };
    restore();
    const mine = before[i] ?? null;
    if (alone === null) return now;
    if (mine !== null && costAmong(mine, i, Infinity) < alone.option.cost + WORTH_GAINING) return now;
    chosen[i] = alone;
    const crowded = labels.flatMap((_, j) => {
      const other = j === i ? null : (chosen[j] ?? null);
      return other !== null && pairCost(alone, other) > 0 ? [j] : [];
    });
    for (const j of [...crowded, i]) choose(j);
    const after = total();
    return after < now - 1e-9 ? after : restore();
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
