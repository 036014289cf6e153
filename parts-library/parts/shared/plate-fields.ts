// The fields of the plate itself: label, thickness, material.
import type { FieldKit } from '../fields/index.js';

/** What it is cut from and what is etched on it. `start` is what counts before anything is typed. */
export function plateFields(
  f: FieldKit,
  start: { readonly thickness?: string; readonly material?: string } = {},
) {
  return {
    label: f.text.maybe({
      title: 'Etched label',
      help: 'Single-stroke lettering on the face, at least 6 mm high; marked, never cut through.',
      group: 'Plate',
    }),
    labelHeight: f.length.given({
      title: 'Label height',
      help: 'Height of a capital letter.',
      group: 'Plate',
      min: 3,
      max: 50,
      default: '6 mm',
    }),
    thickness: f.length.given({
      title: 'Thickness',
      help: 'Plate thickness; the measured one where it was measured.',
      measuring: 'Micrometer or caliper on a clean edge, scale off.',
      group: 'Plate',
      min: 1,
      max: 40,
      suggestions: ['3', '4', '5', '6', '8', '10', '12', '1/8 in', '3/16 in', '1/4 in', '5/16 in', '3/8 in'],
      default: start.thickness ?? '6 mm',
    }),
    material: f.material.given({
      title: 'Material',
      help: 'Grade of the plate.',
      group: 'Plate',
      default: start.material ?? 'S275',
    }),
  };
}
