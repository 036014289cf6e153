// The fields of the middle: hub, fit, bore, how it is made, keyway.
import type { FieldKit } from '../fields/index.js';

/** How the centre opening is made and what goes through it. */
export function centreFields(f: FieldKit) {
  return {
    centre: f.maybeChoice({
      title: 'Centre',
      help: 'slip-to-weld: the hub slips in after its edge is ground, and is welded; bore-after: cut under size and bored to the hub; turned: the same in a lathe to a locating fit; plain: a round opening; none. Left out: slip-to-weld with a hub, plain with a bore alone, otherwise none.',
      group: 'Centre',
      choices: [
        { value: 'slip-to-weld', label: 'Slip to weld, after grinding' },
        { value: 'bore-after', label: 'Bore after cutting' },
        { value: 'turned', label: 'Turned to a locating fit' },
        { value: 'plain', label: 'Plain opening' },
        { value: 'none', label: 'None' },
      ],
    }),
    hub: f.length.maybe({
      title: 'Hub outside',
      help: 'Outside diameter of the weld-on hub where it passes through the plate.',
      measuring: 'Caliper or micrometer over the hub, two directions at right angles; take the larger.',
      group: 'Centre',
      min: 5,
      max: 500,
      usual: [38, 62],
    }),
    fit: f.length.maybe({
      title: 'Fit',
      help: 'How much larger than the hub the finished bore is, on diameter. Left out: 0.2 mm to slip in, 0 when bored or turned.',
      group: 'Centre',
      min: 0,
      max: 5,
      usual: [0.1, 0.4],
    }),
    bore: f.length.maybe({
      title: 'Bore',
      help: 'Finished bore, instead of hub and fit. With a hub as well, the hub is judged against it.',
      measuring: 'What has to pass: measure it, and add the room it needs.',
      group: 'Centre',
      min: 3,
      max: 1000,
      usual: [30, 64],
    }),
    grind: f.length.given({
      title: 'Ground off the bore',
      help: 'Metal that will be ground off the cut edge, per side, before welding; the bore is cut that much smaller. 0.2 to 0.5 mm is usual.',
      group: 'Centre',
      min: 0,
      max: 2,
      default: '0 mm',
    }),
    machiningAllowance: f.length.given({
      title: 'Left for boring',
      help: 'How much smaller the opening is cut, on diameter, when it is bored or turned afterwards.',
      group: 'Centre',
      min: 1,
      max: 10,
      default: '3 mm',
    }),
    keyway: f.choice({
      title: 'Keyway',
      help: 'A keyway cut in the plate itself, for a plain bore on a keyed shaft. Thin plate crushes; a keyed hub is the usual answer.',
      group: 'Centre',
      choices: [
        { value: 'none', label: 'None' },
        { value: 'metric', label: 'Metric key (DIN 6885-1)' },
        { value: 'inch', label: 'Inch key (ASME B17.1)' },
      ],
      default: 'none',
    }),
  };
}
