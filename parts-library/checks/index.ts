// Rules shared by parts.
export type * from './facts.js';
