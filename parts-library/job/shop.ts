// What the flow knows about the shop: chart, machine record, tools, and what stands in the rack.
import {
  metricTools,
  startingChart,
  startingMachine,
  type CutChart,
  type MachineRecord,
  type ToolsOnHand,
} from '../process/index.js';

/** A plate in the rack, as far as one part needs to know it. */
export interface RackPlate {
  readonly name: string;
  readonly material: string;
  /** Lengths in mm. */
  readonly thickness: number;
  readonly width: number;
  readonly height: number;
}

export interface ShopFacts {
  readonly chart: CutChart;
  readonly machine: MachineRecord;
  readonly tools: ToolsOnHand;
  readonly plates: readonly RackPlate[];
}

/** Starting values of a shop that has entered nothing yet; they say so wherever they are used. */
export const startingShop: ShopFacts = {
  chart: startingChart,
  machine: startingMachine,
  tools: metricTools,
  plates: [],
};

/** Plates of a list and of a part count as the same within this, mm: rolling tolerance of thin plate is coarser. */
const SAME_THICKNESS = 0.3;

/**
 * The largest piece that a part can be cut from: a plate of its material and thickness, or what the table holds.
 * @param part material by name, thickness in mm
 */
export function plateFor(
  shop: ShopFacts,
  part: { readonly material: string; readonly thickness: number },
): { readonly width: number; readonly height: number; readonly name: string } {
  const [largest] = shop.plates
    .filter(
      (plate) =>
        plate.material === part.material && Math.abs(plate.thickness - part.thickness) <= SAME_THICKNESS,
    )
    .toSorted((a, b) => b.width * b.height - a.width * a.height);
  if (largest !== undefined) return { width: largest.width, height: largest.height, name: largest.name };
  const { travel } = shop.machine;
  return { width: travel.x, height: travel.y, name: 'a plate as large as the table' };
}
