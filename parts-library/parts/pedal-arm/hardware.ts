// What is bought or sawn for the arm: tube, bush, clevis and pin, springs, stop screws, pad plate.
import type { Facts } from '../../checks/index.js';
import type { HardwareItem, Part } from '../../model/index.js';
import { layoutOf, springsOf } from './layout.js';
import { motionOf } from './motion.js';
import type { PedalArm } from './parameters.js';

/** Room on each side of the arm in a clevis fork, mm. */
const FORK_PLAY = 0.5;
/** What a pin is longer than its fork is wide, for the split pin, mm. */
const PIN_END = 8;

export function pedalArmHardware(_part: Part, p: PedalArm, facts: Facts): readonly HardwareItem[] {
  const layout = layoutOf(p);
  const { screws } = motionOf(p, layout);
  const { bare, length } = facts.format;
  const springs = springsOf(p);
  const fork = p.thickness.mm + 2 * FORK_PLAY;
  return [
    {
      id: 'pivot.tube',
      kind: 'tube',
      name: `tube ${bare(p.tubeOutside.mm)} × ${bare(p.tubeWall.mm)}`,
      quantity: 1,
      length: p.tubeLength.mm,
      says: `Bore about ${length(p.tubeOutside.mm - 2 * p.tubeWall.mm)}; saw square, deburr inside.`,
    },
    ...(p.pivot === 'bushed'
      ? [
          {
            id: 'pivot.bush',
            kind: 'bearing' as const,
            name: `plain bush ${bare(p.tubeOutside.mm)} × ${bare(layout.bore)} × ${bare(p.thickness.mm)}`,
            quantity: 1,
            says: 'Pressed into the bored arm; turns on the tube.',
          },
        ]
      : []),
    {
      id: 'clevis',
      kind: 'clevis',
      name:
        layout.link === 'rod'
          ? `clevis for pin ⌀${bare(p.linkPin.mm)}`
          : `cable end for pin ⌀${bare(p.linkPin.mm)}`,
      quantity: 1,
      says: `Fork at least ${length(fork)} wide inside; lock nut on its thread.`,
    },
    {
      id: 'clevis.pin',
      kind: 'pin',
      name: `clevis pin ⌀${bare(p.linkPin.mm)} with split pin`,
      quantity: 1,
      length: fork + 2 * p.linkPin.mm + PIN_END,
      says: 'Length over the fork’s cheeks, taken as one pin thick each; washer under the split pin.',
    },
    ...(springs === 0
      ? []
      : [
          {
            id: 'springs',
            kind: 'spring' as const,
            name: 'tension spring, hooks',
            quantity: springs,
            says:
              p.use === 'throttle'
                ? 'Each closes the throttle alone; hooked to different holes at both ends.'
                : 'Brings the arm to its rest stop.',
          },
        ]),
    ...(screws.length === 0
      ? []
      : [
          {
            id: 'stop.screws',
            kind: 'bolt' as const,
            name: `${p.stopScrew} hexagon screw, full thread`,
            quantity: screws.length,
            says: `${screws.map(({ id }) => (id === 'rest' ? 'rest stop' : 'forward stop')).join(' and ')}; set, then locked.`,
          },
          {
            id: 'stop.nuts',
            kind: 'nut' as const,
            name: `${p.stopScrew} hexagon nut`,
            quantity: screws.length,
            says: 'Lock nut.',
          },
        ]),
    ...(p.pad === 'welded'
      ? [
          {
            id: 'pad.plate',
            kind: 'bar' as const,
            name: `flat ${bare(p.padWidth.mm)} × ${bare(p.padThickness.mm)}`,
            quantity: 1,
            length: p.padLength.mm,
            says: 'Pad plate; corners rounded.',
          },
        ]
      : []),
  ];
}
