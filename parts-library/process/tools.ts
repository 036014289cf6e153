// Drills and taps a shop owns; a starting list of each kind until the shop ticks its own.

import { findThread, listDrills, nearestDrill } from '../handbook/index.js';
import type { Drill, Source, Thread } from '../handbook/index.js';

export interface ToolsOnHand {
  /** Drill names as the handbook lists them: `6.8 mm`, `#7`, `13/32`. */
  readonly drills: readonly string[];
  /** Thread names of the taps: `M10`, `3/8-16 UNC`. */
  readonly taps: readonly string[];
  /** Largest drill the drill press takes, mm. */
  readonly largestDrill: number;
  /** What bends plate: the force it presses with and the longest bend it takes; absent when it is not known. */
  readonly bending?: { readonly newtons: number; readonly longest: number };
  readonly source: Source;
}

const starting = (where: string): Source => ({
  title: 'Tools on hand, starting list',
  where,
  certainty: 'common practice',
});

/** A hydraulic workshop press of about 10 t with a V block as long as its bed is wide. */
const SHOP_PRESS = { newtons: 100_000, longest: 250 };

const halves = Array.from({ length: 25 }, (_, step) => `${1 + step / 2} mm`).filter(
  (name) => parseFloat(name) >= 2,
);

/** A metric set by halves, the tap drills that fall between, and coarse taps M4 to M16. */
export const metricTools: ToolsOnHand = {
  drills: [...halves, '3.3 mm', '4.2 mm', '6.8 mm', '10.3 mm', '13.5 mm', '14 mm', '15.5 mm', '17.5 mm'],
  taps: ['M4', 'M5', 'M6', 'M8', 'M10', 'M12', 'M16'],
  largestDrill: 20,
  bending: SHOP_PRESS,
  source: starting('metric set by 0.5 mm to 13 mm, common tap drills, coarse taps'),
};

const sixtyFourths = listDrills()
  .filter(({ system, diameter }) => system === 'fraction' && diameter <= 12.7)
  .map(({ name }) => name);

/** A fraction set by 1/64 in, the number and letter tap drills, and taps #8 to 1/2 in coarse and #10-32. */
export const inchTools: ToolsOnHand = {
  drills: [...sixtyFourths, '#29', '#25', '#21', '#7', 'F', 'U', '9/16', '5/8', '21/32'],
  taps: [
    '#8-32 UNC',
    '#10-24 UNC',
    '#10-32 UNF',
    '1/4-20 UNC',
    '5/16-18 UNC',
    '3/8-16 UNC',
    '7/16-14 UNC',
    '1/2-13 UNC',
  ],
  largestDrill: 19.05,
  bending: SHOP_PRESS,
  source: starting('fraction set by 1/64 in to 1/2 in, common tap drills, coarse taps'),
};

/**
 * The drill on hand nearest to a diameter.
 *
 * @param diameter mm
 * @returns undefined when the shop lists no drill
 * @example drillOnHand(metricTools, 8.53)?.name // 8.5 mm
 */
export function drillOnHand(tools: ToolsOnHand, diameter: number): Drill | undefined {
  return nearestDrill(
    diameter,
    listDrills().filter(({ name }) => tools.drills.includes(name)),
  );
}

/**
 * Whether the shop owns a tap for a thread.
 *
 * @example hasTap(metricTools, m10) // true
 */
export function hasTap(tools: ToolsOnHand, thread: Thread): boolean {
  return tools.taps.some((name) => {
    const tap = findThread(name);
    return tap.found && tap.row.name === thread.name;
  });
}
