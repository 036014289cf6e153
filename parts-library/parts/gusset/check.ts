// Checks of a gusset: relief over the corner's weld, toes, free edge, welds under a thrust, lightening hole.
import {
  checkEdgeFillet,
  checkEdgeWeld,
  checkLabel,
  checkMaterialCaution,
  checkOldTube,
  checkSmallHoles,
  checkUse,
  checkWebs,
  digits,
  found,
  judge,
  mergeNotChecked,
  quantity,
  type EdgeWeld,
  type Facts,
} from '../../checks/index.js';
import { freeEdgeLimit, findMaterial, strengthAt, type Material, type Source } from '../../handbook/index.js';
import type { Finding, Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { checkCope, checkWeldMetal } from '../shared/ear-checks.js';
import type { Gusset } from './parameters.js';
import { filletOf, resolveGusset, thinnerOf, type ResolvedGusset } from './resolve.js';

const PRACTICE: Source = {
  title: 'Gussets over a welded corner',
  where: 'relief clears the corner’s bead by 2 mm; blunt toes at least as high as the fillet’s leg',
  certainty: 'common practice',
};
/** Room between the corner's bead and the relief, mm. */
const BEAD_ROOM = 2;

function checkRelief(p: Gusset, r: ResolvedGusset, facts: Facts): Finding {
  const { length } = facts.format;
  const wanted = p.jointLeg.mm === 0 ? 0 : p.jointLeg.mm + BEAD_ROOM;
  const isShort = r.relief < wanted - 1e-9;
  return found({
    code: 'corner-relief',
    level: judge(['caution', isShort]),
    subject: { featureId: 'outline' },
    anchor: { x: r.welds[0].near.x, y: r.welds[0].near.y },
    field: p.relief === 'none' ? 'relief' : 'reliefSize',
    title: `Relief ${length(r.relief)} over a corner weld of ${length(p.jointLeg.mm)}`,
    says: isShort
      ? 'The plate rides on the bead and stands off both members. A larger relief would do, or grinding the bead away, which nobody should.'
      : 'It clears the corner’s bead, and the fillets can be boxed round their ends there.',
    value: quantity(r.relief, 'mm'),
    limit: quantity(wanted, 'mm'),
    formula: `${digits(p.jointLeg.mm)} + ${BEAD_ROOM} = ${digits(wanted)}`,
    source: PRACTICE,
    ...(isShort
      ? {
          remedies: [
            {
              says: `Snip ${length(wanted)}`,
              change: [
                { op: 'add' as const, path: '/relief', value: p.relief === 'none' ? 'snip' : p.relief },
                { op: 'add' as const, path: '/reliefSize', value: wanted },
              ],
            },
          ],
        }
      : {}),
  });
}

function checkToe(p: Gusset, leg: number, facts: Facts): Finding {
  const { length } = facts.format;
  const isThin = p.toe.mm < leg - 1e-9;
  return found({
    code: 'toe',
    level: judge(['caution', isThin]),
    subject: { featureId: 'outline' },
    anchor: { x: p.legA.mm, y: 0 },
    field: 'toe',
    title: `Toe ${length(p.toe.mm)}, at least the fillet’s leg of ${length(leg)}`,
    says: isThin
      ? 'A feather edge melts away under the fillet and leaves a crater where the load is greatest.'
      : 'Enough to box the fillet round the end.',
    value: quantity(p.toe.mm, 'mm'),
    limit: quantity(leg, 'mm'),
    source: PRACTICE,
  });
}

/** A long free edge folds sideways under a push before anything breaks. */
function checkFreeEdge(p: Gusset, r: ResolvedGusset, material: Material): readonly Finding[] {
  const strength = strengthAt(material, p.thickness.mm);
  if (strength === undefined) return [];
  const limit = freeEdgeLimit(strength.yieldMegapascals, material.modulusMegapascals);
  const ratio = r.freeLength / p.thickness.mm;
  const isLong = ratio > limit.value;
  return [
    found({
      code: 'free-edge',
      level: judge(['caution', isLong]),
      subject: { featureId: 'outline' },
      anchor: { x: (r.freeFrom.x + r.freeTo.x) / 2, y: (r.freeFrom.y + r.freeTo.y) / 2 },
      field: 'thickness',
      title: `Free edge ${digits(ratio, 1)} thicknesses long, at most ${digits(limit.value, 1)}`,
      says: isLong
        ? 'Pushed along its edge it folds sideways. A thicker plate, shorter legs, or a flange along the free edge would do.'
        : 'Short enough not to fold sideways when pushed.',
      value: quantity(ratio, '1'),
      limit: quantity(limit.value, '1'),
      formula: `${digits(r.freeLength)} ÷ ${digits(p.thickness.mm)} = ${digits(ratio, 1)}; 2.06 × √(${digits(material.modulusMegapascals, 0)} ÷ ${strength.yieldMegapascals}) = ${digits(limit.value, 1)}`,
      source: limit.source,
    }),
  ];
}

function checkWelds(p: Gusset, r: ResolvedGusset, material: Material, facts: Facts): readonly Finding[] {
  const unit = facts.format.unit;
  // As a strut the plate pushes along the line of its welds' middles.
  const [a, b] = r.welds;
  const span = Math.hypot(b.middle.x - a.middle.x, b.middle.y - a.middle.y);
  const along = { x: (b.middle.x - a.middle.x) / span, y: (b.middle.y - a.middle.y) / span };
  const onEdge = (side: (typeof r.welds)[number]): EdgeWeld => ({
    leg: filletOf(p, unit),
    sides: p.weldSides,
    length: side.edge.length,
    thickness: p.thickness.mm,
    thinner: thinnerOf(p),
    material,
    anchor: side.middle,
    fields: { leg: 'weldLeg', length: side.field, sides: 'weldSides' },
  });
  const shortest = a.edge.length <= b.edge.length ? a : b;
  const thrust = p.thrust?.value;
  return [
    ...checkEdgeFillet(onEdge(shortest), facts),
    ...(thrust === undefined
      ? [
          found({
            code: 'not-checked',
            level: 'note' as const,
            field: 'thrust',
            title: 'welds under a thrust',
            says: 'Give the greatest push or pull along the free edge, and both welds are checked.',
            source: {
              title: 'Load on the part',
              where: 'not given',
              certainty: 'common practice' as const,
            },
          }),
        ]
      : r.welds.flatMap((side) =>
          checkEdgeWeld(
            onEdge(side),
            {
              away: thrust * (along.x * side.inward.x + along.y * side.inward.y),
              along: thrust * (along.x * side.along.x + along.y * side.along.y),
              moment: 0,
            },
            facts,
          ),
        )),
  ];
}

export function checkGusset(part: Part, p: Gusset, facts: Facts): readonly Finding[] {
  const answer = resolveGusset(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  return mergeNotChecked([
    ...checkUse(p.use),
    checkRelief(p, r, facts),
    checkToe(p, filletOf(p, facts.format.unit), facts),
    ...checkFreeEdge(p, r, material.row),
    ...checkWeldMetal(material.row, 'material'),
    ...checkWelds(p, r, material.row, facts),
    ...checkCope(r.welds[0].edge, r.welds[0].tube, { width: 'legA', tube: 'tubeA' }, facts),
    ...checkCope(r.welds[1].edge, r.welds[1].tube, { width: 'legB', tube: 'tubeB' }, facts),
    ...checkOldTube('tubeA'),
    ...(p.hole === undefined ? [] : checkWebs(part, facts)),
    ...checkSmallHoles(part, facts, () => ({ field: 'hole' })),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...checkMaterialCaution(material.row),
  ]);
}
