// The fields of a carrier's outer edge and of the windows between its lobes.
import type { FieldKit } from '../fields/index.js';

export function carrierOutsideFields(f: FieldKit) {
  return {
    shape: f.choice({
      title: 'Outside',
      help: 'lobed: a lobe round each disc bolt with hollows between; round: a plain disc.',
      group: 'Outside',
      choices: [
        { value: 'lobed', label: 'Lobed' },
        { value: 'round', label: 'Round' },
      ],
      default: 'lobed',
    }),
    edge: f.length.maybe({
      title: 'Lobe radius',
      help: 'From a disc bolt’s centre to the edge. Left out: two bolt diameters, or what the neighbouring lobe leaves.',
      group: 'Outside',
      min: 3,
      max: 200,
    }),
    scallop: f.length.maybe({
      title: 'Scallop',
      help: 'Radius of the hollows. Left out: a hollow that leaves the pilot shoulder whole.',
      measuring: 'Radius gauge, or a coin of known size.',
      group: 'Outside',
      min: 3,
      max: 2000,
      appliesWhen: { field: 'shape', values: ['lobed'] },
    }),
    windows: f.choice({
      title: 'Windows',
      help: 'between: openings between the spokes that run to the disc bolts, where there is room; none: solid.',
      group: 'Windows',
      choices: [
        { value: 'between', label: 'Between the spokes' },
        { value: 'none', label: 'None' },
      ],
      default: 'between',
    }),
    spoke: f.length.given({
      title: 'Spoke width',
      help: 'Metal between two windows, toward each disc bolt.',
      group: 'Windows',
      min: 4,
      max: 200,
      default: '18 mm',
      appliesWhen: { field: 'windows', values: ['between'] },
    }),
    windowWeb: f.length.maybe({
      title: 'Metal round the windows',
      help: 'From a window to the outside and to the hub’s holes. Left out: one and a quarter thicknesses.',
      group: 'Windows',
      min: 3,
      max: 200,
      appliesWhen: { field: 'windows', values: ['between'] },
    }),
    windowCorner: f.length.given({
      title: 'Window corner',
      help: 'Radius in the windows’ corners; a sharp corner starts a crack.',
      group: 'Windows',
      min: 1,
      max: 50,
      default: '4 mm',
      appliesWhen: { field: 'windows', values: ['between'] },
    }),
  };
}
