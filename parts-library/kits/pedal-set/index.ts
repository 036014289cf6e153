// The pedal set: brake and throttle between two rails, from one set of numbers.
import type { Derived } from '../../model/index.js';
import { defineKit, type Joint, type KitContext } from '../kit.js';
import { pedalSetAbout } from './about.js';
import { checkPedalSet, stackWords } from './check.js';
import { brakePivot, throttlePivot } from './loads.js';
import { membersOf } from './members.js';
import { pedalSetNumbers, type PedalSetNumbers } from './numbers.js';
import { stackOf } from './stack.js';

function derived(n: PedalSetNumbers, { format }: KitContext): readonly Derived[] {
  const stack = stackOf(n);
  const { length, force } = format;
  return [
    {
      id: 'tubes',
      field: 'tubeLength',
      title: 'pivot tubes',
      value: { amount: stack.tube, unit: 'mm' },
      text: `2 × ${length(stack.tube)} long, standoffs ${length(stack.gap)} apart`,
    },
    {
      id: 'stack',
      field: 'opening',
      title: 'stack',
      value: { amount: stack.total, unit: 'mm' },
      text: `beside the brake, brake, between, throttle, beside it: ${stackWords(stack)} mm`,
    },
    {
      id: 'clearance',
      field: 'opening',
      title: 'left of the opening',
      value: { amount: stack.clearance, unit: 'mm' },
      text: `${length(stack.clearance)}, ${length(stack.clearance / 2)} to each rail`,
    },
    {
      id: 'pads',
      field: 'between',
      title: 'pads',
      value: { amount: stack.padRoom, unit: 'mm' },
      text: `arms ${length(stack.pitch)} apart, ${length(stack.padRoom)} free between the pads`,
    },
    {
      id: 'pivots',
      field: 'proof',
      title: 'push on the pivots',
      value: { amount: brakePivot(n), unit: 'N' },
      text: `brake ${force(brakePivot(n))}, throttle ${force(throttlePivot(n))} at their proof loads`,
    },
  ];
}

/** The brake’s bent feet are bolted to the base; what is welded has no joint to check. */
const joints = (n: PedalSetNumbers): readonly Joint[] =>
  n.brakeFoot === 'bent'
    ? (['left', 'right'] as const).map((side, index) => ({
        a: { role: 'brake-base', holes: `ear.${index + 1}.hole.` },
        b: { role: `${side}-brake-standoff`, holes: 'foot.' },
      }))
    : [];

export const pedalSet = defineKit({
  ...pedalSetAbout,
  numbers: pedalSetNumbers,
  expand: (n, { format }) => {
    const stack = stackOf(n);
    return { value: membersOf(n, stack), findings: checkPedalSet(n, stack, format) };
  },
  derived,
  joints,
});
