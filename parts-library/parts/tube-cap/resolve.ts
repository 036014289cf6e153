// A tube cap worked out: the tube's outside and inside, the plate, its bolts; or what does not go together.
import {
  circleContour,
  rectangleContour,
  type Contour,
  type Direction,
  type Point,
} from '../../geometry/index.js';
import type { Unit } from '../../units/index.js';
import type { PlacedHole } from '../shared/bolted.js';
import { sizeHole, type SizedHole } from '../shared/holes.js';
import { refusal, rememberResolved, type Resolved } from '../shared/resolved.js';
import { legOf } from '../shared/weld-edge-fields.js';
import type { TubeCap } from './parameters.js';

/** A round, square or rectangular figure about the middle. */
export interface Section {
  readonly isRound: boolean;
  readonly width: number;
  readonly height: number;
  readonly corner: number;
}

export interface ResolvedCap {
  readonly tube: Section;
  readonly inside: Section;
  readonly plate: Section;
  readonly size: SizedHole;
  /** None but on a base plate. */
  readonly holes: readonly PlacedHole[];
}

const MIDDLE: Point = { x: 0, y: 0 };

/** The same figure with `by` more on every side; its corners grow with it. */
const grown = (one: Section, by: number): Section => ({
  ...one,
  width: one.width + 2 * by,
  height: one.height + 2 * by,
  corner: one.corner === 0 ? 0 : Math.max(0, one.corner + by),
});

export function sectionContour(one: Section, direction: Direction): Contour {
  return one.isRound
    ? circleContour(MIDDLE, one.width / 2, direction)
    : rectangleContour(
        { centre: MIDDLE, width: one.width, height: one.height, corner: one.corner },
        direction,
      );
}

/** Around the figure, mm. */
export const aroundOf = ({ isRound, width, height, corner }: Section): number =>
  isRound ? Math.PI * width : 2 * (width + height) - (8 - 2 * Math.PI) * corner;

/** Outside corner of a tube over its wall: cold-formed hollow sections, by wall. */
const CORNER_BY_WALL = (wall: number): number => (wall <= 6 ? 2 : wall <= 10 ? 2.5 : 3);

function tubeOf(p: TubeCap): Section {
  const isRound = p.section === 'round';
  return {
    isRound,
    width: p.outside.mm,
    height: p.section === 'rectangular' ? p.otherSide.mm : p.outside.mm,
    corner: isRound ? 0 : (p.tubeCorner?.mm ?? CORNER_BY_WALL(p.wall.mm) * p.wall.mm),
  };
}

function plateOf(p: TubeCap, tube: Section, inside: Section): Section {
  if (p.kind === 'plug') return grown(inside, -p.play.mm / 2);
  if (p.kind === 'cap') return grown(tube, p.shelf.mm);
  const isRound = p.baseShape === 'round';
  return {
    isRound,
    width: p.width.mm,
    height: isRound ? p.width.mm : p.depth.mm,
    corner: isRound ? 0 : p.cornerRadius.mm,
  };
}

function boltsOf(p: TubeCap, plate: Section): readonly Point[] {
  const [x, y] = [plate.width / 2 - p.inset.mm, plate.height / 2 - p.inset.mm];
  if (plate.isRound) {
    return Array.from({ length: p.bolts }, (_, index) => {
      // The first stands half a step from the right, so that a row lies square to it.
      const angle = ((2 * index + 1) * Math.PI) / p.bolts;
      return { x: x * Math.cos(angle), y: x * Math.sin(angle) };
    });
  }
  return p.bolts === 2
    ? [
        { x, y: 0 },
        { x: -x, y: 0 },
      ]
    : [
        { x, y },
        { x: -x, y },
        { x: -x, y: -y },
        { x, y: -y },
      ];
}

/** Smallest figure worth cutting, mm. */
const LEAST = 2;

function work(p: TubeCap): Resolved<ResolvedCap> {
  const size = sizeHole(p);
  if (typeof size === 'string') return refusal('bolt', size);
  const tube = tubeOf(p);
  const inside = grown(tube, -p.wall.mm);
  if (Math.min(inside.width, inside.height) < LEAST)
    return refusal(
      'wall',
      `A wall of ${p.wall.mm} mm leaves nothing inside a tube of ${Math.min(tube.width, tube.height)} mm; a thinner wall or a larger tube would do.`,
    );
  if (!tube.isRound && 2 * tube.corner > Math.min(tube.width, tube.height))
    return refusal(
      'tubeCorner',
      `Corners of radius ${tube.corner.toFixed(2)} mm do not fit on a tube ${Math.min(tube.width, tube.height)} mm wide; smaller ones would do.`,
    );
  const plate = plateOf(p, tube, inside);
  if (Math.min(plate.width, plate.height) < LEAST)
    return refusal(
      p.kind === 'plug' ? 'play' : 'shelf',
      `The plate is ${plate.width.toFixed(2)} × ${plate.height.toFixed(2)} mm; nothing is left of it.`,
    );
  if (!plate.isRound && 2 * plate.corner > Math.min(plate.width, plate.height))
    return refusal(
      p.kind === 'base' ? 'cornerRadius' : 'shelf',
      `Corners of radius ${plate.corner.toFixed(2)} mm do not fit on ${plate.width} × ${plate.height} mm; smaller ones would do.`,
    );
  if (p.kind === 'base' && !plate.isRound && p.bolts !== 2 && p.bolts !== 4)
    return refusal(
      'bolts',
      `A rectangular base has two or four bolts, not ${p.bolts}; a round one takes any number.`,
    );
  if (
    p.kind === 'base' &&
    Math.min(plate.width, p.bolts === 2 && !plate.isRound ? Infinity : plate.height) / 2 <= p.inset.mm
  )
    return refusal(
      'inset',
      `Bolts ${p.inset.mm} mm from the edges meet in the middle of the base; a smaller distance or a larger base would do.`,
    );
  return {
    ok: true,
    value: {
      tube,
      inside,
      plate,
      size,
      holes:
        p.kind === 'base'
          ? boltsOf(p, plate).map((at, index) => ({ featureId: `bolt.${index + 1}`, at }))
          : [],
    },
  };
}

export const resolveCap = rememberResolved(work, 'outside');

export const thinnerOf = (p: TubeCap): number => Math.min(p.thickness.mm, p.wall.mm);

export const filletOf = (p: TubeCap, unit: Unit): number => legOf(p.weldLeg, thinnerOf(p), unit);
