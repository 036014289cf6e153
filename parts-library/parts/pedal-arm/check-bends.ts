// Rules of the bends: slots or score, welded after, holes clear of them, and the folded pad as a shelf.
import { digits, found, judge, quantity, type Facts } from '../../checks/index.js';
import {
  holeToBend,
  pedalFactor,
  sidewaysStress,
  strengthAt,
  type Material,
  type Source,
} from '../../handbook/index.js';
import { isMark, isOpening, type Finding, type Part } from '../../model/index.js';
import type { BendLine, Layout } from './layout.js';
import type { PedalArm } from './parameters.js';

/** Deepest groove that still counts as a bend, and deepest that is welded after, as shares of the thickness. */
const GROOVE_UNWELDED = 1 / 3;
const GROOVE_WELDED = 1 / 2;
/** Room between slot and kerf, so that the torch comes back out of it, mm. */
const SLOT_OVER_KERF = 0.5;

const SCORING: Source = {
  title: 'Score-line bends',
  where:
    'published groove depths T/3, and T/2 where the bend is welded after; plasma scoring is not repeatable',
  certainty: 'published',
};
const SLOTTING: Source = {
  title: 'Slotted bend lines',
  where: 'slots along the line, bridges of 1 to 1.5 thicknesses and more, folded by hand, then welded full',
  certainty: 'common practice',
};

/** A bend in a loaded arm carries nothing until it is welded. */
function checkMade(p: PedalArm, line: BendLine, facts: Facts): readonly Finding[] {
  const { length } = facts.format;
  const isWelded = p.weldedAfter === 'yes';
  const place = { subject: {}, anchor: line.at } as const;
  const remedies = [
    { says: 'Weld it after folding', change: [{ op: 'add' as const, path: '/weldedAfter', value: 'yes' }] },
  ];
  if (!isWelded) {
    return [
      found({
        ...place,
        code: p.fold === 'scored' ? 'scored-bend' : 'slotted-bend',
        level: 'stop',
        field: 'weldedAfter',
        title: `A ${p.fold === 'scored' ? 'scored' : 'slotted'} bend in a loaded arm must be welded after`,
        says:
          p.fold === 'scored'
            ? `Unwelded it keeps ${Math.round(100 * (1 - p.groove.mm / p.thickness.mm) ** 2)} % of the plate's bending strength, with a notch along it. Plasma scoring is not repeatable.`
            : 'Unwelded, the bridge alone carries the foot.',
        source: p.fold === 'scored' ? SCORING : SLOTTING,
        remedies,
      }),
    ];
  }
  if (p.fold === 'scored') {
    const most = GROOVE_WELDED * p.thickness.mm;
    return [
      found({
        ...place,
        code: 'scored-bend',
        level: 'caution',
        field: 'groove',
        title: `Groove ${length(p.groove.mm)}, at most ${length(most)}; plasma scoring is not repeatable`,
        says: `Try it on a strip of the same plate, fold, and weld the groove full. Above ${length(GROOVE_UNWELDED * p.thickness.mm)} it is no bend without its weld. Slots along the line are the surer way.`,
        value: quantity(p.groove.mm, 'mm'),
        limit: quantity(most, 'mm'),
        formula: `((${digits(p.thickness.mm)} − ${digits(p.groove.mm)}) ÷ ${digits(p.thickness.mm)})² = ${digits((1 - p.groove.mm / p.thickness.mm) ** 2, 3)} of the strength is left before welding`,
        source: SCORING,
      }),
    ];
  }
  const least = facts.kerf.amount + SLOT_OVER_KERF;
  return [
    found({
      ...place,
      code: 'slotted-bend',
      level: judge(['stop', p.slotWidth.mm < least - 1e-9], ['note', true]),
      field: 'slotWidth',
      title:
        p.slotWidth.mm < least
          ? `Slots ${length(p.slotWidth.mm)} wide close up under a kerf of ${length(facts.kerf.amount)}`
          : `Fold on a bridge of ${length(line.bridge)}, then weld both slots full`,
      says: 'Slots run in from the edges, so they cost no pierce. Fold once: a bridge that is bent back cracks. Weld from the outside of the bend, grind, then the inside.',
      value: quantity(p.slotWidth.mm, 'mm'),
      limit: quantity(least, 'mm'),
      formula: `kerf ${digits(facts.kerf.amount)} + ${SLOT_OVER_KERF} = ${digits(least)}`,
      source: SLOTTING,
    }),
  ];
}

