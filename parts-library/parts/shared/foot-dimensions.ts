// Dimensions of a bolted foot laid flat: holes, their place, the bend.
import type { Format } from '../../model/index.js';
import type { PlacedHole } from './bolted.js';
import type { BentFoot, FootParameters } from './foot.js';
import { holeCallOut, type SizedHole } from './holes.js';
import type { DimensionSpec } from './in-order.js';

export interface DrawnFoot {
  readonly base: number;
  /** Lower end of the plate, y in mm. */
  readonly footEnd: number;
  readonly bend: BentFoot | undefined;
  readonly size: SizedHole;
  readonly holes: readonly PlacedHole[];
}

/** Nothing for a foot that is welded by its edge. */
export function footDimensions(
  p: FootParameters,
  { base, footEnd, bend, size, holes }: DrawnFoot,
  format: Format,
): readonly DimensionSpec[] {
  const first = holes[0];
  const last = holes.at(-1);
  if (first === undefined || last === undefined) return [];
  const text = format.bare;
  const half = base / 2;
  return [
    {
      id: 'foot.holes',
      kind: 'leader',
      at: last.at,
      field: 'bolt',
      text: holeCallOut(size, holes.length, format),
    },
    ...(last === first
      ? []
      : [
          {
            id: 'spacing',
            kind: 'linear' as const,
            along: 'x' as const,
            from: first.at,
            to: holes[1]?.at ?? last.at,
            field: 'spacing',
            text: text(p.spacing.mm),
          },
        ]),
    {
      id: 'inset',
      kind: 'linear',
      along: 'y',
      from: { x: half, y: footEnd },
      to: last.at,
      field: 'inset',
      text: text(p.inset.mm),
    },
    {
      id: 'foot',
      kind: 'linear',
      along: 'y',
      from: { x: half, y: footEnd },
      to: { x: half, y: bend?.bendAt ?? 0 },
      field: 'footDepth',
      text: text((bend?.bendAt ?? 0) - footEnd),
    },
    ...(bend === undefined
      ? []
      : [
          {
            id: 'bend',
            kind: 'leader' as const,
            at: { x: -half / 2, y: bend.bendAt },
            field: 'radius',
            text: `bend up 90° R${text(p.radius.mm)}`,
          },
        ]),
  ];
}
