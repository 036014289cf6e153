// The public face of the units room: read and write lengths and measured patterns.
export { INCH } from './constants.js';
export { readLength } from './length.js';
export type { LengthOptions } from './length.js';
export { readMeasure } from './measure.js';
export { MEASURE_WAYS } from './measure-types.js';
export type {
  AcrossReading,
  CentresReading,
  CircleReading,
  EdgesReading,
  FromBoreReading,
  Measure,
  Size,
  StepsReading,
  Tagged,
} from './measure-types.js';
export type { Length, Reading, ReadProblem, Unit } from './types.js';
export { echoLength, writeFraction, writeLength } from './write-length.js';
export type { Fraction } from './write-length.js';
export { writeMeasure } from './write-measure.js';
