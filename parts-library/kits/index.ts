// Kits: several parts from one set of numbers.
export { listKitAbouts } from './abouts.js';
export { findKit, listKits, loadKits } from './catalogue.js';
export { defineKit } from './kit.js';
export type { Joint, Kit, KitContext, KitDeclaration, KitReading, Member } from './kit.js';
