// The demo job: an electric haul cart for a hillside orchard.
import type { JsonObject } from '../model/index.js';
import type { Job } from './types.js';
import { createJob } from './open-job.js';

/** Id under which the store keeps it. */
export const DEMO_JOB_ID = 'orchard-haul-cart';

/** The cart's drive as it was measured; units are written, so that another unit of the job changes nothing. */
const DRIVE: JsonObject = {
  motorTeeth: 12,
  wheelTeeth: 48,
  chain: '08B',
  innerWidth: '7.8 ±0.05 mm',
  roller: '8.5 ±0.02 mm',
  twelvePitches: '153.1 ±0.1 mm',
  centres: '420 mm',
  takeUp: '14 mm',
  motorSpeed: '1400 rpm',
  motorTorque: '38 N·m',
  steadyTorque: '16 N·m',
  tyreDiameter: '406 mm',
  loadedRadius: '191 mm',
  mass: '310 kg',
  grade: '18 %',
  ground: 'earth',
  drivenMass: '190 kg',
  wheelbase: '1100 mm',
  massHeight: '520 mm',
};

/**
 * A fresh copy of the demo job: the adapter that joins the drive sprocket to its hub, and the motor bracket.
 * @param computedWith what the program at hand computes with
 */
export function createDemoJob(computedWith: Job['computedWith']): Job {
  const job = createJob({ id: DEMO_JOB_ID, name: 'Orchard haul cart', unit: 'mm', computedWith });
  return {
    ...job,
    drive: DRIVE,
    rows: [
      {
        id: 'sprocket-adapter',
        family: 'adapter-plate',
        name: 'Sprocket adapter',
        quantity: 2,
        parameters: {
          bolts: 5,
          boltCircle: 'adjacent 55.84 ±0.1',
          bolt: 'M8',
          holes: 'clearance',
          centre: 'slip-to-weld',
          hub: '57.15',
          fit: '0.2',
          outside: '130',
          thickness: '6',
          material: 'S275',
          use: 'drive',
          boltedHole: '9',
          boltedBore: '70',
          chain: '08B',
          teeth: 48,
          torque: '60 N·m',
          chainOffset: '14',
          hubSteel: 'carbon',
          label: 'CART 4',
        },
      },
      {
        id: 'motor-bracket',
        family: 'bent-bracket',
        name: 'Motor bracket',
        quantity: 4,
        parameters: {
          legA: '60',
          legB: '50',
          width: '50',
          radius: '6',
          thickness: '4',
          bolt: 'M8',
          material: 'S235',
        },
      },
    ],
  };
}
