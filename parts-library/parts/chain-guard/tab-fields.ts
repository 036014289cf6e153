// The fields of the tabs that the guard is held by, flat or bent, and of the plate.
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { useField } from '../shared/pull-fields.js';

export function tabFields(f: FieldKit) {
  const group = 'Tabs';
  const bent = { field: 'tabsAre', values: ['bent'] } as const;
  return {
    tabsAre: f.choice({
      title: 'Tabs are',
      help: 'flat: bolted to standoffs in the plate’s plane; bent: turned a right angle towards the frame.',
      group,
      choices: [
        { value: 'flat', label: 'Flat' },
        { value: 'bent', label: 'Bent' },
      ],
      default: 'flat',
    }),
    tabsAbove: f.count.given({
      title: 'Tabs above',
      help: 'On the upper straight edge, evenly shared.',
      group,
      min: 0,
      max: 4,
      default: 2,
    }),
    tabsBelow: f.count.given({
      title: 'Tabs below',
      help: 'On the lower straight edge, evenly shared.',
      group,
      min: 0,
      max: 4,
      default: 1,
    }),
    tabWidth: f.length.given({
      title: 'Tab width',
      help: 'Along the edge.',
      group,
      min: 10,
      max: 200,
      default: '30 mm',
    }),
    tabLength: f.length.given({
      title: 'Tab length',
      help: 'Flat: how far it stands out of the edge; bent: outside length of the leg, as a caliper reads it.',
      measuring: 'From the guard’s outer face to the frame’s far face where it is bolted.',
      group,
      min: 8,
      max: 300,
      default: '28 mm',
    }),
    tabHole: f.length.given({
      title: 'Hole from the tab’s end',
      help: 'From the end of the tab to the middle of its hole.',
      measuring: 'Caliper from the end to the hole’s edge, plus half the hole.',
      group,
      min: 3,
      max: 200,
      default: '13 mm',
    }),
    ...holeFields(f, group, 'M6'),
    standoff: f.length.given({
      title: 'Guard off the frame',
      help: 'From the back of the plate to the frame: the length of the spacers under flat tabs.',
      measuring: 'Depth rod from the guard’s back to the frame.',
      group,
      min: 0,
      max: 300,
      default: '35 mm',
      appliesWhen: { field: 'tabsAre', values: ['flat'] },
    }),
    under: f.length.given({
      title: 'Thickness of the frame',
      help: 'What the bolts go through behind spacer or tab.',
      measuring: 'Caliper over the flange; over a tube that is bolted through, the whole tube.',
      group,
      min: 0.5,
      max: 200,
      default: '3 mm',
    }),
    root: f.length.given({
      title: 'Root radius',
      help: 'Radius where a tab leaves the edge.',
      group,
      min: 0,
      max: 40,
      default: '3 mm',
    }),
    bendRadius: f.length.given({
      title: 'Inside bend radius',
      help: 'Of bent tabs.',
      measuring: 'Radius gauge inside a trial bend in the same plate.',
      group,
      min: 0.2,
      max: 40,
      default: '3 mm',
      appliesWhen: bent,
    }),
    kFactor: f.factor.given({
      title: 'K factor',
      help: 'Place of the neutral line in the thickness; bend a trial strip and measure it to find yours.',
      group,
      min: 0.25,
      max: 0.5,
      default: 0.4,
      appliesWhen: bent,
    }),
    use: useField(f, 'drive'),
  };
}
