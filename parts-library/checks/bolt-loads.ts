// Bolts under torque and chain pull: shear of the bolts, bearing and tear-out of the plate.
import {
  bearing,
  boltShear,
  clearToEdge,
  findGrade,
  strengthAt,
  type GradeName,
  type Material,
} from '../handbook/index.js';
import type { Finding, Part } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import { leastPitch, nearestEdge } from './edge.js';
import type { Facts } from './facts.js';
import { digits, found, judge, percent, quantity } from './findings.js';

/** What passes through the pattern. */
export interface BoltLoad {
  readonly newtonMetres: number;
  /** Pull across the pattern, N; zero for a pure torque. */
  readonly pullNewtons: number;
}

/** Share of strength that is still comfortable for a static check that leaves shock and fatigue out. */
const COMFORTABLE = 0.5;

/**
 * Shear per bolt: T/(n R) from torque plus F/n from the pull, taken as pointing the same way at the worst bolt. Friction of the joint is
 * left out, so that it holds when a bolt has worked loose.
 *
 * @example 6 bolts on ⌀110, 300 N·m, 2000 N: 300/(6 × 0.055) + 2000/6 = 909 + 333 = 1242 N
 */
export function shearPerBolt(load: BoltLoad, count: number, circle: number): number {
  return (2000 * load.newtonMetres) / (count * circle) + load.pullNewtons / count;
}

export function checkBoltLoads(
  part: Part,
  pattern: BoltPattern,
  load: BoltLoad | undefined,
  material: Material,
  gradeName: GradeName,
  facts: Facts,
): readonly Finding[] {
  const first = pattern.holes[0];
  const grade = findGrade(gradeName, pattern.thread);
  const strength = strengthAt(material, part.thickness);
  if (first === undefined || !grade.found || strength === undefined) return [];
  if (load === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'torque',
        title: 'bolts and weld under load',
        says: 'Give the greatest torque, or chain, teeth, mass and tyre, and the bolts, their bearing and the weld are checked.',
        source: { title: 'Load on the part', where: 'not given', certainty: 'common practice' },
      }),
    ];
  }
  const shear = shearPerBolt(load, pattern.count, pattern.circle);
  const capacity = boltShear(pattern.thread, grade.row);
  const clear = Math.min(
    clearToEdge(nearestEdge(part, pattern).distance, pattern.holeDiameter),
    pattern.holes.length > 1 ? leastPitch(pattern) - pattern.holeDiameter : Infinity,
  );
  const plate = bearing({
    bolt: pattern.thread.diameter,
    thickness: part.thickness,
    clear,
    tensileMegapascals: strength.tensileMegapascals,
  });
  const place = { subject: { featureId: first.featureId }, anchor: first.at } as const;
  const formula = `${digits(load.newtonMetres)} N·m ÷ (${pattern.count} × ${digits(pattern.circle / 2000, 5)} m)${load.pullNewtons > 0 ? ` + ${digits(load.pullNewtons, 0)} N ÷ ${pattern.count}` : ''} = ${digits(shear, 0)} N`;
  const level = (share: number) => judge(['stop', share > 1], ['caution', share > COMFORTABLE]);
  const shearShare = shear / capacity.designNewtons;
  const plateShare = shear / plate.allowableNewtons;
  return [
    found({
      ...place,
      code: 'bolt-shear',
      level: level(shearShare),
      field: `${pattern.fieldPrefix}bolt`,
      title: `Bolt shear ${facts.format.force(shear)}, ${percent(shearShare)} of ${pattern.thread.name} ${gradeName}`,
      says: `Static, one shear plane through the thread, friction left out. ${shearShare > COMFORTABLE ? 'More bolts, a larger circle, or larger bolts would do. ' : ''}Shock and fatigue are not covered.`,
      value: quantity(shear, 'N'),
      limit: quantity(capacity.designNewtons, 'N'),
      formula: `${formula}; limit ${digits(capacity.factor)} × ${digits(grade.row.tensileMegapascals)} × ${digits(pattern.thread.stressArea)} ÷ 1.25 = ${digits(capacity.designNewtons, 0)} N`,
      source: capacity.source,
    }),
    found({
      ...place,
      code: 'bearing',
      level: level(plateShare),
      field: 'thickness',
      title: `${plate.governs === 'tear-out' ? 'Tear-out toward the edge' : 'Bearing on the plate'} ${percent(plateShare)} used`,
      says: `${material.name}, ${facts.format.length(part.thickness)}. ${plateShare > COMFORTABLE ? 'A thicker plate, more edge distance, or more bolts would do. ' : ''}Static only.`,
      value: quantity(shear, 'N'),
      limit: quantity(plate.allowableNewtons, 'N'),
      formula: `min(1.2 × ${digits(clear)} × ${digits(part.thickness)} × ${strength.tensileMegapascals}, 2.4 × ${digits(pattern.thread.diameter)} × ${digits(part.thickness)} × ${strength.tensileMegapascals}) ÷ 2 = ${digits(plate.allowableNewtons, 0)} N`,
      source: plate.source,
    }),
  ];
}
