// The run-sheet lines of a plate that is welded by its edge.
import type { Format, ShopStep } from '../../model/index.js';

/** Before anything else is done to a cut plate. */
export const DEBURR: ShopStep = { kind: 'deburr', says: 'Scrape dross, break the edges.' };

export interface EdgeWeldSteps {
  readonly leg: number;
  readonly sides: 'one' | 'both';
  /** What it is welded to, for example `the tube`. */
  readonly to: string;
  /** Said at the dry fit: what stands where, and how it is held. */
  readonly fit: string;
}

/** Grind, fit, tack, look again, weld. */
export function edgeWeldSteps(
  { leg, sides, to, fit }: EdgeWeldSteps,
  { length }: Format,
): readonly ShopStep[] {
  return [
    {
      kind: 'grind',
      says: `Grind the weld edge and ${to} to bright metal, a finger’s width round the joint; nitrided edges make porous welds.`,
      featureIds: ['outline'],
    },
    { kind: 'fit', says: fit },
    { kind: 'tack', says: 'Tack at both ends of the edge, look at it from two sides, knock it square.' },
    {
      kind: 'weld',
      says: `Weld ${length(leg)} fillets on ${sides === 'both' ? 'both faces, ends boxed round' : 'one face'}; let it cool before the next one.`,
      featureIds: ['outline'],
    },
    {
      kind: 'caution',
      says: 'Zinc, cadmium and paint off before welding; no chlorinated cleaner near an arc; no closed tube without a vent.',
    },
  ];
}
