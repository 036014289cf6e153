// Rules shared by parts: each a pure function from what it judges to findings with numbers and sources.
export type * from './facts.js';
export { digits, found, judge, mergeNotChecked, percent, quantity } from './findings.js';
export type { BoltPattern } from './bolt-holes.js';
export { checkBoltLoads, shearPerBolt, type BoltLoad } from './bolt-loads.js';
export { budgetBoltUp, checkBoltUp, type BoltUpBudget } from './bolt-up.js';
export { checkBoreFit, USUAL_GRIND, type BoreInput } from './bore-fit.js';
export { checkHubSteel, checkMaterialCaution, checkUse, type PartUse } from './cautions.js';
export {
  chainPull,
  checkChainPull,
  checkChainRoom,
  gripTorque,
  type ChainPull,
  type PullInput,
} from './chain-drive.js';
export { clearMetal } from './clear-metal.js';
export { checkEdgeDistance, checkSpacing } from './edge.js';
export { checkOldTube, checkVent, type Vent } from './closed-tube.js';
export { checkEar, checkPin, notCheckedLoad, type Ear, type EarLoad } from './ear.js';
export { checkEdgeFillet, checkEdgeWeld, type EdgeWeld, type EdgeWeldLoad } from './edge-weld.js';
export {
  checkFilletLeg,
  checkHubWeld,
  checkWeldability,
  type HubLoad,
  type HubWeldInput,
} from './hub-weld.js';
export { checkJoint, type JointSide } from './joints.js';
export { checkKeyway } from './keyway.js';
export { checkLabel } from './label.js';
export { checkMeasuring } from './measuring.js';
export { checkPlateSize } from './plate-size.js';
export { checkHeadRoom, checkPatternsTogether, checkSeat, type HubBeside } from './room.js';
export {
  checkInsideCorner,
  checkSlip,
  checkSlotWidth,
  checkTakeUp,
  type JudgedSlot,
  type SlottedJoint,
} from './slots.js';
export { checkSmallHoles } from './small-holes.js';
export { checkTapping } from './tapping.js';
export { checkThreadEngagement } from './thread-engagement.js';
export { checkNamedUse } from './named-use.js';
export { checkToolsOnHand } from './tools-on-hand.js';
export { checkWebs } from './webs.js';
export { checkJointOpening, pullFromMoment } from './joint-opening.js';
export { checkJointSlip, DRY_FACES, slipTorque } from './joint-slip.js';
export { checkMachinedBlank, type Release } from './machined-blank.js';
export { checkRunout, runoutAtRim, type RunoutInput } from './runout.js';
export { checkSwingRoom, type SwingInput } from './swing-room.js';
