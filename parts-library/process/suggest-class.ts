// Which current class to take for a plate when nobody has chosen.

import type { Source } from '../handbook/index.js';
import type { CutChart, ProcessClass } from './chart.js';
import { startingChart } from './starting-chart.js';

export interface ClassSuggestion {
  readonly processClass: ProcessClass;
  /** Every class of the chart whose window holds the plate, lowest current first. */
  readonly usable: readonly ProcessClass[];
  readonly says: string;
  readonly source: Source;
}

/** A class is at ease to two thirds of its thickest plate. */
const atEase = 2 / 3;

const rule: Source = {
  title: 'Class by plate thickness',
  where: 'lowest current that holds the plate with a third in hand: narrow kerf, small holes, still quick',
  certainty: 'common practice',
};

/**
 * The class to start with: the lowest current whose window holds the plate within two thirds of its thickest, else
 * the highest current that holds it.
 *
 * @param thickness mm
 * @param chart the shop's chart; the starting chart when left out
 * @returns undefined when no class of the chart holds the plate
 * @example suggestClass(6)?.processClass.id // 'air-45A'
 */
export function suggestClass(
  thickness: number,
  chart: CutChart = startingChart,
): ClassSuggestion | undefined {
  const usable = chart.classes
    .filter(({ thinnest, thickest }) => thickness >= thinnest && thickness <= thickest)
    .toSorted((first, second) => first.amps - second.amps);
  const processClass = usable.find(({ thickest }) => thickness <= atEase * thickest) ?? usable.at(-1);
  if (processClass === undefined) return undefined;
  return {
    processClass,
    usable,
    says: `${processClass.id} is meant for ${processClass.thinnest} to ${processClass.thickest} mm.`,
    source: rule,
  };
}
