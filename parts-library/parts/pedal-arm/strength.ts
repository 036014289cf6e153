// Loads in the arm at the proof load, section by section: bending in its plane, sideways and twist together.
import type { Point } from '../../geometry/index.js';
import {
  combinedStress,
  leverStress,
  sidewaysStress,
  taperedDeflection,
  twistStress,
  type LeverSlice,
} from '../../handbook/index.js';
import { pinHoleOf } from './draw.js';
import type { Layout } from './layout.js';
import type { Motion } from './motion.js';
import { padAside } from './pad.js';
import type { PedalArm } from './parameters.js';
import { legBetween, placeOn, type Place } from './path.js';

/** What the arm is held by while it carries the proof load. */
export interface Reaction {
  readonly at: Point;
  /** Unit vector of its push on the arm, and its size, N. */
  readonly direction: Point;
  readonly newtons: number;
  readonly what: 'rod' | 'cable' | 'forward stop';
}

export interface SectionLoad {
  readonly at: Point;
  readonly height: number;
  readonly hole: number;
  /** N·m: in the arm's plane, sideways, and about the arm. */
  readonly bending: number;
  readonly sideways: number;
  readonly twist: number;
  /** MPa: edge in the plane, with the sideways part added, at the hole, shear of the twist, all together. */
  readonly edge: number;
  readonly side: number;
  readonly holeEdge: number;
  readonly shear: number;
  readonly combined: number;
}

export interface ArmLoads {
  readonly reaction: Reaction;
  /** Push on the pivot, N. */
  readonly pivotNewtons: number;
  /** N·m that side load and off-centre foot put on the tube's weld. */
  readonly pivotMoment: number;
  readonly worst: SectionLoad;
  /** Root of the horn, where pin or stop stand on one. */
  readonly horn: SectionLoad | undefined;
  /** Pad's give, mm, with the reaction taken as fixed. */
  readonly deflection: number;
}

/** Sections looked at from boss to pad: close enough together that no peak hides between two. */
const SECTIONS = 28;

const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;

/**
 * What holds the arm: a throttle ends on its forward stop, brake and clutch push their rod or pull their cable, taken
 * where its lever is least. Undefined when nothing does.
 */
export function reactionOf(p: PedalArm, layout: Layout, motion: Motion): Reaction | undefined {
  const moment = p.proof.value * p.length.mm;
  const forward = motion.screws.find(({ id }) => id === 'forward');
  if (p.use === 'throttle' && forward !== undefined) {
    const middle = layout.tab?.tip.centre ?? layout.stop?.at;
    const up = motion.screws.find(({ id }) => id === 'rest')?.away ?? layout.stop?.leg.up;
    if (middle === undefined) return undefined;
    const direction = up ?? {
      x: -middle.y / Math.hypot(middle.x, middle.y),
      y: middle.x / Math.hypot(middle.x, middle.y),
    };
    const lever = cross(middle, direction);
    return lever > 0 ? { at: middle, direction, newtons: moment / lever, what: 'forward stop' } : undefined;
  }
  const { rest, lever, link } = motion;
  if (rest === undefined || lever.overCentre || lever.least <= 0) return undefined;
  const along = minus(rest.pin, rest.seat);
  const far = Math.hypot(along.x, along.y);
  // A rod pushes the arm back, a cable pulls it toward its end.
  const sign = link.kind === 'rod' ? 1 : -1;
  return {
    at: rest.pin,
    direction: { x: (sign * along.x) / far, y: (sign * along.y) / far },
    newtons: moment / (lever.least * rest.inLine),
    what: link.kind,
  };
}

/** Distance from the pivot at which the tube or bush no longer stiffens the arm. */
const rootOf = ({ bore }: Layout): number => bore / 2;

function loadAt(
  p: PedalArm,
  place: Place,
  hole: number,
  reaction: Reaction,
  reactionAlong: number,
): SectionLoad {
  const { at, leg, half } = place;
  const force = p.proof.value;
  const pad = { x: p.length.mm, y: 0 };
  const toPad = minus(pad, at);
  const isInside = Math.hypot(at.x, at.y) < reactionAlong;
  const held = isInside
    ? cross(minus(reaction.at, at), {
        x: reaction.direction.x * reaction.newtons,
        y: reaction.direction.y * reaction.newtons,
      })
    : 0;
  const bending = (-force * toPad.x + held) / 1000;
  const side = (force * p.sideShare.value) / 100;
  const aside = p.offCentre.mm + padAside(p);
  // The off-centre push turns about the line of the arm; on a slanting leg part of it bends.
  const sideways = (side * Math.abs(dot(toPad, leg.along)) + force * aside * Math.abs(leg.along.y)) / 1000;
  const twist = (force * aside * Math.abs(leg.along.x) + side * Math.abs(cross(leg.along, toPad))) / 1000;
  return sectionLoad(p, at, 2 * half, hole, { bending, sideways, twist });
}

