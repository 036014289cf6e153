// What the print of a mounting plate shows to be measured and edited, in the order in which a person measures.
import type { Point } from '../../geometry/index.js';
import { boundsOf } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { endsOf } from '../shared/slotted.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import { roundText } from '../shared/words.js';
import { motorMiddle, motorStretch, type HoleSet } from './holes.js';
import type { MountingPlate } from './parameters.js';
import { pilotOpening, resolvePlate } from './resolve.js';

const slotText = (set: HoleSet, count: number, context: DrawContext): string => {
  const callOut = holeCallOut(set.size, count, context.format);
  if (set.stretch.kind === 'none') return callOut;
  const how =
    set.stretch.kind === 'round'
      ? `slot ${roundText(set.stretch.swingDegrees)}°`
      : `slot, travel ${context.format.bare(set.travel)}`;
  return `${callOut}, ${how}`;
};

function outsideDimensions(part: Part, p: MountingPlate, context: DrawContext): readonly DimensionSpec[] {
  const { minX, maxX, minY, maxY } = boundsOf(outlineOf(part).contour);
  const isRectangle = p.shape === 'rectangle';
  const { bare } = context.format;
  return [
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: minX, y: minY },
      to: { x: maxX, y: minY },
      ...(isRectangle ? { field: 'width' } : {}),
      text: bare(maxX - minX),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: { x: minX, y: minY },
      to: { x: minX, y: maxY },
      ...(isRectangle ? { field: 'height' } : {}),
      text: bare(maxY - minY),
    },
    ...(isRectangle && p.corner.mm > 0
      ? [
          {
            id: 'corner',
            kind: 'radius' as const,
            centre: { x: maxX - p.corner.mm, y: maxY - p.corner.mm },
            radius: p.corner.mm,
            degrees: 45,
            field: 'corner',
            text: `R${bare(p.corner.mm)}`,
          },
        ]
      : []),
  ];
}

function baseDimensions(
  p: MountingPlate,
  base: HoleSet | undefined,
  context: DrawContext,
): readonly DimensionSpec[] {
  if (base === undefined) return [];
  const { holes, circle } = base;
  const { bare } = context.format;
  const at = (index: number): Point => holes[index]?.at ?? { x: 0, y: 0 };
  const last = holes.at(-1);
  const callOut: DimensionSpec = {
    id: 'holes',
    kind: 'leader',
    at: last?.at ?? { x: 0, y: 0 },
    field: 'bolt',
    text: slotText(base, holes.length, context),
  };
  if (circle !== undefined) {
    return [
      {
        id: 'circle',
        kind: 'diameter',
        centre: { x: 0, y: 0 },
        radius: circle.diameter / 2,
        field: 'boltCircle',
        text: `⌀${bare(circle.diameter)}`,
      },
      callOut,
    ];
  }
  const pitch = (text: number, times: number): string =>
    times > 1 ? `${times} × ${bare(text)}` : bare(text);
  const top = (p.rows - 1) * p.columns;
  return [
    ...(p.columns > 1
      ? [
          {
            id: 'pitchX',
            kind: 'linear' as const,
            along: 'x' as const,
            from: at(top),
            to: at(top + p.columns - 1),
            field: 'pitchX',
            text: pitch(p.pitchX.mm, p.columns - 1),
          },
        ]
      : []),
    ...(p.rows > 1
      ? [
          {
            id: 'pitchY',
            kind: 'linear' as const,
            along: 'y' as const,
            from: at(p.columns - 1),
            to: at(p.rows * p.columns - 1),
            field: 'pitchY',
            text: pitch(p.pitchY.mm, p.rows - 1),
          },
        ]
      : []),
    callOut,
  ];
}

function motorDimensions(
  p: MountingPlate,
  motor: HoleSet | undefined,
  context: DrawContext,
): readonly DimensionSpec[] {
  if (motor?.circle === undefined) return [];
  const { bare } = context.format;
  const middle = motorMiddle(p);
  const [, end] = endsOf(middle, motorStretch(p));
  const pilot = pilotOpening(p);
  const off = (field: 'motorX' | 'motorY', along: 'x' | 'y'): DimensionSpec | undefined =>
    p[field].mm === 0
      ? undefined
      : {
          id: field,
          kind: 'linear',
          along,
          from: { x: 0, y: 0 },
          to: middle,
          field,
          text: bare(Math.abs(p[field].mm)),
        };
  return [
    ...[off('motorX', 'x'), off('motorY', 'y')].filter((one) => one !== undefined),
    {
      id: 'motorCircle',
      kind: 'diameter',
      centre: middle,
      radius: motor.circle.diameter / 2,
      field: 'motorCircle',
      text: `motor ⌀${bare(motor.circle.diameter)}`,
    },
    ...(pilot === 0
      ? []
      : [
          {
            id: 'pilot',
            kind: 'leader' as const,
            at: { x: end.x, y: end.y - pilot / 2 },
            field: 'pilot',
            text:
              motor.stretch.kind === 'straight'
                ? `pilot slot ${bare(pilot)} wide, ends ${bare(p.travel.mm)} apart`
                : `pilot ⌀${bare(pilot)}`,
          },
        ]),
    {
      id: 'motorHoles',
      kind: 'leader',
      at: motor.holes[1]?.at ?? middle,
      field: motor.stretch.kind === 'round' ? 'swing' : p.face === 'sliding' ? 'travel' : 'motorBolt',
      text: slotText(motor, motor.holes.length, context),
    },
  ];
}

function openingDimensions(p: MountingPlate, context: DrawContext): readonly DimensionSpec[] {
  const { bare } = context.format;
  const { window, notch } = p;
  return [
    ...(window === undefined
      ? []
      : [
          {
            id: 'window',
            kind: 'leader' as const,
            at: { x: window.x.mm + window.width.mm / 2, y: window.y.mm },
            field: 'window.width',
            text: `window ${bare(window.width.mm)} × ${bare(window.height.mm)}, R${bare(window.corner.mm)}`,
          },
        ]),
    ...(notch === undefined || p.shape === 'hull'
      ? []
      : [
          {
            id: 'notch',
            kind: 'leader' as const,
            at: notchMouth(p),
            field: 'notch.width',
            text: `notch ${bare(notch.width.mm)} × ${bare(notch.depth.mm)} deep, R${bare(notch.corner.mm)}`,
          },
        ]),
  ];
}

/** Middle of the notch's floor. */
function notchMouth(p: MountingPlate): Point {
  const answer = resolvePlate(p);
  return (answer.ok ? answer.value.outside.notchFloor : undefined) ?? { x: 0, y: 0 };
}

/** Away from the plate's middle, degrees. */
const outwards = ({ x, y }: Point): number =>
  x === 0 && y === 0 ? -135 : (Math.atan2(y, x) * 180) / Math.PI;

export function mountingPlateDimensions(
  part: Part,
  p: MountingPlate,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolvePlate(p);
  if (!answer.ok) return [];
  const { base, motor, edge } = answer.value;
  const hullHole = base?.holes[0] ?? motor?.holes[0];
  return inOrder([
    ...outsideDimensions(part, p, context),
    ...baseDimensions(p, base, context),
    ...motorDimensions(p, motor, context),
    ...openingDimensions(p, context),
    p.shape === 'hull' && hullHole !== undefined
      ? {
          id: 'edge',
          kind: 'radius',
          centre: hullHole.at,
          radius: edge,
          degrees: outwards(hullHole.at),
          field: 'edge',
          text: `edge R${context.format.bare(edge)}`,
        }
      : undefined,
    thicknessLeader(part, context.format),
  ]);
}
