// Ghosts of a ring spacer: the stack seen from its edge between the two parts, bolt head and bolt circle.
import type { Facts } from '../../checks/index.js';
import { polygonContour, type Contour } from '../../geometry/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { Ghost, Part } from '../../model/index.js';
import { headGhosts } from '../shared/bolted.js';
import type { RingSpacer } from './parameters.js';
import { resolveRing, type Ring } from './resolve.js';
import { bareFine, ringsText } from './words.js';

const MIDDLE = { x: 0, y: 0 };

/** Room between ring and stack, as a share of the outside: a dimension stands in it. */
const APART = 0.32;
/** Height of the parts that the stack stands between, as a share of the outside. */
const CHEEK = 0.09;

/** One ring of the stack from its edge. */
export interface RingFromEdge {
  readonly thickness: number;
  readonly from: number;
  readonly to: number;
}

/** The gap and the rings in it, laid under the ring; y in mm. */
export interface StackView {
  readonly half: number;
  readonly top: number;
  readonly bottom: number;
  readonly rings: readonly RingFromEdge[];
}

/** Where the stack is drawn: thick rings outside, the thinnest between them; what remains is at the top. */
export function stackView(gap: number, { stack, outside }: Ring): StackView {
  const half = outside / 2;
  const top = -half - outside * (APART + CHEEK);
  const bottom = top - gap;
  const thicknesses = stack.layers.flatMap(({ sheet, count }) =>
    Array.from({ length: count }, () => sheet.thickness),
  );
  const [first = 0, ...rest] = thicknesses;
  const ordered = [first, ...rest.toReversed()];
  let at = bottom;
  const rings = ordered.map((thickness): RingFromEdge => {
    const from = at;
    at += thickness;
    return { thickness, from, to: at };
  });
  return { half, top, bottom, rings };
}

const box = (half: number, from: number, to: number): Contour =>
  polygonContour(
    [
      { x: -half, y: from },
      { x: half, y: from },
      { x: half, y: to },
      { x: -half, y: to },
    ],
    { direction: 'outline' },
  );

function stackGhosts(p: RingSpacer, ring: Ring, facts: Facts): readonly Ghost[] {
  const view = stackView(p.gap.mm, ring);
  const cheek = CHEEK * ring.outside;
  const wide = view.half * 1.12;
  return [
    { id: 'cheek.above', kind: 'mating-part', shape: { contour: box(wide, view.top, view.top + cheek) } },
    ...view.rings.map(({ from, to }, index): Ghost => ({
      id: `stack.${index + 1}`,
      kind: 'folded',
      shape: { contour: box(view.half, from, to) },
    })),
    {
      id: 'cheek.below',
      kind: 'mating-part',
      label: `from the edge: ${ringsText(ring.stack.rings)}, ${bareFine(ring.stack.remains, facts.format)} remains`,
      shape: { contour: box(wide, view.bottom - cheek, view.bottom) },
    },
  ];
}

export function ringSpacerGhosts(_part: Part, p: RingSpacer, facts: Facts): readonly Ghost[] {
  const answer = resolveRing(p);
  if (!answer.ok) return [];
  const ring = answer.value;
  const envelope = boltEnvelope(ring.thread);
  const head: readonly Ghost[] =
    p.bore !== undefined || !envelope.found
      ? []
      : [
          {
            id: 'head',
            kind: 'bolt-head',
            label: `head of ${ring.thread.name}`,
            shape: { circle: { centre: MIDDLE, radius: envelope.row.acrossCorners.value / 2 } },
          },
        ];
  const holes: readonly Ghost[] =
    ring.holes === undefined
      ? []
      : [
          {
            id: 'pattern.circle',
            kind: 'bolt-circle',
            shape: { circle: { centre: MIDDLE, radius: ring.holes.circle.diameter / 2 } },
          },
          ...headGhosts(ring.holes.size, ring.holes.places),
        ];
  return [...head, ...holes, ...stackGhosts(p, ring, facts)];
}
