// Draws the blank of a disc carrier: outline, undersize centre, bolt holes, windows, label.
import { circleContour, type Point } from '../../geometry/index.js';
import type { Feature, Finding, Part, Staged } from '../../model/index.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { clearOfHeads } from '../shared/machined-label.js';
import type { ResolvedPattern } from '../shared/pattern.js';
import { refuseToDraw } from '../shared/refuse.js';
import { discCarrierAbout } from './about.js';
import type { DiscCarrier } from './parameters.js';
import { resolveCarrier, type ResolvedCarrier } from './resolve.js';

const holesOf = ({ pattern, size }: ResolvedPattern, name: string): readonly Feature[] =>
  pattern.holes.map(({ featureId, at }, index) => holeFeature(featureId, `${name} ${index + 1}`, at, size));

const noRoomForWindows = (): Finding => ({
  code: 'windows',
  level: 'note',
  stage: 'draw',
  subject: {},
  field: 'windows',
  title: 'No room for windows between the spokes',
  says: 'They were left out: between the hub’s holes and the hollows the spokes, the metal round a window and its corners leave no opening. A narrower spoke, less metal round it, or a smaller corner would do.',
  source: { title: 'Plane geometry', where: 'construction of the windows', certainty: 'common practice' },
});

/** Along the spokes, then round the hub, nearer and farther out. */
function labelPlaces({ disc, window, outside }: ResolvedCarrier): readonly Point[] {
  const angles = [
    ...disc.pattern.holes.map(({ at }) => Math.atan2(at.y, at.x)),
    -Math.PI / 2,
    Math.PI / 2,
    0,
    Math.PI,
  ];
  return angles.flatMap((radians) =>
    [0.35, 0.5, 0.65, 0.2, 0.8].map((share) => {
      const reach = window.inner + share * (outside.reach - window.inner);
      return { x: reach * Math.cos(radians), y: reach * Math.sin(radians) };
    }),
  );
}

/** Parameters to the blank. */
export function drawDiscCarrier(p: DiscCarrier): Staged<Part | undefined> {
  const answer = resolveCarrier(p);
  if (!answer.ok) return refuseToDraw('carrier', answer.field, answer.says);
  const r = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour: r.outside.contour },
    {
      id: 'centre',
      name: 'centre opening',
      purpose: 'opening',
      contour: circleContour({ x: 0, y: 0 }, r.drawn / 2, 'opening'),
      hole: { finish: 'bore', size: p.hubPilot.mm, takes: p.hubPilot.mm },
    },
    ...holesOf(r.disc, 'disc bolt hole'),
    ...holesOf(r.hub, 'hub bolt hole'),
    ...r.windows.map((contour, index): Feature => ({
      id: `window.${index + 1}`,
      name: `window ${index + 1}`,
      purpose: 'opening',
      contour,
    })),
  ];
  const label = etchLabel(p.label, p.labelHeight.mm, plain, labelPlaces(r), clearOfHeads([r.disc, r.hub]));
  return {
    value: {
      family: discCarrierAbout.id,
      name: 'Brake-disc carrier blank',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [
      ...(label === undefined ? [noRoomForLabel(p.label ?? '')] : []),
      ...(p.windows === 'between' && r.windows.length === 0 ? [noRoomForWindows()] : []),
    ],
  };
}
