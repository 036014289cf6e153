// Parameters: how they are declared, read and described.
export type * from './field-info.js';
export { createFieldKit, type FieldKit } from './field-kit.js';
export type * from './values.js';
export { contourOfShape } from './drawing-field.js';
