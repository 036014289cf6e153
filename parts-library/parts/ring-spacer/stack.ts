// Which rings fill a gap: a small exact search over the plates on hand.

/** A plate that rings can be cut from. */
export interface Sheet {
  /** Thickness, mm. */
  readonly thickness: number;
  readonly plusMinus?: number | undefined;
  /** Most rings that it gives; absent when it gives as many as are wanted. */
  readonly most?: number | undefined;
}

/** Rings of one thickness in a stack. */
export interface Layer {
  readonly sheet: Sheet;
  readonly count: number;
}

export interface Stack {
  /** Thickest first. */
  readonly layers: readonly Layer[];
  readonly rings: number;
  /** Thickness of all rings together, mm. */
  readonly total: number;
  /** Gap less the stack, mm. */
  readonly remains: number;
}

export interface StackQuestion {
  /** Gap to fill, mm. */
  readonly gap: number;
  readonly sheets: readonly Sheet[];
  /** Play that must stay, and play that is still well, mm. */
  readonly leastPlay: number;
  readonly mostPlay: number;
  /** Most rings in one stack. */
  readonly mostRings: number;
  /** `fewest`: the fewest rings that leave no more than `mostPlay`; `closest`: the least play whatever it takes. */
  readonly prefer: 'fewest' | 'closest';
}

/** Sums are compared in whole tenths of a micrometre, so that 0.1 + 0.2 is 0.3. */
const STEPS_PER_MM = 10_000;
const stepsOf = (mm: number): number => Math.round(mm * STEPS_PER_MM);

/** The same thickness typed twice is one plate; thickest first. */
export function mergeSheets(sheets: readonly Sheet[]): readonly Sheet[] {
  const merged: Sheet[] = [];
  for (const sheet of sheets) {
    const at = merged.findIndex(
      ({ thickness, plusMinus }) =>
        stepsOf(thickness) === stepsOf(sheet.thickness) && plusMinus === sheet.plusMinus,
    );
    const same = merged[at];
    if (same === undefined) merged.push(sheet);
    else {
      const most = same.most === undefined || sheet.most === undefined ? undefined : same.most + sheet.most;
      merged[at] = { ...same, most };
    }
  }
  return merged.toSorted((a, b) => b.thickness - a.thickness);
}

/**
 * The stack of rings that fills a gap best. Every combination is weighed; of equal ones the one with fewer rings is
 * taken, then the one with more of the thickest. When no stack leaves as little as `mostPlay`, the closest is taken.
 *
 * @returns undefined when not one ring goes in
 * @example gap 13.8, plates 6.05 and 1.52, play to 0.25: 2 × 6.05 + 1.52 = 13.62, 0.18 remains
 */
export function bestStack(question: StackQuestion): Stack | undefined {
  const { gap, leastPlay, mostPlay, mostRings, prefer } = question;
  const sheets = mergeSheets(question.sheets);
  const steps = sheets.map(({ thickness }) => stepsOf(thickness));
  const room = stepsOf(gap) - stepsOf(leastPlay);
  const enough = stepsOf(gap) - stepsOf(mostPlay);
  let best: { readonly counts: readonly number[]; readonly sum: number; readonly rings: number } | undefined;

  const isBetter = (sum: number, rings: number): boolean => {
    if (best === undefined) return true;
    if (prefer === 'fewest') {
      const [now, before] = [sum >= enough, best.sum >= enough];
      if (now !== before) return now;
      if (now && rings !== best.rings) return rings < best.rings;
    }
    return sum !== best.sum ? sum > best.sum : rings < best.rings;
  };

  const counts: number[] = sheets.map(() => 0);
  const visit = (index: number, sum: number, rings: number): void => {
    const thickness = steps[index];
    if (thickness === undefined) {
      if (rings > 0 && isBetter(sum, rings)) best = { counts: [...counts], sum, rings };
      return;
    }
    const most = Math.min(
      Math.floor((room - sum) / thickness),
      mostRings - rings,
      sheets[index]?.most ?? Infinity,
    );
    for (let count = most; count >= 0; count--) {
      counts[index] = count;
      visit(index + 1, sum + count * thickness, rings + count);
    }
    counts[index] = 0;
  };
  visit(0, 0, 0);

  if (best === undefined) return undefined;
  const { counts: chosen, sum, rings } = best;
  return {
    layers: sheets.flatMap((sheet, index) => {
      const count = chosen[index] ?? 0;
      return count === 0 ? [] : [{ sheet, count }];
    }),
    rings,
    total: sum / STEPS_PER_MM,
    remains: (stepsOf(gap) - sum) / STEPS_PER_MM,
  };
}

/**
 * Half range of a stack's thickness, mm: rings of one plate are all off the same way, so their ± adds up.
 * @returns undefined when a plate's ± is not known
 * @example two rings of 6.05 ±0.02 and one of 1.52 ±0.02: 0.06
 */
export function stackPlusMinus({ layers }: Stack): number | undefined {
  let sum = 0;
  for (const { sheet, count } of layers) {
    if (sheet.plusMinus === undefined) return undefined;
    sum += count * sheet.plusMinus;
  }
  return sum;
}
