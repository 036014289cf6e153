// The fields of a pull on a pin: how hard, which way, what bolt, and whose safety hangs on it.
import type { FieldKit } from '../fields/index.js';

/** What a part is for, and the words of its caution. */
export const USES = [
  { value: 'other', label: 'Other' },
  { value: 'brake', label: 'Brake' },
  { value: 'steering', label: 'Steering' },
  { value: 'drive', label: 'Drive' },
  { value: 'tow', label: 'Towing' },
  { value: 'lift', label: 'Lifting' },
] as const;

export function useField(f: FieldKit, usual: (typeof USES)[number]['value'] = 'other') {
  return f.choice({
    title: 'Used on',
    help: 'Brake, steering, drive, towing and lifting parts carry their cautions.',
    group: 'Load',
    choices: USES,
    default: usual,
  });
}

/** Pull on the pin in the plate's plane. */
export function pullFields(f: FieldKit) {
  const group = 'Load';
  return {
    use: useField(f),
    pull: f.force.maybe({
      title: 'Pull',
      help: 'Greatest force on the pin, jerks counted.',
      measuring: 'Mass in kg × 9.81 for what hangs on it; twice that where it jerks.',
      group,
      min: 1,
      max: 1e7,
      usual: [500, 8000],
    }),
    pullAngle: f.angle.given({
      title: 'Pull direction',
      help: '0 straight away from the weld edge, 90 to the right along it, −90 to the left.',
      group,
      min: -90,
      max: 90,
      default: '0',
    }),
    boltGrade: f.choice({
      title: 'Bolt grade',
      help: 'Marked on the head.',
      group,
      choices: [
        { value: '8.8', label: '8.8' },
        { value: '10.9', label: '10.9' },
        { value: '12.9', label: '12.9' },
        { value: 'SAE 2', label: 'SAE 2' },
        { value: 'SAE 5', label: 'SAE 5' },
        { value: 'SAE 8', label: 'SAE 8' },
      ],
      default: '8.8',
    }),
  };
}

/** Unit vector of a pull, from its angle off the square to the edge. */
export const pullDirection = (degrees: number): { readonly x: number; readonly y: number } => ({
  x: Math.sin((degrees * Math.PI) / 180),
  y: Math.cos((degrees * Math.PI) / 180),
});
