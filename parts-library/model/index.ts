// The words every room shares: features, parts, findings, patches, what a print shows.
export * from './feature.js';
export * from './drawing.js';
export * from './finding.js';
export type * from './patch.js';
export type * from './print-specs.js';
export type * from './format.js';
