// What the print of a bearing flange plate shows to be measured and edited, in the order in which a person measures.
import { boundsOf, type Point } from '../../geometry/index.js';
import { outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import type { BearingFlange } from './parameters.js';
import { resolveFlange, type ResolvedFlange } from './resolve.js';

/** The housing's holes as the caliper read them: over two neighbours, or as a circle. */
function flangeDimensions(
  p: BearingFlange,
  r: ResolvedFlange,
  { format }: DrawContext,
): readonly DimensionSpec[] {
  const { flange } = r;
  const [first, second] = flange?.holes ?? [];
  if (flange === undefined || first === undefined || second === undefined) return [];
  const isAdjacent = p.boltCircle.measure.readings[0]?.way === 'steps';
  const last = flange.holes.at(-1);
  const apart = Math.hypot(first.at.x - second.at.x, first.at.y - second.at.y);
  const circle: DimensionSpec = {
    id: 'circle',
    kind: 'diameter',
    centre: r.shaft,
    radius: flange.circle.diameter / 2,
    ...(isAdjacent ? {} : { field: 'boltCircle' }),
    text: `⌀${format.bare(flange.circle.diameter)}`,
  };
  return [
    ...(isAdjacent
      ? [
          {
            id: 'adjacent',
            kind: 'linear' as const,
            along: 'aligned' as const,
            from: first.at,
            to: second.at,
            field: 'boltCircle',
            text: format.bare(apart),
          },
        ]
      : []),
    ...(flange.holes.length > 2 || !isAdjacent ? [circle] : []),
    {
      id: 'flange.holes',
      kind: 'leader',
      at: last?.at ?? r.shaft,
      field: 'bolt',
      text: holeCallOut(flange.size, flange.holes.length, format),
    },
  ];
}

function openingDimension(p: BearingFlange, r: ResolvedFlange, { format }: DrawContext): DimensionSpec {
  const base = { id: 'opening', kind: 'diameter', centre: r.shaft, radius: r.cut / 2 } as const;
  if (r.seat === undefined)
    return { ...base, field: 'collar', text: `⌀${format.bare(r.cut)} for the collar` };
  return {
    ...base,
    field: 'outside',
    text: `cut ⌀${format.bare(r.cut)}, bore ⌀${format.bare(p.outside.mm)} ${p.seatFit}`,
  };
}

function mountDimensions(
  p: BearingFlange,
  r: ResolvedFlange,
  { format }: DrawContext,
): readonly DimensionSpec[] {
  const { mount, clamp } = r;
  const corner = (index: number): Point => mount?.holes[index]?.at ?? { x: 0, y: 0 };
  const clampHole = clamp?.holes[0];
  return [
    ...(clamp === undefined || clampHole === undefined
      ? []
      : [
          {
            id: 'clamp',
            kind: 'leader' as const,
            at: clampHole.at,
            field: 'clampBolt',
            text: `${holeCallOut(clamp.size, clamp.holes.length, format)} on ⌀${format.bare(clamp.circle)}`,
          },
        ]),
    ...(mount === undefined
      ? []
      : [
          {
            id: 'mountX',
            kind: 'linear' as const,
            along: 'x' as const,
            from: corner(3),
            to: corner(2),
            field: 'mountX',
            text: format.bare(p.mountX.mm),
          },
          {
            id: 'mountY',
            kind: 'linear' as const,
            along: 'y' as const,
            from: corner(1),
            to: corner(2),
            field: 'mountY',
            text: format.bare(p.mountY.mm),
          },
          {
            id: 'mount',
            kind: 'leader' as const,
            at: corner(2),
            field: 'mountBolt',
            text: holeCallOut(mount.size, 4, format),
          },
        ]),
  ];
}

export function bearingFlangeDimensions(
  part: Part,
  p: BearingFlange,
  context: DrawContext,
): readonly Dimension[] {
  const answer = resolveFlange(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { bare } = context.format;
  const { minX, maxX, minY, maxY } = boundsOf(outlineOf(part).contour);
  const isRectangle = p.shape === 'rectangle';
  const off = (field: 'shaftX' | 'shaftY', along: 'x' | 'y'): DimensionSpec | undefined =>
    p[field].mm === 0
      ? undefined
      : {
          id: field,
          kind: 'linear',
          along,
          from: { x: 0, y: 0 },
          to: r.shaft,
          field,
          text: bare(Math.abs(p[field].mm)),
        };
  return inOrder([
    ...flangeDimensions(p, r, context),
    openingDimension(p, r, context),
    off('shaftX', 'x'),
    off('shaftY', 'y'),
    ...mountDimensions(p, r, context),
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: minX, y: minY },
      to: { x: maxX, y: minY },
      ...(isRectangle || r.foot > 0 ? { field: 'width' } : {}),
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
    isRectangle && p.corner.mm > 0
      ? {
          id: 'corner',
          kind: 'radius',
          centre: { x: minX + p.corner.mm, y: maxY - p.corner.mm },
          radius: p.corner.mm,
          degrees: 135,
          field: 'corner',
          text: `R${bare(p.corner.mm)}`,
        }
      : undefined,
    r.foot > 0
      ? {
          id: 'shaft.height',
          kind: 'linear',
          along: 'y',
          from: { x: maxX, y: minY },
          to: r.shaft,
          text: `shaft ${bare(r.shaft.y - minY)}`,
        }
      : undefined,
    r.foot > 0
      ? {
          id: 'foot',
          kind: 'leader',
          at: { x: -r.foot / 4, y: minY },
          field: 'weldLeg',
          text: `weld both sides, foot ${bare(r.foot)}`,
        }
      : undefined,
    thicknessLeader(part, context.format),
  ]);
}
