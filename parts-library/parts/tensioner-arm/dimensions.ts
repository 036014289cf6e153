// What the print of a tensioner arm shows to be measured and edited, in the order in which a person measures.
import { segmentsOf, type Contour, type Point } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import { roundText } from '../shared/words.js';
import type { TensionerArm } from './parameters.js';
import { onArm, resolveArm, type ResolvedArm } from './resolve.js';

function lockDimensions(p: TensionerArm, r: ResolvedArm, { format }: DrawContext): readonly DimensionSpec[] {
  if (r.slot !== undefined) {
    const half = p.swing.value / 2;
    const low = r.slot.ends[0];
    return [
      {
        id: 'slotRadius',
        kind: 'linear',
        along: 'aligned',
        from: { x: 0, y: 0 },
        to: low,
        field: 'slotRadius',
        text: format.bare(p.slotRadius.mm),
      },
      {
        id: 'swing',
        kind: 'angle',
        centre: { x: 0, y: 0 },
        radius: p.slotRadius.mm,
        fromDegrees: p.slotAngle.value - half,
        toDegrees: p.slotAngle.value + half,
        field: 'swing',
        text: `${roundText(p.swing.value)}°`,
      },
      {
        id: 'slot',
        kind: 'leader',
        at: onArm(p.slotRadius.mm + r.slot.size.diameter / 2, p.slotAngle.value),
        field: 'lockBolt',
        text: `slot ${format.bare(r.slot.size.diameter)} wide for ${r.slot.size.thread.name}`,
      },
    ];
  }
  if (r.spring === undefined) return [];
  return [
    {
      id: 'springAt',
      kind: 'linear',
      along: 'aligned',
      from: { x: 0, y: 0 },
      to: r.spring,
      field: 'springAt',
      text: format.bare(p.springAt.mm),
    },
    {
      id: 'spring',
      kind: 'leader',
      at: r.spring,
      field: 'springHole',
      text: `⌀${format.bare(p.springHole.mm)} for the spring`,
    },
  ];
}

/** A nose's radius where the belt rides on it; nothing where it is swallowed by its neighbours. */
function nose(
  field: 'pivotNose' | 'idlerNose',
  outline: Contour,
  centre: Point,
  radius: number,
  { format }: DrawContext,
): DimensionSpec | undefined {
  const arc = segmentsOf(outline).find(
    (segment) =>
      segment.kind === 'arc' &&
      Math.abs(segment.radius - radius) < 1e-6 &&
      Math.hypot(segment.centre.x - centre.x, segment.centre.y - centre.y) < 1e-6,
  );
  if (arc?.kind !== 'arc') return undefined;
  return {
    id: field,
    kind: 'radius',
    centre,
    radius,
    // Off the middle, where the centre mark and the arm's own line are.
    degrees: ((arc.start + arc.sweep / 4) * 180) / Math.PI,
    field,
    text: `R${format.bare(radius)}`,
  };
}

export function tensionerArmDimensions(
  part: Part,
  p: TensionerArm,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveArm(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { bare } = context.format;
  const outline = outlineOf(part).contour;
  return inOrder([
    {
      id: 'arm',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: 0 },
      to: r.idlerHole.at,
      field: 'arm',
      text: bare(p.arm.mm),
    },
    {
      id: 'pivot',
      kind: 'leader',
      at: { x: 0, y: 0 },
      field: p.bush === undefined ? 'pivotBolt' : 'bush',
      text:
        p.bush === undefined
          ? `pivot ${holeCallOut(r.pivot, 1, context.format)}`
          : `pivot ⌀${bare(r.pivotOpening)} for a tube of ${bare(p.bush.mm)}`,
    },
    {
      id: 'idler',
      kind: 'leader',
      at: r.idlerHole.at,
      field: 'idlerBolt',
      text: `idler ${holeCallOut(r.idler, 1, context.format)}`,
    },
    ...lockDimensions(p, r, context),
    nose('pivotNose', outline, r.pivotHole.at, r.pivotNose, context),
    nose('idlerNose', outline, r.idlerHole.at, r.idlerNose, context),
    thicknessLeader(part, context.format, 0.6),
  ]);
}
