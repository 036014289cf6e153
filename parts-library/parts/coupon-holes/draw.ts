// Draws the hole ladder.
import type { Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { refuseToDraw } from '../shared/refuse.js';
import { couponHolesAbout } from './about.js';
import type { CouponHoles } from './parameters.js';
import { holeLadder } from './resolve.js';

export function drawCouponHoles(p: CouponHoles, { format }: DrawContext): Staged<Part | undefined> {
  const answer = holeLadder(p, format);
  if (!answer.ok) return refuseToDraw('ladder', answer.field, answer.says);
  return {
    value: {
      family: couponHolesAbout.id,
      name: 'Hole ladder',
      features: answer.value.features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
