// Draws a gusset: outside, lightening hole, label; the corner of the members is the origin.
import { circleContour } from '../../geometry/index.js';
import type { Feature, Part, Staged } from '../../model/index.js';
import { etchLabel, noRoomForLabel, placesOver } from '../shared/label.js';
import { refuseToDraw } from '../shared/refuse.js';
import { gussetAbout } from './about.js';
import type { Gusset } from './parameters.js';
import { resolveGusset } from './resolve.js';

export function drawGusset(p: Gusset): Staged<Part | undefined> {
  const answer = resolveGusset(p);
  if (!answer.ok) return refuseToDraw('gusset', answer.field, answer.says);
  const { contour, edges, middle } = answer.value;
  const plain: readonly Feature[] = [
    { id: 'outline', name: 'outline', purpose: 'outline', contour, edges },
    ...(p.hole === undefined
      ? []
      : [
          {
            id: 'hole',
            name: 'lightening hole',
            purpose: 'opening' as const,
            contour: circleContour(middle, p.hole.mm / 2, 'opening'),
            hole: { finish: 'cut' as const, size: p.hole.mm },
          },
        ]),
  ];
  const label = etchLabel(p.label, p.labelHeight.mm, plain, placesOver(plain));
  return {
    value: {
      family: gussetAbout.id,
      name: 'Gusset',
      features: [...plain, ...(label ?? [])],
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: label === undefined ? [noRoomForLabel(p.label ?? '')] : [],
  };
}
