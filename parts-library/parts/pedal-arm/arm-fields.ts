// The fields of the arm and its pad: length, dog-leg, heights, pad, fold and joggle.
import type { FieldKit } from '../fields/index.js';

/** The arm in its own plane. x runs from the pivot to the middle of the pad, the foot presses from above. */
export function armFields(f: FieldKit) {
  const group = 'Arm';
  const dogLeg = { field: 'profile', values: ['dog-leg'] } as const;
  return {
    length: f.length.given({
      title: 'Pivot to pad',
      help: 'Straight distance from the pivot to the middle of the pad: the arm’s line.',
      measuring: 'Tape from pivot bolt to where the ball of the foot lands, seat and legs in place.',
      group,
      min: 60,
      max: 600,
      usual: [140, 320],
      default: '220 mm',
    }),
    profile: f.choice({
      title: 'Profile',
      help: 'straight: pivot, pad and the metal between them in line; dog-leg: by way of a knee that clears something.',
      group,
      choices: [
        { value: 'straight', label: 'Straight' },
        { value: 'dog-leg', label: 'Dog-leg' },
      ],
      default: 'dog-leg',
    }),
    kneeAlong: f.length.given({
      title: 'Knee along the arm',
      help: 'From the pivot to the knee, along the line from pivot to pad.',
      measuring: 'Square set on the line from pivot to pad.',
      group,
      min: 10,
      max: 600,
      usual: [70, 110],
      default: '105 mm',
      appliesWhen: dogLeg,
    }),
    kneeOff: f.length.given({
      title: 'Knee off the line',
      help: 'How far the knee stands off that line: positive toward the foot, negative away from it.',
      measuring: 'Square from the line to the middle of the arm at its knee.',
      group,
      min: -200,
      max: 200,
      usual: [-50, 50],
      default: '28 mm',
      appliesWhen: dogLeg,
    }),
    kneeHeight: f.length.maybe({
      title: 'Height at the knee',
      help: 'Height of the arm at its knee. Left out: between boss and pad end, by where the knee stands.',
      group,
      min: 8,
      max: 150,
      usual: [28, 50],
      appliesWhen: dogLeg,
    }),
    headHeight: f.length.given({
      title: 'Height at the pad',
      help: 'Height of the arm at its pad end.',
      measuring: 'Caliper over both edges.',
      group,
      min: 8,
      max: 150,
      usual: [20, 36],
      default: '28 mm',
    }),
    fillet: f.length.given({
      title: 'Inside corners',
      help: 'Radius of the inside corners: at the knee, and where a horn or tab leaves the boss. A sharp one starts a crack.',
      group,
      min: 2,
      max: 100,
      usual: [5, 20],
      default: '15 mm',
    }),
  };
}

/** What the foot stands on. */
export function padFields(f: FieldKit) {
  const group = 'Pad';
  return {
    pad: f.choice({
      title: 'Pad',
      help: 'welded: a separate plate on a straight seat; folded: a flap of the arm itself, bent toward one side; flat: the end is cut square for a bought pad.',
      group,
      choices: [
        { value: 'welded', label: 'Plate welded on' },
        { value: 'folded', label: 'Folded from the arm' },
        { value: 'flat', label: 'Flat end' },
      ],
      default: 'welded',
    }),
    padLength: f.length.given({
      title: 'Pad along the arm',
      help: 'Length of the pad along the arm.',
      measuring: 'Caliper or rule.',
      group,
      min: 20,
      max: 200,
      usual: [50, 100],
      default: '80 mm',
      appliesWhen: { field: 'pad', values: ['welded', 'folded'] },
    }),
    padWidth: f.length.given({
      title: 'Pad across',
      help: 'Width of the pad across the arm.',
      measuring: 'Caliper or rule.',
      group,
      min: 15,
      max: 200,
      usual: [40, 80],
      default: '60 mm',
      appliesWhen: { field: 'pad', values: ['welded', 'folded'] },
    }),
    padThickness: f.length.given({
      title: 'Pad plate',
      help: 'Thickness of the plate that is welded on.',
      group,
      min: 2,
      max: 20,
      usual: [3, 8],
      default: '6 mm',
      appliesWhen: { field: 'pad', values: ['welded'] },
    }),
    dimples: f.choice({
      title: 'Grip dimples',
      help: 'Centre marks on a folded pad, in rows. Each one is a start of the torch.',
      group,
      choices: [
        { value: 'no', label: 'None' },
        { value: 'yes', label: 'In rows' },
      ],
      default: 'no',
      appliesWhen: { field: 'pad', values: ['folded'] },
    }),
    dimpleSpacing: f.length.given({
      title: 'Dimple spacing',
      help: 'From one dimple to the next.',
      group,
      min: 8,
      max: 60,
      usual: [10, 25],
      default: '15 mm',
      appliesWhen: { field: 'dimples', values: ['yes'] },
    }),
  };
}

