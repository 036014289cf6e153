// Where everything of the arm stands, worked out once for drawing, checks and print.
import type { Disc, Point } from '../../geometry/index.js';
import { legBetween, placeAtRadius, placeOn, besideLeg, type Leg, type Place } from './path.js';
import type { PedalArm } from './parameters.js';

const RADIANS = Math.PI / 180;

export const polar = (radius: number, degrees: number): Point => ({
  x: radius * Math.cos(degrees * RADIANS),
  y: radius * Math.sin(degrees * RADIANS),
});

/** Something that stands out of the boss: a root circle within it, and its tip. */
export interface Horn {
  readonly root: Disc;
  readonly tip: Disc;
}

/** One line to bend on, with half its length on either side of `at`. */
export interface BendLine {
  readonly id: 'bend.pad' | 'bend.jog.1' | 'bend.jog.2';
  readonly name: string;
  readonly at: Point;
  /** Unit vector along the line. */
  readonly along: Point;
  readonly half: number;
  /** Between its two slots, mm. */
  readonly bridge: number;
  readonly degrees: number;
  readonly direction: 'up' | 'down';
}

/** The flap that becomes a folded pad, in the flat: an upright rectangle. */
export interface Flap {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly fold: number;
  readonly corner: number;
  /** The arm's middle line, from which it grows. */
  readonly seat: number;
}

export interface Layout {
  readonly link: 'rod' | 'cable';
  /** Hole for tube or bush, finished, and radius of the boss, mm. */
  readonly bore: number;
  readonly boss: number;
  readonly discs: readonly Disc[];
  readonly legs: readonly Leg[];
  /** The last leg before the pad: a joggle lies in it. */
  readonly reach: Leg;
  /** What a joggle adds to the flat, along that leg, mm. */
  readonly added: number;
  /** Middle of the pad in the flat. */
  readonly pad: Point;
  readonly pins: readonly Point[];
  readonly pinDegrees: number;
  /** Set when the pin holes stand on a horn of their own. */
  readonly horn: Horn | undefined;
  /** Where the first pin stands beside the arm's middle line, when it stands in the arm. */
  readonly pinPlace: (Place & { readonly off: number }) | undefined;
  readonly tab: Horn | undefined;
  readonly stop: Place | undefined;
  readonly springs: readonly (Place | undefined)[];
  readonly flap: Flap | undefined;
  readonly bends: readonly BendLine[];
}

/** Radius of the first pin hole where none is given, mm. */
const LINK_RADIUS = { brake: 44, throttle: 52, clutch: 50 } as const;
const SPRINGS = { brake: 1, throttle: 2, clutch: 1 } as const;

/** A horn's root is a little smaller than the boss it grows out of, so that their edges cross. */
const ROOT = 0.88;
/** The arm's end stands this share of its radius past a flap, so that their edges cross and do not touch. */
const PAST_FLAP = 0.03;

export const linkOf = (p: PedalArm): 'rod' | 'cable' => p.link ?? (p.use === 'brake' ? 'rod' : 'cable');
export const springsOf = (p: PedalArm): number => p.springs ?? SPRINGS[p.use];

/** Straight edge kept between a pad and the slope that comes down to it from a knee, mm. */
const BEFORE_PAD = 2;

/** Radius of the arm at its knee: as given, or between boss and pad to half a millimetre, so that it reads round. */
function kneeRadius(p: PedalArm, boss: number): number {
  const head = p.headHeight.mm / 2;
  const between = boss + ((head - boss) * p.kneeAlong.mm) / p.length.mm;
  return p.kneeHeight === undefined ? Math.round(2 * between) / 2 : p.kneeHeight.mm / 2;
}

/** The circle before the pad's end: the knee, or the boss of a straight arm. */
function discBefore(p: PedalArm, boss: number): Disc {
  return p.profile === 'dog-leg'
    ? { centre: { x: p.kneeAlong.mm, y: p.kneeOff.mm }, radius: kneeRadius(p, boss) }
    : { centre: { x: 0, y: 0 }, radius: boss };
}

/** How steeply the upper edge comes down to a pad's end that begins at `x`, radians; 0 when it rises to it. */
function descent(before: Disc, head: number, x: number): number {
  const run = Math.max(1, x - before.centre.x);
  const far = Math.hypot(run, before.centre.y);
  const taper = Math.max(-1, Math.min(1, (before.radius - head) / far));
  return Math.max(0, Math.atan2(before.centre.y, run) + Math.asin(taper));
}

