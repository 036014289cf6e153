// The bed: outer stops and inner wedge stops in slots along both tubes, strap bolts, an opening under the joint.
import {
  circleContour,
  makeContour,
  polygonContour,
  roundCorners,
  type Point,
} from '../../geometry/index.js';
import { boltEnvelope } from '../../handbook/index.js';
import type { CutFeature, EdgeUse, Feature } from '../../model/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { holeFeature, sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { largestRelief, tabSlot } from '../shared/tab-slot.js';
import { roundText } from '../shared/words.js';
import { alongB, crossing, legsOf, weldOpening, type Leg } from './frame.js';
import type { TackJig } from './parameters.js';

/** A slot with its place along a leg. */
export interface StopSlot {
  readonly id: string;
  readonly leg: Leg;
  readonly kind: 'stop' | 'wedge';
  readonly u: number;
  /** Middle of the slot, inwards from the outer side of the tube. */
  readonly v: number;
}

export interface Bed {
  readonly slots: readonly StopSlot[];
  readonly slotWidth: number;
  readonly slotLength: number;
  /** Near and far stops of each leg, mm along it. */
  readonly spans: Readonly<Record<'a' | 'b', { readonly near: number; readonly far: number }>>;
  readonly straps?: { readonly size: SizedHole; readonly holes: readonly PlacedHole[] };
  readonly features: readonly Feature[];
}

/** Metal round slots and holes, in thicknesses. */
const WEB = 1.5;
/** Between a tube and the washer of a strap bolt, mm. */
const BESIDE_TUBE = 2;

const slotSizes = (p: TackJig): { readonly width: number; readonly length: number } => {
  const tangent = Math.tan((p.lean.value * Math.PI) / 180);
  const taper = p.thickness.mm * tangent;
  return {
    width: p.stop.mm + p.clearance.mm + taper,
    length: p.stopWidth.mm + p.clearance.mm + taper,
  };
};

/** Places of the strap bolts along a leg, as shares of the way from the near stop to the far one. */
const STRAP_SHARES: readonly (readonly number[])[] = [[], [0.25], [0.25, 0.75]];

/** A corner's bite reaches 0.293 of its radius past the slot. */
const biteReach = (p: TackJig): number => p.relief.mm * (1 - Math.SQRT1_2);

interface Layout {
  readonly near: number;
  readonly far: number;
}

interface Margins {
  readonly outer: number;
  readonly inner: number;
}

/** Near and far stops of a leg, clear of the opening and of the leg's end. */
function layOut(p: TackJig, leg: Leg, reach: number, slotLength: number): Resolved<Layout> {
  const web = Math.max(WEB * p.thickness.mm, 3) + biteReach(p);
  const least = reach + web + slotLength / 2;
  const near = p.near?.mm ?? least;
  const far = leg.length - web - slotLength / 2;
  if (near < reach + slotLength / 2 + 1) {
    return refusal(
      'near',
      `Stops ${roundText(near)} mm from the corner run into the opening round the weld, which reaches ${roundText(reach)} mm; ${roundText(least)} mm would do.`,
    );
  }
  // A wedge stop stands half way, with straps a quarter from each end.
  const room = 2 * (slotLength + web);
  return far - near < room
    ? refusal(
        leg.lengthField,
        `A leg of ${roundText(leg.length)} mm leaves ${roundText(Math.max(far - near, 0))} mm between its stops; ${roundText(room)} mm is needed. A longer leg, smaller stops or less room round the weld would do.`,
      )
    : { ok: true, value: { near, far } };
}

/**
 * How far the bed reaches past the outer and the inner side of the tubes, mm: round slots, straps and the opening under
 * the joint.
 */
