// The fields of the hill: what is hauled, how steep, on what ground, and how the load lies on the wheels.
import { findGround, type GroundName } from '../handbook/index.js';
import type { FieldKit } from '../parts/index.js';

const GROUP = 'Hill';

/** The label that the handbook gives a ground. */
const labelled = <const N extends GroundName>(value: N) => ({
  value,
  label: findGround(value)?.label ?? value,
});

export function hillFields(f: FieldKit) {
  return {
    mass: f.mass.maybe({
      title: 'Mass',
      help: 'Everything that goes uphill: cart, load, driver.',
      group: GROUP,
      min: 1,
      max: 50000,
    }),
    grade: f.percent.maybe({
      title: 'Grade',
      help: 'Rise over run of the steepest place: 18 % rises 18 cm on a metre.',
      measuring: 'A level one metre long, held level: the gap under its low end in centimetres is the grade.',
      group: GROUP,
      min: 0,
      max: 100,
    }),
    ground: f.choice({
      title: 'Ground',
      help: 'Gives rolling resistance and grip, unless they are given.',
      group: GROUP,
      choices: [
        labelled('hard'),
        labelled('gravel'),
        labelled('earth'),
        labelled('wet-earth'),
        labelled('grass'),
        labelled('wet-grass'),
        labelled('loose'),
      ],
      default: 'earth',
    }),
    rolling: f.percent.maybe({
      title: 'Rolling resistance',
      help: 'Share of the weight that it takes to roll on the level. Left out: by the ground.',
      measuring: 'Pull the loaded cart along with a spring balance, over the weight.',
      group: GROUP,
      min: 0,
      max: 50,
    }),
    grip: f.factor.maybe({
      title: 'Grip',
      help: 'Friction of tyre on ground. Left out: by the ground.',
      measuring: 'Drag the cart with its driven wheels locked: pull over the load on them.',
      group: GROUP,
      min: 0.05,
      max: 1.5,
    }),
    drivenAxle: f.choice({
      title: 'Driven wheels',
      help: 'Uphill the rear wheels gain load, the front ones lose it.',
      group: GROUP,
      choices: [
        { value: 'rear', label: 'Rear' },
        { value: 'front', label: 'Front' },
        { value: 'all', label: 'All' },
      ],
      default: 'rear',
    }),
    drivenMass: f.mass.maybe({
      title: 'Mass on the driven wheels',
      help: 'Of the whole mass, standing level.',
      measuring: 'Scales under the driven wheels, the others on blocks as high.',
      group: GROUP,
      min: 0.5,
      max: 50000,
      appliesWhen: { field: 'drivenAxle', values: ['rear', 'front'] },
    }),
    wheelbase: f.length.maybe({
      title: 'Wheelbase',
      help: 'Front axle to rear axle. With the height below: the shift of load on the hill, and tipping.',
      group: GROUP,
      min: 100,
      max: 10000,
    }),
    massHeight: f.length.maybe({
      title: 'Height of the load’s middle',
      help: 'Mass centre of cart and load above the ground.',
      group: GROUP,
      min: 10,
      max: 5000,
    }),
  };
}