/** Where the circles of the pad's end stand along the arm: one, or two with a straight seat between them. */
function headEnds(p: PedalArm, before: Disc): readonly number[] {
  const length = p.length.mm;
  const head = p.headHeight.mm / 2;
  const half = p.padLength.mm / 2;
  if (p.pad === 'flat') return [length];
  const isFolded = p.pad === 'folded';
  const last = length + Math.max(0, half - head) + (isFolded ? PAST_FLAP * head : 0);
  // An edge that comes down to the pad needs its inside corner, and a flap its own, before the pad begins.
  const edge = length - half - BEFORE_PAD - (isFolded ? flapCorner(p) : 0);
  const rough = edge - (head + p.fillet.mm) * Math.tan(descent(before, head, edge) / 2);
  const turn = descent(before, head, rough);
  const start =
    turn > 0 || isFolded
      ? edge - (head + p.fillet.mm) * Math.tan(turn / 2)
      : length - Math.max(0, half - head);
  return last - start < 1 ? [length] : [start, last];
}

/** Radius between the arm's edge and a folded pad, mm. */
const flapCorner = (p: PedalArm): number => Math.max(3, p.thickness.mm / 2);

/** Circles of the arm, the pad's end already moved out by what a joggle takes. */
function chainOf(p: PedalArm, boss: number) {
  const head = p.headHeight.mm / 2;
  const length = p.length.mm;
  const first: Disc = { centre: { x: 0, y: 0 }, radius: boss };
  const before = discBefore(p, boss);
  const knee: readonly Disc[] = p.profile === 'dog-leg' ? [before] : [];
  const ends = headEnds(p, before);
  const toward = { x: (ends[0] ?? length) - before.centre.x, y: -before.centre.y };
  const far = Math.hypot(toward.x, toward.y);
  const added = p.jogOffset === undefined ? 0 : p.jogOffset.mm * Math.tan((p.jogAngle.value * RADIANS) / 2);
  const shift = { x: (toward.x / far) * added, y: (toward.y / far) * added };
  const last = ends.map((x): Disc => ({ centre: { x: x + shift.x, y: shift.y }, radius: head }));
  return {
    discs: [first, ...knee, ...last],
    reachIndex: knee.length,
    pad: { x: length + shift.x, y: shift.y },
    added,
  };
}

/** From a pin's middle to the outside of its eye: as given, or with one and a half thicknesses beside the hole, mm. */
export const eyeOf = (p: PedalArm): number =>
  p.eye?.mm ?? Math.ceil(p.linkPin.mm / 2 + Math.max(1.5 * p.thickness.mm, p.linkPin.mm) + 0.2);

/** A pin this near to the middle of the arm is on it, mm. */
const ON_MIDDLE = 1e-6;

/** A horn for the pins, unless the outermost eye lies within the arm or the boss. */
function hornFor(p: PedalArm, legs: readonly Leg[], boss: number, pins: readonly Point[]): Horn | undefined {
  const eye = eyeOf(p);
  const tip = pins.at(-1);
  // In the arm itself one thickness beside the hole is enough to go without a horn; webs are judged by their own rule.
  const needed = p.eye?.mm ?? p.linkPin.mm / 2 + p.thickness.mm;
  const isWithin = pins.every((pin) => {
    const beside = besideLeg(legs, pin);
    const isInArm =
      beside !== undefined &&
      (Math.abs(beside.off) + needed <= beside.half + ON_MIDDLE ||
        (p.eye === undefined && Math.abs(beside.off) < ON_MIDDLE));
    return isInArm || Math.hypot(pin.x, pin.y) + needed <= boss + ON_MIDDLE;
  });
  return tip === undefined || isWithin
    ? undefined
    : { root: { centre: { x: 0, y: 0 }, radius: ROOT * boss }, tip: { centre: tip, radius: eye } };
}

function flapOf(p: PedalArm, pad: Point): Flap | undefined {
  if (p.pad !== 'folded') return undefined;
  const head = p.headHeight.mm / 2;
  const corner = flapCorner(p);
  const half = p.padLength.mm / 2;
  // Corner, half a slot, and a little straight edge between them.
  const fold = pad.y + head + corner + (p.fold === 'slots' ? p.slotWidth.mm / 2 : 0) + 0.5;
  return {
    left: pad.x - half,
    right: pad.x + half,
    fold,
    top: fold + p.padWidth.mm,
    corner,
    seat: pad.y,
  };
}

/** What a bridge takes of its line at most when it is not given. */
const LARGEST_BRIDGE = 0.4;

