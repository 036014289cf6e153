// Draws a sprocket blank: round outside, pilot bore, bolt holes or marks, label; finished sizes, origin in the middle.
import { circleContour, type Point } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { sprocketBlankAbout } from './about.js';
import type { SprocketBlank } from './parameters.js';
import { resolveBlank, type Blank } from './resolve.js';

const MIDDLE = { x: 0, y: 0 };

/** Under and over the middle, then between the bolts; inside of them, on their circle, outside. */
function labelPlaces({ pattern, pilot, outside }: Blank): readonly Point[] {
  const { holes } = pattern.pattern;
  const inner = (pilot?.finished ?? 0) / 2;
  const between = holes.map(({ at }) => Math.atan2(at.y, at.x) + Math.PI / holes.length);
  const radii = [0.5, 0.35, 0.65, 0.8].map((share) => inner + share * (outside / 2 - inner));
  return [
    ...(pilot === undefined ? [MIDDLE] : []),
    ...[-Math.PI / 2, Math.PI / 2, ...between].flatMap((radians) =>
      radii.map((radius) => ({ x: radius * Math.cos(radians), y: radius * Math.sin(radians) })),
    ),
  ];
}

/** Parameters to a part. */
export function drawSprocketBlank(p: SprocketBlank, _context: DrawContext): Staged<Part | undefined> {
  const answer = resolveBlank(p);
  if (!answer.ok) return refuseToDraw('blank', answer.field, answer.says);
  const { pattern, pilot, outside } = answer.value;
  const plain: readonly Feature[] = [
    {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: circleContour(MIDDLE, outside / 2, 'outline'),
    },
    ...(pilot === undefined
      ? []
      : [
          {
            id: 'centre',
            name: 'pilot bore',
            purpose: 'opening' as const,
            contour: circleContour(MIDDLE, pilot.drawn / 2, 'opening'),
            hole: {
              finish: p.pilot === 'bored' ? ('bore' as const) : ('cut' as const),
              size: pilot.finished,
              takes: pilot.finished,
            },
          },
        ]),
    ...pattern.pattern.holes.map(({ featureId, at }, index) =>
      holeFeature(featureId, `bolt hole ${index + 1}`, at, pattern.size),
    ),
  ];
  const inner = (pilot?.finished ?? 0) / 2;
  const label = etchLabel(
    p.label,
    p.labelHeight.mm,
    plain,
    labelPlaces(answer.value),
    ({ x, y }) => Math.hypot(x, y) >= inner,
  );
  return {
    value: {
      family: sprocketBlankAbout.id,
      name: 'Sprocket blank',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
