// The rules of a tensioner arm, in the order in which they are read.
import {
  checkEdgeDistance,
  checkLabel,
  checkMaterialCaution,
  checkPlateSize,
  checkSlip,
  checkSlotWidth,
  checkSmallHoles,
  checkTapping,
  checkThreadEngagement,
  checkUse,
  checkWebs,
  digits,
  found,
  judge,
  mergeNotChecked,
  percent,
  quantity,
  type Facts,
} from '../../checks/index.js';
import { findMaterial, idlerForce, leverStress, strengthAt, type Material } from '../../handbook/index.js';
import { reachAlong } from '../../geometry/index.js';
import { outlineOf, type Finding, type Part } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';
import { patternOf, underFields, type PlacedHole } from '../shared/bolted.js';
import type { SizedHole } from '../shared/holes.js';
import { checkStrand } from './check-strand.js';
import type { TensionerArm } from './parameters.js';
import { areAlike, resolveArm, type ResolvedArm } from './resolve.js';

/** Force of the chain on the idler at the end of the swing, where it is wrapped most, N. */
const idlerLoad = (p: TensionerArm, { travel }: ResolvedArm): number | undefined =>
  p.pull === undefined
    ? undefined
    : idlerForce(p.pull.value, Math.max(travel.start.wrapDegrees, travel.end.wrapDegrees));

/** Share of the yield strength that a static check is comfortable with. */
const COMFORTABLE = 0.5;

/** Bending of the arm at the pivot, and the lock's grip, under the pull of the strand. */
function checkLoad(
  part: Part,
  p: TensionerArm,
  r: ResolvedArm,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const force = idlerLoad(p, r);
  const strength = strengthAt(material, p.thickness.mm);
  if (force === undefined || strength === undefined) {
    return [
      found({
        code: 'not-checked',
        level: 'note',
        field: 'pull',
        title: 'arm and lock under the pull of the strand',
        says: 'Give the pull in the strand with the idler, and the arm’s bending and the grip of its lock are checked.',
        source: { title: 'Load on the part', where: 'not given', certainty: 'common practice' },
      }),
    ];
  }
  const moment = (force * p.arm.mm) / 1000;
  const outline = outlineOf(part).contour;
  // The belt may be wider at the pivot than its nose.
  const above = reachAlong(outline, r.pivotHole.at, { x: 0, y: 1 });
  const height = above + reachAlong(outline, r.pivotHole.at, { x: 0, y: -1 });
  const stress = leverStress(moment, {
    height,
    thickness: p.thickness.mm,
    hole: r.pivotOpening,
  });
  const worst = Math.max(stress.edge, stress.holeEdge);
  const share = worst / strength.yieldMegapascals;
  const bending = found({
    code: 'arm-bending',
    level: judge(['stop', share > 1], ['caution', share > COMFORTABLE]),
    subject: { featureId: 'pivot' },
    anchor: { x: 0, y: above },
    field: 'thickness',
    title: `Arm bent to ${facts.format.stress(worst)} at the pivot, ${percent(share)} of yield`,
    says: `${facts.format.force(force)} on the idler, ${facts.format.torque(moment)} at the pivot, in the plate’s plane. An idler that stands off on a spacer also twists the arm, which is not counted. Static only.`,
    value: quantity(worst, 'MPa'),
    limit: quantity(strength.yieldMegapascals, 'MPa'),
    formula: `2 × ${digits(p.pull?.value ?? 0, 0)} × sin(wrap ÷ 2) = ${digits(force, 0)} N; × ${digits(p.arm.mm)} mm = ${digits(moment)} N·m; 6 M h ÷ [t (h³ − d³)] with h ${digits(height)}, d ${digits(r.pivotOpening)} = ${digits(stress.edge)} MPa, hole edge ${digits(stress.holeEdge)} MPa`,
    source: stress.source,
  });
  const slot =
    r.slot === undefined
      ? []
      : checkSlip(
          {
            thread: r.slot.size.thread,
            grade: '8.8',
            count: 1,
            // The lock bolt holds the idler's moment at the slot's radius.
            pullNewtons: (force * p.arm.mm) / p.slotRadius.mm,
            at: r.slot.middle.at,
            featureId: 'slot',
            field: 'slotRadius',
          },
          facts,
        );
  return [bending, ...slot];
}