function marginsOf(p: TackJig, legs: readonly Leg[], slotWidth: number, strap: number): Margins {
  const web = Math.max(WEB * p.thickness.mm, 3);
  const slot = slotWidth / 2 + biteReach(p);
  const eye = Math.max(slot, (p.eye?.mm ?? 0) / 2);
  const { centre, radius } = weldOpening(p);
  const openings = p.weldRoom.mm === 0 ? [] : legs.map((leg) => ({ leg, v: leg.inwards(centre) }));
  return {
    outer: Math.max(p.stop.mm / 2 + eye, strap, ...openings.map(({ v }) => radius - v)) + web,
    inner:
      Math.max(
        p.wedgeGap.mm + p.stop.mm / 2 + eye,
        strap,
        ...openings.map(({ leg, v }) => v + radius - leg.tube),
      ) + web,
  };
}

function outlineOf(p: TackJig, [a, b]: readonly [Leg, Leg], margins: Margins): Resolved<CutFeature> {
  const outer = crossing(p, -margins.outer, -margins.outer);
  const inner = crossing(p, a.tube + margins.inner, b.tube + margins.inner);
  const short =
    inner.x + p.corner.mm >= a.length ? a : alongB(p, inner) + p.corner.mm >= b.length ? b : undefined;
  if (short !== undefined) {
    return refusal(
      short.lengthField,
      `A leg of ${roundText(short.length)} mm does not reach past the inner corner of the bed; a longer one would do.`,
    );
  }
  const points: readonly Point[] = [
    outer,
    a.at(a.length, -margins.outer),
    a.at(a.length, a.tube + margins.inner),
    ...(p.shape === 'L' ? [inner] : []),
    b.at(b.length, b.tube + margins.inner),
    b.at(b.length, -margins.outer),
  ];
  const across = Math.min(a.tube + margins.inner + margins.outer, b.tube + margins.inner + margins.outer);
  if (p.corner.mm > across / 2.5) {
    return refusal(
      'corner',
      `Corners of ${roundText(p.corner.mm)} mm do not fit on strips ${roundText(across)} mm wide; ${roundText(across / 2.5)} mm is the most.`,
    );
  }
  const sharp = polygonContour(points, { direction: 'outline' });
  return {
    ok: true,
    value: {
      id: 'outline',
      name: 'outline',
      purpose: 'outline',
      contour: p.corner.mm === 0 ? sharp : roundCorners(sharp, p.corner.mm),
    },
  };
}

/** The long sides of a slot locate its stop. */
function slotFeature(p: TackJig, slot: StopSlot, width: number, length: number): CutFeature {
  const drawn = tabSlot({ length, width, relief: p.relief.mm, eye: p.eye?.mm });
  const contour = makeContour(slot.leg.place(drawn, slot.u, slot.v), { direction: 'opening' });
  const along = slot.leg.at(1, 0);
  const sides = contour.flatMap((vertex, segment): readonly EdgeUse[] => {
    const next = contour[(segment + 1) % contour.length];
    if (next === undefined || vertex.bulge !== 0) return [];
    const [dx, dy] = [next.x - vertex.x, next.y - vertex.y];
    const isLong = Math.abs(dx * along.y - dy * along.x) < 1e-6 * Math.hypot(dx, dy);
    return isLong ? [{ segment, role: 'mating' }] : [];
  });
  return {
    id: slot.id,
    name: `${slot.kind} slot`,
    purpose: 'opening',
    contour,
    edges: sides,
  };
}

/** Bolts of the straps, on both sides of each tube. */
function strapHoles(
  p: TackJig,
  legs: readonly Leg[],
  spans: Bed['spans'],
  beside: number,
): readonly PlacedHole[] {
  return legs.flatMap((leg) => {
    const { near, far } = spans[leg.id];
    return (STRAP_SHARES[p.clamps] ?? []).flatMap((share, index) =>
      [-beside, leg.tube + beside].map((v, side) => ({
        featureId: `strap.${leg.id}.${index + 1}.${side === 0 ? 'outer' : 'inner'}`,
        at: leg.at(near + share * (far - near), v),
      })),
    );
  });
}

