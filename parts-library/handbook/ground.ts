// The ground under the tyres: rolling resistance and grip.

import type { Source } from './source.js';

export const rollingSource: Source = {
  title: 'Coefficients of rolling resistance, pneumatic tyres',
  where:
    'automotive handbook table: asphalt 0.011 to 0.015, rolled gravel 0.02, unpaved road 0.05, field 0.1 to 0.35',
  certainty: 'from memory',
};

export const gripSource: Source = {
  title: 'Coefficients of road adhesion, pneumatic tyres',
  where:
    'ground-vehicle textbook table: dry asphalt 0.8 to 0.9, gravel 0.6, earth road dry 0.68, wet 0.55 (peak); grass from accident reconstruction, dry 0.35 to 0.55, wet 0.2 to 0.4',
  certainty: 'from memory',
};

export type GroundName = 'hard' | 'gravel' | 'earth' | 'wet-earth' | 'grass' | 'wet-grass' | 'loose';

export interface Ground {
  readonly name: GroundName;
  readonly label: string;
  /** Rolling resistance as a share of the load on the wheels. */
  readonly rolling: number;
  /** Friction of tyre on ground; the low end where a range is printed. */
  readonly grip: number;
}

const grounds: readonly Ground[] = [
  { name: 'hard', label: 'Concrete or asphalt, dry', rolling: 0.015, grip: 0.8 },
  { name: 'gravel', label: 'Rolled gravel', rolling: 0.02, grip: 0.6 },
  { name: 'earth', label: 'Earth track, dry', rolling: 0.05, grip: 0.65 },
  { name: 'wet-earth', label: 'Earth track, wet', rolling: 0.08, grip: 0.45 },
  { name: 'grass', label: 'Grass, dry', rolling: 0.06, grip: 0.4 },
  { name: 'wet-grass', label: 'Grass, wet', rolling: 0.08, grip: 0.25 },
  { name: 'loose', label: 'Loose or dug-over soil', rolling: 0.15, grip: 0.35 },
];

/** Every kind of ground known here. */
export function listGrounds(): readonly Ground[] {
  return grounds;
}

/** The ground of that name. */
export function findGround(name: GroundName): Ground | undefined {
  return grounds.find((one) => one.name === name);
}
