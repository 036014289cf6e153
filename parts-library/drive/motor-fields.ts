// The fields of the motor and the driven tyre.
import type { FieldKit } from '../parts/index.js';

const MOTOR = 'Motor';
const TYRE = 'Driven tyre';

export function motorFields(f: FieldKit) {
  return {
    motorSpeed: f.rotation.maybe({
      title: 'Motor speed',
      help: 'At the motor’s own shaft, at the speed to be known: under load, or the controller’s limit.',
      group: MOTOR,
      min: 1,
      max: 50000,
    }),
    wheelSpeed: f.rotation.maybe({
      title: 'Wheel speed',
      help: 'Where it was counted instead; with both, the two are compared.',
      measuring: 'Chalk the tyre and count turns over a minute.',
      group: MOTOR,
      min: 0.1,
      max: 10000,
    }),
    reduction: f.factor.given({
      title: 'Gearbox before the sprocket',
      help: 'Turns of the motor for one of its sprocket; 1 without a gearbox.',
      group: MOTOR,
      min: 0.1,
      max: 500,
      default: 1,
    }),
    motorTorque: f.torque.maybe({
      title: 'Greatest motor torque',
      help: 'At the motor’s own shaft: stall torque, or what the controller’s current limit allows.',
      group: MOTOR,
      min: 0.01,
      max: 100000,
    }),
    steadyTorque: f.torque.maybe({
      title: 'Steady motor torque',
      help: 'What the motor stands without overheating, from its plate.',
      group: MOTOR,
      min: 0.01,
      max: 100000,
    }),
    efficiency: f.percent.given({
      title: 'Efficiency',
      help: 'Of gearbox, chain and bearings together; a clean, oiled chain alone 95 to 98 %.',
      group: MOTOR,
      min: 20,
      max: 100,
      default: '94 %',
    }),
    tyreDiameter: f.length.maybe({
      title: 'Tyre diameter',
      help: 'Outside, without load. It gives the road speed.',
      measuring: 'String once round the tread, divided by 3.1416; or two squares and a tape.',
      group: TYRE,
      min: 50,
      max: 2500,
    }),
    loadedRadius: f.length.maybe({
      title: 'Loaded radius',
      help: 'Axle to ground with the load on: the arm that the pull works on.',
      measuring: 'Axle centre to floor, cart loaded, tyres at their pressure.',
      group: TYRE,
      min: 20,
      max: 1250,
    }),
  };
}