/** The hole nearest to the line, edge to line. */
function checkHoles(part: Part, p: PedalArm, line: BendLine, facts: Facts): readonly Finding[] {
  const rule = holeToBend(p.thickness.mm, 0);
  const gaps = part.features.flatMap((feature) => {
    const at = isMark(feature)
      ? feature.at
      : isOpening(feature) && feature.id === 'pivot'
        ? { x: 0, y: 0 }
        : undefined;
    const size = isMark(feature) || isOpening(feature) ? feature.hole?.size : undefined;
    if (at === undefined || size === undefined) return [];
    const x = at.x - line.at.x;
    const y = at.y - line.at.y;
    const off = Math.abs(x * line.along.y - y * line.along.x);
    const beyond = Math.max(0, Math.abs(x * line.along.x + y * line.along.y) - line.half);
    return [{ id: feature.id, name: feature.name, at, gap: Math.hypot(off, beyond) - size / 2 }];
  });
  const nearest = gaps.reduce<(typeof gaps)[number] | undefined>(
    (best, one) => (best === undefined || one.gap < best.gap ? one : best),
    undefined,
  );
  if (nearest === undefined) return [];
  return [
    found({
      code: 'hole-to-bend',
      level: judge(['stop', nearest.gap < 0], ['caution', nearest.gap < rule.value]),
      subject: { featureId: nearest.id },
      anchor: nearest.at,
      field: line.id === 'bend.pad' ? 'padLength' : 'jogAt',
      title: `${nearest.name} to bend ${facts.format.length(nearest.gap)}, ${facts.format.length(rule.value)} wanted`,
      says: 'A hole too near a bend is pulled out of round; move it, or drill it after bending.',
      value: quantity(nearest.gap, 'mm'),
      limit: quantity(rule.value, 'mm'),
      formula: `2.5 × ${digits(p.thickness.mm)} = ${digits(rule.value)}`,
      source: rule.source,
    }),
  ];
}

/** A folded pad is a shelf that stands out from its bend: bent across the thickness by a foot on its far half. */
function checkShelf(p: PedalArm, { flap }: Layout, material: Material, facts: Facts): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  if (flap === undefined || strength === undefined) return [];
  const line = flap.right - flap.left;
  const arm = Math.min(p.padWidth.mm, p.padWidth.mm / 2 + p.offCentre.mm);
  const stress = sidewaysStress((p.proof.value * arm) / 1000, line, p.thickness.mm);
  const factor = strength.yieldMegapascals / stress;
  return [
    found({
      code: 'pad-fold',
      level: judge(['stop', factor < 1], ['caution', factor < pedalFactor.value]),
      anchor: { x: (flap.left + flap.right) / 2, y: flap.fold },
      field: 'padWidth',
      title: `Fold of the pad at ${facts.format.force(p.proof.value)}: factor ${digits(factor)} on yield`,
      says: `The foot ${facts.format.length(arm)} from the fold, welded full. ${factor < pedalFactor.value ? 'A narrower or longer pad, thicker plate, or a gusset under it would do.' : 'A gusset under it costs little.'}`,
      value: quantity(stress, 'MPa'),
      limit: quantity(strength.yieldMegapascals / pedalFactor.value, 'MPa'),
      formula: `6 M/(b t²) = 6·${digits(p.proof.value * arm, 0)}/(${digits(line)}·${digits(p.thickness.mm)}²) = ${digits(stress)}`,
      source: pedalFactor.source,
    }),
  ];
}

export function checkBends(
  part: Part,
  p: PedalArm,
  layout: Layout,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const [first] = layout.bends;
  if (first === undefined) return [];
  return [
    ...checkMade(p, first, facts),
    ...layout.bends.flatMap((line) => checkHoles(part, p, line, facts)),
    ...checkShelf(p, layout, material, facts),
  ];
}
