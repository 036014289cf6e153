// A pedal and what it moves: exact travel of a push rod's piston or of a cable as the arm swings.

import type { Source } from './source.js';

export const linkageSource: Source = {
  title: 'Plane geometry of a crank',
  where: 'law of cosines between pivot, pin, and piston or cable end; no small-angle shortcut',
  certainty: 'published',
};

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * A pin on an arm that turns clockwise about the origin, and what hangs on it, all at rest, mm.
 * A `cable` leaves a fixed end at `anchor`; pressing pulls it out. A `rod` pushes a piston whose seat stands at
 * `anchor` and slides along `slide` (a unit vector, the way it is pushed).
 */
export interface Linkage {
  readonly kind: 'rod' | 'cable';
  readonly pin: Place;
  readonly anchor: Place;
  readonly slide: Place;
}

/** The arm turned by some angle. */
export interface LinkState {
  /** Turn from rest, clockwise, radians. */
  readonly swing: number;
  readonly pin: Place;
  /** The piston's seat now; the fixed cable end. */
  readonly seat: Place;
  /** Piston pushed in or cable pulled out since rest, mm; negative when it came back. */
  readonly travel: number;
  /** Travel for each radian, mm: the lever that the load has about the pivot. 0 is over centre. */
  readonly lever: number;
  /** Cosine of the angle between the rod and the piston's way; 1 for a cable. */
  readonly inLine: number;
}

const turnedClockwise = ({ x, y }: Place, angle: number): Place => {
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return { x: x * c + y * s, y: y * c - x * s };
};

const distance = (a: Place, b: Place): number => Math.hypot(a.x - b.x, a.y - b.y);

/**
 * Where everything is when the arm has turned by `swing`.
 * @param swing radians, clockwise from rest
 * @returns undefined where a rod no longer reaches its piston
 */
export function linkAt(link: Linkage, swing: number): LinkState | undefined {
  const pin = turnedClockwise(link.pin, swing);
  // Velocity of the pin for each radian of clockwise turn.
  const moves = { x: pin.y, y: -pin.x };
  if (link.kind === 'cable') {
    const free = distance(pin, link.anchor);
    const along = { x: (pin.x - link.anchor.x) / free, y: (pin.y - link.anchor.y) / free };
    return {
      swing,
      pin,
      seat: link.anchor,
      travel: free - distance(link.pin, link.anchor),
      lever: moves.x * along.x + moves.y * along.y,
      inLine: 1,
    };
  }
  // |pin − (anchor + s·slide)| is the rod's length: a quadratic in s, of which the larger root starts from rest.
  const length = distance(link.pin, link.anchor);
  const dx = pin.x - link.anchor.x;
  const dy = pin.y - link.anchor.y;
  const ahead = dx * link.slide.x + dy * link.slide.y;
  const aside = dx * link.slide.y - dy * link.slide.x;
  const inside = length * length - aside * aside;
  if (inside <= 0) return undefined;
  const travel = ahead + Math.sqrt(inside);
  const seat = { x: link.anchor.x + travel * link.slide.x, y: link.anchor.y + travel * link.slide.y };
  const along = { x: (seat.x - pin.x) / length, y: (seat.y - pin.y) / length };
  const inLine = along.x * link.slide.x + along.y * link.slide.y;
  return {
    swing,
    pin,
    seat,
    travel,
    lever: (moves.x * along.x + moves.y * along.y) / inLine,
    inLine,
  };
}

/** A pedal turns less than this, radians. */
const QUARTER = Math.PI / 2;

/**
 * The turn at which the piston or cable has travelled so far: the first within a quarter turn of rest, in closed form.
 * @param travel mm
 * @returns radians clockwise; undefined when it gets there later or never, or moves the other way
 * @example a pin 50 mm below a far, square cable end turns asin(25/50) = 30° for 25 mm (nearly)
 */
export function swingForTravel(link: Linkage, travel: number): number | undefined {
  const radius = Math.hypot(link.pin.x, link.pin.y);
  const rest = distance(link.pin, link.anchor);
  const end =
    link.kind === 'cable'
      ? link.anchor
      : { x: link.anchor.x + travel * link.slide.x, y: link.anchor.y + travel * link.slide.y };
  const apart = link.kind === 'cable' ? rest + travel : rest;
  const reach = Math.hypot(end.x, end.y);
  const cosine = (radius * radius + reach * reach - apart * apart) / (2 * radius * reach);
  if (!(Math.abs(cosine) <= 1)) return undefined;
  const between = Math.acos(cosine);
  const toEnd = Math.atan2(end.y, end.x);
  const fromRest = Math.atan2(link.pin.y, link.pin.x);
  // Clockwise turn that brings the pin to either side of the line to the end; the first that has the travel counts.
  const turns = [fromRest - (toEnd + between), fromRest - (toEnd - between)]
    .map((turn) => ((turn % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI))
    .sort((a, b) => a - b);
  return turns.find((turn) => {
    const state = turn > QUARTER ? undefined : linkAt(link, turn);
    return state !== undefined && Math.abs(state.travel - travel) < 1e-6 && state.lever > 0;
  });
}

/** What the lever of a linkage does from rest to full swing. */
export interface LeverRange {
  readonly atRest: number;
  readonly atFull: number;
  readonly least: number;
  readonly most: number;
  /** True when it comes to nothing or turns back on the way. */
  readonly overCentre: boolean;
}

/** Steps in which a swing is looked through: between two of them the lever changes by far less than it is known to. */
const STEPS = 24;

/**
 * The load's lever about the pivot over a swing.
 * @param from radians
 * @param to radians
 */
export function leverOver(link: Linkage, from: number, to: number): LeverRange {
  const levers = Array.from(
    { length: STEPS + 1 },
    (_, step) => linkAt(link, from + ((to - from) * step) / STEPS)?.lever ?? 0,
  );
  const [atRest = 0] = levers;
  return {
    atRest,
    atFull: levers.at(-1) ?? 0,
    least: Math.min(...levers),
    most: Math.max(...levers),
    overCentre: levers.some((lever) => lever <= 0),
  };
}
