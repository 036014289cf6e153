// Draws one plate of a slot-and-tab joint, x along the joint.
import type { Part, Staged } from '../../model/index.js';
import { finishPart } from '../shared/finish-part.js';
import { refuseToDraw } from '../shared/refuse.js';
import { slotTabJointAbout } from './about.js';
import type { SlotTabJoint } from './parameters.js';
import { resolveJoint } from './resolve.js';

export function drawSlotTabJoint(p: SlotTabJoint): Staged<Part | undefined> {
  const answer = resolveJoint(p);
  return answer.ok
    ? finishPart(
        slotTabJointAbout.id,
        p.draws === 'tabbed' ? 'Tabbed plate' : 'Slotted plate',
        answer.value.features,
        p,
      )
    : refuseToDraw('joint', answer.field, answer.says);
}
