// What can be set on a pedal base: cylinder, window, pivot, outside, mounting, load, plate.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { holeFields } from '../shared/holes.js';
import { plateFields } from '../shared/plate-fields.js';
import { useField } from '../shared/pull-fields.js';
import { filletFields } from '../shared/weld-edge-fields.js';

const SLOTS = { field: 'pivotMount', values: ['slots'] } as const;

function cylinderFields(f: FieldKit) {
  const group = 'Cylinder';
  return {
    ...holeFields(f, group, 'M8'),
    holes: f.holes.given({
      title: 'Holes',
      help: 'drill: centre marks to drill from, as the cylinder’s place is to be trusted to; clearance: cut; tapped: marked, drilled and tapped; or a diameter to cut.',
      group,
      min: 1,
      max: 60,
      default: 'drill',
    }),
    cylinderSpacing: f.length.given({
      title: 'Flange bolts',
      help: 'Centre to centre of the cylinder’s two bolts.',
      measuring: 'Inside of one hole to inside of the other, plus one hole; or over the outsides, less one.',
      group,
      min: 20,
      max: 300,
      usual: [55, 70],
      default: '57.2 mm',
    }),
    cylinderAngle: f.angle.given({
      title: 'Flange turned',
      help: '0 with the bolts side by side, 90 with one above the other.',
      group,
      min: -90,
      max: 90,
      default: '0',
    }),
    flange: f.length.given({
      title: 'Flange thickness',
      help: 'Thickness of the cylinder’s flange at its bolts; their length follows.',
      measuring: 'Caliper over the ear.',
      group,
      min: 1,
      max: 60,
      usual: [6, 14],
      default: '10 mm',
    }),
    cylinderSide: f.choice({
      title: 'Cylinder’s side',
      help: 'far: beyond the plate, its bolts hold against the push; near: on the pedal’s side, the plate holds.',
      group,
      choices: [
        { value: 'far', label: 'Beyond the plate' },
        { value: 'near', label: 'On the pedal’s side' },
      ],
      default: 'far',
    }),
    bore: f.length.maybe({
      title: 'Cylinder bore',
      help: 'Cast on its side, for example 3/4 in; the line pressure follows.',
      measuring: 'Read it off the casting; or caliper over the piston.',
      group,
      min: 5,
      max: 80,
      usual: [15, 26],
    }),
    window: f.choice({
      title: 'Window',
      help: 'round: for a round boot or spigot; slot: upright, room for a rod that swings.',
      group,
      choices: [
        { value: 'round', label: 'Round' },
        { value: 'slot', label: 'Upright slot' },
      ],
      default: 'round',
    }),
    windowWidth: f.length.given({
      title: 'Window width',
      help: 'Diameter of a round window, width of a slot.',
      measuring: 'Caliper over boot or spigot where it goes through the plate, plus 1 mm.',
      group,
      min: 5,
      max: 200,
      usual: [20, 34],
      default: '28 mm',
    }),
    windowHeight: f.length.given({
      title: 'Slot height',
      help: 'Height of a slot over all.',
      group,
      min: 6,
      max: 300,
      usual: [36, 44],
      default: '42 mm',
      appliesWhen: { field: 'window', values: ['slot'] },
    }),
    spigot: f.length.maybe({
      title: 'Spigot',
      help: 'Diameter of the part of the cylinder that reaches into the window.',
      measuring: 'Caliper over the spigot in two directions.',
      group,
      min: 4,
      max: 200,
      usual: [14, 18],
    }),
    rod: f.length.given({
      title: 'Push rod',
      help: 'Diameter of the rod, or over its boot, where it goes through the plate.',
      measuring: 'Caliper over the rod.',
      group,
      min: 3,
      max: 60,
      usual: [6, 12],
      default: '8 mm',
    }),
  };
}

