// What can be set on a blank for a bought sprocket: the sprocket, its bolts, the pilot, the outside, plate and load.
import { z } from 'zod';
import type { FieldKit } from '../fields/index.js';
import { driveLoadFields } from '../shared/drive-load-fields.js';
import { patternFields } from '../shared/pattern-fields.js';
import { plateFields } from '../shared/plate-fields.js';
import { chainFields } from '../shared/sprocket/chain-fields.js';

function sprocketFields(f: FieldKit) {
  const group = 'Sprocket and flange';
  return {
    sprocketThickness: f.length.given({
      title: 'Thickness of the sprocket',
      help: 'Bought sprocket where the bolts pass through it; the bolts grip it, the blank and the flange.',
      measuring: 'Caliper on the sprocket beside a hole.',
      group,
      min: 1,
      max: 60,
      default: '5 mm',
    }),
    flangeThickness: f.length.given({
      title: 'Thickness of the flange',
      help: 'What the blank is bolted to, behind it.',
      measuring: 'Caliper on the flange beside a hole.',
      group,
      min: 1,
      max: 60,
      default: '6 mm',
    }),
    standoff: f.length.maybe({
      title: 'Sprocket off the flange',
      help: 'How far the sprocket has to stand off the flange so that the chain runs straight; the blank’s thickness is held against it.',
      measuring:
        'Straightedge along the other sprocket’s face, depth rod from it to the flange, less what the sprocket’s own face is off.',
      group,
      min: 0.5,
      max: 100,
    }),
  };
}

function middleFields(f: FieldKit) {
  const group = 'Middle and outside';
  const pilot = { field: 'pilot', values: ['bored', 'plain'] } as const;
  return {
    pilot: f.choice({
      title: 'Pilot',
      help: 'bored: the bore is cut under size and bored over the flange’s pilot, which centres the blank; plain: an opening as cut, the bolts centre it; none: a whole disc.',
      group,
      choices: [
        { value: 'bored', label: 'Bored to a pilot' },
        { value: 'plain', label: 'Plain opening' },
        { value: 'none', label: 'None' },
      ],
      default: 'bored',
    }),
    bore: f.length.given({
      title: 'Pilot bore',
      help: 'Finished bore: the flange’s pilot as measured, or what has to pass.',
      measuring: 'Caliper or micrometer over the pilot, two directions; take the larger.',
      group,
      min: 5,
      max: 800,
      default: '70 mm',
      appliesWhen: pilot,
    }),
    machiningAllowance: f.length.given({
      title: 'Left for boring',
      help: 'How much smaller the opening is cut, on diameter, when it is bored afterwards.',
      group,
      min: 1,
      max: 10,
      default: '3 mm',
      appliesWhen: { field: 'pilot', values: ['bored'] },
    }),
    outside: f.length.maybe({
      title: 'Outside diameter',
      help: 'Left out, it follows from the edge distance. The chain’s side plates limit it.',
      group,
      min: 15,
      max: 1000,
    }),
    edge: f.length.maybe({
      title: 'Edge distance',
      help: 'From bolt centre to the outside. Left out: twice the bolt, or 1.5 thicknesses of metal beside the hole if that is more.',
      group,
      min: 2,
      max: 200,
    }),
  };
}

/** Drive loads without the weld, which a blank has none of. */
function loads(f: FieldKit) {
  const { use, torque, gripMass, tyreDiameter, grip, boltGrade } = driveLoadFields(f);
  return { use, torque, gripMass, tyreDiameter, grip, boltGrade };
}

/** One schema for the whole part. Lengths in mm or as typed. */
export function sprocketBlankParameters(f: FieldKit) {
  return z.strictObject({
    ...patternFields(f, 'Bolt pattern', { bolts: 6, circle: 'circle 110', bolt: 'M10' }),
    ...chainFields(f, { chain: '41', teeth: 60 }),
    ...sprocketFields(f),
    ...middleFields(f),
    ...plateFields(f),
    ...loads(f),
  });
}

export type SprocketBlank = z.output<ReturnType<typeof sprocketBlankParameters>>;
