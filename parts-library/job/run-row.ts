// A row of the cut list through the one-part flow, with the job's unit and process choices.
import type { PartRequest } from './run-part.js';
import type { Job, Row } from './types.js';

/** Rows of a material count as a process choice's thickness within this, mm. */
const SAME_THICKNESS = 0.05;

/**
 * What the flow is asked for a row. The job's choice for its material and thickness is the first that fits.
 * @param plate material and thickness as drawn, mm; without it no choice of the job is looked for
 */
export function requestForRow(
  job: Job,
  row: Row,
  plate?: { readonly material: string; readonly thickness: number },
): PartRequest {
  const found =
    plate === undefined
      ? undefined
      : job.choices.process.find(
          (choice) =>
            choice.material === plate.material &&
            Math.abs(choice.thickness - plate.thickness) <= SAME_THICKNESS,
        );
  const request: PartRequest = {
    family: row.family,
    parameters: row.parameters,
    unit: job.unit,
    name: row.name,
    quantity: row.quantity,
    rowId: row.id,
  };
  if (found === undefined) return request;
  const { material: _material, thickness: _thickness, ...process } = found;
  return { ...request, process };
}