function pivotFields(f: FieldKit) {
  const group = 'Pivot';
  return {
    pivotAt: f.choice({
      title: 'Pivot',
      help: 'below: a standing pedal; above: a hanging one.',
      group,
      choices: [
        { value: 'below', label: 'Below the rod' },
        { value: 'above', label: 'Above the rod' },
      ],
      default: 'below',
    }),
    pivotDrop: f.length.given({
      title: 'Rod to pivot',
      help: 'From the push rod’s line to the pivot’s middle, square to the rod: the short arm of the lever.',
      measuring: 'Caliper on the pedal from pivot to rod pin, plus half of both.',
      group,
      min: 10,
      max: 400,
      usual: [60, 75],
      default: '60 mm',
    }),
    pivotOut: f.length.given({
      title: 'Pivot before the plate',
      help: 'From the plate’s face to the pivot’s middle: the height of its ears.',
      measuring: 'Square from the plate to the pivot.',
      group,
      min: 5,
      max: 400,
      usual: [40, 90],
      default: '60 mm',
    }),
    gap: f.length.given({
      title: 'Gap between the ears',
      help: 'Inside of one pivot ear to inside of the other.',
      measuring: 'Length of the pedal’s pivot tube plus side play.',
      group,
      min: 5,
      max: 400,
      usual: [40, 60],
      default: '50.5 mm',
    }),
    earThickness: f.length.given({
      title: 'Ear thickness',
      help: 'Thickness of the pivot ears.',
      group,
      min: 1,
      max: 30,
      usual: [4, 8],
      default: '6 mm',
    }),
    earBase: f.length.given({
      title: 'Ear base',
      help: 'Length of each ear’s foot along the plate.',
      group,
      min: 10,
      max: 400,
      usual: [50, 60],
      default: '60 mm',
    }),
    pivotMount: f.choice({
      title: 'Ears are',
      help: 'welded: their places are etched on the plate; slots: bolted on feet in upright slots, so that the pivot can be moved.',
      group,
      choices: [
        { value: 'welded', label: 'Welded, places etched' },
        { value: 'slots', label: 'Bolted in slots' },
      ],
      default: 'welded',
    }),
    earBolt: f.thread.given({
      title: 'Ear bolt',
      help: 'Bolts of the ears’ feet, two in each.',
      group,
      default: 'M8',
      appliesWhen: SLOTS,
    }),
    earBoltOut: f.length.given({
      title: 'Ear bolts beside the ear',
      help: 'From the ear’s inner face to the middle of its bolts.',
      group,
      min: 3,
      max: 100,
      usual: [20, 25],
      default: '22 mm',
      appliesWhen: SLOTS,
    }),
    earSpacing: f.length.given({
      title: 'Ear bolt spacing',
      help: 'Centre to centre of the two bolts of a foot, upright.',
      group,
      min: 5,
      max: 300,
      usual: [34, 40],
      default: '36 mm',
      appliesWhen: SLOTS,
    }),
    travel: f.length.given({
      title: 'Pivot travel',
      help: 'How far the pivot can be moved in its slots; 0 for plain holes.',
      group,
      min: 0,
      max: 200,
      usual: [4, 12],
      default: '10 mm',
      appliesWhen: SLOTS,
    }),
  };
}

function outsideFields(f: FieldKit) {
  const group = 'Outside';
  const away = (title: string, help: string, start: string, usual: readonly [number, number]) =>
    f.length.given({ title, help, group, min: 10, max: 800, usual, default: start });
  return {
    width: away('Width', 'Width of the plate.', '140 mm', [140, 180]),
    above: away('Above the rod', 'From the push rod’s line to the upper edge.', '60 mm', [130, 160]),
    below: away('Below the rod', 'From the push rod’s line to the lower edge.', '120 mm', [130, 160]),
    cornerRadius: f.length.given({
      title: 'Corner radius',
      help: 'Corners of the plate.',
      group,
      min: 0,
      max: 200,
      usual: [4, 12],
      default: '10 mm',
    }),
  };
}

function mountFields(f: FieldKit) {
  const group = 'Mounting';
  const holes = { field: 'mount', values: ['holes'] } as const;
  return {
    mount: f.choice({
      title: 'Mounted',
      help: 'holes: bolted through its four corners; weld: welded by its lower edge.',
      group,
      choices: [
        { value: 'holes', label: 'Four corner holes' },
        { value: 'weld', label: 'Welded by the lower edge' },
      ],
      default: 'holes',
    }),
    mountBolt: f.thread.given({
      title: 'Mounting bolt',
      help: 'Thread of the corner bolts.',
      group,
      default: 'M12',
      appliesWhen: holes,
    }),
    mountInset: f.length.given({
      title: 'Corner holes to edge',
      help: 'From the holes’ centres to both edges.',
      measuring: 'Caliper from the edge to the hole’s edge, plus half the hole.',
      group,
      min: 4,
      max: 200,
      usual: [15, 20],
      default: '20 mm',
      appliesWhen: holes,
    }),
    seat: f.length.given({
      title: 'Bolted to',
      help: 'Thickness of what the plate is bolted to.',
      group,
      min: 0,
      max: 200,
      usual: [2, 10],
      default: '5 mm',
      appliesWhen: holes,
    }),
    wall: f.length.given({
      title: 'Welded to',
      help: 'Thickness or wall of what the lower edge stands on.',
      measuring: 'Caliper over a sawn edge.',
      group,
      min: 0.8,
      max: 40,
      usual: [2, 6],
      default: '4 mm',
      appliesWhen: { field: 'mount', values: ['weld'] },
    }),
    ...filletFields(f, group),
  };
}

/** Lengths in mm or as typed; the push rod’s line is the origin, seen from the pedal. */
export function pedalBaseParameters(f: FieldKit) {
  return z.strictObject({
    ...cylinderFields(f),
    ...pivotFields(f),
    ...outsideFields(f),
    ...mountFields(f),
    use: useField(f, 'brake'),
    footForce: f.force.given({
      title: 'Foot force',
      help: 'What the plate is checked at: 2000 N is the proof load of a brake pedal.',
      group: 'Load',
      min: 1,
      max: 1e5,
      usual: [500, 2000],
      default: '2000 N',
    }),
    padReach: f.length.given({
      title: 'Pad to pivot',
      help: 'From the pivot to where the foot pushes, square to the push: the long arm of the lever.',
      measuring: 'Rule from the pivot’s middle to the pad’s middle.',
      group: 'Load',
      min: 20,
      max: 1000,
      usual: [200, 300],
      default: '250 mm',
    }),
    swing: f.angle.given({
      title: 'Pedal swing',
      help: 'From rest to the end of the stroke.',
      group: 'Load',
      min: 0,
      max: 90,
      usual: [10, 30],
      default: '20',
    }),
    ...plateFields(f, { thickness: '8 mm', material: 'S355' }),
  });
}

export type PedalBase = z.output<ReturnType<typeof pedalBaseParameters>>;
