// Draws the blank of a wheel-hub adapter: round outside, undersize centre, bolt holes, stud marks, label.
import { circleContour, type Point } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { clearOfHeads } from '../shared/machined-label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { wheelHubAdapterAbout } from './about.js';
import type { WheelHubAdapter } from './parameters.js';
import { resolveHubAdapter, type ResolvedAdapter } from './resolve.js';

/** A stud's mark: reamed to the press, or drilled and tapped. */
function studFeatures({ wheel }: ResolvedAdapter, studs: WheelHubAdapter['studs']): readonly Feature[] {
  const { pattern, size } = wheel;
  return pattern.holes.map(({ featureId, at }, index): Feature => {
    const name = `stud hole ${index + 1}`;
    if (studs === 'threaded') return holeFeature(featureId, name, at, size);
    const hole = {
      finish: 'ream',
      size: size.diameter,
      thread: size.thread.name,
      takes: size.diameter,
    } as const;
    return { id: featureId, name, purpose: 'mark', at, hole };
  });
}

/** Between bore and bolts, then outside the bolts, all round. */
function labelPlaces(p: WheelHubAdapter, { reach }: ResolvedAdapter): readonly Point[] {
  const inner = p.hubPilot.mm / 2;
  return [-90, 90, 180, 0, -54, -126, 54, 126].flatMap((degrees) =>
    [0.5, 0.3, 0.7, 0.2, 0.85].map((share) => {
      const radius = inner + share * (reach - inner);
      const radians = (degrees * Math.PI) / 180;
      return { x: radius * Math.cos(radians), y: radius * Math.sin(radians) };
    }),
  );
}

/** Parameters to the blank. */
export function drawWheelHubAdapter(p: WheelHubAdapter): Staged<Part | undefined> {
  const answer = resolveHubAdapter(p);
  if (!answer.ok) return refuseToDraw('adapter', answer.field, answer.says);
  const r = answer.value;
  const middle = { x: 0, y: 0 };
  const plain: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: circleContour(middle, r.reach, 'outline'),
    },
    {
      id: 'centre',
      name: 'centre opening',
      purpose: 'opening',
      contour: circleContour(middle, r.drawn / 2, 'opening'),
      hole: { finish: 'bore', size: p.hubPilot.mm, takes: p.hubPilot.mm },
    },
    ...r.hub.pattern.holes.map(({ featureId, at }, index) =>
      holeFeature(featureId, `hub bolt hole ${index + 1}`, at, r.hub.size),
    ),
    ...studFeatures(r, p.studs),
  ];
  const label = etchLabel(
    p.label,
    p.labelHeight.mm,
    plain,
    labelPlaces(p, r),
    clearOfHeads([r.hub, r.wheel]),
  );
  return {
    value: {
      family: wheelHubAdapterAbout.id,
      name: 'Wheel-hub adapter blank',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
