// The fields of the strand that the idler runs in, and what pulls in it.
import type { FieldKit } from '../fields/index.js';
import { useField } from '../shared/pull-fields.js';

export function strandFields(f: FieldKit) {
  const group = 'Strand';
  return {
    chain: f.chain.given({
      title: 'Chain',
      help: 'Chain that is tightened.',
      measuring: 'Inner width, roller diameter, and twelve pitches under light tension.',
      group,
      default: '40',
    }),
    links: f.count.given({
      title: 'Links',
      help: 'Links of the whole chain; wear grows with them.',
      measuring: 'Count every pin.',
      group,
      min: 10,
      max: 2000,
      default: 96,
    }),
    span: f.length.given({
      title: 'Free strand',
      help: 'Length of the slack strand between the two sprockets, from where it leaves one to where it meets the other.',
      measuring: 'Tape along the strand, tooth to tooth.',
      group,
      min: 40,
      max: 5000,
      default: '380 mm',
    }),
    idlerAt: f.length.given({
      title: 'Idler along the strand',
      help: 'From the nearer end of the free strand to the idler.',
      measuring: 'Tape along the strand.',
      group,
      min: 10,
      max: 4900,
      default: '150 mm',
    }),
    press: f.length.given({
      title: 'Pressed in at the start',
      help: 'How far the idler presses a new chain out of its straight line.',
      measuring: 'Straight edge from sprocket to sprocket over the rollers, caliper to the chain under it.',
      group,
      min: 0,
      max: 500,
      default: '12 mm',
    }),
    chainAngle: f.angle.given({
      title: 'Strand to arm',
      help: 'Angle between strand and arm in the middle of the swing; 0 when the arm lies along the chain, so that the idler moves square to it.',
      group,
      min: -80,
      max: 80,
      default: '0',
    }),
    reverses: f.choice({
      title: 'Chain also brakes or reverses',
      help: 'When the motor brakes or runs backwards, the slack strand becomes the pulling one.',
      group: 'Load',
      choices: [
        { value: 'no', label: 'No' },
        { value: 'yes', label: 'Yes' },
      ],
      default: 'no',
    }),
    pull: f.force.maybe({
      title: 'Pull in this strand',
      help: 'Greatest pull in the strand with the idler: little in a slack one, the whole chain pull when the drive brakes or reverses.',
      measuring: 'Torque in N·m × 2000 ÷ pitch diameter in mm.',
      group: 'Load',
      min: 1,
      max: 1e6,
      usual: [200, 1500],
    }),
    use: useField(f, 'drive'),
  };
}