/** The bridge on a bend line of some length: as given, or two thicknesses where the line has room for them, mm. */
const bridgeOn = (p: PedalArm, length: number): number =>
  p.bridge?.mm ?? Math.min(2 * p.thickness.mm, LARGEST_BRIDGE * length);

/** Half way between what stands nearest to the pivot on the last leg, pin or spring, and its end, mm along it. */
function middleOf(p: PedalArm, reach: Leg): number {
  const lastHole = p.springAt.mm + Math.max(0, springsOf(p) - 1) * p.springSpacing.mm;
  const holes = p.profile === 'straight' && springsOf(p) > 0 ? lastHole : 0;
  return (Math.min(holes, reach.length) + reach.length) / 2;
}

function bendsOf(p: PedalArm, legs: readonly Leg[], reach: Leg, flap: Flap | undefined): readonly BendLine[] {
  const folded: readonly BendLine[] =
    flap === undefined
      ? []
      : [
          {
            id: 'bend.pad',
            name: 'bend line of the pad',
            at: { x: (flap.left + flap.right) / 2, y: flap.fold },
            along: { x: 1, y: 0 },
            half: (flap.right - flap.left) / 2,
            bridge: bridgeOn(p, flap.right - flap.left),
            degrees: p.padAngle.value,
            direction: p.mirrored === 'yes' ? 'down' : 'up',
          },
        ];
  if (p.jogOffset === undefined) return folded;
  const apart = p.jogOffset.mm / Math.sin(p.jogAngle.value * RADIANS);
  const first =
    p.jogAt === undefined ? placeOn(reach, middleOf(p, reach) - apart / 2) : placeAtRadius(legs, p.jogAt.mm);
  if (first === undefined || first.leg !== reach) return folded;
  const second = placeOn(reach, first.along + apart);
  const line = (place: Place, number: 1 | 2): BendLine => ({
    id: `bend.jog.${number}`,
    name: `bend line ${number} of the joggle`,
    at: place.at,
    along: reach.up,
    half: place.half,
    bridge: bridgeOn(p, 2 * place.half),
    degrees: p.jogAngle.value,
    direction: (number === 1) === (p.mirrored === 'yes') ? 'down' : 'up',
  });
  return [...folded, line(first, 1), line(second, 2)];
}

/** Works out every place from the parameters; what cannot be is left undefined, and drawing says so. */
export function layoutOf(p: PedalArm): Layout {
  const link = linkOf(p);
  const bore = p.pivot === 'welded' ? p.tubeOutside.mm + p.fit.mm : p.tubeOutside.mm + 2 * p.bushWall.mm;
  const boss = bore / 2 + p.bossEdge.mm;
  const { discs, reachIndex, pad, added } = chainOf(p, boss);
  const legs = discs.slice(1).map((disc, index) => legBetween(discs[index] ?? disc, disc));
  const reach =
    legs[reachIndex] ?? legBetween({ centre: { x: 0, y: 0 }, radius: boss }, { centre: pad, radius: boss });
  const first = legs[0] ?? reach;
  const onArm = Math.atan2(first.along.y, first.along.x) / RADIANS;
  const pinDegrees = p.linkAngle?.value ?? onArm;
  const radius = p.linkRadius?.mm ?? LINK_RADIUS[p.use];
  const pins = Array.from({ length: p.linkHoles }, (_, index) =>
    polar(radius + index * p.linkStep.mm, pinDegrees),
  );
  const horn = hornFor(p, legs, boss, pins);
  const flap = flapOf(p, pad);
  const [pin = pad] = pins;
  return {
    link,
    bore,
    boss,
    discs,
    legs,
    reach,
    added,
    pad,
    pins,
    pinDegrees,
    horn,
    pinPlace: horn === undefined ? besideLeg(legs, pin) : undefined,
    tab:
      p.stopOn === 'tab'
        ? {
            root: { centre: { x: 0, y: 0 }, radius: 0.8 * boss },
            tip: { centre: polar(p.stopRadius.mm, p.stopAngle.value), radius: p.stopWidth.mm / 2 },
          }
        : undefined,
    stop: p.stopOn === 'arm' ? placeAtRadius(legs.slice(0, reachIndex + 1), p.stopRadius.mm) : undefined,
    springs: Array.from({ length: springsOf(p) }, (_, index) =>
      placeAtRadius(legs, p.springAt.mm + index * p.springSpacing.mm),
    ),
    flap,
    bends: bendsOf(p, legs, reach, flap),
  };
}
