// The fields of what the plate carries: torque, chain, tyre grip, bolts, weld.
import type { FieldKit } from '../fields/index.js';
import { driveLoadFields } from '../shared/drive-load-fields.js';

/** Loads and joints; all may be left out, and the findings say what was not checked. */
export function loadFields(f: FieldKit) {
  const { use, torque, ...rest } = driveLoadFields(f);
  return {
    use,
    torque,
    chain: f.chain.maybe({
      title: 'Chain',
      help: 'Chain on the bolted sprocket, for example 428, 40, 08B.',
      measuring: 'Inner width, roller diameter, and twelve pitches under light tension.',
      group: 'Load',
    }),
    teeth: f.count.maybe({
      title: 'Teeth',
      help: 'Teeth of the bolted sprocket.',
      group: 'Load',
      min: 9,
      max: 150,
    }),
    ...rest,
  };
}
