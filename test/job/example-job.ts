// A small job that holds one of everything, for the tests of this room.
import type { Job } from '../../parts-library/job/index.js';

const DIGEST = '44136fa355b3678a1146ad16f7e8649e94fb4fc21fe77e8310c060f61caaff8a';

export const exampleJob: Job = {
  format: 'fishplate-job',
  version: 1,
  id: 'orchard-cart',
  name: 'Orchard haul cart',
  revision: 7,
  unit: 'mm',
  rows: [
    {
      id: 'adapter',
      family: 'adapter-plate',
      name: 'Sprocket adapter',
      quantity: 2,
      parameters: {
        bolts: 5,
        boltCircle: { typed: 'circle 95', metric: 'circle 95 mm' },
        pattern2: { bolts: 4 },
      },
    },
    {
      id: 'bracket',
      family: 'bent-bracket',
      name: 'Motor bracket',
      quantity: 4,
      parameters: { thickness: 5 },
      kitId: 'mounts',
      role: 'left',
      overrides: { thickness: 5 },
    },
  ],
  kits: [{ id: 'mounts', kit: 'pair', name: 'Motor mounts', numbers: { width: 80 } }],
  plates: [
    {
      id: 'rack-1',
      name: 'Full sheet',
      kind: 'full',
      outline: [
        { x: 0, y: 0, bulge: 0 },
        { x: 2500, y: 0, bulge: 0 },
        { x: 2500, y: 1250, bulge: 0 },
        { x: 0, y: 1250, bulge: 0 },
      ],
      blocked: [],
      material: 'S275',
      thickness: 6,
      count: 1,
    },
  ],
  nests: [
    {
      id: 'adapter.nest',
      placements: [
        {
          id: 'adapter.0',
          rowId: 'adapter',
          copy: 0,
          at: { x: 0, y: 0 },
          turnDegrees: 0,
          mirrored: false,
          locked: false,
        },
      ],
      inputs: DIGEST,
    },
  ],
  choices: { process: [{ material: 'S275', thickness: 6, processClass: 'air-45A', kerf: 1.6 }] },
  overrides: [
    {
      code: 'edge-distance',
      subject: { rowId: 'adapter' },
      digest: DIGEST,
      reason: 'Trial fit only',
      date: '2024-05-04',
    },
  ],
  computedWith: { library: '0.1.0', chartVersion: '1', shopRevision: 3, seed: 1, lanes: 1, iterations: 0 },
};

/** The example as a copy that a test can spoil freely. */
export const exampleDocument = (): Record<string, unknown> => ({ ...structuredClone(exampleJob) });
