// The numbers of the pedals: arms and pads, the brake’s rod, the throttle’s cable, the stops.
import type { FieldKit } from '../../parts/index.js';

/** What both arms share. */
export function armNumbers(f: FieldKit) {
  const group = 'Arms';
  return {
    length: f.length.given({
      title: 'Pivot to pad',
      help: 'Straight distance from the pivot to the middle of the pad, on both pedals.',
      measuring: 'Tape from pivot bolt to where the ball of the foot lands, seat and legs in place.',
      group,
      min: 60,
      max: 600,
      default: '260 mm',
    }),
    armThickness: f.length.given({
      title: 'Arm thickness',
      help: 'Plate of both arms.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group,
      min: 3,
      max: 25,
      default: '10 mm',
    }),
    pad: f.choice({
      title: 'Pads',
      help: 'welded: plates welded on; folded: flaps of the arms, bent away from each other; flat: bought pads on square ends.',
      group,
      choices: [
        { value: 'welded', label: 'Plates welded on' },
        { value: 'folded', label: 'Folded from the arms' },
        { value: 'flat', label: 'Flat ends' },
      ],
      default: 'welded',
    }),
    padLength: f.length.given({
      title: 'Pad along the arm',
      help: 'Length of the pads along the arm.',
      measuring: 'Caliper or rule.',
      group,
      min: 20,
      max: 200,
      default: '80 mm',
    }),
    padWidth: f.length.given({
      title: 'Pad across',
      help: 'Width of the pads across the arm.',
      measuring: 'Caliper or rule.',
      group,
      min: 15,
      max: 200,
      default: '60 mm',
    }),
    spread: f.length.maybe({
      title: 'Pads spread by',
      help: 'How far a joggle carries each pad away from the other pedal. Left out: the arms stay flat.',
      group,
      min: 2,
      max: 120,
    }),
  };
}

export function brakeNumbers(f: FieldKit) {
  const group = 'Brake';
  return {
    rodRadius: f.length.given({
      title: 'Push rod from the pivot',
      help: 'From the pivot to the push rod’s pin; the cylinder stands as far from the pivot on its base.',
      measuring: 'Caliper between the nearest edges of both holes, plus half of each.',
      group,
      min: 15,
      max: 300,
      default: '60 mm',
    }),
    stroke: f.length.given({
      title: 'Full stroke',
      help: 'The cylinder’s full stroke to its bottom, reserve included.',
      measuring: 'Depth rod on the piston, out and bottomed.',
      group,
      min: 2,
      max: 100,
      default: '22 mm',
    }),
    freePlay: f.length.given({
      title: 'Free play',
      help: 'What the rest stops leave between rod and piston, and as slack in the cable.',
      measuring: 'Feeler gauge between rod and piston, pedal on its rest stop.',
      group,
      min: 0,
      max: 20,
      default: '1 mm',
    }),
    proof: f.force.given({
      title: 'Proof load, brake',
      help: 'Push on the brake’s pad that arm, standoffs and base must carry; 2000 N is the competition rule.',
      group,
      min: 100,
      max: 10_000,
      default: 2000,
    }),
    bore: f.length.given({
      title: 'Cylinder bore',
      help: 'Bore of the master cylinder.',
      measuring: 'Cast on the body as a rule; or caliper in the bore.',
      group,
      min: 8,
      max: 60,
      default: '3/4 in',
    }),
    cylinderSpacing: f.length.given({
      title: 'Cylinder’s bolts',
      help: 'Centre to centre of the two bolts of the cylinder’s flange.',
      measuring: 'Inside of one hole to inside of the other, plus one hole.',
      group,
      min: 20,
      max: 300,
      default: '57.2 mm',
    }),
  };
}

export function throttleNumbers(f: FieldKit) {
  const group = 'Throttle';
  return {
    cableRadius: f.length.given({
      title: 'Cable from the pivot',
      help: 'From the pivot to the cable’s hole in the arm.',
      measuring: 'Caliper between the nearest edges of both holes, plus half of each.',
      group,
      min: 15,
      max: 300,
      default: '52 mm',
    }),
    pull: f.length.given({
      title: 'Cable pull',
      help: 'Travel of the cable from closed to full open.',
      measuring: 'Cable marked at both ends of its travel.',
      group,
      min: 2,
      max: 200,
      default: '25 mm',
    }),
    throttleProof: f.force.given({
      title: 'Proof load, throttle',
      help: 'Push on the throttle’s pad against its forward stop that arm and standoffs must carry.',
      group,
      min: 100,
      max: 10_000,
      default: 1000,
    }),
    cable: f.length.given({
      title: 'Cable',
      help: 'Diameter of the inner cable.',
      measuring: 'Caliper over the bare strands.',
      group,
      min: 0.5,
      max: 12,
      default: '1.6 mm',
    }),
    neck: f.length.given({
      title: 'Ferrule neck',
      help: 'Diameter of the part of the housing’s ferrule that sits in the cable stop.',
      measuring: 'Caliper over the ferrule behind its shoulder.',
      group,
      min: 2,
      max: 60,
      default: '8 mm',
    }),
    cableHeight: f.length.given({
      title: 'Cable height',
      help: 'From what the cable stop stands on to the cable.',
      measuring: 'Rule from what it stands on to the cable held straight.',
      group,
      min: 3,
      max: 500,
      default: '55 mm',
    }),
  };
}

export function stopNumbers(f: FieldKit) {
  const group = 'Stops';
  return {
    stopScrew: f.thread.given({
      title: 'Stop screws',
      help: 'Thread of the stop screws, tapped into their tabs: rest stops of both pedals, forward stop of the throttle.',
      group,
      default: 'M8',
    }),
    stopRadius: f.length.given({
      title: 'Stops from the pivot',
      help: 'Straight distance from the pivot to where the screws bear on the arms.',
      measuring: 'Rule from the pivot’s middle.',
      group,
      min: 15,
      max: 400,
      default: '88 mm',
    }),
    stopHeight: f.length.given({
      title: 'Screw height',
      help: 'From what a stop tab stands on to its screw.',
      measuring: 'Rule from what it stands on to the place on the arm.',
      group,
      min: 10,
      max: 300,
      default: '30 mm',
    }),
    tabThickness: f.length.given({
      title: 'Tab thickness',
      help: 'Plate of the stop tabs; as thick as the screw’s diameter holds its thread.',
      measuring: 'Micrometer on a clean edge, scale off.',
      group,
      min: 3,
      max: 25,
      default: '8 mm',
    }),
  };
}
