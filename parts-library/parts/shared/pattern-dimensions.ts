// A bolt pattern on the print: its reading drawn where the caliper was put, the circle it gives, the holes' call-out.
import type { Point } from '../../geometry/index.js';
import type { Dimension } from '../../model/index.js';
import type { Tagged } from '../../units/index.js';
import type { DrawContext } from '../family.js';
import type { ResolvedPattern } from './pattern.js';

/** `110 ±0.1`; the ± is left out where there is none. */
export const withinText = (context: DrawContext, mm: number, plusMinus: number | undefined): string =>
  plusMinus === undefined || plusMinus === 0
    ? context.format.bare(mm)
    : `${context.format.bare(mm)} ±${context.format.bare(plusMinus)}`;

type EdgeToEdge = Extract<Tagged, { readonly way: 'edges' | 'across' }>;

/** The reading of the pattern, drawn where the caliper was put. */
function readingDimension(
  { pattern, circle }: ResolvedPattern,
  reading: Tagged | undefined,
  base: { readonly id: string; readonly field: string; readonly order: number },
  context: DrawContext,
): Dimension {
  const holes = pattern.holes.map(({ at }) => at);
  const first = holes[0] ?? { x: 0, y: 0 };
  const other = (step: number): Point => holes[step % holes.length] ?? first;
  const radius = circle.diameter / 2;
  const asCircle = (): Dimension => ({
    ...base,
    kind: 'diameter',
    centre: { x: 0, y: 0 },
    radius,
    text: `⌀${withinText(context, circle.diameter, circle.plusMinus)}`,
  });
  const shifted = (from: Point, towards: Point, by: number): Point => {
    const length = Math.hypot(towards.x - from.x, towards.y - from.y) || 1;
    return {
      x: from.x + ((towards.x - from.x) * by) / length,
      y: from.y + ((towards.y - from.y) * by) / length,
    };
  };
  /** From edge to edge of two holes; `inwards` 1 between the near edges, -1 over the far ones, 0 at the centres. */
  const between = (to: Point, edge: EdgeToEdge, inwards: number): Dimension => {
    const by = ((edge.hole?.mm ?? circle.holeDiameter ?? pattern.holeDiameter) / 2) * inwards;
    return {
      ...base,
      kind: 'linear',
      from: shifted(first, to, by),
      to: shifted(to, first, by),
      along: 'aligned',
      text: withinText(context, edge.distance, edge.plusMinus),
    };
  };
  if (reading === undefined) return asCircle();
  switch (reading.way) {
    case 'steps': {
      const to = other(reading.step);
      return {
        ...base,
        kind: 'linear',
        from: first,
        to,
        along: 'aligned',
        text: withinText(context, reading.distance, reading.plusMinus),
      };
    }
    case 'edges':
      return between(other(reading.step), reading, reading.side === 'near' ? 1 : -1);
    case 'across': {
      const inwards = { centres: 0, near: 1, far: -1 } as const;
      return between(other(Math.floor(holes.length / 2)), reading, inwards[reading.side]);
    }
    case 'from-bore':
      return {
        ...base,
        kind: 'linear',
        from: shifted({ x: 0, y: 0 }, first, reading.bore.mm / 2),
        to: shifted({ x: 0, y: 0 }, first, reading.bore.mm / 2 + reading.distance),
        along: 'aligned',
        text: withinText(context, reading.distance, reading.plusMinus),
      };
    default:
      return asCircle();
  }
}

/** `6 × ⌀11`, `6 × drill ⌀8.5, tap M10`, `6 × mark, drill ⌀11`. */
export function patternCallOut({ pattern }: ResolvedPattern, context: DrawContext): string {
  const size = `⌀${context.format.bare(pattern.holeDiameter)}`;
  switch (pattern.made) {
    case 'tapped':
      return `${pattern.count} × drill ${size}, tap ${pattern.thread.name}`;
    case 'drill':
      return `${pattern.count} × mark, drill ${size} for ${pattern.thread.name}`;
    default:
      return `${pattern.count} × ${size} for ${pattern.thread.name}`;
  }
}

/**
 * How the pattern's circle was measured and, where that was not the circle itself, the circle that it gives.
 * @param next gives each dimension its place in the order of measuring
 */
export function circleDimensions(
  one: ResolvedPattern,
  context: DrawContext,
  next: () => number,
): readonly Dimension[] {
  const { id, fieldPrefix } = one.pattern;
  const reading = one.parameters.boltCircle.measure.readings[0];
  const measured = readingDimension(
    one,
    reading,
    { id: `${id}.circle`, field: `${fieldPrefix}boltCircle`, order: next() },
    context,
  );
  if (reading?.way === 'circle') return [measured];
  return [
    measured,
    {
      id: `${id}.circle.gives`,
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: one.circle.diameter / 2,
      order: next(),
      text: `⌀${withinText(context, one.circle.diameter, one.circle.plusMinus)}`,
    },
  ];
}
