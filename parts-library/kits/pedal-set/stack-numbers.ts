// The numbers of the stack: the opening between the rails, the pivot, the standoffs and what they stand on.
import type { FieldKit } from '../../parts/index.js';

/** Across the rails. */
export function frameNumbers(f: FieldKit) {
  const group = 'Frame';
  return {
    opening: f.length.given({
      title: 'Opening between the rails',
      help: 'Inside of one rail to inside of the other, where the pedals stand.',
      measuring: 'Tape or telescopic gauge at floor and pivot height; the smaller reading counts.',
      group,
      min: 60,
      max: 2000,
      default: '278 ±1 mm',
    }),
    room: f.length.given({
      title: 'Room to each rail',
      help: 'What stays free between the set and each rail when the pivot tubes are made to fill the opening.',
      group,
      min: 0,
      max: 200,
      default: '4.5 mm',
    }),
    wall: f.length.given({
      title: 'Wall of the cross member',
      help: 'Wall of the tube that standoffs, stop tabs and cable stop are welded to.',
      measuring: 'Caliper over a sawn end, burr off.',
      group,
      min: 0.8,
      max: 40,
      default: '3 mm',
    }),
  };
}

/** What the pedals turn on. */
export function pivotNumbers(f: FieldKit) {
  const group = 'Pivot';
  return {
    tubeOutside: f.length.given({
      title: 'Tube outside',
      help: 'Outside diameter of the pivot tubes, which are welded into the arms.',
      measuring: 'Caliper over the tube, two directions at right angles; take the larger.',
      group,
      min: 8,
      max: 80,
      default: '26 mm',
    }),
    tubeWall: f.length.given({
      title: 'Tube wall',
      help: 'Wall of the pivot tubes.',
      measuring: 'Caliper on the sawn end, burr off.',
      group,
      min: 1,
      max: 20,
      default: '5 mm',
    }),
    tubeLength: f.length.maybe({
      title: 'Tube length',
      help: 'Sawn length of each pivot tube. Left out: what fills the opening, 20 to 90 mm in steps of half a millimetre.',
      measuring: 'Caliper over the sawn ends.',
      group,
      min: 5,
      max: 300,
    }),
    sidePlay: f.length.given({
      title: 'Side play',
      help: 'Gap between two standoffs less the tube between them.',
      measuring: 'Feeler gauge beside the tube.',
      group,
      min: 0,
      max: 10,
      default: '0.5 mm',
    }),
    pivotBolt: f.thread.given({
      title: 'Pivot bolt',
      help: 'Bolt that the tubes turn on, one through each pair of standoffs.',
      measuring: 'Caliper over the shank, then a thread gauge or a known nut.',
      group,
      default: 'M16',
    }),
    between: f.length.maybe({
      title: 'Between the pairs',
      help: 'From the brake’s standoff to the throttle’s, outside to outside. Left out: what feet and base need, and 5 mm.',
      measuring: 'Inside caliper between the two middle standoffs.',
      group,
      min: 0,
      max: 1000,
    }),
  };
}

/** What carries the pivots. */
export function standoffNumbers(f: FieldKit) {
  const group = 'Standoffs';
  return {
    brakeFoot: f.choice({
      title: 'Brake’s standoffs',
      help: 'bent: on bent feet, bolted to the cylinder’s base; weld: welded to it, their places etched.',
      group,
      choices: [
        { value: 'bent', label: 'Bolted to the base' },
        { value: 'weld', label: 'Welded to the base' },
      ],
      default: 'bent',
    }),
    throttleFoot: f.choice({
      title: 'Throttle’s standoffs',
      help: 'weld: welded to the cross member by their edge; bent: bolted to it on bent feet.',
      group,
      choices: [
        { value: 'weld', label: 'Welded' },
        { value: 'bent', label: 'Bent foot, bolted' },
      ],
      default: 'weld',
    }),
    pivotHeight: f.length.given({
      title: 'Pivot before the base',
      help: 'From the base’s face to the pivot; the throttle’s standoffs are higher by the base’s thickness, so that both pedals turn on one line.',
      measuring: 'Square from the base to the pivot.',
      group,
      min: 15,
      max: 400,
      default: '64 mm',
    }),
    standoffBase: f.length.given({
      title: 'Standoff’s base',
      help: 'Width of the standoffs where they stand.',
      group,
      min: 20,
      max: 300,
      default: '70 mm',
    }),
    standoffThickness: f.length.given({
      title: 'Standoff thickness',
      help: 'Plate of the standoffs; the measured one where it was measured. Four of them stand in the stack.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group,
      min: 2,
      max: 25,
      default: '8 mm',
    }),
    baseThickness: f.length.given({
      title: 'Base thickness',
      help: 'Plate of the cylinder’s base.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group,
      min: 3,
      max: 25,
      default: '8 mm',
    }),
    footBolt: f.thread.given({
      title: 'Foot bolts',
      help: 'Two in each bent foot, and in the base under it.',
      group,
      default: 'M8',
    }),
    footSpacing: f.length.given({
      title: 'Foot bolt spacing',
      help: 'Centre to centre of the two bolts of a foot.',
      measuring: 'Inside of one hole to inside of the other, plus one hole.',
      group,
      min: 10,
      max: 250,
      default: '36 mm',
    }),
    footDepth: f.length.given({
      title: 'Foot',
      help: 'Outside length of a bent foot, from the standoff’s inner face to the foot’s end; it stands in the stack.',
      measuring: 'Caliper from the face to the end.',
      group,
      min: 20,
      max: 200,
      default: '73 mm',
    }),
    footInset: f.length.given({
      title: 'Foot bolts from its end',
      help: 'From the foot’s end to its holes’ centres.',
      group,
      min: 5,
      max: 100,
      default: '16 mm',
    }),
    footRadius: f.length.given({
      title: 'Bend radius',
      help: 'Inside radius of the bent feet.',
      measuring: 'Radius gauge inside a trial bend in the same plate.',
      group,
      min: 0,
      max: 60,
      default: '12 mm',
    }),
  };
}
