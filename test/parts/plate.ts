// A shorthand for tests: read, draw and check one adapter plate of the orchard's haul cart.
import { findFamily, type ReadValue } from '../../parts-library/parts/index.js';
import { runPart, startingShop, type PartRun } from '../../parts-library/job/index.js';
import type { Finding } from '../../parts-library/model/index.js';

/** Sprocket pattern to weld-on hub, the plate of the README. */
export const CART_ADAPTER = {
  bolts: 6,
  boltCircle: 110,
  bolt: 'M10',
  holes: 'drill',
  hub: 57.15,
  fit: 0.2,
  outside: 150,
  thickness: 6,
  material: 'S275',
} as const;

export function run(
  parameters: Readonly<Record<string, unknown>>,
  unit: 'mm' | 'in' = 'mm',
  kerf = 1.6,
): PartRun {
  return runPart({ family: 'adapter-plate', parameters, unit, process: { kerf } }, startingShop);
}

export function read(parameters: Readonly<Record<string, unknown>>, unit: 'mm' | 'in' = 'mm'): ReadValue {
  const family = findFamily('adapter-plate');
  if (family === undefined) throw new Error('The catalogue has no adapter plate.');
  const answer = family.read(parameters, unit);
  if (!answer.ok) throw new Error(answer.problems.map(({ field, says }) => `${field}: ${says}`).join('; '));
  return answer.value;
}

/** The finding of that code, or a failing test. */
export function finding(parameters: Readonly<Record<string, unknown>>, code: string): Finding {
  const found = run(parameters).findings.find((one) => one.code === code);
  if (found === undefined) throw new Error(`No finding "${code}".`);
  return found;
}

/** Lengths worded as plainly as can be. */
export const format = {
  unit: 'mm',
  length: (mm: number) => `${mm} mm`,
  bare: String,
  fine: String,
  lengthWithin: String,
  force: String,
  torque: String,
  stress: String,
} as const;

/** The adapter drawn alone, without checks and plan. */
export const draw = (parameters: Readonly<Record<string, unknown>>, unit: 'mm' | 'in' = 'mm') => {
  const drawn = read(parameters, unit).draw({ format });
  if (drawn.value === undefined) throw new Error(drawn.findings.map(({ says }) => says).join());
  return drawn.value;
};
