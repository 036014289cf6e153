// The outer edge of a carrier: lobes round the disc's bolts with tangent hollows, or a plain round.
import { circleContour, makeContour, type Contour } from '../../geometry/index.js';
import { drawLobes } from '../shared/lobes.js';
import type { ResolvedPattern } from '../shared/pattern.js';
import type { DiscCarrier } from './parameters.js';

export interface CarrierOutside {
  readonly contour: Contour;
  /** Greatest and least distance of the edge from the middle, mm. */
  readonly reach: number;
  readonly floor: number;
  /** From a disc bolt's centre to the edge, mm. */
  readonly edge: number;
  /** Smallest radius of the hollows, mm; lobed only. */
  readonly scallop?: number;
}

export type OutsideAnswer =
  | { readonly ok: true; readonly value: CarrierOutside }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Edge distance when none is given, in bolt diameters, and the share of half a pitch that a lobe may take. */
const USUAL_EDGE = 2;
const LOBE_SHARE = 0.85;
/** Seat left outside the pilot shoulder in the hollows, mm. */
const RIM_OF_SEAT = 2;
/** A hollow flatter than this share of a lobe's radius above the line of centres is hardly a hollow. */
const FLATTEST = 0.8;

/** Draws the outside. `inner` is how far from the middle metal must reach for the hub's holes and pilot, mm. */
export function drawCarrierOutside(p: DiscCarrier, disc: ResolvedPattern, inner: number): OutsideAnswer {
  const circle = disc.circle.diameter / 2;
  const { holes, thread } = disc.pattern;
  const degrees = holes.map(({ at }) => (Math.atan2(at.y, at.x) * 180) / Math.PI).toSorted((a, b) => a - b);
  const gaps = degrees.map((angle, index) => {
    const next = degrees[(index + 1) % degrees.length] ?? angle;
    return (((next - angle) % 360) + 360) % 360 || 360;
  });
  const halfPitch = circle * Math.sin((Math.min(...gaps, 180) * Math.PI) / 360);
  const usual = USUAL_EDGE * thread.diameter;
  const edge = p.edge?.mm ?? (p.shape === 'round' ? usual : Math.min(usual, LOBE_SHARE * halfPitch));
  if (p.shape === 'round') {
    const reach = circle + edge;
    return {
      ok: true,
      value: { contour: circleContour({ x: 0, y: 0 }, reach, 'outline'), reach, floor: reach, edge },
    };
  }
  const pilot = p.discPilot === 'turned' ? p.boltedBore.mm / 2 + RIM_OF_SEAT : 0;
  // Between the widest pair a floor above this has no tangent hollow.
  const highest = circle * Math.cos((Math.max(...gaps) * Math.PI) / 360) + FLATTEST * edge;
  const floor = Math.min(Math.max(inner, pilot), highest);
  const drawn = drawLobes(
    degrees.map((angle) => ({ degrees: angle, reach: circle })),
    edge,
    { scallop: p.scallop?.mm, floor },
  );
  if (!drawn.ok) return { ...drawn, field: drawn.field === 'web' ? 'shape' : drawn.field };
  return {
    ok: true,
    value: {
      contour: makeContour(drawn.value.vertices, { direction: 'outline' }),
      reach: circle + edge,
      floor: drawn.value.leastReach,
      edge,
      scallop: Math.min(...drawn.value.scallops),
    },
  };
}
