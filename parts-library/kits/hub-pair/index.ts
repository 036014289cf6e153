// The hub pair: adapters for both ends of an axle from one set of numbers.
import type { Derived } from '../../model/index.js';
import { defineKit, type KitContext, type Member } from '../kit.js';
import { hubPairAbout } from './about.js';
import { checkHubPair, isFaced } from './check.js';
import { hubPairNumbers, type HubPairNumbers } from './numbers.js';
import { facingOf, SIDES, trackOf, wideningOf, type Side } from './track.js';

/** An adapter has no hand: the one goes where the other does, so its role names the side last. */
const adapter = (n: HubPairNumbers, side: Side): Member => ({
  role: `adapter-${side}`,
  family: 'wheel-hub-adapter',
  name: `${side === 'left' ? 'Left' : 'Right'} hub adapter`,
  quantity: 1,
  parameters: {
    bolts: n.hubBolts,
    boltCircle: { typed: n.hubCircle.typed, metric: n.hubCircle.metric },
    bolt: n.hubBolt,
    hubPilot: n.hubPilot,
    sink: n.sink,
    pattern2: {
      bolts: n.wheelBolts,
      boltCircle: { typed: n.wheelCircle.typed, metric: n.wheelCircle.metric },
      bolt: n.wheelBolt,
      boltedBore: n.wheelBore,
    },
    spigot: n.spigot,
    seat: n.seat,
    wheelThickness: n.wheelThickness,
    ...(n.pocket === undefined ? {} : { pocket: n.pocket }),
    studLength: n.studLength,
    knurl: n.knurl,
    faceAllowance: facingOf(n, side),
    release: n.release,
    ...(n.wheelMass === undefined ? {} : { wheelMass: n.wheelMass.value }),
    ...(n.tyreDiameter === undefined ? {} : { tyreDiameter: n.tyreDiameter }),
    thickness: n.thickness,
    material: n.material,
  },
});

function derived(n: HubPairNumbers, { format }: KitContext): readonly Derived[] {
  const { length } = format;
  const [left, right] = [wideningOf(n, 'left'), wideningOf(n, 'right')];
  return [
    {
      id: 'widening',
      field: 'widenLeft',
      title: 'wheels move out',
      value: { amount: left + right, unit: 'mm' },
      text: `left ${length(left)}, right ${length(right)}`,
    },
    {
      id: 'track',
      field: 'track',
      title: 'track becomes',
      value: { amount: trackOf(n), unit: 'mm' },
      text: `${length(n.track.mm)} + ${length(left)} + ${length(right)} = ${length(trackOf(n))}`,
    },
  ];
}

export const hubPair = defineKit({
  ...hubPairAbout,
  numbers: hubPairNumbers,
  expand: (n, { format }) => ({
    value: SIDES.filter((side) => isFaced(n, side)).map((side) => adapter(n, side)),
    findings: checkHubPair(n, format),
  }),
  derived,
  // Each is bolted to its own hub and wheel, none to another part of the kit.
  joints: () => [],
});
