// Plates, remnants, placements and nests.
export type * from './types.js';
