// A wheel-hub adapter resolved once: both patterns, the stud holes, thicknesses after machining, outside.
import { boltHead, boltLength } from '../../handbook/index.js';
import { resolvePattern, type ResolvedPattern } from '../shared/pattern.js';
import type { WheelHubAdapter } from './parameters.js';

export interface ResolvedAdapter {
  readonly hub: ResolvedPattern;
  readonly wheel: ResolvedPattern;
  /** Hub's face to the wheel's seat, mm. */
  readonly flange: number;
  /** What is clamped under the hub's nuts after counterbore, mm. */
  readonly underNuts: number;
  /** Depth of a cone seat in it, mm; 0 when flat. */
  readonly cone: number;
  /** How far the hub's nuts or heads stand out of the wheel's seat, mm; negative below it. */
  readonly proud: number;
  /** Thread of the stud past the wheel's metal, mm. */
  readonly nutGrip: number;
  /** Length of the bore on the hub's pilot, mm. */
  readonly bore: number;
  /** Centre opening as cut, mm. */
  readonly drawn: number;
  readonly reach: number;
  /** Diameter over a stud's head, mm. */
  readonly studHead: number;
}

export type AdapterAnswer =
  | { readonly ok: true; readonly value: ResolvedAdapter }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Edge distance when none is given, in bolt diameters: the upper end of the shop rule of 1.5 to 2. */
const USUAL_EDGE = 2;
/** Cone of a nut across, in bolt diameters, when it was not measured. */
const USUAL_CONE = 1.5;
/** Head of a pressed stud across, in thread diameters, when it was not measured. */
const USUAL_HEAD = 1.6;
/** Threads that stand out of a nut. */
const THREADS_TO_SEE = 2;

const refuse = (field: string, says: string): Extract<AdapterAnswer, { ok: false }> => ({
  ok: false,
  field,
  says,
});

/** The wheel's pattern: marks to be reamed for the knurl, or to be tapped. */
function resolveWheel(p: WheelHubAdapter) {
  const bore = p.knurl.mm - p.press.mm;
  const answer = resolvePattern(
    {
      ...p.pattern2,
      holes:
        p.studs === 'threaded'
          ? { kind: 'tapped' }
          : { kind: 'plain', diameter: { typed: `${bore} mm`, mm: bore } },
      holeFit: 'normal',
      threadPercent: undefined,
      boltedBy: 'hole',
    },
    'pattern2',
  );
  if (!answer.ok || p.studs === 'threaded') return answer;
  const { pattern, size } = answer.value;
  if (p.knurl.mm <= pattern.thread.diameter) {
    return refuse(
      'knurl',
      `A knurl of ${p.knurl.mm} mm does not stand out over ${pattern.thread.name}; measure over the knurl’s tips, or choose studs that screw in.`,
    );
  }
  // No torch makes a press fit: the holes are drilled and reamed.
  const value = {
    ...answer.value,
    size: { ...size, made: 'drill' as const },
    pattern: { ...pattern, made: 'drill' as const },
  };
  return { ok: true as const, value };
}

/** How far a nut on its washer, or a head on its washer, stands over its seat, mm. */
function heightOver({ pattern }: ResolvedPattern, seat: 'flat' | 'cone'): number {
  const { thread } = pattern;
  const head = boltHead(thread);
  const nut = boltLength(thread, 0);
  const washer = seat === 'flat' && nut.found ? nut.row.washer : 0;
  return pattern.boltedBy === 'stud'
    ? washer + (nut.found ? nut.row.nut : thread.diameter) + THREADS_TO_SEE * thread.pitch
    : washer + (head.found ? (head.row.headHeight ?? thread.diameter) : thread.diameter);
}

function resolveFresh(p: WheelHubAdapter): AdapterAnswer {
  const hub = resolvePattern(p, 'pattern1');
  if (!hub.ok) return hub;
  const wheel = resolveWheel(p);
  if (!wheel.ok) return wheel;
  const standing = p.wheelPilot === 'spigot' ? p.spigot.mm : 0;
  const flange = p.thickness.mm - 2 * p.faceAllowance.mm - standing;
  if (flange <= 0) {
    return refuse(
      'thickness',
      `Facing ${p.faceAllowance.mm} mm off each side and turning a spigot of ${standing} mm leave nothing of ${p.thickness.mm} mm plate; a thicker plate or a lower spigot would do.`,
    );
  }
  const underNuts = flange - p.sink.mm;
  const { diameter } = hub.value.pattern.thread;
  const across = p.hubCone?.mm ?? USUAL_CONE * diameter;
  const cone =
    p.hubSeat === 'cone'
      ? Math.max(0, (across - hub.value.pattern.holeDiameter) / 2 / Math.tan(Math.PI / 6))
      : 0;
  if (underNuts - cone <= 0) {
    return refuse(
      p.sink.mm > 0 ? 'sink' : 'hubSeat',
      `Counterbore and cone of ${(p.sink.mm + cone).toFixed(2)} mm go through the flange of ${flange.toFixed(2)} mm; a thicker plate or a shallower seat would do.`,
    );
  }
  const drawn = p.hubPilot.mm - p.boreAllowance.mm;
  if (drawn <= 0) {
    return refuse(
      'boreAllowance',
      `Nothing is left to cut of a pilot of ${p.hubPilot.mm} mm; a smaller allowance would do.`,
    );
  }
  const outermost = [hub.value, wheel.value].map(
    ({ circle, pattern }) => circle.diameter / 2 + USUAL_EDGE * pattern.thread.diameter,
  );
  const reach = p.outside === undefined ? Math.max(...outermost) : p.outside.mm / 2;
  if (reach <= p.hubPilot.mm / 2) {
    return refuse(
      'outside',
      `An outside of ${(2 * reach).toFixed(2)} mm leaves no metal round a pilot of ${p.hubPilot.mm} mm; a larger one would do.`,
    );
  }
  return {
    ok: true,
    value: {
      hub: hub.value,
      wheel: wheel.value,
      flange,
      underNuts,
      cone,
      proud: heightOver(hub.value, p.hubSeat) - cone - p.sink.mm,
      nutGrip: p.studLength.mm - p.wheelThickness.mm,
      bore: flange + standing,
      drawn,
      reach,
      studHead: p.studHead?.mm ?? USUAL_HEAD * wheel.value.pattern.thread.diameter,
    },
  };
}

/** The rim is shown beside the adapter unless it is so large that the adapter would shrink to a dot, in reaches. */
const FARTHEST_RIM = 2.5;

/** Direction in which the rim is shown, degrees: away from the caliper's arcs, between the dimensions. */
export const RIM_AT = 45;

/** Radius at which the rim stands on the print, mm; undefined where it is too far out. */
export function shownRim(p: WheelHubAdapter, { reach }: ResolvedAdapter): number | undefined {
  const radius = p.wheel.mm / 2;
  return radius > reach && radius <= FARTHEST_RIM * reach ? radius : undefined;
}

const resolved = new WeakMap<WheelHubAdapter, AdapterAnswer>();

/** Resolves parameters; the same parameters object is resolved once, since every stage asks for it. */
export function resolveHubAdapter(p: WheelHubAdapter): AdapterAnswer {
  const known = resolved.get(p);
  if (known !== undefined) return known;
  const fresh = resolveFresh(p);
  resolved.set(p, fresh);
  return fresh;
}
