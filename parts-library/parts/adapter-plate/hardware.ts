// What goes with an adapter plate: the bolts of each pattern for their grip, with washers, nuts and torque.
import type { Facts } from '../../checks/index.js';
import type { HardwareItem, Part } from '../../model/index.js';
import { boltItems } from '../shared/bolted.js';
import type { AdapterPlate } from './parameters.js';
import { resolve } from './resolve.js';

/** Where the bolted part's thickness is not known it is taken to be as thick as the plate, and said to be. */
export function adapterPlateHardware(part: Part, p: AdapterPlate, facts: Facts): readonly HardwareItem[] {
  const answer = resolve(p);
  if (!answer.ok) return [];
  const bolted = p.boltedThickness?.mm ?? part.thickness;
  return answer.value.patterns.flatMap(({ pattern, parameters }) => {
    const isTapped = pattern.made === 'tapped';
    const items = boltItems(
      {
        id: pattern.id,
        bolt: parameters.bolt,
        count: pattern.count,
        grip: isTapped ? bolted : bolted + part.thickness,
        ...(isTapped ? { into: part.thickness } : {}),
        grade: p.boltGrade,
      },
      facts.format,
    );
    if (p.boltedThickness !== undefined) return items;
    return items.map((item) =>
      item.kind === 'bolt'
        ? {
            ...item,
            says: `${item.says ?? ''} The bolted part is taken to be ${facts.format.length(bolted)} thick: measure it.`,
          }
        : item,
    );
  });
}
