// A bolted flange under a side load on the tyre: the bolt farthest up is pulled, and its preload must not be used up.
import { findGrade, preload, weakestSource, type GradeName, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

/** Share of the preload up to which scatter of tightening still keeps the faces closed. */
const COMFORTABLE = 0.5;

const OVERTURNING: Source = {
  title: 'Bolt circle under an overturning moment: F = 2 M/(n R)',
  where: 'plane statics, faces rigid, about the middle of the circle; preload 0.75 of proof',
  certainty: 'common practice',
};

/**
 * Greatest pull on one bolt of a circle under a moment across it, N: 2 M/(n R).
 *
 * @param newtonMetres moment across the flange
 * @param circle mm
 * @example pullFromMoment(294.2, 5, 139.7) // 2 × 294.2 ÷ (5 × 0.069 85) = 1685 N
 */
export function pullFromMoment(newtonMetres: number, bolts: number, circle: number): number {
  return (4000 * newtonMetres) / (bolts * circle);
}

/** Judges the pull of a side load on one pattern; nothing when the moment is not known. */
export function checkJointOpening(
  pattern: BoltPattern,
  newtonMetres: number | undefined,
  gradeName: GradeName,
  facts: Facts,
): readonly Finding[] {
  const grade = findGrade(gradeName, pattern.thread);
  const first = pattern.holes[0];
  if (newtonMetres === undefined || !grade.found || first === undefined) return [];
  const pull = pullFromMoment(newtonMetres, pattern.count, pattern.circle);
  const held = preload(pattern.thread, grade.row);
  const share = pull / held;
  const level = judge(['stop', share > 1], ['caution', share > COMFORTABLE]);
  return [
    found({
      code: 'joint-opening',
      level,
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}bolt`,
      title: `Side load pulls ${facts.format.force(pull)} on one ${pattern.thread.name}, ${percent(share)} of its preload`,
      says: `The tyre slides sideways at the grip given: ${facts.format.torque(newtonMetres)} across the flange. ${level === 'pass' ? 'The faces stay closed when the bolts are tight; ruts and kerbs ask for more than grip.' : 'The faces open, and bolts that see the load come and go break. More or larger bolts, or a larger circle, would do.'}`,
      value: quantity(pull, 'N'),
      limit: quantity(held, 'N'),
      formula: `2 × ${digits(newtonMetres)} N·m ÷ (${pattern.count} × ${digits(pattern.circle / 2000, 5)} m) = ${digits(pull, 0)} N`,
      source: weakestSource(OVERTURNING, grade.row.source),
    }),
  ];
}
