// What the print of a slot-and-tab plate shows to be measured and edited, in the order in which a person measures.
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import type { Joint } from './joint.js';
import type { SlotTabJoint } from './parameters.js';
import { resolveJoint } from './resolve.js';
import { jointLine } from './slotted.js';

/** From tab to tab, or from the end to a lone one. */
function pitchDimension(joint: Joint, y: number, { format }: DrawContext): DimensionSpec | undefined {
  const [start = 0, second] = joint.centres;
  if (second === undefined) return undefined;
  const last = joint.centres.at(-1) ?? second;
  const count = joint.centres.length - 1;
  return {
    id: 'pitch',
    kind: 'linear',
    along: 'x',
    from: { x: start, y },
    to: { x: last, y },
    field: 'first',
    text: count > 1 ? `${count} × ${format.bare(second - start)}` : format.bare(second - start),
  };
}

function tabbedDimensions(
  p: SlotTabJoint,
  joint: Joint,
  context: DrawContext,
): readonly (DimensionSpec | undefined)[] {
  const { bare } = context.format;
  const half = p.length.mm / 2;
  const [start = 0] = joint.centres;
  const last = joint.centres.at(-1) ?? start;
  return [
    {
      id: 'length',
      kind: 'linear',
      along: 'x',
      from: { x: -half, y: p.height.mm },
      to: { x: half, y: p.height.mm },
      field: 'length',
      text: bare(p.length.mm),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: { x: -half, y: 0 },
      to: { x: -half, y: p.height.mm },
      field: 'height',
      text: bare(p.height.mm),
    },
    {
      id: 'tabWidth',
      kind: 'linear',
      along: 'x',
      from: { x: start - joint.tabWidth / 2, y: -joint.projection },
      to: { x: start + joint.tabWidth / 2, y: -joint.projection },
      field: 'tabWidth',
      text: `${joint.centres.length > 1 ? `${joint.centres.length} × ` : ''}${bare(joint.tabWidth)}`,
    },
    pitchDimension(joint, -joint.projection, context),
    {
      id: 'projection',
      kind: 'linear',
      along: 'y',
      from: { x: last + joint.tabWidth / 2, y: -joint.projection },
      to: { x: half, y: 0 },
      field: p.proud.mm === 0 ? 'other' : 'proud',
      text: bare(joint.projection),
    },
    p.relief.mm === 0
      ? undefined
      : {
          id: 'relief',
          kind: 'leader',
          at: { x: start - joint.tabWidth / 2, y: 0 },
          field: 'relief',
          text: `relief R${bare(p.relief.mm)}`,
        },
    p.chamfer.mm === 0
      ? undefined
      : {
          id: 'chamfer',
          kind: 'leader',
          at: { x: last + joint.tabWidth / 2 - p.chamfer.mm / 2, y: -joint.projection + p.chamfer.mm / 2 },
          field: 'chamfer',
          text: `${bare(p.chamfer.mm)} × 45°`,
        },
  ];
}

function slottedDimensions(
  part: Part,
  p: SlotTabJoint,
  joint: Joint,
  context: DrawContext,
): readonly (DimensionSpec | undefined)[] {
  const { bare } = context.format;
  const { minX, maxX, minY, maxY } = boundsOf(outlineOf(part).contour);
  const y = jointLine(p);
  const [start = 0] = joint.centres;
  const last = joint.centres.at(-1) ?? start;
  return [
    {
      id: 'plateLength',
      kind: 'linear',
      along: 'x',
      from: { x: minX, y: minY },
      to: { x: maxX, y: minY },
      field: 'plateLength',
      text: bare(p.plateLength.mm),
    },
    {
      id: 'plateWidth',
      kind: 'linear',
      along: 'y',
      from: { x: minX, y: minY },
      to: { x: minX, y: maxY },
      field: 'plateWidth',
      text: bare(p.plateWidth.mm),
    },
    {
      id: 'jointAt',
      kind: 'linear',
      along: 'y',
      from: { x: maxX, y: minY },
      to: { x: last + joint.slotLength / 2, y },
      field: 'jointAt',
      text: bare(p.jointAt.mm),
    },
    {
      id: 'slotLength',
      kind: 'linear',
      along: 'x',
      from: { x: start - joint.slotLength / 2, y: y + joint.slotWidth / 2 },
      to: { x: start + joint.slotLength / 2, y: y + joint.slotWidth / 2 },
      field: 'tabWidth',
      text: bare(joint.slotLength),
    },
    pitchDimension(joint, y, context),
    {
      id: 'slotWidth',
      kind: 'leader',
      at: { x: last + joint.slotLength / 4, y: y + joint.slotWidth / 2 },
      field: 'clearance',
      text: `${joint.centres.length > 1 ? `${joint.centres.length} slots ` : 'slot '}${bare(joint.slotWidth)} wide for ${bare(joint.tabbed)}`,
    },
    p.relief.mm === 0
      ? undefined
      : {
          id: 'relief',
          kind: 'leader',
          at: { x: last + joint.slotLength / 2, y: y - joint.slotWidth / 2 },
          field: 'relief',
          text: `relief R${bare(p.relief.mm)}`,
        },
    (p.eye?.mm ?? 0) <= joint.slotWidth
      ? undefined
      : {
          id: 'eye',
          kind: 'leader',
          at: { x: start, y: y + (p.eye?.mm ?? 0) / 2 },
          field: 'eye',
          text: `eye ⌀${bare(p.eye?.mm ?? 0)}`,
        },
  ];
}

export function slotTabJointDimensions(
  part: Part,
  p: SlotTabJoint,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveJoint(p);
  if (!answer.ok) return [];
  const { joint } = answer.value;
  return inOrder([
    ...(p.draws === 'tabbed'
      ? tabbedDimensions(p, joint, context)
      : slottedDimensions(part, p, joint, context)),
    p.draws === 'tabbed'
      ? {
          id: 'thickness',
          kind: 'leader',
          at: { x: p.length.mm / 2, y: 0.7 * p.height.mm },
          field: 'thickness',
          text: `t ${context.format.bare(p.thickness.mm)}`,
        }
      : thicknessLeader(part, context.format, 0.85),
  ]);
}
