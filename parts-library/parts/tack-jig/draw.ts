// Draws a tack jig, origin at the corner of the tubes, the first tube along x.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { tackJigAbout } from './about.js';
import { legsOf } from './frame.js';
import type { TackJig } from './parameters.js';
import { resolveJig } from './resolve.js';

export function drawTackJig(p: TackJig): Staged<Part | undefined> {
  const answer = resolveJig(p);
  if (!answer.ok) return refuseToDraw('jig', answer.field, answer.says);
  // Under the tubes, where nothing else is.
  const places = legsOf(p).flatMap((leg) =>
    [0.55, 0.45, 0.65, 0.75].map((share) => leg.at(share * leg.length, leg.tube / 2)),
  );
  return finishPart(
    tackJigAbout.id,
    p.kind === 'bed' ? 'Tack jig, bed' : 'Tack jig, square',
    answer.value.features,
    p,
    p.kind === 'bed' ? places : [],
  );
}
