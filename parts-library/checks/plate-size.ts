// The part against the plate it is to be cut from.
import { boundsOf } from '../geometry/index.js';
import type { Source } from '../handbook/index.js';
import { outlineOf, type Finding, type Part } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, quantity } from './findings.js';

const MARGIN: Source = {
  title: 'Margin to the plate’s edge',
  where: 'at least 10 mm, and the larger of 5 mm and one thickness between parts; more under clamps',
  certainty: 'common practice',
};
/** Least margin on each side, mm. */
const EDGE_MARGIN = 10;

/** Whether the part fits on the plate, either way round. */
export function checkPlateSize(part: Part, facts: Facts): readonly Finding[] {
  if (facts.plateSize === undefined) return [];
  const { minX, minY, maxX, maxY } = boundsOf(outlineOf(part).contour);
  const margin = Math.max(EDGE_MARGIN, part.thickness);
  const needed = [maxX - minX + 2 * margin, maxY - minY + 2 * margin].toSorted((a, b) => b - a);
  const there = [facts.plateSize.width, facts.plateSize.height].toSorted((a, b) => b - a);
  const [longNeeded = 0, shortNeeded = 0] = needed;
  const [longThere = 0, shortThere = 0] = there;
  const fits = longNeeded <= longThere && shortNeeded <= shortThere;
  return [
    found({
      code: 'plate-size',
      level: fits ? 'pass' : 'stop',
      field: 'outside',
      title: fits ? `Fits on ${facts.plateSize.name}` : `Does not fit on ${facts.plateSize.name}`,
      says: `Needs ${facts.format.length(longNeeded)} × ${facts.format.length(shortNeeded)} with a margin of ${facts.format.length(margin)}; the plate is ${facts.format.length(longThere)} × ${facts.format.length(shortThere)}.`,
      value: quantity(longNeeded, 'mm'),
      limit: quantity(longThere, 'mm'),
      formula: `${digits(longNeeded)} × ${digits(shortNeeded)} against ${digits(longThere)} × ${digits(shortThere)}`,
      source: MARGIN,
    }),
  ];
}
