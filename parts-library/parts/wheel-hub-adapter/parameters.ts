// What can be set on a wheel-hub adapter: hub side, wheel side, studs, machining, room, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { hubPilotFields, machinedFields, SHOULDER_FITS } from '../shared/machined-fields.js';
import { patternFields } from '../shared/pattern-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { GRADES, wheelLoadFields, wheelRoomFields } from '../shared/wheel-fields.js';
import { studFields } from './stud-fields.js';

function hubFields(f: FieldKit) {
  const group = 'Hub';
  return {
    hubGrade: f.choice({
      title: 'Hub bolt grade',
      help: 'Property class or SAE grade of the bolts or studs that hold the adapter on the hub.',
      group,
      choices: GRADES,
      default: '8.8',
    }),
    hubSeat: f.choice({
      title: 'Hub nuts seat',
      help: 'flat: on a washer or flange; cone: in a 60° countersink.',
      group,
      choices: [
        { value: 'flat', label: 'Flat' },
        { value: 'cone', label: 'Cone 60°' },
      ],
      default: 'flat',
    }),
    hubCone: f.length.maybe({
      title: 'Cone across',
      help: 'Largest diameter of the nut’s cone. Left out: one and a half bolt diameters.',
      measuring: 'Caliper over the nut’s cone where it meets the hexagon.',
      group,
      min: 6,
      max: 60,
      appliesWhen: { field: 'hubSeat', values: ['cone'] },
    }),
    sink: f.length.given({
      title: 'Hub nuts let in',
      help: 'Depth of the counterbore under the hub’s nuts or heads; 0 leaves them on the face.',
      group,
      min: 0,
      max: 35,
      default: '0 mm',
    }),
    hubFlange: f.length.maybe({
      title: 'Hub flange outside',
      help: 'Outside diameter of the hub’s flange, which the adapter lies on.',
      measuring: 'Caliper across the flange.',
      group,
      min: 30,
      max: 500,
    }),
    flangeThickness: f.length.maybe({
      title: 'Hub flange thickness',
      help: 'What bolts through the hub clamp besides the adapter, or the thread they go into. Left out: one bolt diameter.',
      measuring: 'Caliper over the flange at a hole.',
      group,
      min: 2,
      max: 80,
    }),
  };
}

function wheelFields(f: FieldKit) {
  const group = 'Wheel';
  return {
    wheelPilot: f.choice({
      title: 'Wheel centred by',
      help: 'spigot: turned on the adapter; hub: the hub’s own pilot reaches through; studs: by cone seats alone.',
      group,
      choices: [
        { value: 'spigot', label: 'Turned spigot' },
        { value: 'hub', label: 'The hub’s pilot' },
        { value: 'studs', label: 'Cone seats alone' },
      ],
      default: 'spigot',
    }),
    spigot: f.length.given({
      title: 'Spigot height',
      help: 'How far the turned spigot stands out of the wheel’s seat.',
      group,
      min: 1,
      max: 30,
      default: '4 mm',
      appliesWhen: { field: 'wheelPilot', values: ['spigot'] },
    }),
    spigotFit: f.choice({
      title: 'Fit in the wheel',
      help: 'ISO 286 class of the spigot in the wheel’s bore.',
      group,
      choices: SHOULDER_FITS,
      default: 'f7',
      appliesWhen: { field: 'wheelPilot', values: ['spigot'] },
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
    wheel: f.length.given({
      title: 'Rim diameter',
      help: 'Diameter on which the wheel’s runout is read.',
      measuring: 'Rule across the rim’s edge.',
      group,
      min: 80,
      max: 1000,
      default: '330 mm',
    }),
    wheelPad: f.length.maybe({
      title: 'Wheel’s mounting face',
      help: 'Outside diameter of the face on which the wheel seats.',
      measuring: 'Caliper across the clean face at the back of the wheel.',
      group,
      min: 40,
      max: 500,
    }),
    pocket: f.length.maybe({
      title: 'Pockets behind the wheel',
      help: 'Depth of the hollows in the wheel’s mounting face over the hub’s nuts.',
      measuring: 'Depth rod from a straight edge on the mounting face.',
      group,
      min: 0,
      max: 60,
    }),
  };
}

/** One schema for the whole part. Lengths in mm or as typed. */
export function wheelHubAdapterParameters(f: FieldKit) {
  const hub = patternFields(f, 'Hub', {
    bolts: 5,
    circle: 'circle 100',
    bolt: 'M10',
    holes: 'drill',
    boltedBy: 'stud',
  });
  const { bolts, boltCircle, bolt, clocking, boltedHole } = patternFields(f, 'Wheel', {
    bolts: 5,
    circle: 'circle 139.7',
    bolt: 'M12x1.5',
    clocking: '-90',
  });
  const wheel = z.strictObject({
    bolts,
    boltCircle,
    bolt,
    clocking,
    boltedHole,
    boltedBore: f.length.given({
      title: 'Wheel bore',
      help: 'The hole in the middle of the wheel, on the face that seats here.',
      measuring: 'Caliper jaws inside the bore past its chamfer, two directions; the smaller reading counts.',
      group: 'Wheel',
      min: 20,
      max: 250,
      default: '72 mm',
    }),
  });
  return z.strictObject({
    ...z.strictObject(hub).omit({ boltedBore: true }).shape,
    ...hubPilotFields(f, '56 mm'),
    ...hubFields(f),
    pattern2: f.group(wheel, {
      title: 'Wheel side',
      help: 'The circle of studs for the wheel.',
      group: 'Wheel',
    }),
    ...wheelFields(f),
    ...studFields(f),
    outside: f.length.maybe({
      title: 'Outside',
      help: 'Outside diameter of the adapter. Left out: two bolt diameters outside the outermost bolts.',
      group: 'Outside',
      min: 30,
      max: 600,
    }),
    ...machinedFields(f, 'the rim', '0.3 mm'),
    ...wheelRoomFields(f),
    ...wheelLoadFields(f),
    ...plateFields(f, { thickness: '16 mm', material: 'S355' }),
  });
}

export type WheelHubAdapter = z.output<ReturnType<typeof wheelHubAdapterParameters>>;
