// Rules of the pivot: how the tube goes in, its weld, and how long the arm bears on it.
import { checkFilletLeg, digits, found, judge, percent, quantity, type Facts } from '../../checks/index.js';
import {
  allowableWeldShear,
  e70Megapascals,
  fitLimits,
  hubWeldStress,
  leastFilletLeg,
  strengthAt,
  throatOverLeg,
  weakestSource,
  type Material,
  type Source,
} from '../../handbook/index.js';
import type { Finding } from '../../model/index.js';
import { LEFT_TO_BORE } from './draw.js';
import type { Layout } from './layout.js';
import type { PedalArm } from './parameters.js';
import type { ArmLoads } from './strength.js';

const BEARING_LENGTH: Source = {
  title: 'Length of a pivot',
  where:
    'bears on at least one and a half times its bore, so that the pad does not rock; plain-bush practice',
  certainty: 'common practice',
};
const FILLER: Source = {
  title: 'What welds to what',
  where: 'steel is not fusion-welded to aluminium; the weld takes the temper out of aluminium',
  certainty: 'common practice',
};
/** Bearing length over bore that keeps a pedal from rocking. */
const LENGTH_OVER_BORE = 1.5;
/** Share of the allowable stress that is still comfortable where shock and fatigue are left out. */
const COMFORTABLE = 0.5;

/** The thinner of arm and tube wall, which governs the leg, mm. */
const thinnerOf = (p: PedalArm): number => Math.min(p.thickness.mm, p.tubeWall.mm);

/** Leg of the fillet: as given, or the least for this thickness. */
export const weldLegOf = (p: PedalArm, unit: 'mm' | 'in'): number =>
  p.weldLeg?.mm ?? leastFilletLeg(thinnerOf(p), unit).leg;

function checkFit(p: PedalArm, { bore }: Layout, facts: Facts): Finding {
  const { length, fine } = facts.format;
  const place = { subject: { featureId: 'pivot' }, anchor: { x: -bore / 2, y: 0 } } as const;
  if (p.pivot === 'bushed') {
    const limits = fitLimits('H7', bore);
    return found({
      ...place,
      code: 'bush-fit',
      level: 'note',
      field: 'bushWall',
      title: `Cut ⌀${length(bore - LEFT_TO_BORE)}, bore or ream ⌀${length(bore)}${limits.found ? ` H7 (${fine(bore)} to ${fine(bore + limits.row.upper)})` : ''}`,
      says: 'A plasma-cut hole is hard, tapered and holds no fit: the bush is pressed into a machined one. Measure the bush first; makers ask H7 as a rule.',
      value: quantity(bore, 'mm'),
      source: limits.found
        ? limits.row.source
        : { title: 'ISO 286', where: 'no limits held for this size', certainty: 'published' },
    });
  }
  const reading = p.tubeOutside.plusMinus ?? 0;
  const range = facts.holeKerf.plusMinus + reading;
  const clearance = p.fit.mm;
  return found({
    ...place,
    code: 'tube-fit',
    level: judge(['caution', clearance + range < 0 || clearance - range > 1], ['note', clearance < range]),
    field: 'fit',
    title: `Tube slips in with ${length(clearance)} ±${length(range)} on diameter`,
    says: 'Its edge is ground bright before welding, which opens it. Dry fit, then tack square to the arm.',
    value: quantity(clearance, 'mm', range),
    formula: `${digits(bore)} − ${digits(p.tubeOutside.mm)} = ${digits(clearance)}; ± kerf ${digits(facts.holeKerf.plusMinus)} + reading ${digits(reading)}`,
    source: facts.holeKerf.source,
  });
}

function checkLength(p: PedalArm, facts: Facts): Finding {
  const inside = p.pivot === 'welded' ? p.tubeOutside.mm - 2 * p.tubeWall.mm : p.tubeOutside.mm;
  const bears = p.pivot === 'welded' ? p.tubeLength.mm : p.thickness.mm;
  const wanted = LENGTH_OVER_BORE * inside;
  const isShort = bears < wanted - 1e-9;
  return found({
    code: 'pivot-length',
    level: judge(['caution', isShort]),
    subject: { featureId: 'pivot' },
    anchor: { x: 0, y: 0 },
    field: p.pivot === 'welded' ? 'tubeLength' : 'pivot',
    title: `Bears on ${facts.format.length(bears)} of pivot, ${facts.format.length(wanted)} wanted`,
    says: isShort
      ? p.pivot === 'bushed'
        ? 'A bush only as long as the plate is thick rocks and wears to a bell mouth. A tube welded in, with bushes in its ends, would do.'
        : 'The pad rocks sideways and the ends wear. A longer tube would do.'
      : 'Long enough to guide the pad.',
    value: quantity(bears, 'mm'),
    limit: quantity(wanted, 'mm'),
    formula: `1.5 × ${digits(inside)} = ${digits(wanted)}`,
    source: BEARING_LENGTH,
  });
}