/** How the plate is bent: the folded pad, and a joggle that carries the pad sideways. */
export function bendFields(f: FieldKit) {
  const group = 'Bends';
  const scored = { field: 'fold', values: ['scored'] } as const;
  const slotted = { field: 'fold', values: ['slots'] } as const;
  return {
    fold: f.choice({
      title: 'Bends made by',
      help: 'slots: cut in from both ends of the line, folded by hand on the bridge between, then welded; scored: a groove, which plasma does not repeat.',
      group,
      choices: [
        { value: 'slots', label: 'Slots, then welded' },
        { value: 'scored', label: 'Scored' },
      ],
      default: 'slots',
    }),
    slotWidth: f.length.given({
      title: 'Slot width',
      help: 'Width of the slots along a bend line: more than the kerf.',
      group,
      min: 1.5,
      max: 8,
      usual: [2.5, 4],
      default: '3 mm',
      appliesWhen: slotted,
    }),
    bridge: f.length.maybe({
      title: 'Bridge',
      help: 'What stays between the slots and is bent. Left out: two thicknesses, on a short line four tenths of it.',
      group,
      min: 2,
      max: 80,
      usual: [10, 20],
      appliesWhen: slotted,
    }),
    groove: f.length.given({
      title: 'Groove depth',
      help: 'Depth of the score.',
      measuring: 'Depth rod in a trial groove; plasma scoring does not repeat well.',
      group,
      min: 0.1,
      max: 15,
      usual: [1, 4],
      default: '2 mm',
      appliesWhen: scored,
    }),
    weldedAfter: f.choice({
      title: 'Bend welded after',
      help: 'Whether slots or groove are filled with weld after folding.',
      group,
      choices: [
        { value: 'yes', label: 'Yes' },
        { value: 'no', label: 'No' },
      ],
      default: 'yes',
    }),
    padAngle: f.angle.given({
      title: 'Pad folded by',
      help: 'Rotation of the folded pad; 90 puts it square to the arm.',
      measuring: 'Bevel gauge; 90 less what it shows off square.',
      group,
      min: 30,
      max: 120,
      usual: [75, 100],
      default: 90,
      appliesWhen: { field: 'pad', values: ['folded'] },
    }),
    mirrored: f.choice({
      title: 'Mirrored',
      help: 'Drawn for the other hand: the same outline with every bend the other way, so that pad and joggle go to the other side. Nothing changes on an arm without bends.',
      group,
      choices: [
        { value: 'no', label: 'As given' },
        { value: 'yes', label: 'Mirrored' },
      ],
      default: 'no',
    }),
    jogOffset: f.length.maybe({
      title: 'Joggle sideways',
      help: 'How far two bends across the arm carry the pad out of the arm’s plane. Left out: the arm stays flat.',
      measuring: 'Straight edge on the arm, rule to the middle of the pad.',
      group,
      min: 2,
      max: 120,
      usual: [10, 30],
    }),
    jogAngle: f.angle.given({
      title: 'Joggle bent by',
      help: 'Rotation of each of its two bends, one up and one down.',
      group,
      min: 10,
      max: 60,
      usual: [20, 45],
      default: 30,
    }),
    jogAt: f.length.maybe({
      title: 'Joggle from the pivot',
      help: 'Straight distance from the pivot to the first of its bend lines. Left out: its two lines stand midway on the last straight before the pad.',
      measuring: 'Rule from the pivot’s middle.',
      group,
      min: 20,
      max: 600,
      usual: [125, 135],
    }),
  };
}
