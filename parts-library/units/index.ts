// The public face of the units room: what people type is read, and values are written in both units.
export { echoAngle, readAngle, writeAngle, writeAngleMinutes } from './angle.js';
export {
  FOOT,
  INCH,
  KILOGRAM_FORCE_NEWTONS,
  POUND_FOOT_NEWTON_METRES,
  POUND_FORCE_NEWTONS,
  POUND_INCH_NEWTON_METRES,
  POUND_KILOGRAMS,
  STANDARD_GRAVITY,
} from './constants.js';
export { readCount } from './count.js';
export { writeDecimal } from './decimals.js';
export { echoForce, readForce, writeForce } from './force.js';
export { readLength } from './length.js';
export type { LengthOptions } from './length.js';
export { echoMass, readMass, writeMass } from './mass.js';
export { readLengths, writeLengths } from './lengths.js';
export type { ListedLength } from './lengths.js';
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
export { readRotation, writeRotation } from './rotation.js';
export { echoSpeed, readSpeed, writeSpeed } from './speed.js';
export { echoTime, readTime, writeClock, writeTime } from './time.js';
export { echoTorque, readTorque, writeTorque } from './torque.js';
export type { Length, Reading, ReadProblem, Unit } from './types.js';
export { echoLength, writeFraction, writeLength } from './write-length.js';
export type { Fraction } from './write-length.js';
export { writeMeasure } from './write-measure.js';
