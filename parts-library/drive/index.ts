// Drive numbers: chain from readings, ratio and road speed, other sprockets, the hill, the chain's line and its strength.
export type { Figure, FigureGroup } from './figure.js';
export type { LinkChoice } from './line.js';
export { driveNumbers } from './numbers.js';
export type { ChainCandidate, DriveNumbers, DrivePicture } from './numbers.js';
export { driveReader, type Drive } from './parameters.js';
export { readDrive, type ReadDrive } from './read.js';
export type { ToothChange } from './tooth-change.js';
export { createWords, shareText, type Words } from './words.js';
