// What is done to the arm after the torch, in order.
import type { Facts } from '../../checks/index.js';
import type { Part, ShopStep } from '../../model/index.js';
import { weldLegOf } from './check-pivot.js';
import { LEFT_TO_BORE, LEFT_TO_REAM, pinHoleOf } from './draw.js';
import { layoutOf, springsOf, type Layout } from './layout.js';
import { motionOf } from './motion.js';
import type { PedalArm } from './parameters.js';

function holeSteps(p: PedalArm, layout: Layout, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  const pins = layout.pins.map((_, index) => `pin.${index + 1}`);
  const springs = Array.from({ length: springsOf(p) }, (_, index) => `spring.${index + 1}`);
  const times = (count: number): string => (count > 1 ? `${count} × ` : '');
  return [
    ...(p.linkMade === 'cut'
      ? []
      : [
          {
            kind: 'drill' as const,
            says: `Punch and drill the pin hole, ${times(pins.length)}⌀${length(p.linkMade === 'ream' ? p.linkPin.mm - LEFT_TO_REAM : pinHoleOf(p))}, square to the plate.`,
            featureIds: pins,
          },
        ]),
    ...(springs.length === 0
      ? []
      : [
          {
            kind: 'drill' as const,
            says: `Drill ${times(springs.length)}⌀${length(p.springHole.mm)} for the return spring${springs.length > 1 ? 's' : ''}; round both rims, the hook wears there.`,
            featureIds: springs,
          },
        ]),
  ];
}

function bendSteps(p: PedalArm, layout: Layout, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  if (layout.bends.length === 0) return [];
  const how = (bridge: number): string =>
    p.fold === 'slots'
      ? `by hand on the bridge of ${length(bridge)}`
      : `on the groove, ${length(p.groove.mm)} deep`;
  return [
    ...layout.bends.map(({ id, name, degrees, direction, bridge }): ShopStep => ({
      kind: 'bend',
      says: `Fold ${direction} ${Number(degrees.toFixed(1))}° at the ${name}, ${how(bridge)}. Once: do not bend it back.`,
      ...(p.fold === 'scored' ? { featureIds: [id] } : {}),
    })),
    ...(p.weldedAfter === 'yes'
      ? [
          {
            kind: 'weld' as const,
            says: `Grind both edges bright, weld the ${p.fold === 'slots' ? 'slots and the bridge' : 'groove'} full along the bend, outside first.`,
          },
        ]
      : []),
  ];
}

function pivotSteps(p: PedalArm, layout: Layout, facts: Facts): readonly ShopStep[] {
  const { length } = facts.format;
  if (p.pivot === 'bushed') {
    return [
      {
        kind: 'bore',
        says: `Bore or ream the pivot from ⌀${length(layout.bore - LEFT_TO_BORE)} to ⌀${length(layout.bore)} H7, then press the bush in, its edge flush.`,
        featureIds: ['pivot'],
      },
    ];
  }
  return [
    {
      kind: 'grind',
      says: `Grind the pivot hole's edge to bright metal: nitrided edges make porous welds. The tube slips in by hand.`,
      featureIds: ['pivot'],
    },
    {
      kind: 'fit',
      says: `Dry fit the tube, ${length(p.tubeLength.mm)} long, and the pivot bolt; mark how far it stands out on each side.`,
    },
    {
      kind: 'tack',
      says: 'Tack at four points, opposite ones first; square to the arm from both sides.',
      featureIds: ['pivot'],
    },
    {
      kind: 'weld',
      says: `Weld the tube with a ${length(weldLegOf(p, facts.format.unit))} fillet ${p.weldSides === 'both' ? 'on both sides' : 'on one side'}, in quarters opposite each other.`,
      featureIds: ['pivot'],
    },
    {
      kind: 'ream',
      says: 'The weld draws the tube in: run a reamer or a hone through it until the bolt turns freely.',
      featureIds: ['pivot'],
    },
  ];
}

export function pedalArmSteps(_part: Part, p: PedalArm, facts: Facts): readonly ShopStep[] {
  const layout = layoutOf(p);
  const motion = motionOf(p, layout);
  const { length } = facts.format;
  const rest = motion.screws.find(({ id }) => id === 'rest');
  const forward = motion.screws.find(({ id }) => id === 'forward');
  return [
    {
      kind: 'deburr',
      says: 'Scrape dross, break every edge: a notch on the edge is where an arm begins to crack.',
    },
    {
      kind: 'measure',
      says: `Pivot to pin ${length(Math.hypot(motion.link.pin.x, motion.link.pin.y))}: check it on the first one before drilling the rest.`,
    },
    ...holeSteps(p, layout, facts),
    ...bendSteps(p, layout, facts),
    ...pivotSteps(p, layout, facts),
    ...(p.pad === 'welded'
      ? [
          {
            kind: 'weld' as const,
            says: `Weld the pad plate ${length(p.padLength.mm)} × ${length(p.padWidth.mm)} on its seat, middle to middle, both sides; no weld over the last ${length(10)} of its ends.`,
          },
        ]
      : []),
    ...(p.linkMade === 'ream'
      ? [
          {
            kind: 'ream' as const,
            says: `After all welding ream ⌀${length(p.linkPin.mm)} H8 for the pin; it must turn freely with no play.`,
            featureIds: layout.pins.map((_, index) => `pin.${index + 1}`),
          },
        ]
      : []),
    ...(rest === undefined
      ? []
      : [
          {
            kind: 'fit' as const,
            says: `Set the rest stop so that ${length(p.freePlay.mm)} is free at the ${motion.link.kind}; lock its nut.`,
          },
        ]),
    ...(forward === undefined
      ? []
      : [
          {
            kind: 'fit' as const,
            says:
              p.use === 'throttle'
                ? 'Set the forward stop so that it takes the foot as the throttle comes fully open, and not before; lock its nut.'
                : 'Set the forward stop so that the cylinder bottoms before it acts: open a bleed screw, press to the end, see that the stop stays clear.',
          },
        ]),
    ...(p.use === 'throttle'
      ? [
          {
            kind: 'caution' as const,
            says: 'Unhook each spring in turn: the throttle must close from full with the other alone.',
          },
        ]
      : []),
    { kind: 'paint', says: 'Paint; keep it out of tube and pin hole.' },
    {
      kind: 'caution',
      says: 'Press hard with the cart standing, look for bending and cracks, then let a qualified person check the pedal before it is driven.',
    },
  ];
}
