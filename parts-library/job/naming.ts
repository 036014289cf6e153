// What a part is called and how many are wanted.
import type { FieldProblem } from '../parts/index.js';

/** Most copies of one part. */
const MOST_COPIES = 10_000;
/** Longest name of a part. */
const LONGEST_NAME = 200;

/** What is wrong with the name and the quantity of a part; both may be left out. */
export function readNaming({
  name,
  quantity,
}: {
  readonly name?: string;
  readonly quantity?: number;
}): readonly FieldProblem[] {
  const problems: FieldProblem[] = [];
  // Control characters would break a comment line of a cut file.
  if (name !== undefined && !/^\P{Cc}{1,200}$/u.test(name)) {
    problems.push({
      field: 'name',
      says: `The name is a text of 1 to ${LONGEST_NAME} characters, without line breaks.`,
    });
  }
  if (quantity !== undefined && !(Number.isInteger(quantity) && quantity >= 1 && quantity <= MOST_COPIES)) {
    problems.push({
      field: 'quantity',
      says: `The quantity is ${quantity}; accepted is a whole number, 1 to ${MOST_COPIES}.`,
    });
  }
  return problems;
}
