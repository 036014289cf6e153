// The fields of the chain that a sprocket runs with: its number, what was measured of it, the sprocket at its other end.
import type { FieldKit } from '../../fields/index.js';

/** Fewest and most teeth that these families take. */
export const TEETH = { least: 9, most: 90 } as const;

/** Chain, teeth, and what a caliper said of the chain. */
export function chainFields(f: FieldKit, start: { readonly chain: string; readonly teeth: number }) {
  const group = 'Chain and teeth';
  return {
    chain: f.chain.given({
      title: 'Chain',
      help: 'Number of the chain: 35, 40, 41, 50, 60, 80; 06B to 16B; 415, 420, 428, 520, 525, 530. 40, 08A, 420 and 428 share a pitch and nothing else.',
      measuring: 'Stamped on the plates. Else: twelve pitches under light tension, roller, inner width.',
      group,
      default: start.chain,
    }),
    teeth: f.count.given({
      title: 'Teeth',
      help: 'Number of teeth.',
      measuring: 'Mark one tooth and count round.',
      group,
      min: TEETH.least,
      max: TEETH.most,
      default: start.teeth,
    }),
    rollerMeasured: f.length.maybe({
      title: 'Roller as measured',
      help: 'Diameter of a roller of the chain on hand. It is held against the number, nothing is drawn from it.',
      measuring: 'Caliper over one roller.',
      group,
      min: 2,
      max: 40,
    }),
    widthMeasured: f.length.maybe({
      title: 'Inner width as measured',
      help: 'Width between the inner plates of the chain on hand; the teeth have to run in it.',
      measuring: 'Inside jaws between the two inner plates.',
      group,
      min: 1,
      max: 40,
    }),
  };
}

/** The sprocket at the other end of the chain; both or neither. */
export function otherSprocketFields(f: FieldKit) {
  const group = 'Other sprocket';
  return {
    otherTeeth: f.count.maybe({
      title: 'Teeth of the other sprocket',
      help: 'With the centre distance it gives wrap, links and the centre for an even number of links.',
      measuring: 'Mark one tooth and count round.',
      group,
      min: 5,
      max: 150,
    }),
    centreDistance: f.length.maybe({
      title: 'Centre distance',
      help: 'Between the two shafts.',
      measuring: 'Caliper or tape over both shafts, less half of each diameter.',
      group,
      min: 10,
      max: 5000,
    }),
  };
}
