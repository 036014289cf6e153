// Draws an adapter plate: outline, openings, marks and label, finished sizes, origin in the middle.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeFeature } from '../shared/holes.js';
import { noRoomForLabel } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { adapterPlateAbout } from './about.js';
import { drawLabel } from './label.js';
import type { AdapterPlate } from './parameters.js';
import type { ResolvedPattern } from '../shared/pattern.js';
import { resolve } from './resolve.js';

function drawPattern({ pattern, size }: ResolvedPattern): readonly Feature[] {
  const name = pattern.id === 'pattern1' ? 'bolt hole' : 'second-pattern bolt hole';
  return pattern.holes.map(({ featureId, at }, index) =>
    holeFeature(featureId, `${name} ${index + 1}`, at, size),
  );
}

/** Parameters to a part. */
export function drawAdapterPlate(p: AdapterPlate, context: DrawContext): Staged<Part | undefined> {
  const answer = resolve(p);
  if (!answer.ok) return refuseToDraw('plate', answer.field, answer.says);
  const { patterns, centreFeature, outside, lightening } = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour: outside.contour },
    ...(centreFeature === undefined ? [] : [centreFeature]),
    ...patterns.flatMap(drawPattern),
    ...lightening.map((at, index): Feature => ({
      id: `lightening.${index + 1}`,
      name: `lightening hole ${index + 1}`,
      purpose: 'opening',
      contour: circleContour(at, p.lighteningDiameter.mm / 2, 'opening'),
      hole: { finish: 'cut', size: p.lighteningDiameter.mm },
    })),
  ];
  const label = drawLabel(p, answer.value, plain, context.format.unit);
  return {
    value: {
      family: adapterPlateAbout.id,
      name: 'Adapter plate',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
