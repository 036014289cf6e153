// The fields of the wheel's studs: how they hold in the plate, grade, length.
import type { FieldKit } from '../fields/index.js';
import { GRADES } from '../shared/wheel-fields.js';

export function studFields(f: FieldKit) {
  const group = 'Studs';
  const pressed = { field: 'studs', values: ['pressed'] } as const;
  return {
    studs: f.choice({
      title: 'Studs',
      help: 'pressed: knurled, drawn in from the hub’s side, the head bears; threaded: screwed into the plate and locked.',
      group,
      choices: [
        { value: 'pressed', label: 'Pressed in' },
        { value: 'threaded', label: 'Screwed in' },
      ],
      default: 'pressed',
    }),
    studGrade: f.choice({
      title: 'Stud grade',
      help: 'Property class or SAE grade of the studs.',
      group,
      choices: GRADES,
      default: '10.9',
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
      help: 'Diameter over the knurl of a pressed stud.',
      measuring: 'Micrometer over the knurl’s tips.',
      group,
      min: 5,
      max: 40,
      default: '14.1 mm',
      appliesWhen: pressed,
    }),
    press: f.length.given({
      title: 'Press',
      help: 'How much smaller than the knurl the hole is reamed.',
      group,
      min: 0.02,
      max: 0.4,
      default: '0.1 mm',
      appliesWhen: pressed,
    }),
    studHead: f.length.maybe({
      title: 'Stud head outside',
      help: 'Largest diameter of the stud’s head, which bears on the hub’s side of the plate.',
      measuring: 'Caliper over the head.',
      group,
      min: 6,
      max: 60,
      appliesWhen: pressed,
    }),
    studHeadHeight: f.length.given({
      title: 'Stud head height',
      help: 'How thick the stud’s head is.',
      measuring: 'Caliper over the head.',
      group,
      min: 0.5,
      max: 20,
      default: '4 mm',
      appliesWhen: pressed,
    }),
  };
}
