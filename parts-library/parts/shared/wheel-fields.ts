// What a wheel and its brake bring: torque and grip, and the radii of caliper and rim.
import { found, gripTorque } from '../../checks/index.js';
import type { Finding } from '../../model/index.js';
import type { FieldKit, Entry, NumberEntry } from '../fields/index.js';

export const GRADES = [
  { value: '8.8', label: '8.8' },
  { value: '10.9', label: '10.9' },
  { value: '12.9', label: '12.9' },
  { value: 'SAE 2', label: 'SAE grade 2' },
  { value: 'SAE 5', label: 'SAE grade 5' },
  { value: 'SAE 8', label: 'SAE grade 8' },
] as const;

/** Torque of brake or drive at one wheel; all may be left out, and the findings say what was not checked. */
export function wheelLoadFields(f: FieldKit) {
  const group = 'Load';
  return {
    torque: f.torque.maybe({
      title: 'Torque',
      help: 'Greatest torque of brake or drive at this wheel.',
      group,
      min: 0,
      max: 100000,
    }),
    wheelMass: f.mass.maybe({
      title: 'Mass on the wheel',
      help: 'What this wheel carries, loaded and braking; a front wheel carries more when it brakes.',
      measuring: 'Scales under the wheel, the cart loaded.',
      group,
      min: 1,
      max: 10000,
    }),
    tyreDiameter: f.length.maybe({
      title: 'Tyre diameter',
      help: 'Loaded outside diameter of the tyre.',
      measuring: 'Axle centre to floor under load, doubled.',
      group,
      min: 50,
      max: 2500,
    }),
    grip: f.factor.given({
      title: 'Grip',
      help: 'Friction of tyre on ground; 0.8 on dry hard ground, 1.0 as an upper bound.',
      group,
      min: 0.1,
      max: 1.5,
      default: 0.8,
    }),
  };
}

/** Radii from the axle of what stands round the part. */
export function wheelRoomFields(f: FieldKit) {
  const group = 'Room';
  const radius = (title: string, help: string, measuring: string) =>
    f.length.maybe({ title, help, measuring, group, min: 10, max: 1000 });
  return {
    caliperInner: radius(
      'Caliper, nearest point',
      'Radius from the axle to the caliper’s or bracket’s nearest point beside the part.',
      'Rule from the axle’s centre to the nearest metal of caliper and bracket.',
    ),
    caliperOuter: radius(
      'Caliper, farthest point',
      'Radius from the axle to the caliper’s farthest point, under the rim.',
      'Rule from the axle’s centre over the caliper.',
    ),
    rim: radius(
      'Rim inside',
      'Inside radius of the rim where it passes the caliper.',
      'Rule across the bare rim’s inside, halved; balance weights count.',
    ),
  };
}

export interface WheelLoad {
  readonly torque?: NumberEntry | undefined;
  readonly wheelMass?: NumberEntry | undefined;
  readonly tyreDiameter?: Entry | undefined;
  readonly grip: NumberEntry;
}

/** The worse of the torque given and what the tyre's grip can pass, N·m; undefined when neither is known. */
export function wheelTorque(p: WheelLoad): number | undefined {
  const torques = [
    ...(p.torque === undefined ? [] : [p.torque.value]),
    ...(p.wheelMass === undefined || p.tyreDiameter === undefined
      ? []
      : [gripTorque(p.wheelMass.value, p.tyreDiameter.mm, p.grip.value)]),
  ];
  return torques.length === 0 ? undefined : Math.max(...torques);
}

/** Said when neither torque nor grip is known. */
export const wheelLoadMissing = (): Finding =>
  found({
    code: 'not-checked',
    level: 'note',
    field: 'torque',
    title: 'bolts, bearing and friction under torque',
    says: 'Give the greatest torque at this wheel, or the mass on it and the tyre’s diameter: what the tyre can hold on the ground is the most that brake and bolts ever see.',
    source: { title: 'Load on the part', where: 'not given', certainty: 'common practice' },
  });
