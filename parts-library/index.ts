// The public face of the library: the flow from parameters to files, and every room by its name.
export * as checks from './checks/index.js';
export * as cutting from './cutting/index.js';
export * as drive from './drive/index.js';
export * as drawing from './drawing/index.js';
export * as files from './files/index.js';
export * as geometry from './geometry/index.js';
export * as handbook from './handbook/index.js';
export * as job from './job/index.js';
export * as model from './model/index.js';
export * as parts from './parts/index.js';
export * as process from './process/index.js';
export * as units from './units/index.js';
export type * as plate from './plate/index.js';

export {
  applyChange,
  createJob,
  openJob,
  partFiles,
  runPart,
  startingShop,
  summarise,
  type Job,
  type PartFile,
  type PartRequest,
  type PartRun,
  type RunSummary,
  type ShopFacts,
} from './job/index.js';
export type { Finding, Part } from './model/index.js';
export { findFamily, listFamilies, type Family } from './parts/index.js';
