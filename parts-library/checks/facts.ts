// What the checks know about the shop: the process at this thickness, the kerf, the tools, how to word a length.
import type { Format } from '../model/index.js';
import type { Source } from '../handbook/index.js';
import type { ToolsOnHand } from '../process/index.js';

/** A number known to within a range, and where it comes from. */
export interface Known {
  readonly amount: number;
  readonly plusMinus: number;
  readonly source: Source;
}

export interface Facts {
  readonly format: Format;
  /** Name of the process as the chart has it, for example `air-45A`. */
  readonly processClass: string;
  /** Width of the cut, mm. */
  readonly kerf: Known;
  /** The same in small round holes, mm. */
  readonly holeKerf: Known;
  /** Limit deviation of a cut dimension of this nominal size, mm (half range). */
  readonly cutTolerance: (nominal: number) => Known;
  /** How far a hole drilled by hand from a punched mark may wander, mm: usual, and ± to the best and worst. */
  readonly drillDrift: Known;
  /** Drills, taps and what bends plate, when the shop has said so. */
  readonly tools?: ToolsOnHand;
  /** Useful size of the plate in the rack, mm, when it is known. */
  readonly plateSize?: { readonly width: number; readonly height: number; readonly name: string };
}
