// The foot of a pivot bracket: bolts under the pull, the bend beside them, the foot that they bend.
import { digits, found, judge, percent, quantity, type Facts } from '../../checks/index.js';
import {
  basePlateThickness,
  bearing,
  boltShear,
  clearToEdge,
  findGrade,
  strengthAt,
  weakestSource,
  type Material,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { PivotBracket } from './parameters.js';
import { pullOn, type ResolvedBracket } from './resolve.js';

/** Share of strength that is still comfortable for a static check that leaves shock and fatigue out. */
const COMFORTABLE = 0.5;

const level = (share: number) => judge(['stop', share > 1], ['caution', share > COMFORTABLE]);

/**
 * Hardest worked bolt of the row, N: its share of the pull, and of the moment that the pull makes about the row's middle,
 * which falls on the bolts as their distance from it.
 *
 * @example two bolts 45 apart, 1000 N along the foot 54 above them: 500 across, 54 000 ÷ 45 = 1200 up or down: 1300
 */
export function rowBoltForce(p: PivotBracket, r: ResolvedBracket, newtons: number): number {
  const { x, y } = pullOn(p);
  const rowY = r.holes[0]?.at.y ?? 0;
  const moment = newtons * (x * (r.ear.centre.y - rowY) - y * r.ear.centre.x);
  const squares = r.holes.reduce((sum, { at }) => sum + at.x * at.x, 0);
  const farthest = Math.max(...r.holes.map(({ at }) => Math.abs(at.x)));
  const turning = squares === 0 ? 0 : (Math.abs(moment) * farthest) / squares;
  const count = r.holes.length;
  return Math.hypot((newtons * x) / count, (newtons * Math.abs(y)) / count + turning);
}

/** Bolts of a flat foot in shear, and the plate they press on. */
function checkFlat(
  p: PivotBracket,
  r: ResolvedBracket,
  material: Material,
  newtons: number,
): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  const grade = findGrade(p.boltGrade, r.size.thread);
  const first = r.holes[0];
  if (strength === undefined || !grade.found || first === undefined) return [];
  const force = rowBoltForce(p, r, newtons);
  const shear = boltShear(r.size.thread, grade.row);
  const clear = clearToEdge(
    Math.min(p.inset.mm, p.base.mm / 2 - Math.max(...r.holes.map(({ at }) => Math.abs(at.x)))),
    r.size.diameter,
  );
  const plate = bearing({
    bolt: r.size.thread.diameter,
    thickness: p.thickness.mm,
    clear,
    tensileMegapascals: strength.tensileMegapascals,
  });
  const limit = Math.min(shear.designNewtons, plate.allowableNewtons);
  const share = force / limit;
  const place = { subject: { featureId: first.featureId }, anchor: first.at } as const;
  const alone = r.holes.length === 1;
  return [
    ...(alone
      ? [
          found({
            ...place,
            code: 'one-bolt',
            level: 'caution' as const,
            field: 'bolts',
            title: 'One foot bolt lets the bracket turn about it',
            says: 'A pull to the side has nothing but friction against it. Two bolts would do, or a weld along the foot.',
            source: {
              title: 'Moments about the bolt row',
              where: 'one bolt has no lever',
              certainty: 'common practice',
            },
          }),
        ]
      : []),
    found({
      ...place,
      code: 'foot-bolts',
      level: level(share),
      field: 'spacing',
      title: `Foot bolts ${percent(share)} used`,
      says: `The hardest worked one carries ${digits(force, 0)} N, friction left out; the least of its shear and of the plate it presses on counts. Static.${share > COMFORTABLE ? ' Wider spacing, larger bolts, or a lower pivot would do.' : ''}`,
      value: quantity(force, 'N'),
      limit: quantity(limit, 'N'),
      formula: `shear ${digits(shear.designNewtons, 0)}, ${plate.governs} ${digits(plate.allowableNewtons, 0)} N; share and moment together ${digits(force, 0)} N`,
      source: weakestSource(shear.source, plate.source),
    }),
  ];
}

/** A bent foot that is pulled up: the plate bends between its bolts and the bend. */
function checkBentPull(
  p: PivotBracket,
  r: ResolvedBracket,
  material: Material,
  newtons: number,
  facts: Facts,
): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  const first = r.holes[0];
  const up = newtons * pullOn(p).y;
  if (strength === undefined || r.bend === undefined || first === undefined || up <= 0) return [];
  const lever = r.bend.bendFrom - first.at.y;
  const width = Math.max(1, Math.min(2 * lever, p.base.mm / r.holes.length));
  const each = up / r.holes.length;
  const needed = basePlateThickness({
    newtons: each,
    lever,
    width,
    yieldMegapascals: strength.yieldMegapascals,
  });
  const isThin = p.thickness.mm < needed.value;
  return [
    found({
      code: 'foot-bending',
      level: judge(['stop', p.thickness.mm < 0.75 * needed.value], ['caution', isThin]),
      subject: { featureId: first.featureId },
      anchor: { x: first.at.x, y: (first.at.y + r.bend.bendFrom) / 2 },
      field: 'thickness',
      title: `Foot ${facts.format.length(p.thickness.mm)} thick, ${facts.format.length(needed.value)} needed beside a bolt`,
      says: isThin
        ? 'Pulled up, the foot opens at the bend. Thicker plate, bolts nearer to the bend, more of them, or a rib in the corner would do.'
        : 'Bending between bolts and bend. Static.',
      value: quantity(p.thickness.mm, 'mm'),
      limit: quantity(needed.value, 'mm'),
      formula: `√(4 × 1.67 × ${digits(each, 0)} × ${digits(lever)} ÷ (${digits(width)} × ${strength.yieldMegapascals})) = ${digits(needed.value)}`,
      source: needed.source,
    }),
  ];
}

/** What the pull does to a bolted foot; `newtons` is the share of one bracket. */
export function checkFootLoad(
  p: PivotBracket,
  r: ResolvedBracket,
  material: Material,
  newtons: number | undefined,
  facts: Facts,
): readonly Finding[] {
  if (newtons === undefined || p.foot === 'weld') return [];
  return p.foot === 'flat'
    ? checkFlat(p, r, material, newtons)
    : [...checkFlat(p, r, material, newtons), ...checkBentPull(p, r, material, newtons, facts)];
}
