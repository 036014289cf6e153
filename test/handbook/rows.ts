// Rows by name for the tests: a name that is not found fails the test with the handbook's own sentence.
import { findChain, findGrade, findMaterial, findThread } from '../../parts-library/handbook/index.js';
import type { BoltGrade, Chain, Lookup, Material, Thread } from '../../parts-library/handbook/index.js';

export function row<Row>(lookup: Lookup<Row>): Row {
  if (!lookup.found) throw new Error(lookup.says);
  return lookup.row;
}

export const thread = (name: string): Thread => row(findThread(name));
export const chain = (name: string): Chain => row(findChain(name));
export const material = (name: string): Material => row(findMaterial(name));
export const grade = (name: string, of: Thread): BoltGrade => row(findGrade(name, of));

/** Millimetres of inches, for figures printed in inches. */
export const inch = (value: number): number => value * 25.4;
