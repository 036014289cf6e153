// Draws a mounting plate, origin in its middle.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { mountingPlateAbout } from './about.js';
import type { MountingPlate } from './parameters.js';
import { resolvePlate } from './resolve.js';

export function drawMountingPlate(p: MountingPlate): Staged<Part | undefined> {
  const answer = resolvePlate(p);
  return answer.ok
    ? finishPart(mountingPlateAbout.id, 'Mounting plate', answer.value.features, p)
    : refuseToDraw('plate', answer.field, answer.says);
}