function checkSpring(p: TensionerArm, r: ResolvedArm): readonly Finding[] {
  if (p.lock !== 'spring') return [];
  const onIdler = (p.springForce.value * p.springAt.mm) / p.arm.mm;
  const wrap = (r.travel.end.wrapDegrees * Math.PI) / 360;
  const tension = wrap > 0 ? onIdler / (2 * Math.sin(wrap)) : 0;
  return [
    found({
      code: 'spring',
      level: judge(['caution', p.reverses === 'yes']),
      subject: { featureId: 'spring' },
      field: 'springForce',
      title: `Spring presses the idler with ${digits(onIdler, 0)} N, the strand is held at ${digits(tension, 0)} N`,
      says:
        p.reverses === 'yes'
          ? 'A spring gives way when this strand pulls: the chain goes slack on the other side and jumps. A slot with a bolt would do.'
          : 'Enough to keep the strand from slapping; more wears chain and idler.',
      value: quantity(onIdler, 'N'),
      formula: `${digits(p.springForce.value, 0)} × ${digits(p.springAt.mm)} ÷ ${digits(p.arm.mm)} = ${digits(onIdler)} N`,
      source: { title: 'Levers', where: 'moments about the pivot', certainty: 'common practice' },
    }),
  ];
}

function checkHoles(
  part: Part,
  p: TensionerArm,
  r: ResolvedArm,
  material: Material,
  facts: Facts,
): readonly Finding[] {
  const plate = { material, thickness: p.thickness.mm };
  const edge = (size: SizedHole, hole: PlacedHole, field: string): readonly Finding[] =>
    underFields(checkEdgeDistance(part, patternOf(size, [hole]), facts), { edge: field });
  const made = (size: SizedHole, holes: readonly PlacedHole[], which: 'pivot' | 'idler') =>
    underFields(
      [
        ...checkTapping(patternOf(size, holes), p.thickness.mm, facts),
        ...checkThreadEngagement(patternOf(size, holes), plate, '8.8', facts),
      ],
      { holes: `${which}Holes`, bolt: `${which}Bolt` },
    );
  return [
    ...(p.bush === undefined ? edge(r.pivot, r.pivotHole, 'pivotNose') : []),
    ...edge(r.idler, r.idlerHole, 'idlerNose'),
    ...(areAlike(p, r)
      ? made(r.idler, [r.pivotHole, r.idlerHole], 'idler')
      : [
          ...(p.bush === undefined ? made(r.pivot, [r.pivotHole], 'pivot') : []),
          ...made(r.idler, [r.idlerHole], 'idler'),
        ]),
    ...(r.slot === undefined
      ? []
      : [
          ...underFields(
            checkEdgeDistance(
              part,
              patternOf(
                r.slot.size,
                r.slot.ends.map((at) => ({ featureId: 'slot', at })),
              ),
              facts,
            ),
            { edge: 'slotRadius' },
          ),
          ...checkSlotWidth(
            [{ featureId: 'slot', at: r.slot.middle.at, width: r.slot.size.diameter }],
            'lockBolt',
            facts,
          ),
        ]),
  ];
}

const SMALL_HOLE_FIELDS: Readonly<Record<string, string>> = {
  pivot: 'pivotHoles',
  idler: 'idlerHoles',
  spring: 'springHole',
};

/** All findings of the arm. */
export function checkTensionerArm(part: Part, p: TensionerArm, facts: Facts): readonly Finding[] {
  const answer = resolveArm(p);
  const material = findMaterial(p.material);
  if (!answer.ok || !material.found) return [];
  const r = answer.value;
  const fieldOf = ({ id }: { readonly id: string }) => {
    const field = SMALL_HOLE_FIELDS[id] ?? 'pivotHoles';
    return field === 'springHole' || (id === 'pivot' && p.bush !== undefined)
      ? { field: id === 'pivot' ? 'bush' : field }
      : {
          field,
          remedies: [
            {
              says: 'Mark the hole and drill it',
              change: [{ op: 'add' as const, path: `/${field}`, value: 'drill' }],
            },
          ],
        };
  };
  return mergeNotChecked([
    ...checkUse(p.use),
    ...checkMaterialCaution(material.row),
    ...checkSmallHoles(part, facts, fieldOf),
    ...checkWebs(part, facts).map((web) => ({ ...web, field: 'slotRadius' })),
    ...checkHoles(part, p, r, material.row, facts),
    ...checkStrand(p, r, facts),
    ...checkSpring(p, r),
    ...checkLoad(part, p, r, material.row, facts),
    ...checkLabel(
      part,
      p.labelHeight.mm,
      letterText(p.label ?? '', { x: 0, y: 0 }, p.labelHeight.mm).missing,
      facts,
    ),
    ...underFields(checkPlateSize(part, facts), { outside: 'arm' }),
  ]);
}