/** Works the bed out. */
export function bedOf(p: TackJig): Resolved<Bed> {
  const legs = legsOf(p);
  const { width, length } = slotSizes(p);
  if (p.relief.mm >= largestRelief(Math.min(width, length))) {
    return refusal(
      'relief',
      `Reliefs of ${roundText(p.relief.mm)} mm use up the ends of a slot ${roundText(width)} mm wide; ${roundText(largestRelief(width) - 0.005)} mm is the most.`,
    );
  }
  if ((p.eye?.mm ?? 0) > width && (p.eye?.mm ?? 0) >= length - 2 * Math.SQRT2 * p.relief.mm) {
    return refusal(
      'eye',
      `An eye of ${roundText(p.eye?.mm ?? 0)} mm leaves nothing of a slot ${roundText(length)} mm long to seat on.`,
    );
  }
  const size = sizeHole({ bolt: p.clampBolt, holes: p.clampHoles, holeFit: 'normal' });
  if (typeof size === 'string') return refusal('clampHoles', size);
  const envelope = boltEnvelope(size.thread);
  const washer = envelope.found ? envelope.row.washerOutside.value : 2 * size.thread.diameter;
  const beside = Math.max(washer, size.diameter) / 2 + BESIDE_TUBE;
  const opening = weldOpening(p);
  const reachA = opening.centre.x + opening.radius;
  const reachB = alongB(p, opening.centre) + opening.radius;
  const a = layOut(p, legs[0], p.weldRoom.mm === 0 ? 0 : reachA, length);
  if (!a.ok) return a;
  const b = layOut(p, legs[1], p.weldRoom.mm === 0 ? 0 : reachB, length);
  if (!b.ok) return b;
  const spans = { a: a.value, b: b.value };
  const tight =
    p.clamps > 0 &&
    legs.find(({ id }) => (spans[id].far - spans[id].near) / 4 < length / 2 + size.diameter / 2 + 1);
  if (tight) {
    return refusal(
      'clamps',
      `Strap bolts run into the slots of a leg of ${roundText(tight.length)} mm; a longer leg, fewer straps or narrower stops would do.`,
    );
  }
  const margins = marginsOf(p, legs, width, p.clamps === 0 ? 0 : beside + size.diameter / 2);
  const outline = outlineOf(p, legs, margins);
  if (!outline.ok) return outline;
  const slots = legs.flatMap((leg): readonly StopSlot[] => {
    const { near, far } = spans[leg.id];
    const datum = -p.stop.mm / 2;
    return [
      { id: `stop.${leg.id}.1`, leg, kind: 'stop', u: near, v: datum },
      { id: `stop.${leg.id}.2`, leg, kind: 'stop', u: far, v: datum },
      {
        id: `wedge.${leg.id}`,
        leg,
        kind: 'wedge',
        u: (near + far) / 2,
        v: leg.tube + p.wedgeGap.mm + p.stop.mm / 2,
      },
    ];
  });
  const straps = strapHoles(p, legs, spans, beside);
  const weld: readonly CutFeature[] =
    p.weldRoom.mm === 0
      ? []
      : [
          {
            id: 'weld.opening',
            name: 'opening under the joint',
            purpose: 'opening',
            contour: circleContour(opening.centre, opening.radius, 'opening'),
            hole: { finish: 'cut', size: 2 * opening.radius },
          },
        ];
  return {
    ok: true,
    value: {
      slots,
      slotWidth: width,
      slotLength: length,
      spans,
      ...(straps.length === 0 ? {} : { straps: { size, holes: straps } }),
      features: [
        outline.value,
        ...weld,
        ...slots.map((slot) => slotFeature(p, slot, width, length)),
        ...straps.map(({ featureId, at }, index) =>
          holeFeature(featureId, `strap bolt hole ${index + 1}`, at, size),
        ),
      ],
    },
  };
}
