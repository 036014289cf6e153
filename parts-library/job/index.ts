// The job: its document, changes with undo, digests, and the flow from parameters to figures and files.
export { applyChange, changeSchema, type Applied, type Change } from './change.js';
export { canonicalJson, digestOf } from './canonical.js';
export {
  addRow,
  applyRemedy,
  duplicateRow,
  moveRow,
  NoSuchRow,
  removeRow,
  renameJob,
  renameRow,
  replaceParameters,
  setParameter,
  setQuantity,
  setUnit,
} from './edits.js';
export { edit, reachOf, redo, undo, type HistoryEntry, type Step } from './history.js';
export { freshJson, guardJson, type FreshJson, type FreshObject, type Guarded } from './json-guard.js';
export { isStale, makeNest, nestInputsOf } from './nests.js';
export { createJob, openJob, type OpenedJob } from './open-job.js';
export { findingDigest, isOverridden, lapsedOverrides, overrideFinding } from './overrides.js';
export { pointerTo, tokensOf } from './pointer.js';
export { jobSchema } from './schema.js';
export { runStepper, type CreateSearch, type Stepper, type StepperRun } from './stepper.js';
export * from './types.js';
