// Rules of strength at the proof load: the arm's worst section, a horn, the pin's hole, slenderness, give at the pad.
import { checkEar, digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  deflectionSource,
  eyeSource,
  holeConcentration,
  pedalFactor,
  pedalForce,
  slendernessLimit,
  strengthAt,
  twistSource,
  weakestSource,
  type Material,
} from '../../handbook/index.js';
import { outlineOf as outlineOfPart, type Finding, type Part } from '../../model/index.js';
import { pinHoleOf } from './draw.js';
import type { Layout } from './layout.js';
import type { Motion } from './motion.js';
import type { PedalArm } from './parameters.js';
import { loadsOf, type ArmLoads, type SectionLoad } from './strength.js';

/** Share of the pedal's travel that the arm may give before the foot takes it for a soft brake. */
const SPONGY = 0.05;

/** Height that a person would change: the pad's end on the far half of the arm, else the boss. */
const heightField = (p: PedalArm, { at }: SectionLoad): string =>
  at.x > p.length.mm / 2 ? 'headHeight' : 'bossEdge';

/** A factor on a print: two decimals, so that 0.998 does not read as 1. */
const factorText = (factor: number): string => Math.min(Math.floor(factor * 100) / 100, 99).toFixed(2);

function checkSection(
  p: PedalArm,
  section: SectionLoad,
  yieldMegapascals: number,
  what: { readonly code: string; readonly name: string; readonly field: string },
  facts: Facts,
): Finding {
  const { stress, length, force, torque } = facts.format;
  const factor = yieldMegapascals / section.combined;
  const wanted = pedalFactor.value;
  const hole = section.hole > 0 ? ` with its ⌀${facts.format.bare(section.hole)} hole` : '';
  return found({
    code: what.code,
    level: judge(['stop', factor < 1], ['caution', factor < wanted]),
    subject: { featureId: 'outline' },
    anchor: section.at,
    field: what.field,
    title: `${what.name} at ${force(p.proof.value)}: factor ${factorText(factor)} on yield, ${digits(wanted)} wanted`,
    says: `Worst section ${length(section.height)} high${hole}: bending ${torque(section.bending)} ${stress(section.edge)}, sideways ${torque(section.sideways)} ${stress(section.side)}, twist ${torque(section.twist)} ${stress(section.shear)}. Added as if all were greatest at one spot. Static: cut edges are notched, and fatigue is not covered.${factor < wanted ? ' A higher or thicker arm, a stronger grade, or a pad nearer the arm’s plane would do.' : ''}`,
    value: quantity(section.combined, 'MPa'),
    limit: quantity(yieldMegapascals / wanted, 'MPa'),
    formula: `6 M h/[t (h³ − d³)] = 6·${digits(Math.abs(section.bending) * 1000, 0)}·${digits(section.height)}/[${digits(p.thickness.mm)}·(${digits(section.height)}³ − ${digits(section.hole)}³)] = ${digits(section.edge)}; + ${digits(section.side)} sideways; √(${digits(Math.max(section.edge, section.holeEdge) + section.side)}² + 3·${digits(section.shear)}²) = ${digits(section.combined)}; ${digits(yieldMegapascals)} ÷ ${digits(section.combined)} = ${factorText(factor)}`,
    source: weakestSource(pedalFactor.source, twistSource),
  });
}

/** Bearing, tear-out and net section at the pin, and the peak that counts when the load repeats. */
function checkPinHole(
  part: Part,
  p: PedalArm,
  layout: Layout,
  loads: ArmLoads,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const { reaction } = loads;
  if (reaction.what === 'forward stop') return [];
  const hole = pinHoleOf(p);
  const away = { x: reaction.direction.x, y: reaction.direction.y };
  const ear = {
    outline: outlineOfPart(part).contour,
    featureId: 'pin.1',
    at: reaction.at,
    pin: p.linkPin.mm,
    hole,
    thickness: p.thickness.mm,
    material,
    ears: 1,
    fields: {
      pin: 'linkPin',
      beside: layout.horn === undefined ? 'bossEdge' : 'eye',
      thickness: 'thickness',
    },
  } as const;
  // The pin presses the hole's edge the way the rod or cable pushes the arm.
  const findings = checkEar(ear, { newtons: reaction.newtons, direction: away }, facts);
  const horn = layout.horn;
  // In the arm itself the whole length lies across the rod's push: its section is judged by bending, not by pull.
  if (horn === undefined) return findings.filter(({ code }) => code !== 'net-section');
  const width = 2 * horn.tip.radius;
  const peak =
    holeConcentration(hole, width) * (reaction.newtons / (Math.max(0.1, width - hole) * p.thickness.mm));
  return [
    ...findings,
    found({
      code: 'eye-peak',
      level: 'note',
      subject: { featureId: 'pin.1' },
      anchor: reaction.at,
      field: 'eye',
      title: `Peak at the pin’s hole ${facts.format.stress(peak)} at the proof load`,
      says: 'It counts for load that comes again and again: deburr both rims of the hole, no notch, no weld beside it.',
      value: quantity(peak, 'MPa'),
      formula: `(2 + (1 − ${digits(hole)}/${digits(width)})³) × ${digits(reaction.newtons, 0)} ÷ ((${digits(width)} − ${digits(hole)}) × ${digits(p.thickness.mm)}) = ${digits(peak)}`,
      source: eyeSource,
    }),
  ];
}

