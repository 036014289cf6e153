// Draws an adapter plate: outline, openings, marks and label, finished sizes, origin in the middle.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Finding, Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { drawLabel } from './label.js';
import type { AdapterPlate } from './parameters.js';
import type { ResolvedPattern } from './pattern.js';
import { resolve } from './resolve.js';

export const FAMILY_ID = 'adapter-plate';

function drawPattern({ pattern }: ResolvedPattern): readonly Feature[] {
  return pattern.holes.map(({ featureId, at }, index): Feature => {
    const name = `${pattern.id === 'pattern1' ? 'bolt hole' : 'second-pattern bolt hole'} ${index + 1}`;
    const hole = {
      size: pattern.holeDiameter,
      thread: pattern.thread.name,
      takes: pattern.thread.diameter,
    } as const;
    if (pattern.made === 'tapped' || pattern.made === 'drill') {
      return {
        id: featureId,
        name,
        purpose: 'mark',
        at,
        hole: { ...hole, finish: pattern.made === 'tapped' ? 'tap' : 'drill' },
      };
    }
    return {
      id: featureId,
      name,
      purpose: 'opening',
      contour: circleContour(at, pattern.holeDiameter / 2, 'opening'),
      hole: { ...hole, finish: 'cut' },
    };
  });
}

const refusal = (field: string, says: string): Finding => ({
  code: 'cannot-draw',
  level: 'stop',
  stage: 'draw',
  subject: {},
  field,
  title: 'This plate cannot be drawn',
  says,
  source: { title: 'Plane geometry', where: 'construction of the part', certainty: 'common practice' },
});

const noRoomForLabel = (label: string): Finding => ({
  code: 'label-room',
  level: 'caution',
  stage: 'draw',
  subject: {},
  field: 'label',
  title: `No room for the label “${label}”`,
  says: 'It was left out: no place keeps it 2 mm clear of edges, holes and weld. A shorter label or a smaller height would do.',
  source: {
    title: 'Marked lettering',
    where: 'stays on clear metal, outside the weld',
    certainty: 'common practice',
  },
});

/** Parameters to a part. */
export function drawAdapterPlate(p: AdapterPlate, context: DrawContext): Staged<Part | undefined> {
  const answer = resolve(p);
  if (!answer.ok) return { value: undefined, findings: [refusal(answer.field, answer.says)] };
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
      family: FAMILY_ID,
      name: 'Adapter plate',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
