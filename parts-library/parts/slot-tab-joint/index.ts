// The slot-and-tab joint: one plate with tabs, one with slots.
import { defineFamily } from '../family.js';
import { slotTabJointAbout } from './about.js';
import { checkSlotTabJoint } from './check.js';
import { slotTabJointDimensions } from './dimensions.js';
import { drawSlotTabJoint } from './draw.js';
import { slotTabJointParameters } from './parameters.js';
import { slotTabJointDerived, slotTabJointGhosts, slotTabJointSteps } from './print.js';

export const slotTabJoint = defineFamily({
  ...slotTabJointAbout,
  parameters: slotTabJointParameters,
  draw: drawSlotTabJoint,
  check: checkSlotTabJoint,
  dimensions: slotTabJointDimensions,
  ghosts: slotTabJointGhosts,
  derived: slotTabJointDerived,
  steps: slotTabJointSteps,
});
