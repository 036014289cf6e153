// The fields of what a drive plate carries: torque, tyre grip, bolts, weld.
import type { FieldKit } from '../fields/index.js';

/** Loads and joints; all may be left out, and the findings say what was not checked. */
export function driveLoadFields(f: FieldKit) {
  return {
    use: f.choice({
      title: 'Used on',
      help: 'Brake, steering and drive parts carry their cautions.',
      group: 'Load',
      choices: [
        { value: 'drive', label: 'Drive' },
        { value: 'brake', label: 'Brake' },
        { value: 'steering', label: 'Steering' },
        { value: 'other', label: 'Other' },
      ],
      default: 'drive',
    }),
    torque: f.torque.maybe({
      title: 'Torque',
      help: 'Greatest torque that passes through the plate, for a motor the stall torque at this shaft.',
      group: 'Load',
      min: 0,
      max: 100000,
    }),
    chainOffset: f.length.maybe({
      title: 'Chain plane to weld',
      help: 'Distance along the shaft from the middle of the chain to the weld; an offset pull bends the weld.',
      measuring: 'Depth rod from the sprocket face to the weld face, plus half the sprocket.',
      group: 'Load',
      min: 0,
      max: 500,
    }),
    gripMass: f.mass.maybe({
      title: 'Mass on the driven wheels',
      help: 'What the driven wheels carry; the tyres can pull no harder than their grip.',
      group: 'Load',
      min: 1,
      max: 20000,
    }),
    tyreDiameter: f.length.maybe({
      title: 'Tyre diameter',
      help: 'Loaded outside diameter of the driven tyres.',
      measuring: 'Axle centre to floor under load, doubled.',
      group: 'Load',
      min: 50,
      max: 2500,
    }),
    grip: f.factor.given({
      title: 'Grip',
      help: 'Friction of tyre on ground; 0.8 on dry hard ground, 1.0 as an upper bound.',
      group: 'Load',
      min: 0.1,
      max: 1.5,
      default: 0.8,
    }),
    boltGrade: f.choice({
      title: 'Bolt grade',
      help: 'Property class or SAE grade stamped on the head.',
      group: 'Load',
      choices: [
        { value: '8.8', label: '8.8' },
        { value: '10.9', label: '10.9' },
        { value: '12.9', label: '12.9' },
        { value: 'SAE 2', label: 'SAE grade 2' },
        { value: 'SAE 5', label: 'SAE grade 5' },
        { value: 'SAE 8', label: 'SAE grade 8' },
      ],
      default: '8.8',
    }),
    weldLeg: f.length.maybe({
      title: 'Weld leg',
      help: 'Leg of the fillet between hub and plate. Left out: the least leg for this thickness.',
      group: 'Load',
      min: 1,
      max: 30,
    }),
    weldSides: f.choice({
      title: 'Welded',
      help: 'On one face or on both.',
      group: 'Load',
      choices: [
        { value: 'both', label: 'Both sides' },
        { value: 'one', label: 'One side' },
      ],
      default: 'both',
    }),
    hubSteel: f.choice({
      title: 'Hub steel',
      help: 'Leaded, hardened or plated hubs do not weld like plain carbon steel.',
      group: 'Load',
      choices: [
        { value: 'unknown', label: 'Not known' },
        { value: 'carbon', label: 'Low-carbon, bare' },
        { value: 'leaded', label: 'Leaded free-cutting' },
        { value: 'hardened', label: 'Hardened or alloyed' },
        { value: 'plated', label: 'Plated' },
      ],
      default: 'unknown',
    }),
  };
}
