// Draws the speed ladder.
import type { Part, Staged } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { refuseToDraw } from '../shared/refuse.js';
import { couponSpeedAbout } from './about.js';
import type { CouponSpeed } from './parameters.js';
import { speedLadder } from './resolve.js';

export function drawCouponSpeed(p: CouponSpeed, { format }: DrawContext): Staged<Part | undefined> {
  const answer = speedLadder(p, format);
  if (!answer.ok) return refuseToDraw('ladder', answer.field, answer.says);
  return {
    value: {
      family: couponSpeedAbout.id,
      name: 'Speed ladder',
      features: answer.value.ladder.features,
      material: p.material,
      thickness: p.thickness.mm,
      quantity: 1,
    },
    findings: [],
  };
}
