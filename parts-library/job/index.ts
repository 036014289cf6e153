// The job: its document, changes with undo, digests, and the flow from parameters to figures and files.
export { operationsOf } from './operations.js';
export { canonicalJson, digestOf } from './canonical.js';
export { applyChange, changeSchema, type Applied, type Change } from './change.js';
export { createDemoJob, DEMO_JOB_ID } from './demo.js';
export {
  addRow,
  applyRemedy,
  duplicateRow,
  moveRow,
  NoSuchRow,
  removeRow,
  renameJob,
  renameRow,
  replaceJob,
  replaceParameters,
  setDrive,
  setParameter,
  setQuantity,
  setUnit,
} from './edits.js';
export { createFormat } from './format.js';
export { edit, reachOf, redo, undo, type HistoryEntry, type Step } from './history.js';
export {
  freshJson,
  guardJson,
  isObject,
  type FreshJson,
  type FreshObject,
  type Guarded,
} from './json-guard.js';
export { isStale, makeNest, nestInputsOf } from './nests.js';
export { createJob, openJob, type OpenedJob } from './open-job.js';
export { findingDigest, isOverridden, lapsedOverrides, overrideFinding } from './overrides.js';
export { partFiles, type PartFile, type PartFiles, type PartFilesOptions } from './part-files.js';
export { notesOf, printOf, titleBlockOf } from './part-print.js';
export { pointerTo, tokensOf } from './pointer.js';
export { PROCESS_FIELDS, type GivenProcess, type ProcessField, type ProcessInput } from './process-choice.js';
export { settleProcess, type Settled, type SettledProcess } from './process.js';
export {
  continueRun,
  resultOf,
  runPart,
  STAGES,
  startRun,
  type PartRequest,
  type PartRun,
  type PartValue,
  type PrintSpecs,
  type Progress,
  type StageName,
  type UncheckedRequest,
} from './run-part.js';
export { requestForRow } from './run-row.js';
export { jobSchema } from './schema.js';
export { plateFor, startingShop, type RackPlate, type ShopFacts } from './shop.js';
export {
  openShop,
  shopSchema,
  startingShopDocument,
  type OpenedShop,
  type ShopDocument,
} from './shop-document.js';
export { runStepper, type CreateSearch, type Stepper, type StepperRun } from './stepper.js';
export { summarise, type CutSummary, type PartSummary, type RunSummary } from './summary.js';
export * from './types.js';
export {
  addKit,
  expandKit,
  followKit,
  overridesOf,
  removeKit,
  setKitNumbers,
  type ExpandedKit,
  type KitAnswer,
} from './kits.js';
export { kitFindings } from './kit-findings.js';
export { bringInDrawing, DRAWING_FAMILY, drawingParameters, drawingRow } from './drawing-row.js';
export { wordProblems } from './read-problems.js';
export { runKit, type KitMemberRun, type KitRun } from './run-kit.js';
export { templatePages, templateSvgs } from './template.js';