function checkWeld(
  p: PedalArm,
  loads: ArmLoads,
  material: Material,
  leg: number,
  facts: Facts,
): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  if (strength === undefined) return [];
  const radius = p.tubeOutside.mm / 2;
  const sides = p.weldSides === 'both' ? 2 : 1;
  const stress = hubWeldStress({
    radius,
    leg,
    sides,
    newtonMetres: 0,
    bendingNewtonMetres: loads.pivotMoment,
    shearNewtons: loads.pivotNewtons,
  });
  const limit = Math.min(
    allowableWeldShear(e70Megapascals),
    (0.4 * strength.yieldMegapascals) / throatOverLeg,
  );
  const share = stress.combined / limit;
  const { length, force, torque, stress: megapascals } = facts.format;
  return [
    found({
      code: 'pivot-weld',
      level: judge(['stop', share > 1], ['caution', share > COMFORTABLE]),
      subject: { featureId: 'pivot' },
      anchor: { x: 0, y: -radius - leg / 2 },
      field: 'weldLeg',
      title: `Fillet ${length(leg)} ${sides === 2 ? 'both sides' : 'one side'} of the tube, ${percent(share)} used at ${force(p.proof.value)}`,
      says: `Push on the pivot ${force(loads.pivotNewtons)}, sideways and twist ${torque(loads.pivotMoment)}: shear ${megapascals(stress.shear)}, bending ${megapascals(stress.bending)}. Static; the wall of a thin tube is not counted.${share > COMFORTABLE ? ' Welding both sides, a larger leg or a larger tube would do.' : ''}`,
      value: quantity(stress.combined, 'MPa'),
      limit: quantity(limit, 'MPa'),
      formula: `M/(πr²·0.707h·n) = ${digits(loads.pivotMoment * 1000, 0)}/(π·${digits(radius)}²·0.707·${digits(leg)}·${sides}) = ${digits(stress.bending)}; V/(2πr·0.707h·n) = ${digits(stress.shear)}; together ${digits(stress.combined)}; limit min(0.30 × 483, 0.40 × ${strength.yieldMegapascals} ÷ 0.707) = ${digits(limit)}`,
      source: weakestSource(stress.source, { ...stress.source, certainty: 'from memory' }),
    }),
  ];
}

function checkFiller(material: Material): readonly Finding[] {
  if (material.family === 'carbon steel') return [];
  const isAluminium = material.family === 'aluminium';
  return [
    found({
      code: 'weldability',
      level: isAluminium ? 'stop' : 'caution',
      subject: { featureId: 'pivot' },
      anchor: { x: 0, y: 0 },
      field: 'material',
      title: isAluminium
        ? `A steel tube does not weld to ${material.name}`
        : `Stainless ${material.name} to a carbon-steel tube: filler and fume`,
      says: isAluminium
        ? 'And an aluminium tube welded in takes away most of the temper where the arm is loaded most. A steel arm, or a bush pressed into a machined aluminium one would do.'
        : 'It wants a filler for dissimilar steels; its fume holds chromium(VI).',
      source: FILLER,
    }),
  ];
}

export function checkPivot(
  p: PedalArm,
  layout: Layout,
  loads: ArmLoads | undefined,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const fit = [checkFit(p, layout, facts), checkLength(p, facts)];
  if (p.pivot === 'bushed') return fit;
  const leg = weldLegOf(p, facts.format.unit);
  const weld = { hub: p.tubeOutside.mm, leg, sides: p.weldSides, thickness: thinnerOf(p), material };
  return [
    ...fit,
    ...checkFiller(material),
    ...checkFilletLeg(weld, facts).map((finding) => ({
      ...finding,
      subject: { featureId: 'pivot' },
    })),
    ...(loads === undefined ? [] : checkWeld(p, loads, material, leg, facts)),
  ];
}
