// The parts of a pedal set, each from the numbers they share.
import type { Member } from '../kit.js';
import { brakePivot, brakeSwing, throttlePivot } from './loads.js';
import type { PedalSetNumbers } from './numbers.js';
import type { PedalStack } from './stack.js';

/** From the end of a standoff’s base to the base’s lower edge: a corner bolt with its washer, mm. */
const BELOW_STANDOFF = 35;
/** The feet are drilled: an ear of this thickness holds no cut bolt hole to size. */
const DRILLED = 'drill';

function arms(n: PedalSetNumbers, stack: PedalStack): readonly Member[] {
  const shared = {
    tubeOutside: n.tubeOutside,
    tubeWall: n.tubeWall,
    tubeLength: stack.tube,
    length: n.length,
    pad: n.pad,
    padLength: n.padLength,
    padWidth: n.padWidth,
    ...(n.spread === undefined ? {} : { jogOffset: n.spread }),
    freePlay: n.freePlay,
    stopScrew: n.stopScrew,
    stopRadius: n.stopRadius,
    thickness: n.armThickness,
    material: n.material,
  };
  return [
    {
      role: 'brake-arm',
      family: 'pedal-arm',
      name: 'Brake arm',
      quantity: 1,
      parameters: {
        ...shared,
        use: 'brake',
        // The brake stands to the left: its bends carry the pad away from the throttle.
        ...(n.pad === 'folded' || n.spread !== undefined ? { mirrored: 'yes' } : {}),
        linkRadius: n.rodRadius,
        travel: n.stroke,
        proof: n.proof.value,
        bore: n.bore,
      },
    },
    {
      role: 'throttle-arm',
      family: 'pedal-arm',
      name: 'Throttle arm',
      quantity: 1,
      parameters: {
        ...shared,
        use: 'throttle',
        linkRadius: n.cableRadius,
        travel: n.pull,
        proof: n.throttleProof.value,
      },
    },
  ];
}

/** Two standoffs of one pedal, one of each hand. */
function pairOf(
  n: PedalSetNumbers,
  stack: PedalStack,
  pedal: { readonly id: 'brake' | 'throttle'; readonly own: Readonly<Record<string, unknown>> },
): readonly Member[] {
  return (['left', 'right'] as const).map((side) => ({
    role: `${side}-${pedal.id}-standoff`,
    family: 'pivot-bracket',
    name: `${side === 'left' ? 'Left' : 'Right'} ${pedal.id} standoff`,
    quantity: 1,
    parameters: {
      standoffs: 'handed',
      mirrored: side === 'left' ? 'no' : 'yes',
      pivot: 'bolt',
      pin: n.pivotBolt,
      gap: stack.gap,
      base: n.standoffBase,
      bolt: n.footBolt,
      holes: DRILLED,
      spacing: n.footSpacing,
      footDepth: n.footDepth,
      inset: n.footInset,
      radius: n.footRadius,
      thickness: n.standoffThickness,
      material: n.material,
      ...pedal.own,
    },
  }));
}

function base(n: PedalSetNumbers, stack: PedalStack): Member {
  return {
    role: 'brake-base',
    family: 'pedal-base',
    name: 'Cylinder base',
    quantity: 1,
    parameters: {
      cylinderSpacing: n.cylinderSpacing,
      bore: n.bore,
      pivotDrop: n.rodRadius,
      pivotOut: n.pivotHeight,
      gap: stack.gap,
      earThickness: n.standoffThickness,
      earBase: n.standoffBase,
      ...(n.brakeFoot === 'bent'
        ? {
            pivotMount: 'slots',
            // Plain holes: cylinder and pivot keep their distance.
            travel: 0,
            earBolt: n.footBolt,
            earBoltOut: n.footDepth.mm - n.footInset.mm,
            earSpacing: n.footSpacing,
          }
        : { pivotMount: 'welded' }),
      width: stack.baseWidth,
      below: n.rodRadius.mm + n.standoffBase.mm / 2 + BELOW_STANDOFF,
      seat: n.wall,
      footForce: n.proof.value,
      padReach: n.length,
      swing: brakeSwing(n),
      thickness: n.baseThickness,
      material: n.material,
    },
  };
}

/** Every part, in the order in which they are made. */
export function membersOf(n: PedalSetNumbers, stack: PedalStack): readonly Member[] {
  return [
    ...arms(n, stack),
    ...pairOf(n, stack, {
      id: 'brake',
      own: {
        foot: n.brakeFoot,
        height: n.pivotHeight,
        wall: n.baseThickness,
        seat: n.baseThickness,
        use: 'brake',
        pull: brakePivot(n),
      },
    }),
    ...pairOf(n, stack, {
      id: 'throttle',
      own: {
        foot: n.throttleFoot,
        height: n.pivotHeight.mm + n.baseThickness.mm,
        wall: n.wall,
        seat: n.wall,
        pull: throttlePivot(n),
      },
    }),
    base(n, stack),
    {
      role: 'stop-tab',
      family: 'tab',
      name: 'Stop tab',
      quantity: 3,
      parameters: {
        ears: 'single',
        bolt: n.stopScrew,
        holes: 'tapped',
        height: n.stopHeight,
        wall: n.wall,
        thickness: n.tabThickness,
        material: n.material,
      },
    },
    {
      role: 'cable-stop',
      family: 'cable-stop',
      name: 'Cable stop',
      quantity: 1,
      parameters: {
        neck: n.neck,
        cable: n.cable,
        height: n.cableHeight,
        wall: n.wall,
        material: n.material,
      },
    },
  ];
}
