// The sprocket carrier: an adapter plate, and rings of the plates on hand that bring the sprocket to the chain line.
import { found, quantity } from '../../checks/index.js';
import type { Derived, Finding, Staged } from '../../model/index.js';
import { bestStack, type Stack } from '../../parts/index.js';
import { defineKit, type Joint, type KitContext, type Member } from '../kit.js';
import { sprocketCarrierAbout } from './about.js';
import { sprocketCarrierNumbers, type SprocketCarrierNumbers } from './numbers.js';

/** A chain runs a little out of line without harm; more is a caution. mm */
const MOST_PLAY = 0.5;
const MOST_RINGS = 6;

/** Rings that fill the gap; undefined when the sprocket seats on the plate or no ring goes in. */
function ringsOf(numbers: SprocketCarrierNumbers): Stack | undefined {
  if (numbers.gap.mm === 0) return undefined;
  return bestStack({
    gap: numbers.gap.mm,
    sheets: numbers.plates.lengths.map(({ mm: thickness, plusMinus, count }) => ({
      thickness,
      ...(plusMinus === undefined ? {} : { plusMinus }),
      ...(count === undefined ? {} : { most: count }),
    })),
    leastPlay: 0,
    mostPlay: MOST_PLAY,
    mostRings: MOST_RINGS,
    prefer: 'fewest',
  });
}

const noRing = (numbers: SprocketCarrierNumbers): Finding =>
  found({
    code: 'no-ring',
    level: 'stop',
    field: 'plates',
    title: 'No plate on hand goes into the gap',
    says: 'Thinner plate, or a sprocket that seats on the adapter plate (gap 0), would do.',
    value: quantity(numbers.gap.mm, 'mm'),
    source: {
      title: 'Arithmetic',
      where: 'the thinnest plate against the gap',
      certainty: 'common practice',
    },
  });

function expand(numbers: SprocketCarrierNumbers): Staged<readonly Member[]> {
  const { bolts, boltCircle, bolt, bore, material } = numbers;
  const adapter: Member = {
    role: 'adapter',
    family: 'adapter-plate',
    name: 'Sprocket adapter',
    quantity: 1,
    parameters: {
      bolts,
      boltCircle: { typed: boltCircle.typed, metric: boltCircle.metric },
      bolt,
      boltedBore: bore,
      centre: 'slip-to-weld',
      hub: numbers.hub,
      fit: numbers.fit,
      outside: numbers.outside,
      thickness: numbers.thickness,
      material,
    },
  };
  if (numbers.gap.mm === 0) return { value: [adapter], findings: [] };
  const stack = ringsOf(numbers);
  if (stack === undefined) return { value: [adapter], findings: [noRing(numbers)] };
  const rings = stack.layers.map(({ sheet, count }, index): Member => ({
    role: `ring-${index + 1}`,
    family: 'ring-spacer',
    name: `Ring ${sheet.thickness} mm`,
    quantity: count,
    parameters: {
      gap: numbers.gap,
      plates: numbers.plates.typed,
      mostPlay: MOST_PLAY,
      mostRings: MOST_RINGS,
      drawn: sheet.thickness,
      bore,
      outside: numbers.ringOutside,
      pattern: { bolts, circle: { typed: boltCircle.typed, metric: boltCircle.metric }, bolt },
      material,
    },
  }));
  return { value: [adapter, ...rings], findings: [] };
}

function derived(numbers: SprocketCarrierNumbers, { format }: KitContext): readonly Derived[] {
  const stack = ringsOf(numbers);
  if (stack === undefined) return [];
  const words = stack.layers
    .map(({ sheet, count }) => `${count} × ${format.length(sheet.thickness)}`)
    .join(' + ');
  return [
    {
      id: 'rings',
      field: 'gap',
      title: 'rings',
      value: { amount: stack.total, unit: 'mm' },
      text: `${words} = ${format.length(stack.total)}, ${format.length(stack.remains)} out of line`,
    },
  ];
}

/** Every ring is bolted through to the plate. */
const joints = (_numbers: SprocketCarrierNumbers, members: readonly Member[]): readonly Joint[] =>
  members
    .filter(({ family }) => family === 'ring-spacer')
    .map(({ role }) => ({
      a: { role: 'adapter', holes: 'pattern1.hole.' },
      b: { role, holes: 'pattern.hole.' },
    }));

export const sprocketCarrier = defineKit({
  ...sprocketCarrierAbout,
  numbers: sprocketCarrierNumbers,
  expand,
  derived,
  joints,
});
