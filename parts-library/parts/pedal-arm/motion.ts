// How the pedal moves: swing for the stroke, ratio on the way, where the stop screws stand.
import type { Point } from '../../geometry/index.js';
import {
  leverOver,
  linkAt,
  swingForTravel,
  type LeverRange,
  type Linkage,
  type LinkState,
} from '../../handbook/index.js';
import { polar, type Layout } from './layout.js';
import type { PedalArm } from './parameters.js';

const DEGREES = 180 / Math.PI;

/** Stroke or pull where none is given, mm. */
const TRAVEL = { brake: 22, throttle: 25, clutch: 30 } as const;
/** Distance of the rod's seat or the cable's end where none is given, mm. */
const FAR = 150;

/** Stroke or pull: as given, or usual for the use, mm. */
export const travelOf = (p: PedalArm): number => p.travel?.mm ?? TRAVEL[p.use];

export interface StopScrew {
  readonly id: 'rest' | 'forward';
  /** Where the screw's tip bears on the arm at that end of the swing. */
  readonly tip: Point;
  /** Unit vector from the tip along the screw, away from the arm. */
  readonly away: Point;
}

export interface Motion {
  readonly link: Linkage;
  /** Stroke or pull that is wanted, mm, without the free play. */
  readonly travel: number;
  /** Turn at which it is reached, degrees; undefined when it never is. */
  readonly full: number | undefined;
  /** Turn at which a forward stop acts, degrees; undefined without one. */
  readonly forward: number | undefined;
  /** Where the swing ends: at the forward stop, or when the stroke is used up, degrees. */
  readonly end: number;
  readonly rest: LinkState | undefined;
  readonly atEnd: LinkState | undefined;
  readonly lever: LeverRange;
  /** Travel of the pad's middle along its arc, mm. */
  readonly padTravel: number;
  readonly screws: readonly StopScrew[];
}

/** A point turned clockwise about the pivot. */
export function swung({ x, y }: Point, degrees: number): Point {
  const c = Math.cos(degrees / DEGREES);
  const s = Math.sin(degrees / DEGREES);
  return { x: x * c + y * s, y: y * c - x * s };
}

/** Half the wanted travel over the pin's radius: the turn half way, near enough to set a rod square there, degrees. */
function halfWay(p: PedalArm, radius: number): number {
  const share = (travelOf(p) + p.freePlay.mm) / (2 * radius);
  return Math.min(share, 0.6) * DEGREES;
}

function linkageOf(p: PedalArm, { link, pins }: Layout): Linkage {
  const pin = pins[0] ?? { x: 0, y: 0 };
  const radius = Math.hypot(pin.x, pin.y);
  // Where nothing is given, rod or cable stand square to the pin's radius half way through the swing.
  const middle = swung(pin, halfWay(p, radius));
  const way = { x: middle.y / radius, y: -middle.x / radius };
  const back = { x: pin.x - middle.x, y: pin.y - middle.y };
  const reach =
    link === 'cable'
      ? -FAR
      : back.x * way.x + back.y * way.y + Math.sqrt(FAR ** 2 - (back.x * way.y - back.y * way.x) ** 2);
  const anchor = {
    x: p.anchorAlong?.mm ?? middle.x + way.x * reach,
    y: p.anchorOff?.mm ?? middle.y + way.y * reach,
  };
  const apart = Math.hypot(anchor.x - pin.x, anchor.y - pin.y) || 1;
  const isGiven = p.anchorAlong !== undefined || p.anchorOff !== undefined;
  const slide =
    p.slideAngle !== undefined
      ? polar(1, p.slideAngle.value)
      : isGiven
        ? { x: (anchor.x - pin.x) / apart, y: (anchor.y - pin.y) / apart }
        : way;
  return { kind: link, pin, anchor, slide };
}

/** Tips of the stop screws: the rest stop on the foot's side at rest, the forward stop on the other at its turn. */
function screwsOf(p: PedalArm, { tab, stop }: Layout, forward: number | undefined): readonly StopScrew[] {
  const middle = tab?.tip.centre ?? stop?.at;
  if (middle === undefined) return [];
  const half = tab?.tip.radius ?? stop?.half ?? 0;
  const reach = Math.hypot(middle.x, middle.y);
  // A tab's flank faces along its swing; an arm's edge stands square to its leg.
  const up =
    tab === undefined ? (stop?.leg.up ?? { x: 0, y: 1 }) : { x: -middle.y / reach, y: middle.x / reach };
  const rest: StopScrew = {
    id: 'rest',
    tip: { x: middle.x + up.x * half, y: middle.y + up.y * half },
    away: up,
  };
  const screws: readonly StopScrew[] = p.restStop === 'yes' ? [rest] : [];
  if (forward === undefined) return screws;
  return [
    ...screws,
    {
      id: 'forward',
      tip: swung({ x: middle.x - up.x * half, y: middle.y - up.y * half }, forward),
      away: swung({ x: -up.x, y: -up.y }, forward),
    },
  ];
}

/** Works out the swing. The free play is taken up first. */
export function motionOf(p: PedalArm, layout: Layout): Motion {
  const link = linkageOf(p, layout);
  const travel = travelOf(p);
  const turn = swingForTravel(link, travel + p.freePlay.mm);
  const full = turn === undefined ? undefined : turn * DEGREES;
  const forward = p.forwardStop?.value ?? (p.use === 'throttle' ? full : undefined);
  const end = Math.min(forward ?? Infinity, full ?? Infinity);
  const swing = Number.isFinite(end) ? end : 0;
  return {
    link,
    travel,
    full,
    forward,
    end: swing,
    rest: linkAt(link, 0),
    atEnd: linkAt(link, swing / DEGREES),
    lever: leverOver(link, 0, swing / DEGREES),
    padTravel: (p.length.mm * swing) / DEGREES,
    screws: screwsOf(p, layout, forward),
  };
}

/** Push on the pad times this is the push on the piston or the pull in the cable; undefined over centre. */
export const ratioFor = (p: PedalArm, lever: number): number | undefined =>
  lever > 0 ? p.length.mm / lever : undefined;
