// Where the etched label of a sprocket may stand: the ring between bolts and windows, the rim, between the bolts.
import type { Point } from '../../geometry/index.js';
import type { Sprocket } from './resolve.js';

const AROUND = [-90, 90, 180, 0];

/** Centres to try, best first. */
export function labelPlaces({ teeth, pattern, lightening }: Sprocket, inner: number): readonly Point[] {
  const holes = pattern?.pattern.holes ?? [];
  const between = holes.map(({ at }) => (Math.atan2(at.y, at.x) * 180) / Math.PI + 180 / holes.length);
  const begins = lightening === undefined || lightening === 'none' ? teeth.root : lightening.inner;
  const radii = [
    (inner + begins / 2) / 2,
    ...(pattern === undefined ? [] : [pattern.circle.diameter / 2]),
    ...(lightening === undefined || lightening === 'none' ? [] : [(lightening.outer + teeth.root) / 4]),
    inner + 0.3 * (begins / 2 - inner),
    inner + 0.7 * (begins / 2 - inner),
  ];
  return radii.flatMap((radius) =>
    [...AROUND, ...between].map((degrees) => ({
      x: radius * Math.cos((degrees * Math.PI) / 180),
      y: radius * Math.sin((degrees * Math.PI) / 180),
    })),
  );
}
