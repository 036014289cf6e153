// The error of the geometry room: what is wrong with a contour, where, and what would do.
import type { Fault } from './types.js';

/** Thrown when a contour cannot be made or an operation cannot be done; `faults` holds every place found. */
export class GeometryError extends Error {
  readonly faults: readonly Fault[];

  constructor(message: string, faults: readonly Fault[] = []) {
    super(message);
    this.name = 'GeometryError';
    this.faults = faults;
  }
}
