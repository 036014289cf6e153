// A part at finished size as a sheet: features as drawn, without kerf or leads.
import { cutOrder } from '../cutting/index.js';
import { isCut, isLine, isMark } from '../model/index.js';
import type { Feature, Part } from '../model/index.js';
import { finishedHeading } from './heading.js';
import { shapeOfContour } from './sheet.js';
import type { Shape, Sheet } from './sheet.js';

function shapeOf(feature: Feature): Shape {
  if (isMark(feature)) return { kind: 'point', at: feature.at };
  if (isLine(feature)) return { kind: 'open', vertices: feature.path.vertices };
  return shapeOfContour(feature.contour);
}

/** Lines and marks, then openings smallest first, then the outline; outline counter-clockwise, openings clockwise. */
export function finishedSheet(part: Part, unit: 'mm' | 'in'): Sheet {
  const onTheFace = part.features.filter((feature) => isLine(feature) || isMark(feature));
  return {
    kind: 'finished',
    title: `${part.name}: finished size, no kerf`,
    heading: finishedHeading(part, unit),
    items: [...onTheFace, ...cutOrder(part.features.filter(isCut))].map((feature) => ({
      id: feature.id,
      operation: feature.purpose,
      shape: shapeOf(feature),
    })),
  };
}
