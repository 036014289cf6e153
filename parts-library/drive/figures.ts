// Every number that follows from a drive, in the order in which it is read.
import type { Worked } from './answer.js';
import type { Figure } from './figure.js';
import { hillFigures } from './figures-hill.js';
import { lineFigures } from './figures-line.js';
import { pullFigures } from './figures-pull.js';
import { speedFigures } from './figures-speed.js';
import type { Words } from './words.js';

/** What was not given leaves its numbers out. */
export function figuresOf(worked: Worked, words: Words): readonly Figure[] {
  return [
    ...speedFigures(worked, words),
    ...lineFigures(worked, words),
    ...pullFigures(worked, words),
    ...hillFigures(worked, words),
  ];
}
