// What is taken out of a sprocket for weight, and whether there is room for it between what is inside and the rim.
import { circleContour, type Contour } from '../../geometry/index.js';
import { boltEnvelope, boltHoles, goodWeb } from '../../handbook/index.js';
import { lastKnown } from '../shared/last-known.js';
import { innerWidth, ringWindows } from '../shared/ring-windows.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import type { ResolvedPattern } from '../shared/pattern.js';
import type { Middle } from './middle.js';
import type { SprocketPlate } from './parameters.js';
import type { Teeth } from './teeth.js';

export interface Lightening {
  readonly contours: readonly Contour[];
  readonly kind: 'windows' | 'holes';
  /** Between which diameters, mm. */
  readonly inner: number;
  readonly outer: number;
  /** Corner of a window or diameter of a hole, mm. */
  readonly size: number;
  /** Angle of the first spoke or hole, degrees. */
  readonly first: number;
}

/** Windows narrower than this are not worth their pierce, mm. */
const LEAST_WINDOW = 12;
/** Usual fillet in a window's corner, mm, and at most this share of the window. */
const USUAL_CORNER = 6;
const CORNER_SHARE = 0.3;
/** Metal between a weld or bore and the windows, in thicknesses: the adapter's web to its centre. */
const MIDDLE_WEB = 2.5;
/** Room round washers and heads, mm. */
const HEAD_ROOM = 2;

/** Windows outlive edits of teeth, bolts and lettering. */
const windowsOf = lastKnown(
  (inner: number, outer: number, count: number, spoke: number, corner: number, spokeAt: number) =>
    ringWindows({ inner, outer, count, spoke, corner, spokeAt }),
);

/** Diameter outside which lightening may begin: clear of bolt heads, bolt holes, bore, hub and weld. */
function insideOf(
  p: SprocketPlate,
  pattern: ResolvedPattern | undefined,
  middle: Middle | undefined,
): number {
  const { hub, finished = 0 } = middle?.centre ?? {};
  // The leg of a usual fillet is at most the plate's thickness.
  const middleEnds =
    Math.max(finished, hub === undefined ? 0 : hub.diameter + 2 * p.thickness.mm) +
    2 * MIDDLE_WEB * p.thickness.mm;
  if (pattern === undefined) return middleEnds;
  const envelope = boltEnvelope(pattern.pattern.thread);
  const head = envelope.found
    ? Math.max(envelope.row.washerOutside.value, envelope.row.acrossCorners.value) / 2 + HEAD_ROOM
    : 0;
  const hole = pattern.pattern.holeDiameter / 2 + goodWeb(p.thickness.mm).value;
  const reach = Math.max(...pattern.pattern.holes.map(({ at }) => Math.hypot(at.x, at.y)));
  return Math.max(middleEnds, 2 * (reach + Math.max(head, hole)));
}

/** The rim that stays under the teeth when nothing is given: one pitch, or two and a half thicknesses. */
const rimOf = (p: SprocketPlate, { chain }: Teeth): number => Math.max(chain.pitch, 2.5 * p.thickness.mm);

/** Lightening as asked for; undefined when it was asked for and there is no room, `none` when it was not. */
export function resolveLightening(
  p: SprocketPlate,
  teeth: Teeth,
  pattern: ResolvedPattern | undefined,
  middle: Middle | undefined,
): Resolved<Lightening | 'none' | undefined> {
  if (p.lightening === 'none') return { ok: true, value: 'none' };
  const inner = insideOf(p, pattern, middle);
  const outer = teeth.root - 2 * rimOf(p, teeth);
  return p.lightening === 'windows'
    ? resolveWindows(p, { inner, outer, root: teeth.root })
    : resolveHoles(p, { inner, outer });
}

function resolveWindows(
  p: SprocketPlate,
  room: { readonly inner: number; readonly outer: number; readonly root: number },
): Resolved<Lightening | undefined> {
  const inner = p.windowInner?.mm ?? room.inner;
  const outer = p.windowOuter?.mm ?? room.outer;
  const given = p.windowInner !== undefined && p.windowOuter !== undefined;
  if (given && outer <= inner) {
    return refusal(
      'windowOuter',
      `Windows from ⌀${inner.toFixed(1)} to ⌀${outer.toFixed(1)} mm have no depth; a larger end or a smaller beginning would do.`,
    );
  }
  if (outer >= room.root) {
    return refusal(
      'windowOuter',
      `Windows to ⌀${outer.toFixed(1)} mm cut into the gaps, whose bottoms lie on ⌀${room.root.toFixed(1)} mm; accepted is less.`,
    );
  }
  const first = p.openingsClocking?.value ?? p.clocking.value;
  const shape = { inner, outer, count: p.openings, spoke: p.spoke.mm, corner: 0, spokeAt: first };
  const depth = (outer - inner) / 2;
  const width = innerWidth(shape);
  if (!given && (depth < LEAST_WINDOW || width < LEAST_WINDOW)) return { ok: true, value: undefined };
  const corner = p.windowCorner?.mm ?? Math.min(USUAL_CORNER, CORNER_SHARE * Math.min(depth, width));
  const contours = windowsOf(inner, outer, p.openings, p.spoke.mm, corner, first);
  if (typeof contours === 'string') {
    return refusal(
      width <= 0 ? 'spoke' : 'windowCorner',
      `${contours} Narrower spokes, fewer windows or smaller corners would do.`,
    );
  }
  return { ok: true, value: { contours, kind: 'windows', inner, outer, size: corner, first } };
}

function resolveHoles(
  p: SprocketPlate,
  room: { readonly inner: number; readonly outer: number },
): Resolved<Lightening | undefined> {
  const size = p.holeSize.mm;
  const circle = p.holeCircle?.mm ?? (room.inner + room.outer) / 2;
  const isTight = circle - size < room.inner || circle + size > room.outer;
  if (p.holeCircle === undefined && isTight) return { ok: true, value: undefined };
  const first = p.openingsClocking?.value ?? p.clocking.value + 180 / p.openings;
  return {
    ok: true,
    value: {
      contours: boltHoles(circle, p.openings, first).map((at) => circleContour(at, size / 2, 'opening')),
      kind: 'holes',
      inner: circle - size,
      outer: circle + size,
      size,
      first,
    },
  };
}
