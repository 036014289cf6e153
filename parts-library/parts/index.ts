// Part families: the catalogue, the contract that each keeps, and the fields they are made of.
export type { About } from './about.js';
export { listAbouts } from './abouts.js';
export { findFamily, listFamilies, loadFamilies } from './catalogue.js';
export { defineFamily } from './family.js';
export { createReader, FamilyError, type FieldProblem, type ReadFields, type Reader } from './reading.js';
export type { DrawContext, Family, FamilyDeclaration, ReadParameters, ReadValue } from './family.js';
export { createFieldKit } from './fields/index.js';
export type {
  AppliesWhen,
  Choice,
  Entry,
  Field,
  FieldInfo,
  FieldKind,
  FieldKit,
  HoleWay,
  LengthsEntry,
  MeasureEntry,
  NumberEntry,
} from './fields/index.js';
export { bestStack, type Stack, type StackQuestion } from './ring-spacer/stack.js';
