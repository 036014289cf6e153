// The fillet between hub and plate: the leg that was given, or the least one for this thickness.
import { leastFilletLeg } from '../../handbook/index.js';
import type { Unit } from '../../units/index.js';
import type { AdapterPlate } from './parameters.js';

/** Leg of the fillet, mm; a round size in the unit of the job. */
export function weldLegOf(p: AdapterPlate, unit: Unit): number {
  return p.weldLeg?.mm ?? leastFilletLeg(p.thickness.mm, unit).leg;
}
