// The fields of a sprocket's middle: bore, keyway or weld-on hub.
import type { FieldKit } from '../fields/index.js';

export function middleFields(f: FieldKit) {
  const group = 'Middle';
  return {
    middle: f.choice({
      title: 'Middle',
      help: 'bore: a round opening as cut; bored: cut under size and bored to a pilot; keyed: a bore with a keyway in the plate itself; hub: a weld-on hub slips in and is welded; none.',
      group,
      choices: [
        { value: 'bore', label: 'Plain bore' },
        { value: 'bored', label: 'Bored after cutting' },
        { value: 'keyed', label: 'Keyed bore' },
        { value: 'hub', label: 'Weld-on hub' },
        { value: 'none', label: 'None' },
      ],
      default: 'bore',
    }),
    bore: f.length.given({
      title: 'Bore',
      help: 'Finished bore: over the pilot, or over the hub and its weld with the room they need.',
      measuring: 'What has to pass: measure it in two directions, and add the room it needs.',
      group,
      min: 5,
      max: 800,
      default: '70 mm',
      appliesWhen: { field: 'middle', values: ['bore', 'bored'] },
    }),
    machiningAllowance: f.length.given({
      title: 'Left for boring',
      help: 'How much smaller the opening is cut, on diameter, when it is bored afterwards.',
      group,
      min: 1,
      max: 10,
      default: '3 mm',
      appliesWhen: { field: 'middle', values: ['bored'] },
    }),
    shaft: f.length.given({
      title: 'Shaft',
      help: 'Diameter of the keyed shaft; the bore is as large.',
      measuring: 'Micrometer or caliper over the shaft beside its key, two directions.',
      group,
      min: 6,
      max: 70,
      default: '25 mm',
      appliesWhen: { field: 'middle', values: ['keyed'] },
    }),
    key: f.choice({
      title: 'Key',
      help: 'Which table the keyway is from. Thin plate crushes beside a key; a keyed hub is the usual answer.',
      group,
      choices: [
        { value: 'metric', label: 'Metric key (DIN 6885-1)' },
        { value: 'inch', label: 'Inch key (ASME B17.1)' },
      ],
      default: 'metric',
      appliesWhen: { field: 'middle', values: ['keyed'] },
    }),
    hub: f.length.given({
      title: 'Hub outside',
      help: 'Outside diameter of the weld-on hub where it passes through the plate.',
      measuring: 'Caliper or micrometer over the hub, two directions at right angles; take the larger.',
      group,
      min: 8,
      max: 500,
      default: '57.15 mm',
      appliesWhen: { field: 'middle', values: ['hub'] },
    }),
    fit: f.length.maybe({
      title: 'Fit',
      help: 'How much larger than the hub the finished bore is, on diameter. Left out: 0.2 mm.',
      group,
      min: 0,
      max: 5,
      appliesWhen: { field: 'middle', values: ['hub'] },
    }),
    grind: f.length.given({
      title: 'Ground off the bore',
      help: 'Metal that will be ground off the cut edge, per side, before welding; the bore is cut that much smaller. 0.2 to 0.5 mm is usual.',
      group,
      min: 0,
      max: 2,
      default: '0 mm',
      appliesWhen: { field: 'middle', values: ['hub'] },
    }),
  };
}
