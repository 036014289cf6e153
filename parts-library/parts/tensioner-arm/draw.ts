// Draws a tensioner arm, origin at the pivot, the arm along x.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { tensionerArmAbout } from './about.js';
import type { TensionerArm } from './parameters.js';
import { resolveArm } from './resolve.js';

export function drawTensionerArm(p: TensionerArm): Staged<Part | undefined> {
  const answer = resolveArm(p);
  if (!answer.ok) return refuseToDraw('arm', answer.field, answer.says);
  const between = [0.5, 0.4, 0.6].map((share) => ({ x: share * p.arm.mm, y: 0 }));
  return finishPart(tensionerArmAbout.id, 'Chain tensioner arm', answer.value.features, p, between);
}
