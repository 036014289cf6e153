// The numbers that the parts of a sprocket carrier share: the sprocket's bolts, the hub, the chain line, the plate.
import { z } from 'zod';
import type { FieldKit } from '../../parts/index.js';

const SPROCKET = 'Sprocket';
const HUB = 'Hub';
const LINE = 'Chain line';
const PLATE = 'Plate';

/** Everything that can be set on the kit as a whole. */
export const sprocketCarrierNumbers = (f: FieldKit) =>
  z.strictObject({
    bolts: f.count.given({
      title: 'Bolts',
      help: 'How many bolts hold the sprocket.',
      measuring: 'Count the holes.',
      group: SPROCKET,
      min: 2,
      max: 24,
      default: 5,
    }),
    boltCircle: f.measure.given({
      title: 'Bolt circle',
      help: 'Circle through the bolts, typed the way it was measured: circle 95; adjacent 55.84 ±0.1; every-2nd 90.35.',
      measuring:
        'The widest pair of holes that the caliper reaches, inside and outside; their mean is the centre distance.',
      group: SPROCKET,
      min: 10,
      max: 2000,
      default: 'adjacent 55.84 ±0.1',
    }),
    bolt: f.thread.given({
      title: 'Bolt',
      help: 'Thread of the bolts, for example M8.',
      measuring: 'Caliper over the threads, then a thread gauge or a known nut.',
      group: SPROCKET,
      default: 'M8',
    }),
    bore: f.length.given({
      title: 'Sprocket’s bore',
      help: 'Centre hole of the sprocket; rings between sprocket and plate have the same.',
      measuring: 'Caliper jaws inside the bore.',
      group: SPROCKET,
      min: 5,
      max: 500,
      default: '70 mm',
    }),
    hub: f.length.given({
      title: 'Hub outside',
      help: 'Outside diameter of the weld-on hub where it passes through the plate.',
      measuring: 'Caliper or micrometer over the hub, two directions at right angles; take the larger.',
      group: HUB,
      min: 5,
      max: 500,
      default: '57.15 mm',
    }),
    fit: f.length.given({
      title: 'Fit',
      help: 'How much larger than the hub the finished bore is, on diameter.',
      group: HUB,
      min: 0,
      max: 5,
      default: '0.2 mm',
    }),
    gap: f.length.given({
      title: 'Gap to fill',
      help: 'From the plate’s face to the sprocket’s, so that the chain runs straight; 0 where the sprocket seats on the plate.',
      measuring:
        'Straight edge along the motor sprocket, depth of the caliper to the plate’s face; less half the sprocket.',
      group: LINE,
      min: 0,
      max: 100,
      default: '7.8 ±0.2 mm',
    }),
    plates: f.lengths.given({
      title: 'Plates on hand',
      help: 'Thicknesses that rings can be cut from, separated by commas, with their ± when measured.',
      measuring: 'Micrometer on each plate with the scale off.',
      group: LINE,
      min: 0.1,
      max: 40,
      default: '6.05 ±0.02, 3.04 ±0.02, 1.52 ±0.02',
    }),
    ringOutside: f.length.given({
      title: 'Outside of the rings',
      help: 'Large enough to hold the bolts, small enough to clear the chain’s side plates.',
      group: LINE,
      min: 20,
      max: 1200,
      default: '118 mm',
    }),
    outside: f.length.given({
      title: 'Outside of the plate',
      help: 'Outside diameter of the adapter plate.',
      group: PLATE,
      min: 20,
      max: 1200,
      default: '130 mm',
    }),
    thickness: f.length.given({
      title: 'Thickness of the plate',
      help: 'Thickness of the adapter plate; the measured one where it was measured.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group: PLATE,
      min: 1,
      max: 40,
      default: '6 mm',
    }),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of plate and rings.',
      group: PLATE,
      default: 'S275',
    }),
  });

export type SprocketCarrierNumbers = z.output<ReturnType<typeof sprocketCarrierNumbers>>;
