// The pedal’s forces on its base: ratio, line pressure, flange bolts, bending of the plate, weld of its edge.
import {
  checkEdgeFillet,
  checkEdgeWeld,
  digits,
  found,
  judge,
  percent,
  quantity,
  type EdgeWeld,
  type Facts,
} from '../../checks/index.js';
import {
  findGrade,
  leverSource,
  linePressure,
  pedalFactor,
  pedalForce,
  preload,
  strengthAt,
  tighteningTorque,
  usualBrakeRatio,
  type Material,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import type { PedalBase } from './parameters.js';
import { filletOf, thinnerOf, type ResolvedBase } from './resolve.js';
import { pedalForces, plateMoment } from './statics.js';

function checkRatio(p: PedalBase): readonly Finding[] {
  const { ratio, rod } = pedalForces(p);
  const { least, most, source } = usualBrakeRatio;
  const isOdd = p.use === 'brake' && (ratio < least || ratio > most);
  return [
    found({
      code: 'ratio',
      level: judge(['note', isOdd]),
      field: 'pivotDrop',
      title: `Pedal ratio ${digits(ratio)} to 1`,
      says: `${isOdd ? `Brakes without a booster usually have ${least} to ${most}: lower is hard to push, higher has a long way. ` : ''}The rod pushes with ${digits(rod, 0)} N at ${digits(p.footForce.value, 0)} N of foot.`,
      value: quantity(ratio, '1'),
      limit: quantity(ratio < least ? least : most, '1'),
      formula: `${digits(p.padReach.mm)} ÷ ${digits(p.pivotDrop.mm)} = ${digits(ratio)}`,
      source: isOdd ? source : leverSource,
    }),
  ];
}

function checkPressure(p: PedalBase, facts: Facts): readonly Finding[] {
  if (p.bore === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'bore',
        title: 'line pressure',
        says: 'Read the bore off the cylinder, and the pressure in the line follows.',
        source: { title: 'Master cylinder', where: 'bore not given', certainty: 'common practice' },
      }),
    ];
  }
  const { rod } = pedalForces(p);
  const pressure = linePressure(rod, p.bore.mm);
  const usual = pedalForce('performance');
  return [
    found({
      code: 'line-pressure',
      level: 'pass',
      field: 'bore',
      title: `Line pressure ${facts.format.stress(pressure.value)} at ${facts.format.force(p.footForce.value)} of foot`,
      says: `Hoses, lines and wheel cylinders have to be made for it. At ${usual.newtons} N, what a foot is taken to give at most, ${facts.format.stress((pressure.value * usual.newtons) / p.footForce.value)}.`,
      value: quantity(pressure.value, 'MPa'),
      formula: `${digits(rod, 0)} ÷ (π/4 × ${digits(p.bore.mm)}²) = ${digits(pressure.value)}`,
      source: pressure.source,
    }),
  ];
}

/** Beyond the plate the cylinder hangs on its bolts; on the pedal's side it pushes against the plate. */
function checkFlange(p: PedalBase, r: ResolvedBase, facts: Facts): readonly Finding[] {
  const grade = findGrade('8.8', r.cylinder.thread);
  if (p.cylinderSide === 'near' || !grade.found) return [];
  const each = pedalForces(p).rod / 2;
  const holding = preload(r.cylinder.thread, grade.row);
  const share = each / holding;
  return [
    found({
      code: 'flange-bolts',
      level: judge(['stop', share > 1], ['caution', share > 0.5]),
      subject: { featureId: 'cylinder.1' },
      anchor: r.cylinderHoles[0]?.at ?? { x: 0, y: 0 },
      field: 'cylinderSide',
      title: `Cylinder bolts ${percent(share)} of the preload of ${r.cylinder.thread.name} 8.8`,
      says: `${facts.format.force(each)} each: the rod pushes the cylinder off the plate.${share > 0.5 ? ' On the pedal’s side of the plate its flange would bear the push instead.' : ''} Static.`,
      value: quantity(each, 'N'),
      limit: quantity(holding, 'N'),
      formula: `${digits(pedalForces(p).rod, 0)} ÷ 2 = ${digits(each, 0)}; 0.75 × ${grade.row.proofMegapascals} × ${digits(r.cylinder.thread.stressArea)} = ${digits(holding, 0)} N`,
      source: tighteningTorque(r.cylinder.thread, grade.row, 'dry').source,
    }),
  ];
}

