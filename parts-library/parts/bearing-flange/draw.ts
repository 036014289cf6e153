// Draws a bearing flange plate, origin in its middle.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { bearingFlangeAbout } from './about.js';
import type { BearingFlange } from './parameters.js';
import { resolveFlange } from './resolve.js';

export function drawBearingFlange(p: BearingFlange): Staged<Part | undefined> {
  const answer = resolveFlange(p);
  return answer.ok
    ? finishPart(bearingFlangeAbout.id, 'Bearing flange plate', answer.value.features, p)
    : refuseToDraw('plate', answer.field, answer.says);
}
