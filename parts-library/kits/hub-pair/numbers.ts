// The numbers that both adapters of an axle share: hub, wheel, studs, plate, release; and the track with its sides.
import { z } from 'zod';
import type { FieldKit } from '../../parts/index.js';

const CIRCLE =
  'Circle through the bolts, typed the way it was measured: circle 100; adjacent 58.78 ±0.1; every-2nd 95.1.';
const GAUGE = 'Caliper over the threads, then a thread gauge or a known nut.';

function hubNumbers(f: FieldKit) {
  const group = 'Hub';
  return {
    hubBolts: f.count.given({
      title: 'Hub bolts',
      help: 'How many bolts or studs hold an adapter on its hub.',
      measuring: 'Count them.',
      group,
      min: 3,
      max: 12,
      default: 5,
    }),
    hubCircle: f.measure.given({
      title: 'Hub’s bolt circle',
      help: CIRCLE,
      measuring: 'Caliper over two studs, outside and inside; their mean is the centre distance.',
      group,
      min: 30,
      max: 500,
      default: 'circle 100',
    }),
    hubBolt: f.thread.given({
      title: 'Hub bolt',
      help: 'Thread of the hub’s bolts or studs.',
      measuring: GAUGE,
      group,
      default: 'M10',
    }),
    hubPilot: f.length.given({
      title: 'Hub pilot',
      help: 'Diameter of the hub’s spigot; the adapters’ bores are turned to it.',
      measuring: 'Micrometer over the clean spigots of both hubs, two directions; take the larger.',
      group,
      min: 10,
      max: 250,
      default: '56 mm',
    }),
    sink: f.length.given({
      title: 'Hub nuts let in',
      help: 'Depth of the counterbore under the hub’s nuts; 0 leaves them on the face.',
      group,
      min: 0,
      max: 35,
      default: '0 mm',
    }),
  };
}

function wheelNumbers(f: FieldKit) {
  const group = 'Wheel';
  return {
    wheelBolts: f.count.given({
      title: 'Wheel studs',
      help: 'How many studs hold a wheel.',
      measuring: 'Count the wheel’s holes.',
      group,
      min: 3,
      max: 12,
      default: 5,
    }),
    wheelCircle: f.measure.given({
      title: 'Wheel’s bolt circle',
      help: CIRCLE,
      measuring: 'Caliper from the near edge of one hole to the far edge of another.',
      group,
      min: 30,
      max: 500,
      default: 'circle 139.7',
    }),
    wheelBolt: f.thread.given({
      title: 'Wheel stud',
      help: 'Thread of the studs, for the wheel’s own nuts.',
      measuring: GAUGE,
      group,
      default: 'M12x1.5',
    }),
    wheelBore: f.length.given({
      title: 'Wheel bore',
      help: 'The hole in the middle of the wheel; the spigots are turned to it.',
      measuring: 'Caliper jaws inside both wheels’ bores past the chamfer; the smaller reading counts.',
      group,
      min: 20,
      max: 250,
      default: '72 mm',
    }),
    spigot: f.length.given({
      title: 'Spigot height',
      help: 'How far the turned spigot stands out of the wheel’s seat.',
      group,
      min: 1,
      max: 30,
      default: '4 mm',
    }),
    seat: f.choice({
      title: 'Wheel nuts seat',
      help: 'As the wheel is made: cone 60° or flat. The two are never exchanged.',
      measuring: 'Look into the wheel’s holes: a taper, or a flat ring.',
      group,
      choices: [
        { value: 'cone', label: 'Cone 60°' },
        { value: 'flat', label: 'Flat' },
      ],
      default: 'cone',
    }),
    wheelThickness: f.length.given({
      title: 'Wheel at the nut',
      help: 'Thickness of the wheel where the nut seats, from the mounting face.',
      measuring: 'Depth rod through a bolt hole from the seat to a plate on the mounting face.',
      group,
      min: 2,
      max: 60,
      default: '8 mm',
    }),
    pocket: f.length.maybe({
      title: 'Pockets behind the wheel',
      help: 'Depth of the hollows in the wheel’s mounting face over the hub’s nuts.',
      measuring: 'Depth rod from a straight edge on the mounting face.',
      group,
      min: 0,
      max: 60,
    }),
    studLength: f.length.given({
      title: 'Stud stands out',
      help: 'Thread that stands out of the wheel’s seat.',
      measuring: 'Depth rod or rule from the seat to the stud’s end.',
      group,
      min: 5,
      max: 150,
      default: '25 mm',
    }),
    knurl: f.length.given({
      title: 'Knurl',
      help: 'Diameter over the knurl of the pressed studs.',
      measuring: 'Micrometer over the knurl’s tips.',
      group,
      min: 5,
      max: 40,
      default: '14.1 mm',
    }),
  };
}

function trackNumbers(f: FieldKit) {
  const group = 'Track';
  const side = (title: string) =>
    f.length.maybe({
      title,
      help: 'Hub’s face to wheel’s seat on this side: how far it moves the wheel out. Left out: what the plate gives when 1 mm is faced off each side.',
      group,
      min: 1,
      max: 100,
    });
  return {
    track: f.length.given({
      title: 'Track now',
      help: 'Middle of one tyre to middle of the other, without adapters.',
      measuring:
        'Tape from the inside of one tyre to the outside of the other, at axle height before and behind.',
      group,
      min: 200,
      max: 4000,
      default: '900 mm',
    }),
    widenLeft: side('Wider on the left'),
    widenRight: side('Wider on the right'),
  };
}

function plateNumbers(f: FieldKit) {
  const group = 'Plate';
  return {
    thickness: f.length.given({
      title: 'Thickness',
      help: 'Plate that both are cut from; the measured one where it was measured.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group,
      min: 5,
      max: 40,
      default: '16 mm',
    }),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of the plate.',
      group,
      default: 'S355',
    }),
    release: f.choice({
      title: 'Release',
      help: 'withheld: nothing is written; machined: both plates are blanks, with allowance on bores and faces, for somebody who machines and checks them.',
      group: 'Machining',
      choices: [
        { value: 'withheld', label: 'Withheld' },
        { value: 'machined', label: 'Blanks to be machined' },
      ],
      default: 'withheld',
    }),
  };
}

function loadNumbers(f: FieldKit) {
  const group = 'Load';
  return {
    wheelMass: f.mass.maybe({
      title: 'Mass on a wheel',
      help: 'What the more loaded wheel of the axle carries, loaded and braking.',
      measuring: 'Scales under each wheel, the cart loaded.',
      group,
      min: 1,
      max: 10000,
    }),
    tyreDiameter: f.length.maybe({
      title: 'Tyre diameter',
      help: 'Loaded outside diameter of the tyres.',
      measuring: 'Axle centre to floor under load, doubled.',
      group,
      min: 50,
      max: 2500,
    }),
  };
}

/** Everything that can be set on the pair as a whole. Lengths in mm or as typed. */
export const hubPairNumbers = (f: FieldKit) =>
  z.strictObject({
    ...hubNumbers(f),
    ...wheelNumbers(f),
    ...trackNumbers(f),
    ...plateNumbers(f),
    ...loadNumbers(f),
  });

export type HubPairNumbers = z.output<ReturnType<typeof hubPairNumbers>>;
