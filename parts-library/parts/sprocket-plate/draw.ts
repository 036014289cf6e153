// Draws a sprocket plate: toothed outline, bolts, middle, lightening, label; finished sizes, origin in the middle.
import type { CutFeature, Feature, Finding, Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeFeature } from '../shared/holes.js';
import { etchLabel, noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { sprocketPlateAbout } from './about.js';
import { labelPlaces } from './label-places.js';
import { middleReach } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket, type Sprocket } from './resolve.js';
import { withoutTeeth } from './teeth.js';

/** Said in the draw stage when lightening was asked for and left out. */
const noRoomToLighten = ({ lightening }: SprocketPlate): Finding => ({
  code: 'lightening-room',
  level: 'note',
  stage: 'draw',
  subject: {},
  field: 'lightening',
  title: `No room for lightening ${lightening}`,
  says: 'They were left out: between bolts or middle and the rim under the teeth too little is left. More teeth, fewer or smaller openings, narrower spokes, or diameters of your own would do.',
  source: {
    title: 'Lightening of a disc',
    where: 'a rim of one pitch under the teeth, clear of bolt heads and weld',
    certainty: 'common practice',
  },
});

function openings({ lightening }: Sprocket): readonly CutFeature[] {
  if (lightening === undefined || lightening === 'none') return [];
  const { kind, contours, size } = lightening;
  return contours.map((contour, index) => ({
    id: `lightening.${index + 1}`,
    name: `${kind === 'windows' ? 'window' : 'lightening hole'} ${index + 1}`,
    purpose: 'opening',
    contour,
    ...(kind === 'holes' ? { hole: { finish: 'cut', size } } : {}),
  }));
}

/** Parameters to a part. */
export function drawSprocketPlate(p: SprocketPlate, context: DrawContext): Staged<Part | undefined> {
  const answer = resolveSprocket(p);
  if (!answer.ok) return refuseToDraw('sprocket', answer.field, answer.says);
  const { teeth, pattern, middle, lightening } = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'toothed outline', purpose: 'outline', contour: teeth.outline },
    ...(middle === undefined ? [] : [middle.feature]),
    ...(pattern === undefined
      ? []
      : pattern.pattern.holes.map(({ featureId, at }, index) =>
          holeFeature(featureId, `bolt hole ${index + 1}`, at, pattern.size),
        )),
    ...openings(answer.value),
  ];
  const inner = middleReach(p, middle, context.format.unit);
  const label = etchLabel(
    p.label,
    p.labelHeight.mm,
    withoutTeeth(plain, teeth),
    labelPlaces(answer.value, inner),
    ({ x, y }) => Math.hypot(x, y) >= inner,
  );
  return {
    value: {
      family: sprocketPlateAbout.id,
      name: 'Sprocket plate',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [
      ...(lightening === undefined ? [noRoomToLighten(p)] : []),
      ...(label === undefined ? [noRoomForLabel(p.label ?? '')] : []),
    ],
  };
}
