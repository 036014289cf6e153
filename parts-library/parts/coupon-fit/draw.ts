// Draws the fit ladder.
import type { Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { refuseToDraw } from '../shared/refuse.js';
import { couponFitAbout } from './about.js';
import type { CouponFit } from './parameters.js';
import { fitLadder } from './resolve.js';

export function drawCouponFit(p: CouponFit, { format }: DrawContext): Staged<Part | undefined> {
  const answer = fitLadder(p, format);
  if (!answer.ok) return refuseToDraw('ladder', answer.field, answer.says);
  return {
    value: {
      family: couponFitAbout.id,
      name: 'Fit ladder',
      features: answer.value.features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
