// Dimensions, ghosts, derived values of a tube cap or base plate.
import type { Facts } from '../../checks/index.js';
import type { Derived, Dimension, Ghost, Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { headGhosts } from '../shared/bolted.js';
import { holeCallOut } from '../shared/holes.js';
import { inOrder } from '../shared/in-order.js';
import { boxGhost } from '../shared/mating.js';
import type { TubeCap } from './parameters.js';
import { aroundOf, filletOf, resolveCap, sectionContour, type ResolvedCap } from './resolve.js';

/** Room between the flat plate and its side view, and the piece of tube shown, as shares of the plate’s width. */
const SIDE_ROOM = 0.35;
const TUBE_SHOWN = 0.55;

const sideLeft = ({ plate, tube }: ResolvedCap): number =>
  Math.max(plate.width, tube.width) * (0.5 + SIDE_ROOM);

/** Where the plate lies in the side view: its left edge, its foot. */
function sideBox(p: TubeCap, r: ResolvedCap, leg: number) {
  const widest = Math.max(r.plate.width, r.tube.width);
  const middle = sideLeft(r) + widest / 2;
  const foot = -widest * 0.3;
  const sill = p.kind === 'plug' ? foot + leg : foot;
  return { middle, foot, sill, head: foot + p.thickness.mm + widest * TUBE_SHOWN };
}

export function tubeCapDimensions(_part: Part, p: TubeCap, { format }: DrawContext): readonly Dimension[] {
  const answer = resolveCap(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { plate, size, holes } = r;
  const text = format.bare;
  const leg = filletOf(p, format.unit);
  const side = sideBox(p, r, leg);
  const [w, h] = [plate.width / 2, plate.height / 2];
  const isBase = p.kind === 'base';
  const first = holes[0];
  const shelf =
    p.shelf.mm < 0 ? `set in ${text(-p.shelf.mm)}` : p.shelf.mm === 0 ? 'flush' : `proud ${text(p.shelf.mm)}`;
  return inOrder([
    plate.isRound
      ? {
          id: 'size',
          kind: 'diameter',
          centre: { x: 0, y: 0 },
          radius: w,
          field: isBase ? 'width' : 'outside',
          text: `⌀${text(plate.width)}`,
        }
      : {
          id: 'size',
          kind: 'linear',
          along: 'x',
          from: { x: -w, y: -h },
          to: { x: w, y: -h },
          field: isBase ? 'width' : 'outside',
          text: text(plate.width),
        },
    plate.isRound
      ? undefined
      : {
          id: 'depth',
          kind: 'linear',
          along: 'y',
          from: { x: -w, y: -h },
          to: { x: -w, y: h },
          field: isBase ? 'depth' : p.section === 'rectangular' ? 'otherSide' : 'outside',
          text: text(plate.height),
        },
    plate.isRound || plate.corner === 0
      ? undefined
      : {
          id: 'corner',
          kind: 'radius',
          centre: { x: w - plate.corner, y: h - plate.corner },
          radius: plate.corner,
          degrees: 45,
          field: isBase ? 'cornerRadius' : 'tubeCorner',
          text: `R${text(plate.corner)}`,
        },
    p.vent === 'here'
      ? {
          id: 'vent',
          kind: 'leader',
          at: { x: 0, y: 0 },
          field: 'ventDiameter',
          text: `vent ⌀${text(p.ventDiameter.mm)}`,
        }
      : undefined,
    first === undefined
      ? undefined
      : {
          id: 'bolts',
          kind: 'leader',
          at: first.at,
          field: 'bolt',
          text: holeCallOut(size, holes.length, format),
        },
    first === undefined || plate.isRound
      ? undefined
      : {
          id: 'across',
          kind: 'linear',
          along: 'x',
          from: { x: -first.at.x, y: first.at.y },
          to: first.at,
          field: 'inset',
          text: text(2 * first.at.x),
        },
    first === undefined || plate.isRound || p.bolts === 2
      ? undefined
      : {
          id: 'up',
          kind: 'linear',
          along: 'y',
          from: { x: first.at.x, y: -first.at.y },
          to: first.at,
          field: 'inset',
          text: text(2 * first.at.y),
        },
    first !== undefined && plate.isRound
      ? {
          id: 'circle',
          kind: 'diameter',
          centre: { x: 0, y: 0 },
          radius: w - p.inset.mm,
          field: 'inset',
          text: `⌀${text(plate.width - 2 * p.inset.mm)}`,
        }
      : undefined,
    p.kind === 'cap'
      ? {
          id: 'shelf',
          kind: 'leader',
          at: { x: side.middle - plate.width / 2, y: side.sill + p.thickness.mm / 2 },
          field: 'shelf',
          text: shelf,
        }
      : undefined,
    {
      id: 'thickness',
      kind: 'linear',
      along: 'y',
      from: { x: side.middle + plate.width / 2, y: side.sill },
      to: { x: side.middle + plate.width / 2, y: side.sill + p.thickness.mm },
      field: 'thickness',
      text: text(p.thickness.mm),
    },
    {
      id: 'tube',
      kind: 'linear',
      along: 'x',
      from: { x: side.middle - r.tube.width / 2, y: side.head },
      to: { x: side.middle + r.tube.width / 2, y: side.head },
      field: 'outside',
      text: `${r.tube.isRound ? '⌀' : ''}${text(r.tube.width)}`,
    },
    {
      id: 'weld',
      kind: 'leader',
      at: { x: side.middle + r.tube.width / 2, y: side.sill + p.thickness.mm + leg / 2 },
      field: 'weldLeg',
      text: `fillet ${text(leg)} all round`,
    },
  ]);
}

export function tubeCapGhosts(_part: Part, p: TubeCap, { format }: Facts): readonly Ghost[] {
  const answer = resolveCap(p);
  if (!answer.ok) return [];
  const r = answer.value;
  const { tube, inside, plate, holes, size } = r;
  const leg = filletOf(p, format.unit);
  const side = sideBox(p, r, leg);
  const half = tube.width / 2;
  const top = p.kind === 'plug' ? side.foot : side.sill + p.thickness.mm;
  return [
    {
      id: 'tube',
      kind: 'mating-part',
      label: `tube ${tube.isRound ? '⌀' : ''}${format.bare(tube.width)}${tube.isRound || tube.height === tube.width ? '' : ` × ${format.bare(tube.height)}`} × ${format.bare(p.wall.mm)}`,
      shape: { contour: sectionContour(tube, 'outline') },
    },
    { id: 'tube.inside', kind: 'mating-part', shape: { contour: sectionContour(inside, 'outline') } },
    ...(p.kind === 'base'
      ? [
          {
            id: 'weld',
            kind: 'weld' as const,
            shape: {
              contour: sectionContour(
                {
                  ...tube,
                  width: tube.width + 2 * leg,
                  height: tube.height + 2 * leg,
                  corner: tube.corner === 0 ? 0 : tube.corner + leg,
                },
                'outline',
              ),
            },
          },
        ]
      : []),
    ...headGhosts(size, holes),
    boxGhost('side.plate', 'folded', {
      x: [side.middle - plate.width / 2, side.middle + plate.width / 2],
      y: [side.sill, side.sill + p.thickness.mm],
    }),
    boxGhost(
      'side.tube',
      'mating-part',
      { x: [side.middle - half, side.middle + half], y: [top, side.head] },
      'from the side',
    ),
  ];
}

export function tubeCapDerived(_part: Part, p: TubeCap, { format }: DrawContext): readonly Derived[] {
  const answer = resolveCap(p);
  if (!answer.ok) return [];
  const { plate, inside, tube } = answer.value;
  const { length } = format;
  const around = aroundOf(p.kind === 'plug' ? inside : tube);
  return [
    {
      id: 'plate',
      field: p.kind === 'base' ? 'width' : 'outside',
      title: 'plate',
      value: { amount: plate.width, unit: 'mm' },
      text: plate.isRound
        ? `⌀${length(plate.width)}`
        : `${length(plate.width)} × ${length(plate.height)}, corners R ${length(plate.corner)}`,
    },
    {
      id: 'weld',
      field: 'weldLeg',
      title: 'weld',
      value: { amount: around, unit: 'mm' },
      text: `${length(around)} all round, leg ${length(filletOf(p, format.unit))}`,
    },
  ];
}