function checkSlender(p: PedalArm, loads: ArmLoads): Finding {
  const { worst } = loads;
  const ratio = worst.height / p.thickness.mm;
  return found({
    code: 'slender-arm',
    level: judge(['caution', ratio > slendernessLimit.value]),
    anchor: worst.at,
    field: 'thickness',
    title: `Arm ${digits(ratio, 1)} thicknesses high, at most ${slendernessLimit.value}`,
    says:
      ratio > slendernessLimit.value
        ? 'It may buckle sideways before it bends. Thicker plate, or a flange along the edge would do.'
        : 'Stout enough not to buckle sideways.',
    value: quantity(ratio, '1'),
    limit: quantity(slendernessLimit.value, '1'),
    formula: `${digits(worst.height)} ÷ ${digits(p.thickness.mm)} = ${digits(ratio)}`,
    source: slendernessLimit.source,
  });
}

function checkGive(p: PedalArm, motion: Motion, loads: ArmLoads, facts: Facts): Finding {
  const give = (loads.deflection * p.footForce.value) / p.proof.value;
  const limit = SPONGY * motion.padTravel;
  return found({
    code: 'give',
    level: judge(['caution', give > limit]),
    anchor: { x: p.length.mm, y: 0 },
    field: 'thickness',
    title: `The pad gives ${facts.format.length(loads.deflection)} at ${facts.format.force(p.proof.value)}, ${facts.format.length(give)} at ${facts.format.force(p.footForce.value)}`,
    says: `Bending of the tapered arm in its plane, ${loads.reaction.what} taken as fixed; bracket, rod and twist give more.${give > limit ? ' A foot takes that for a soft brake: a higher arm would do.' : ''}`,
    value: quantity(give, 'mm'),
    limit: quantity(limit, 'mm'),
    formula: `Σ M² Δx ÷ (F E I) over the arm = ${digits(loads.deflection, 3)}; × ${digits(p.footForce.value, 0)}/${digits(p.proof.value, 0)} = ${digits(give, 3)}; 5 % of ${digits(motion.padTravel)} = ${digits(limit)}`,
    source: deflectionSource,
  });
}

export function checkStrength(
  part: Part,
  p: PedalArm,
  layout: Layout,
  motion: Motion,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const loads = loadsOf(p, layout, motion, material.modulusMegapascals);
  const strength = strengthAt(material, p.thickness.mm);
  if (loads === undefined || strength === undefined) {
    return [
      found({
        code: 'proof-load',
        level: 'note',
        field: loads === undefined ? 'anchorOff' : 'thickness',
        title: 'Not checked: the arm at its proof load',
        says:
          loads === undefined
            ? 'Nothing holds the arm: first the rod or cable must pull the right way.'
            : `No strength is held for ${material.name} at this thickness.`,
        source: pedalForce('proof').source,
      }),
    ];
  }
  const { yieldMegapascals } = strength;
  return [
    checkSection(
      p,
      loads.worst,
      yieldMegapascals,
      { code: 'proof-load', name: 'Arm', field: heightField(p, loads.worst) },
      facts,
    ),
    ...(loads.horn === undefined
      ? []
      : [
          checkSection(
            p,
            loads.horn,
            yieldMegapascals,
            loads.reaction.what === 'forward stop'
              ? { code: 'tab-root', name: 'Root of the stop tab', field: 'stopWidth' }
              : { code: 'horn-root', name: 'Root of the horn', field: 'eye' },
            facts,
          ),
        ]),
    ...checkPinHole(part, p, layout, loads, material, facts),
    checkSlender(p, loads),
    checkGive(p, motion, loads, facts),
  ];
}
