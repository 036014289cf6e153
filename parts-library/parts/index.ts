// The catalogue of part families. Adding a family is adding its folder and one line here.
import { adapterPlate } from './adapter-plate/index.js';
import { bentBracket } from './bent-bracket/index.js';
import type { Family } from './family.js';

export { defineFamily, FamilyError } from './family.js';
export type {
  DrawContext,
  Family,
  FamilyDeclaration,
  FieldProblem,
  ReadParameters,
  ReadValue,
} from './family.js';
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
  MeasureEntry,
  NumberEntry,
} from './fields/index.js';

const FAMILIES: readonly Family[] = [adapterPlate, bentBracket];

/** Every family, in the order in which a list shows them. */
export const listFamilies = (): readonly Family[] => FAMILIES;

/** The family of that id, or undefined. */
export const findFamily = (id: string): Family | undefined => FAMILIES.find((family) => family.id === id);
