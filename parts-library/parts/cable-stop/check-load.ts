// A cable’s pull stands square to the plate: it bends the ear, its weld, and pulls at the foot’s bolts.
import { digits, found, judge, percent, quantity, type Facts } from '../../checks/index.js';
import {
  findGrade,
  preload,
  strengthAt,
  tighteningTorque,
  type Material,
  type Source,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { CableStop } from './parameters.js';
import type { ResolvedStop } from './resolve.js';

const CANTILEVER: Source = {
  title: 'A plate bent as a cantilever',
  where: 'stress 6 F h/(b t²), 4 F h³/(E b t³) out at its end; 1.5 on yield; worked from beam theory',
  certainty: 'common practice',
};
/** Factor wanted on yield, and give of the stop that a cable still hides, mm. */
const FACTOR = 1.5;
const MUCH_GIVE = 0.5;

/** Height of the cable over the root where the plate bends, mm. */
const leverOf = (p: CableStop, r: ResolvedStop): number => (p.foot === 'bent' ? p.height.mm : r.ear.centre.y);

/** Stress at the root and give at the cable. */
export function checkBending(
  p: CableStop,
  r: ResolvedStop,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  if (strength === undefined || p.pull === undefined) return [];
  const force = p.pull.value;
  const lever = leverOf(p, r);
  const t = p.thickness.mm;
  const b = p.base.mm;
  const stress = (6 * force * lever) / (b * t * t);
  const allowed = strength.yieldMegapascals / FACTOR;
  const give = (4 * force * lever ** 3) / (material.modulusMegapascals * b * t ** 3);
  const share = stress / allowed;
  const anchor = { x: 0, y: 0 };
  return [
    found({
      code: 'plate-bending',
      level: judge(['stop', share > 1], ['caution', share > 0.5]),
      subject: { featureId: 'outline' },
      anchor,
      field: 'thickness',
      title: `Bent at its root, ${percent(share)} used`,
      says: `The cable pulls square to the plate, ${facts.format.length(lever)} from its root. Static; a cable pulls many thousand times.${share > 0.5 ? ' A thicker plate, a wider base, less height, or a gusset behind it would do.' : ''}`,
      value: quantity(stress, 'MPa'),
      limit: quantity(allowed, 'MPa'),
      formula: `6 × ${digits(force, 0)} × ${digits(lever)} ÷ (${digits(b)} × ${digits(t)}²) = ${digits(stress, 1)}; ${strength.yieldMegapascals} ÷ 1.5 = ${digits(allowed, 1)}`,
      source: CANTILEVER,
    }),
    found({
      code: 'give',
      level: judge(['caution', give > 2 * MUCH_GIVE], ['note', give > MUCH_GIVE]),
      subject: { featureId: 'outline' },
      anchor: r.ear.centre,
      field: 'height',
      title: `Gives ${facts.format.length(give)} under the pull`,
      says:
        give > MUCH_GIVE
          ? 'What the stop gives is missing at the other end of the cable, and feels spongy. Less height or a thicker plate would do: the give falls with their cubes.'
          : 'Little beside what a housing gives.',
      value: quantity(give, 'mm'),
      limit: quantity(MUCH_GIVE, 'mm'),
      formula: `4 × ${digits(force, 0)} × ${digits(lever)}³ ÷ (${digits(material.modulusMegapascals, 0)} × ${digits(b)} × ${digits(t)}³) = ${digits(give, 3)}`,
      source: CANTILEVER,
    }),
  ];
}

/**
 * Pull of the hardest worked foot bolt, N: the foot turns about its end on one side or about the other on the other,
 * whichever is nearer to the bolts.
 *
 * @example one bolt 10 from the end of a foot of 34, 300 N at 50: 300 × 50 ÷ 10 = 1500 N
 */
export function footBoltPull(p: CableStop): number {
  const force = p.pull?.value ?? 0;
  const aboutEnd = (force * p.height.mm) / p.inset.mm;
  const back = p.footDepth.mm - p.inset.mm;
  const aboutBack =
    back <= 0 ? 0 : (force * (p.foot === 'flat' ? p.height.mm - p.footDepth.mm : p.height.mm)) / back;
  return Math.max(aboutEnd, aboutBack) / p.bolts;
}

/** The foot's bolts against their preload. */
export function checkFootPull(p: CableStop, r: ResolvedStop, facts: Facts): readonly Finding[] {
  const grade = findGrade('8.8', r.foot.thread);
  const first = r.laid.holes[0];
  if (p.pull === undefined || first === undefined || !grade.found) return [];
  const newtons = footBoltPull(p);
  const holding = preload(r.foot.thread, grade.row);
  const share = newtons / holding;
  return [
    found({
      code: 'foot-pull',
      level: judge(['stop', share > 1], ['caution', share > 0.5]),
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: 'bolt',
      title: `Foot bolts ${percent(share)} of the preload of ${r.foot.thread.name} 8.8`,
      says: `${facts.format.force(newtons)} a bolt by the lever of height over inset.${share > 0.5 ? ' Bolts further from the foot’s end, more of them, or less height would do.' : ''}`,
      value: quantity(newtons, 'N'),
      limit: quantity(holding, 'N'),
      formula: `${digits(p.pull.value, 0)} × ${digits(p.height.mm)} ÷ ${digits(p.inset.mm)} ÷ ${p.bolts}; 0.75 × ${grade.row.proofMegapascals} × ${digits(r.foot.thread.stressArea)} = ${digits(holding, 0)} N`,
      source: tighteningTorque(r.foot.thread, grade.row, 'dry').source,
    }),
  ];
}
