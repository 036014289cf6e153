// The handbook: published tables and formulas of the trade, each with its citation and certainty.

export * from './source.js';
export type { Found, Lookup, NotFound } from './lookup.js';
export {
  drillForPercent,
  findThread,
  listThreads,
  percentOfThread,
  percentThreadConvention,
} from './threads.js';
export type { Thread, ThreadField, ThreadSystem } from './threads.js';
export { findChain, listChains, serviceLoad } from './chain.js';
export type { Chain, ChainField, ChainStandard, ServiceLoad } from './chain.js';
export { findMaterial, kilogramsPerSquareMetre, listMaterials, strengthAt } from './materials.js';
export type { Material, MaterialFamily, MaterialField, StrengthBand } from './materials.js';
