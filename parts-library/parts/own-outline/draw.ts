// Draws the part of a drawing that was brought in, its lower left corner at the origin.
import { isCut, type Part, type Staged } from '../../model/index.js';
import { finishPart, refuseStray } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { ownOutlineAbout } from './about.js';
import type { OwnOutline } from './parameters.js';
import { resolveOutline } from './resolve.js';

/** Parameters to a part; what lies off the plate is refused by its shape's name. */
export function drawOwnOutline(p: OwnOutline): Staged<Part | undefined> {
  const answer = resolveOutline(p);
  if (!answer.ok) return refuseToDraw('drawing', answer.field, answer.says);
  const { features } = answer.value;
  const outline = features.filter(isCut).find(({ purpose }) => purpose === 'outline');
  const stray = outline === undefined ? undefined : refuseStray(outline.contour, features, () => 'drawing');
  if (stray !== undefined) return refuseToDraw('drawing', stray.field, stray.says);
  return finishPart(ownOutlineAbout.id, 'Own outline', features, p);
}