/** Rows that the plate is held at, y in mm: its bolts, or its welded edge twice. */
const rowsOf = (p: PedalBase): readonly [number, number] =>
  p.mount === 'weld'
    ? [-p.below.mm, -p.below.mm]
    : [-p.below.mm + p.mountInset.mm, p.above.mm - p.mountInset.mm];

/** Width of metal across the plate at a height, mm: less the window, and holes in the row. */
function widthAt(p: PedalBase, r: ResolvedBase, y: number): number {
  const holes = [
    ...r.cylinderHoles.map(({ at }) => ({ at, size: r.cylinder.diameter })),
    ...r.earHoles.map(({ at }) => ({ at, size: r.ear.diameter })),
    ...r.mountHoles.map(({ at }) => ({ at, size: r.mount.diameter })),
  ].filter(({ at, size }) => Math.abs(at.y - y) < size / 2);
  const window = Math.abs(y) < r.windowHeight / 2 ? p.windowWidth.mm : 0;
  return p.width.mm - window - holes.reduce((sum, { size }) => sum + size, 0);
}

function checkPlate(p: PedalBase, r: ResolvedBase, material: Material): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  if (strength === undefined) return [];
  const { moment, at } = plateMoment(pedalForces(p), r.pivotY, rowsOf(p));
  const width = Math.max(1, widthAt(p, r, at));
  const t = p.thickness.mm;
  const stress = (6 * moment) / (width * t * t);
  const allowed = strength.yieldMegapascals / pedalFactor.value;
  const share = stress / allowed;
  return [
    found({
      code: 'plate-bending',
      level: judge(['stop', share > 1], ['caution', share > 0.75]),
      subject: { featureId: 'outline' },
      anchor: { x: 0, y: at },
      field: 'thickness',
      title: `Plate bent by rod and pivot, ${percent(share)} used at ${digits(p.footForce.value, 0)} N of foot`,
      says: `${p.mount === 'weld' ? 'As a cantilever from its welded edge' : 'As a beam on its two rows of bolts'}; the rod pushes one way, the pivot the other.${share > 0.75 ? ' A thicker plate, ribs behind it, or rows of bolts nearer to rod and pivot would do.' : ''} Static.`,
      value: quantity(stress, 'MPa'),
      limit: quantity(allowed, 'MPa'),
      formula: `6 × ${digits(moment, 0)} ÷ (${digits(width)} × ${digits(t)}²) = ${digits(stress, 1)}; ${strength.yieldMegapascals} ÷ ${pedalFactor.value} = ${digits(allowed, 1)}`,
      source: pedalFactor.source,
    }),
  ];
}

function checkFoot(p: PedalBase, r: ResolvedBase, material: Material, facts: Facts): readonly Finding[] {
  if (p.mount !== 'weld') return [];
  const weld: EdgeWeld = {
    leg: filletOf(p, facts.format.unit),
    sides: p.weldSides,
    length: p.width.mm - 2 * p.cornerRadius.mm,
    thickness: p.thickness.mm,
    thinner: thinnerOf(p),
    material,
    anchor: { x: 0, y: -p.below.mm },
    fields: { leg: 'weldLeg', length: 'width', sides: 'weldSides' },
  };
  const { moment } = plateMoment(pedalForces(p), r.pivotY, rowsOf(p));
  return [
    ...checkEdgeFillet(weld, facts),
    ...checkEdgeWeld(weld, { away: 0, along: p.footForce.value, moment: 0, folding: moment }, facts),
  ];
}

export function checkLoad(
  p: PedalBase,
  r: ResolvedBase,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  return [
    ...checkRatio(p),
    ...checkPressure(p, facts),
    ...checkFlange(p, r, facts),
    ...checkPlate(p, r, material),
    ...checkFoot(p, r, material, facts),
  ];
}