function sectionLoad(
  p: PedalArm,
  at: Point,
  height: number,
  hole: number,
  moments: { readonly bending: number; readonly sideways: number; readonly twist: number },
): SectionLoad {
  const thickness = p.thickness.mm;
  const left = Math.min(hole, 0.95 * height);
  const stress = leverStress(moments.bending, { height, thickness, hole: left });
  const side = sidewaysStress(moments.sideways, height - left, thickness);
  const shear = twistStress(moments.twist, height, thickness);
  return {
    at,
    height,
    hole,
    ...moments,
    bending: Math.abs(moments.bending),
    edge: stress.edge,
    side,
    holeEdge: stress.holeEdge,
    shear,
    combined: combinedStress(Math.max(stress.edge, stress.holeEdge) + side, shear),
  };
}

/** Worst section of a horn: between boss and pin, bent by what pushes on its tip. */
function hornLoad(p: PedalArm, layout: Layout, reaction: Reaction): SectionLoad | undefined {
  const horn = reaction.what === 'forward stop' ? layout.tab : layout.horn;
  if (horn === undefined) return undefined;
  const leg = legBetween(horn.root, horn.tip);
  const root = placeOn(leg, Math.min(layout.boss, leg.length));
  const push = { x: reaction.direction.x * reaction.newtons, y: reaction.direction.y * reaction.newtons };
  const bending = cross(minus(reaction.at, root.at), push) / 1000;
  return sectionLoad(p, root.at, 2 * root.half, 0, { bending, sideways: 0, twist: 0 });
}

/** Loads at the proof load; undefined when nothing holds the arm. */
export function loadsOf(
  p: PedalArm,
  layout: Layout,
  motion: Motion,
  modulusMegapascals: number,
): ArmLoads | undefined {
  const reaction = reactionOf(p, layout, motion);
  if (reaction === undefined) return undefined;
  const isOnArm = reaction.what === 'forward stop' ? layout.tab === undefined : layout.horn === undefined;
  const reactionAlong = isOnArm ? Math.hypot(reaction.at.x, reaction.at.y) : 0;
  const root = rootOf(layout);
  const total = layout.legs.reduce((sum, { length }) => sum + length, 0);
  const even = layout.legs.flatMap((leg, index) => {
    const from = index === 0 ? root : 0;
    const count = Math.max(2, Math.round((SECTIONS * leg.length) / total));
    const step = (leg.length - from) / count;
    return Array.from({ length: count }, (_, k) => ({
      place: placeOn(leg, from + (k + 0.5) * step),
      step,
      hole: 0,
    }));
  });
  const { pinPlace } = layout;
  const holed = [
    ...(pinPlace === undefined
      ? []
      : [
          {
            // Only the metal even on both sides of an off-centre hole is counted.
            place: { ...pinPlace, half: Math.max(1, pinPlace.half - Math.abs(pinPlace.off)) },
            hole: pinHoleOf(p),
          },
        ]),
    ...layout.springs.flatMap((place) => (place === undefined ? [] : [{ place, hole: p.springHole.mm }])),
    ...(layout.stop === undefined ? [] : [{ place: layout.stop, hole: 0 }]),
  ];
  const sections = [...even, ...holed].map(({ place, hole }) =>
    loadAt(p, place, hole, reaction, reactionAlong),
  );
  const [first, ...rest] = sections;
  if (first === undefined) return undefined;
  const slices = even.map(({ place, step }): LeverSlice => ({
    length: step,
    newtonMetres: loadAt(p, place, 0, reaction, reactionAlong).bending,
    secondMoment: (p.thickness.mm * (2 * place.half) ** 3) / 12,
  }));
  const force = p.proof.value;
  return {
    reaction,
    pivotNewtons: Math.hypot(
      reaction.direction.x * reaction.newtons,
      reaction.direction.y * reaction.newtons - force,
    ),
    pivotMoment:
      (force / 1000) * Math.hypot((p.sideShare.value / 100) * p.length.mm, p.offCentre.mm + padAside(p)),
    worst: rest.reduce((a, b) => (b.combined > a.combined ? b : a), first),
    horn: hornLoad(p, layout, reaction),
    deflection: taperedDeflection(slices, force, modulusMegapascals),
  };
}
