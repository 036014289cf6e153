// Dimensions of a pedal base, from the push rod’s line outwards.
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder } from '../shared/in-order.js';
import { sideView } from './ghosts.js';
import type { PedalBase } from './parameters.js';
import { filletOf, resolveBase } from './resolve.js';

export function pedalBaseDimensions(
  _part: Part,
  p: PedalBase,
  { format }: DrawContext,
): readonly Dimension[] {
  const answer = resolveBase(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const text = format.bare;
  const half = p.width.mm / 2;
  const side = sideView(p);
  const [first, second] = r.cylinderHoles;
  const [lowLeft, lowRight, highRight] = r.mountHoles;
  return inOrder([
    first === undefined || second === undefined
      ? undefined
      : {
          id: 'spacing',
          kind: 'linear',
          along: p.cylinderAngle.value === 0 ? 'x' : 'aligned',
          from: first.at,
          to: second.at,
          field: 'cylinderSpacing',
          text: text(p.cylinderSpacing.mm),
        },
    second === undefined
      ? undefined
      : {
          id: 'cylinder',
          kind: 'leader',
          at: second.at,
          field: 'bolt',
          text: holeCallOut(r.cylinder, 2, format),
        },
    {
      id: 'window',
      kind: 'leader',
      at: { x: 0, y: r.windowHeight / 2 },
      field: 'windowWidth',
      text:
        p.window === 'round' || r.windowHeight === p.windowWidth.mm
          ? `window ⌀${text(p.windowWidth.mm)}`
          : `window ${text(p.windowWidth.mm)} × ${text(r.windowHeight)}`,
    },
    {
      id: 'pivot',
      kind: 'linear',
      along: 'y',
      from: { x: -half, y: 0 },
      to: { x: -p.gap.mm / 2, y: r.pivotY },
      field: 'pivotDrop',
      text: text(p.pivotDrop.mm),
    },
    {
      id: 'gap',
      kind: 'linear',
      along: 'x',
      from: { x: -p.gap.mm / 2, y: r.pivotY },
      to: { x: p.gap.mm / 2, y: r.pivotY },
      field: 'gap',
      text: `gap ${text(p.gap.mm)}`,
    },
    r.earHoles[3] === undefined
      ? undefined
      : {
          id: 'ears',
          kind: 'leader',
          at: r.earHoles[3].at,
          field: 'travel',
          text: `4 × ${text(r.ear.diameter)}${p.travel.mm === 0 ? '' : ` slots, ${text(p.travel.mm)} travel`} for ${p.earBolt}`,
        },
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: -half, y: -p.below.mm },
      to: { x: half, y: -p.below.mm },
      field: 'width',
      text: text(p.width.mm),
    },
    {
      id: 'above',
      kind: 'linear',
      along: 'y',
      from: { x: half, y: 0 },
      to: { x: half, y: p.above.mm },
      field: 'above',
      text: text(p.above.mm),
    },
    {
      id: 'below',
      kind: 'linear',
      along: 'y',
      from: { x: half, y: -p.below.mm },
      to: { x: half, y: 0 },
      field: 'below',
      text: text(p.below.mm),
    },
    p.cornerRadius.mm === 0
      ? undefined
      : {
          id: 'corner',
          kind: 'radius',
          centre: { x: -half + p.cornerRadius.mm, y: p.above.mm - p.cornerRadius.mm },
          radius: p.cornerRadius.mm,
          degrees: 135,
          field: 'cornerRadius',
          text: `R${text(p.cornerRadius.mm)}`,
        },
    lowLeft === undefined || lowRight === undefined
      ? undefined
      : {
          id: 'mount.x',
          kind: 'linear',
          along: 'x',
          from: lowLeft.at,
          to: lowRight.at,
          field: 'mountInset',
          text: text(lowRight.at.x - lowLeft.at.x),
        },
    lowRight === undefined || highRight === undefined
      ? undefined
      : {
          id: 'mount.y',
          kind: 'linear',
          along: 'y',
          from: lowRight.at,
          to: highRight.at,
          field: 'mountInset',
          text: text(highRight.at.y - lowRight.at.y),
        },
    highRight === undefined
      ? {
          id: 'weld',
          kind: 'leader',
          at: { x: half / 2, y: -p.below.mm },
          field: 'weldLeg',
          text: `fillet ${text(filletOf(p, format.unit))} ${p.weldSides === 'both' ? 'both sides' : 'one side'}`,
        }
      : {
          id: 'mount',
          kind: 'leader',
          at: highRight.at,
          field: 'mountBolt',
          text: holeCallOut(r.mount, 4, format),
        },
    {
      id: 'thickness',
      kind: 'linear',
      along: 'x',
      from: { x: side.face, y: -p.below.mm },
      to: { x: side.face + p.thickness.mm, y: -p.below.mm },
      field: 'thickness',
      text: text(p.thickness.mm),
    },
    {
      id: 'out',
      kind: 'linear',
      along: 'x',
      from: { x: side.pivotX, y: r.pivotY },
      to: { x: side.face, y: p.pivotAt === 'below' ? -p.below.mm : p.above.mm },
      field: 'pivotOut',
      text: text(p.pivotOut.mm),
    },
  ]);
}
