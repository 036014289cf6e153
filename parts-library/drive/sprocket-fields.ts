// The fields of the two sprockets, and of those that lie ready to be tried.
import type { FieldKit } from '../parts/index.js';

const GROUP = 'Sprockets';

/** Fewest and most teeth that are taken. */
export const TEETH = { least: 6, most: 150 } as const;

export function sprocketFields(f: FieldKit) {
  return {
    motorTeeth: f.count.given({
      title: 'Motor sprocket',
      help: 'Teeth of the sprocket that drives.',
      measuring: 'Mark one tooth with chalk and count once round.',
      group: GROUP,
      min: TEETH.least,
      max: TEETH.most,
      default: 12,
    }),
    wheelTeeth: f.count.given({
      title: 'Wheel sprocket',
      help: 'Teeth of the sprocket on the axle.',
      measuring: 'Mark one tooth with chalk and count once round.',
      group: GROUP,
      min: TEETH.least,
      max: TEETH.most,
      default: 48,
    }),
    motorOthers: f.text.maybe({
      title: 'Other motor sprockets',
      help: 'Tooth counts to compare, for example 10, 11, 13. Left out: one and two teeth either way.',
      group: GROUP,
    }),
    wheelOthers: f.text.maybe({
      title: 'Other wheel sprockets',
      help: 'Tooth counts to compare, for example 40, 44, 54. Left out: two and four teeth either way.',
      group: GROUP,
    }),
  };
}
