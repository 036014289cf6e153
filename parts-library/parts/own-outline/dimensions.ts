// What the print of an own outline shows: overall sizes, holes by size, where they stand, lines.
import { boundsOf, type Point } from '../../geometry/index.js';
import { isLine, isOpening, outlineOf, type Dimension, type Part } from '../../model/index.js';
import type { DrawContext } from '../family.js';
import { inOrder, type DimensionSpec } from '../shared/in-order.js';
import { thicknessLeader } from '../shared/thickness-leader.js';
import { holeGroups, type HoleGroup } from './groups.js';
import type { OwnOutline } from './parameters.js';

/** Sizes of hole that are called out; more would hide the part. */
const CALLED_OUT = 5;

/** `4 × ⌀9`, `2 × drill ⌀6`. */
function callOut({ size, made, places }: HoleGroup, { format }: DrawContext): string {
  const times = places.length > 1 ? `${places.length} × ` : '';
  return `${times}${made === 'drill' ? 'drill ' : ''}⌀${format.bare(size)}`;
}

/** The place of a group that is easiest to point at: the one farthest up and to the right. */
const outermost = ({ places }: HoleGroup): Point =>
  places.reduce((a, b) => (b.x + b.y > a.x + a.y ? b : a), places[0] ?? { x: 0, y: 0 });

/** A span that a caliper can tell from none, mm. */
const LEAST_SPAN = 0.01;

/** Where the lower left hole stands, and how far the holes of its size reach across and up. */
function placesOf(group: HoleGroup | undefined, { format }: DrawContext): readonly DimensionSpec[] {
  const first = group?.places.reduce((a, b) => (b.x + b.y < a.x + a.y ? b : a));
  if (group === undefined || first === undefined) return [];
  const right = group.places.reduce((a, b) => (b.x > a.x + LEAST_SPAN ? b : a));
  const top = group.places.reduce((a, b) => (b.y > a.y + LEAST_SPAN ? b : a));
  const across = right.x - first.x;
  const up = top.y - first.y;
  return [
    {
      id: 'first.x',
      kind: 'linear',
      along: 'x',
      from: { x: 0, y: first.y },
      to: first,
      text: format.bare(first.x),
    },
    {
      id: 'first.y',
      kind: 'linear',
      along: 'y',
      from: { x: first.x, y: 0 },
      to: first,
      text: format.bare(first.y),
    },
    ...(across > LEAST_SPAN
      ? [
          {
            id: 'across',
            kind: 'linear' as const,
            along: 'x' as const,
            from: first,
            to: right,
            text: format.bare(across),
          },
        ]
      : []),
    ...(up > LEAST_SPAN
      ? [
          {
            id: 'up',
            kind: 'linear' as const,
            along: 'y' as const,
            from: first,
            to: top,
            text: format.bare(up),
          },
        ]
      : []),
  ];
}

/** Openings that are no holes: one by its size, several by their number. */
function openingsOf(part: Part, { format }: DrawContext): readonly DimensionSpec[] {
  const others = part.features.filter(isOpening).filter(({ hole }) => hole === undefined);
  const [first] = others;
  const at = first?.contour[0];
  if (first === undefined || at === undefined) return [];
  const { minX, minY, maxX, maxY } = boundsOf(first.contour);
  const size = `${format.bare(maxX - minX)} × ${format.bare(maxY - minY)} as drawn`;
  const text = others.length === 1 ? size : `${others.length} openings as drawn`;
  return [{ id: 'openings', kind: 'leader', at: { x: at.x, y: at.y }, text }];
}

/** Score and etch lines, each kind by one leader. */
function linesOf(part: Part): readonly DimensionSpec[] {
  return (['score', 'etch'] as const).flatMap((purpose): readonly DimensionSpec[] => {
    const lines = part.features
      .filter(isLine)
      .filter((line) => line.purpose === purpose && line.name !== 'label');
    const [first] = lines;
    const at = first?.path.vertices[0];
    if (at === undefined) return [];
    const words = lines.length === 1 ? `${purpose} line` : `${lines.length} ${purpose} lines`;
    return [{ id: purpose, kind: 'leader', at: { x: at.x, y: at.y }, text: words }];
  });
}

export function ownOutlineDimensions(part: Part, p: OwnOutline, context: DrawContext): readonly Dimension[] {
  const { contour } = outlineOf(part);
  const { minX, minY, maxX, maxY } = boundsOf(contour);
  const groups = holeGroups(part.features);
  const { format } = context;
  return inOrder([
    {
      id: 'width',
      kind: 'linear',
      along: 'x',
      from: { x: minX, y: minY },
      to: { x: maxX, y: minY },
      field: 'width',
      text: format.bare(maxX - minX),
    },
    {
      id: 'height',
      kind: 'linear',
      along: 'y',
      from: { x: minX, y: minY },
      to: { x: minX, y: maxY },
      field: 'height',
      text: format.bare(maxY - minY),
    },
    ...groups.slice(0, CALLED_OUT).map((group, index): DimensionSpec => ({
      id: `holes.${index + 1}`,
      kind: 'leader',
      at: outermost(group),
      field: 'markUpTo',
      text: callOut(group, context),
    })),
    ...placesOf(groups[0], context),
    ...openingsOf(part, context),
    ...linesOf(part),
    thicknessLeader(part, format),
    p.turn.value === 0
      ? undefined
      : {
          id: 'turn',
          kind: 'leader',
          at: { x: (minX + maxX) / 2, y: maxY },
          field: 'turn',
          text: `turned ${Number(p.turn.value.toFixed(2))}°`,
        },
  ]);
}
