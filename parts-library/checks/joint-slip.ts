// A bolted flange under torque: does friction of the tightened faces carry it, or do the bolts.
import { findGrade, preload, weakestSource, type GradeName, type Source } from '../handbook/index.js';
import type { Finding } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

/** Friction of clean, dry, machined steel faces; sources run 0.12 to 0.2. */
export const DRY_FACES = 0.15;

/** Tightening scatters by a quarter to a third: a joint that slips at two thirds of its friction is close. */
const SCATTERED = 2 / 3;

const FRICTION: Source = {
  title: 'Friction joint: T = n F μ R',
  where: 'μ 0.15 for clean dry machined faces, preload 0.75 of proof, scatter ±25–30 %',
  certainty: 'common practice',
};

/**
 * Torque at which the tightened faces slip, N·m: bolts times preload times friction times the bolt circle's radius.
 *
 * @param preloadNewtons of one bolt
 * @param circle mm
 * @example slipTorque(5, 25230, 100) // 5 × 25 230 N × 0.15 × 0.050 m = 946 N·m
 */
export function slipTorque(bolts: number, preloadNewtons: number, circle: number): number {
  return (bolts * preloadNewtons * DRY_FACES * circle) / 2000;
}

/** Judges the friction of one pattern against the greatest torque; nothing when no torque is known. */
export function checkJointSlip(
  pattern: BoltPattern,
  newtonMetres: number | undefined,
  gradeName: GradeName,
  facts: Facts,
): readonly Finding[] {
  const grade = findGrade(gradeName, pattern.thread);
  const first = pattern.holes[0];
  if (newtonMetres === undefined || !grade.found || first === undefined) return [];
  const force = preload(pattern.thread, grade.row);
  const slips = slipTorque(pattern.count, force, pattern.circle);
  const share = newtonMetres / slips;
  const level = judge(['caution', share > 1], ['note', share > SCATTERED]);
  return [
    found({
      code: 'joint-slip',
      level,
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}bolt`,
      title: `Faces slip at ${facts.format.torque(slips)}; ${percent(share)} used at ${facts.format.torque(newtonMetres)}`,
      says:
        level === 'pass'
          ? `${pattern.count} × ${pattern.thread.name} ${gradeName}, tightened, faces clean and dry. Bolts that slip back and forth work loose and break.`
          : `${pattern.count} × ${pattern.thread.name} ${gradeName}. ${level === 'caution' ? 'The bolts, not friction, carry the torque: they work in their holes, loosen and break.' : 'Tightening scatters by a quarter or more, and little is in hand.'} More or larger bolts, a larger circle, or a higher grade would do.`,
      value: quantity(newtonMetres, 'N·m'),
      limit: quantity(slips, 'N·m'),
      formula: `${pattern.count} × ${digits(force, 0)} N × ${DRY_FACES} × ${digits(pattern.circle / 2000, 4)} m = ${digits(slips, 0)} N·m`,
      source: weakestSource(FRICTION, grade.row.source),
    }),
  ];
}
