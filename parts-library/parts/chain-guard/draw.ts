// Draws a chain guard, origin at the small sprocket, the large one along x.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { chainGuardAbout } from './about.js';
import type { ChainGuard } from './parameters.js';
import { resolveGuard } from './resolve.js';

export function drawChainGuard(p: ChainGuard): Staged<Part | undefined> {
  const answer = resolveGuard(p);
  return answer.ok
    ? finishPart(chainGuardAbout.id, 'Chain guard', answer.value.features, p)
    : refuseToDraw('guard', answer.field, answer.says);
}
