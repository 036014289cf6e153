// The fillet between hub and plate: the leg that was given, or the least one for this thickness.
import { leastFilletLeg } from '../../handbook/index.js';
import type { AdapterPlate } from './parameters.js';

/** Leg of the fillet, mm. */
export function weldLegOf(p: AdapterPlate): number {
  return p.weldLeg?.mm ?? leastFilletLeg(p.thickness.mm).leg;
}
