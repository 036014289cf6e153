// A disc carrier resolved once: both patterns, the thicknesses after machining, outside and windows.
import { GeometryError, transformContour, type Contour } from '../../geometry/index.js';
import { minWeb } from '../../handbook/index.js';
import { resolvePattern, type ResolvedPattern } from '../shared/pattern.js';
import { drawCarrierOutside, type CarrierOutside } from './outside.js';
import type { DiscCarrier } from './parameters.js';
import { windowBetween, type WindowShape } from './windows.js';

export interface ResolvedCarrier {
  readonly disc: ResolvedPattern;
  readonly hub: ResolvedPattern;
  /** Thickness between the faced sides, mm. */
  readonly finished: number;
  /** How deep the disc's seat is turned below the face on its side, mm. */
  readonly depth: number;
  /** What is left under the disc's bolts, mm. */
  readonly lobe: number;
  /** Hub's face to the disc's seat, mm. */
  readonly offset: number;
  /** Centre opening as cut, mm. */
  readonly drawn: number;
  readonly outside: CarrierOutside;
  readonly windows: readonly Contour[];
  readonly window: WindowShape;
}

export type CarrierAnswer =
  | { readonly ok: true; readonly value: ResolvedCarrier }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Metal round windows when none is given, in plate thicknesses: between the least of 1 and the guideline of 1.5. */
const USUAL_WEB = 1.25;

const refuse = (field: string, says: string): Extract<CarrierAnswer, { ok: false }> => ({
  ok: false,
  field,
  says,
});

/** Thicknesses after facing and turning, or what does not go together. */
function thicknessesOf(p: DiscCarrier) {
  const finished = p.thickness.mm - 2 * p.faceAllowance.mm;
  if (finished <= 0) {
    return refuse(
      'faceAllowance',
      `Facing ${p.faceAllowance.mm} mm off each side leaves nothing of ${p.thickness.mm} mm plate; a thicker plate or less allowance would do.`,
    );
  }
  const shoulder = p.discPilot === 'turned' ? p.shoulder.mm : 0;
  const far = p.discSide === 'far';
  const offset = p.offset?.mm ?? (far ? finished - shoulder : shoulder);
  const depth = far ? finished - offset : offset;
  if (depth < 0) {
    return refuse(
      'offset',
      `The disc’s seat would stand ${(-depth).toFixed(2)} mm off the faced plate of ${finished.toFixed(2)} mm; a thicker plate, or ring spacers under the disc, would do.`,
    );
  }
  const lobe = finished - depth;
  if (lobe <= 0) {
    return refuse(
      p.offset === undefined ? 'shoulder' : 'offset',
      `Turning the seat ${depth.toFixed(2)} mm deep leaves nothing of ${finished.toFixed(2)} mm under the disc’s bolts; a thicker plate would do.`,
    );
  }
  return { ok: true as const, finished, depth, lobe, offset };
}

/** A window in every gap between two spokes; in an even pattern one is drawn and turned. */
function windowsBetween(disc: ResolvedPattern, shape: WindowShape): readonly Contour[] {
  const { holes, count } = disc.pattern;
  const degrees = holes.map(({ at }) => (Math.atan2(at.y, at.x) * 180) / Math.PI).toSorted((a, b) => a - b);
  if (disc.circle.evenlySpaced) {
    const from = degrees[0] ?? 0;
    const first = windowBetween(from, from + 360 / count, shape);
    if (first === undefined) return [];
    return degrees.map((_, index) =>
      index === 0 ? first : transformContour(first, { rotateDegrees: (360 * index) / count }),
    );
  }
  return degrees.flatMap((from, index) => {
    const contour = windowBetween(from, degrees[(index + 1) % degrees.length] ?? from, shape);
    return contour === undefined ? [] : [contour];
  });
}

function resolveFresh(p: DiscCarrier): CarrierAnswer {
  const disc = resolvePattern(p, 'pattern1');
  if (!disc.ok) return disc;
  const hub = resolvePattern(p.pattern2, 'pattern2');
  if (!hub.ok) return hub;
  const sizes = thicknessesOf(p);
  if (!sizes.ok) return sizes;
  const drawn = p.hubPilot.mm - p.boreAllowance.mm;
  if (drawn <= 0) {
    return refuse(
      'boreAllowance',
      `Nothing is left to cut of a pilot of ${p.hubPilot.mm} mm; a smaller allowance would do.`,
    );
  }
  if (hub.value.circle.diameter >= disc.value.circle.diameter) {
    return refuse(
      'pattern2.boltCircle',
      `The hub’s bolts lie on ⌀${hub.value.circle.diameter.toFixed(2)} mm, outside the disc’s ⌀${disc.value.circle.diameter.toFixed(2)} mm; this carrier goes from a smaller hub to a larger disc.`,
    );
  }
  const hubReach = Math.max(
    p.hubPilot.mm / 2,
    hub.value.circle.diameter / 2 + hub.value.pattern.holeDiameter / 2,
  );
  const web = p.windowWeb?.mm ?? Math.max(USUAL_WEB * p.thickness.mm, minWeb(p.thickness.mm).value);
  try {
    const outside = drawCarrierOutside(p, disc.value, hubReach + web);
    if (!outside.ok) return outside;
    const { circle, pattern } = disc.value;
    const window: WindowShape = {
      inner: hubReach + web,
      outer: Math.min(outside.value.floor, circle.diameter / 2 - pattern.holeDiameter / 2) - web,
      spoke: p.spoke.mm,
      corner: p.windowCorner.mm,
    };
    const windows = p.windows === 'none' ? [] : windowsBetween(disc.value, window);
    return {
      ok: true,
      value: { disc: disc.value, hub: hub.value, ...sizes, drawn, outside: outside.value, windows, window },
    };
  } catch (error) {
    // Only the outside is built from free-form arcs; anything but a geometry fault is a defect and goes on up.
    if (error instanceof GeometryError) return refuse('edge', error.message);
    throw error;
  }
}

const resolved = new WeakMap<DiscCarrier, CarrierAnswer>();

/** Resolves parameters; the same parameters object is resolved once, since every stage asks for it. */
export function resolveCarrier(p: DiscCarrier): CarrierAnswer {
  const known = resolved.get(p);
  if (known !== undefined) return known;
  const fresh = resolveFresh(p);
  resolved.set(p, fresh);
  return fresh;
}
