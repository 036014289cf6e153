// The fields of stops, springs and loads.
import type { FieldKit } from '../fields/index.js';

/** Where the pedal rests and where it ends, and what brings it back. */
export function stopFields(f: FieldKit) {
  const group = 'Stops and springs';
  const tab = { field: 'stopOn', values: ['tab'] } as const;
  return {
    restStop: f.choice({
      title: 'Rest stop',
      help: 'A screw that the arm comes back to.',
      group,
      choices: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      default: 'yes',
    }),
    forwardStop: f.angle.maybe({
      title: 'Forward stop at',
      help: 'Swing at which a screw stops the arm. Left out: a throttle stops at its full pull, brake and clutch have none.',
      measuring: 'Angle gauge on the arm, from rest.',
      group,
      min: 1,
      max: 90,
      usual: [30, 60],
    }),
    stopOn: f.choice({
      title: 'Stops bear on',
      help: 'The arm’s own edges, or a tab on the boss.',
      group,
      choices: [
        { value: 'arm', label: 'Edges of the arm' },
        { value: 'tab', label: 'A tab on the boss' },
      ],
      default: 'arm',
    }),
    stopRadius: f.length.given({
      title: 'Stops from the pivot',
      help: 'Straight distance from the pivot to where the screws bear, along the middle of arm or tab.',
      measuring: 'Rule from the pivot’s middle.',
      group,
      min: 15,
      max: 400,
      usual: [75, 92],
      default: '88 mm',
    }),
    stopAngle: f.angle.given({
      title: 'Tab angle',
      help: 'From the line pivot to pad to the tab, toward the foot.',
      group,
      min: -360,
      max: 360,
      usual: [-130, -100],
      default: -110,
      appliesWhen: tab,
    }),
    stopWidth: f.length.given({
      title: 'Tab width',
      help: 'Width of the tab where the screws bear.',
      group,
      min: 6,
      max: 60,
      usual: [14, 24],
      default: '18 mm',
      appliesWhen: tab,
    }),
    stopScrew: f.thread.given({
      title: 'Stop screws',
      help: 'Thread of the stop screws in the pedal’s base.',
      group,
      default: 'M8',
    }),
    springs: f.count.maybe({
      title: 'Return-spring holes',
      help: 'Left out: two on a throttle, one on brake and clutch.',
      group,
      min: 0,
      max: 2,
    }),
    springHole: f.length.given({
      title: 'Spring hole',
      help: 'Diameter; the hook must turn freely in it. Drilled, for the torch makes no such hole.',
      measuring: 'Wire of the spring, and half as much again.',
      group,
      min: 2,
      max: 12,
      usual: [3, 6],
      default: '5 mm',
    }),
    springAt: f.length.given({
      title: 'Springs from the pivot',
      help: 'Straight distance from the pivot to the first spring hole, in the middle of the arm.',
      measuring: 'Rule from the pivot’s middle.',
      group,
      min: 15,
      max: 600,
      usual: [90, 105],
      default: '100 mm',
    }),
    springSpacing: f.length.given({
      title: 'Between spring holes',
      help: 'From the first to the second, outward.',
      group,
      min: 6,
      max: 100,
      usual: [15, 30],
      default: '20 mm',
    }),
  };
}

/** What the foot does. */
export function loadFields(f: FieldKit) {
  const group = 'Load';
  return {
    proof: f.force.given({
      title: 'Proof load',
      help: 'Push on the pad that the arm must carry without giving way; 2000 N is the competition rule for brakes.',
      group,
      min: 100,
      max: 10_000,
      usual: [1000, 2000],
      default: 2000,
    }),
    sideShare: f.percent.given({
      title: 'Sideways',
      help: 'Share of it that acts sideways, from a boot set down askew.',
      group,
      min: 0,
      max: 50,
      usual: [0, 15],
      default: 10,
    }),
    offCentre: f.length.given({
      title: 'Foot off the middle',
      help: 'How far beside the middle of the pad the foot may land; it twists the arm.',
      measuring: 'Half of the pad’s width less half of the shoe’s edge that stays on it.',
      group,
      min: 0,
      max: 100,
      usual: [0, 20],
      default: '10 mm',
    }),
    footForce: f.force.given({
      title: 'Hard braking',
      help: 'Push on the pad at which line pressure is stated.',
      group,
      min: 10,
      max: 3000,
      usual: [200, 700],
      default: 500,
    }),
    bore: f.length.given({
      title: 'Cylinder bore',
      help: 'Bore of the master cylinder, for the line pressure of a push rod.',
      measuring: 'Cast on the body as a rule, in sixteenths of an inch; or caliper in the bore.',
      group,
      min: 8,
      max: 60,
      usual: [12, 25],
      default: '3/4 in',
    }),
    cylinders: f.choice({
      title: 'Cylinders',
      help: 'Two on a balance bar share the push.',
      group,
      choices: [
        { value: 'one', label: 'One' },
        { value: 'two', label: 'Two on a balance bar' },
      ],
      default: 'one',
    }),
  };
}
