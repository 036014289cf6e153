// What the print of a sprocket shows to be measured and edited, in the order in which a person measures.
import type { Point } from '../../geometry/index.js';
import type { Dimension, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { circleDimensions, patternCallOut, withinText } from '../shared/pattern-dimensions.js';
import { middleField } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import { resolveSprocket, type Sprocket } from './resolve.js';
import type { Teeth } from './teeth.js';

const polar = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos((degrees * Math.PI) / 180),
  y: radius * Math.sin((degrees * Math.PI) / 180),
});

/** From bottom to bottom, where the caliper's jaws go: the topmost gap and the one opposite, or next to it. */
function caliperDimension({ gap, count, caliper }: Teeth, { format }: DrawContext): DimensionSpec {
  const across = (Math.floor(count / 2) * 360) / count;
  // Off the upright, so that it does not run through the topmost bolt.
  const start = 90 + Math.round(count / 12) * (360 / count);
  const from = polar(gap.seatCentre, start);
  const to = polar(gap.seatCentre, start + across);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const inward = (a: Point, b: Point): Point => ({
    x: a.x + ((b.x - a.x) * gap.seat) / length,
    y: a.y + ((b.y - a.y) * gap.seat) / length,
  });
  return {
    id: 'caliper',
    kind: 'linear',
    along: 'aligned',
    from: inward(from, to),
    to: inward(to, from),
    text: `caliper ${format.bare(caliper)}`,
  };
}

function middleDimension(
  { middle }: Sprocket,
  p: SprocketPlate,
  { format }: DrawContext,
): DimensionSpec | undefined {
  if (middle === undefined) return undefined;
  const { finished, drawn, way } = middle.centre;
  const size = `⌀${format.bare(finished)}`;
  const cut = `cut ⌀${format.bare(drawn)}`;
  const texts: Readonly<Record<string, string>> = {
    'slip-to-weld': drawn === finished ? `${size}, slip to weld` : `${size}, slip to weld; ${cut}, grind`,
    'bore-after': `${cut}, bore to ${size}`,
  };
  return {
    id: 'middle',
    kind: 'diameter',
    centre: { x: 0, y: 0 },
    radius: drawn / 2,
    ...(p.middle === 'keyed' ? { degrees: 225 } : {}),
    field: middleField(p),
    text: texts[way] ?? (p.middle === 'keyed' ? `${size}, keyed` : size),
  };
}

function lighteningDimensions(
  { lightening }: Sprocket,
  p: SprocketPlate,
  { format }: DrawContext,
): readonly DimensionSpec[] {
  if (lightening === undefined || lightening === 'none') return [];
  const { kind, inner, outer, size, first } = lightening;
  const bare = format.bare;
  const step = 360 / p.openings;
  if (kind === 'holes') {
    return [
      {
        id: 'lightening',
        kind: 'leader',
        at: polar((inner + outer) / 4, first),
        field: 'holeSize',
        text: `${p.openings} × ⌀${bare(size)} on ⌀${bare((inner + outer) / 2)}`,
      },
    ];
  }
  const spoke = first + step * Math.floor(p.openings / 2);
  const mid = polar((inner + outer) / 4, spoke);
  const side = polar(p.spoke.mm / 2, spoke + 90);
  return [
    {
      id: 'windows.outer',
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: outer / 2,
      degrees: first + step * 0.5,
      field: 'windowOuter',
      text: `windows to ⌀${bare(outer)}`,
    },
    {
      id: 'windows.inner',
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: inner / 2,
      degrees: first + step * 1.5,
      field: 'windowInner',
      text: `from ⌀${bare(inner)}`,
    },
    {
      id: 'spoke',
      kind: 'linear',
      along: 'aligned',
      from: { x: mid.x - side.x, y: mid.y - side.y },
      to: { x: mid.x + side.x, y: mid.y + side.y },
      field: 'spoke',
      text: bare(p.spoke.mm),
    },
    {
      id: 'windows',
      kind: 'leader',
      at: polar((inner + outer) / 4, first + step * (p.openings - 0.5)),
      field: 'windowCorner',
      text: `${p.openings} windows, corners R${bare(size)}`,
    },
  ];
}

/** About a dozen dimensions; each with a `field` is edited where it stands. */
export function sprocketPlateDimensions(
  _part: Part,
  p: SprocketPlate,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveSprocket(p);
  if (!answer.ok) return [];
  const sprocket = answer.value;
  const { teeth, pattern } = sprocket;
  const { bare } = context.format;
  const half = 180 / teeth.count;
  const tipNear = (degrees: number): number =>
    90 + half * (2 * Math.round((degrees - 90 - half) / (2 * half)) + 1);
  const called = pattern?.pattern.holes[Math.min(1, pattern.pattern.holes.length - 1)];
  return inOrder([
    {
      id: 'teeth',
      kind: 'leader',
      at: polar(teeth.outside / 2, tipNear(45)),
      field: 'teeth',
      text: `${teeth.count} teeth, ${teeth.gap.form === 'ansi' ? 'ANSI' : 'ISO 606'}`,
    },
    {
      id: 'outside',
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: teeth.outside / 2,
      field: 'outside',
      text: `⌀${bare(teeth.outside)}`,
    },
    caliperDimension(teeth, context),
    {
      id: 'seat',
      kind: 'radius',
      centre: polar(teeth.gap.seatCentre, 270 - (teeth.count % 2 === 0 ? 0 : half)),
      radius: teeth.gap.seat,
      degrees: 270 - (teeth.count % 2 === 0 ? 0 : half) + 180,
      field: 'chain',
      text: `seats R${bare(teeth.gap.seat)}`,
    },
    ...(pattern === undefined ? [] : circleDimensions(pattern, context, () => 0)),
    called === undefined || pattern === undefined
      ? undefined
      : {
          id: 'bolts',
          kind: 'leader',
          at: called.at,
          field: 'bolt',
          text: patternCallOut(pattern, context),
        },
    pattern === undefined || p.clocking.value === 90
      ? undefined
      : {
          id: 'clocking',
          kind: 'angle',
          centre: { x: 0, y: 0 },
          radius: pattern.circle.diameter / 2,
          fromDegrees: 0,
          toDegrees: p.clocking.value,
          field: 'clocking',
          text: `${Number(p.clocking.value.toFixed(2))}°`,
        },
    middleDimension(sprocket, p, context),
    ...lighteningDimensions(sprocket, p, context),
    {
      id: 'thickness',
      kind: 'leader',
      at: polar(teeth.outside / 2, tipNear(-55)),
      field: 'thickness',
      text: `t ${withinText(context, p.thickness.mm, p.thickness.plusMinus)}`,
    },
  ]);
}
