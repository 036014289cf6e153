// Draws the pierce-delay ladder.
import type { Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { refuseToDraw } from '../shared/refuse.js';
import { couponPierceAbout } from './about.js';
import type { CouponPierce } from './parameters.js';
import { pierceLadder } from './resolve.js';

export function drawCouponPierce(p: CouponPierce, { format }: DrawContext): Staged<Part | undefined> {
  const answer = pierceLadder(p, format);
  if (!answer.ok) return refuseToDraw('ladder', answer.field, answer.says);
  return {
    value: {
      family: couponPierceAbout.id,
      name: 'Pierce-delay ladder',
      features: answer.value.ladder.features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
