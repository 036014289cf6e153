// Round openings against what the torch can cut in this plate; the remedy is a centre mark and a drill.
import { isCircle } from '../geometry/index.js';
import {
  isOpening,
  type CutFeature,
  type Finding,
  type Level,
  type Part,
  type Remedy,
} from '../model/index.js';
import { holeVerdict, type HoleJudgement } from '../process/index.js';
import type { Facts } from './facts.js';
import { found, quantity } from './findings.js';

const LEVELS: Readonly<Record<HoleJudgement, Level>> = {
  drill: 'stop',
  rough: 'caution',
  'test first': 'note',
  normal: 'pass',
};

/**
 * Judges each size of round opening once. `fieldOf` names the parameter that sets the feature's size and, where
 * there is one, the change that turns it into a mark.
 */
export function checkSmallHoles(
  part: Part,
  facts: Facts,
  fieldOf: (feature: CutFeature) => { readonly field: string; readonly remedies?: readonly Remedy[] },
): readonly Finding[] {
  const judged = new Set<string>();
  return part.features.filter(isOpening).flatMap((feature): readonly Finding[] => {
    const circle = isCircle(feature.contour);
    if (circle === undefined) return [];
    const diameter = circle.radius * 2;
    const { field, remedies } = fieldOf(feature);
    const key = `${field} ${diameter.toFixed(3)}`;
    if (judged.has(key)) return [];
    judged.add(key);
    const verdict = holeVerdict(diameter, part.thickness, facts.kerf.amount);
    const level = LEVELS[verdict.verdict];
    return [
      found({
        code: 'small-hole',
        level,
        subject: { featureId: feature.id },
        anchor: circle.centre,
        field,
        title: `Hole ⌀${facts.format.length(diameter)} in ${facts.format.length(part.thickness)} plate: ${verdict.says}`,
        says: `Smallest that the torch cuts here: ⌀${facts.format.length(verdict.smallest)}.`,
        value: quantity(diameter, 'mm'),
        limit: quantity(verdict.limit, 'mm'),
        formula: verdict.formula,
        source: verdict.source,
        ...(remedies !== undefined && level !== 'pass' ? { remedies } : {}),
      }),
    ];
  });
}
