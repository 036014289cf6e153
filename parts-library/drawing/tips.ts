// Where leaders may end: round a circle, at one place on it, at a point, or along a ghost.
import { norm } from '../geometry/index.js';
import type { LeaderDimension, RoundDimension } from '../model/index.js';
import { toSheet, type Desk } from './desk.js';
import { isSolid } from './occupancy.js';
import { arcCovers, type ArcPiece, type Piece } from './pieces.js';
import { planLeaders, type Ending, type LeaderPlan, type Tip } from './place-leader.js';

/** Tips that a label may use and the plan that says in which order. */
export interface TipSet {
  readonly tips: readonly (Tip | undefined)[];
  readonly plan: LeaderPlan;
  readonly ending: Ending;
}

/** Directions that are neither level nor upright, degrees in each quarter. */
const QUARTER = [18, 31, 45, 59, 72];
const DIRECTIONS = [0, 90, 180, 270]
  .flatMap((quarter) => QUARTER.map((angle) => ((quarter + angle) * Math.PI) / 180))
  .map((angle) => ({ ux: Math.cos(angle), uy: Math.sin(angle) }));

/** What a leader from inside a circle costs more than one from outside, and one that ends on a far ghost line. */
const FROM_INSIDE = 0.5;

const OUTSIDE_PLAN = planLeaders(
  DIRECTIONS.map(() => 0),
  false,
);
const BOTH_SIDES_PLAN = planLeaders(
  [...DIRECTIONS.map(() => 0), ...DIRECTIONS.map(() => FROM_INSIDE)],
  false,
);

/** How far a leader to one place on a circle may turn off the radius, degrees, and what a degree costs. */
const TURNS = [0, -14, 14, -28, 28, -44, 44, -62, 62];
const COST_OF_DEGREE = 0.06;
const TURNED_PLAN = planLeaders(
  [
    ...TURNS.map((turn) => Math.abs(turn) * COST_OF_DEGREE),
    ...TURNS.map((turn) => Math.abs(turn) * COST_OF_DEGREE + FROM_INSIDE),
  ],
  true,
);

/** A circle on the sheet must be this many font sizes in radius before words fit inside it. */
const ROOMY = 2.2;

/** Whether an outline or opening passes within so many cells of a place. */
function solidNear({ grid }: Desk, x: number, y: number, cells: number): boolean {
  const column = Math.floor(x / grid.cell);
  const row = Math.floor(y / grid.cell);
  for (let r = row - cells; r <= row + cells; r++) {
    for (let c = column - cells; c <= column + cells; c++) {
      if (isSolid(grid, c, r)) return true;
    }
  }
  return false;
}

const turnedFrom = (x: number, y: number, direction: number): readonly Tip[] =>
  TURNS.map((turn) => {
    const angle = direction + (turn * Math.PI) / 180;
    return { x, y, ux: Math.cos(angle), uy: Math.sin(angle) };
  });

/** Leaders from one place, squarely off a line either way or turned a little. */
const turnedTips = (x: number, y: number, direction: number): TipSet => ({
  tips: [...turnedFrom(x, y, direction), ...turnedFrom(x, y, direction + Math.PI)],
  plan: TURNED_PLAN,
  ending: 'arrow',
});

/** Tips round a circle on the sheet: the leader lies on a radius, outside the circle, or inside where there is room. */
function circleTips(
  desk: Desk,
  x: number,
  y: number,
  radius: number,
  usable: (x: number, y: number) => boolean,
): TipSet {
  const outward = DIRECTIONS.map(({ ux, uy }) => {
    const tip = { x: x + ux * radius, y: y + uy * radius, ux, uy };
    return usable(tip.x, tip.y) ? tip : undefined;
  });
  if (radius < ROOMY * desk.style.size) return { tips: outward, plan: OUTSIDE_PLAN, ending: 'arrow' };
  const inward = outward.map((tip) =>
    tip === undefined ? undefined : { x: tip.x, y: tip.y, ux: -tip.ux, uy: -tip.uy },
  );
  return { tips: [...outward, ...inward], plan: BOTH_SIDES_PLAN, ending: 'arrow' };
}

const anywhere = (): boolean => true;

/** Circles closer than this are the same, mm. */
const SAME_PLACE = 0.05;

/** Arcs of the part's edges that lie on a circle, if any do. */
function edgesOn({ scene }: Desk, { centre, radius }: RoundDimension): readonly ArcPiece[] {
  return scene.shapes.flatMap(({ role, pieces }) =>
    role !== 'outline' && role !== 'opening'
      ? []
      : pieces.filter(
          (piece): piece is ArcPiece =>
            piece.kind === 'arc' &&
            Math.abs(piece.radius - radius) < SAME_PLACE &&
            norm(piece.x - centre.x, piece.y + centre.y) < SAME_PLACE,
        ),
  );
}

/** Tips of a diameter or a radius: on the drawn part of an edge, or on a circle of another kind clear of edges. */
export function roundTips(desk: Desk, dimension: RoundDimension): TipSet {
  const { x, y } = toSheet(desk, dimension.centre.x, dimension.centre.y);
  const radius = dimension.radius * desk.placing.scale;
  if (dimension.degrees !== undefined) {
    const angle = (-dimension.degrees * Math.PI) / 180;
    return turnedTips(x + radius * Math.cos(angle), y + radius * Math.sin(angle), angle);
  }
  const edges = edgesOn(desk, dimension);
  const usable = (tipX: number, tipY: number): boolean =>
    edges.length > 0
      ? edges.some((edge) => arcCovers(edge, Math.atan2(tipY - y, tipX - x)))
      : !solidNear(desk, tipX, tipY, 3);
  const onlyUsable = circleTips(desk, x, y, radius, usable);
  return onlyUsable.tips.some((tip) => tip !== undefined)
    ? onlyUsable
    : circleTips(desk, x, y, radius, anywhere);
}

/** A tip on a circle for any elbow: the radius that points at it. */
export function roundTipFor(desk: Desk, dimension: RoundDimension): (x: number, y: number) => Tip | null {
  const centre = toSheet(desk, dimension.centre.x, dimension.centre.y);
  const radius = dimension.radius * desk.placing.scale;
  if (dimension.degrees !== undefined || dimension.kind === 'radius') {
    return nearestTip(roundTips(desk, dimension).tips);
  }
  return (x, y) => {
    const distance = norm(x - centre.x, y - centre.y);
    if (distance < 1e-6) return null;
    const ux = (x - centre.x) / distance;
    const uy = (y - centre.y) / distance;
    return { x: centre.x + ux * radius, y: centre.y + uy * radius, ux, uy };
  };
}

/** The tip nearest to an elbow, whatever its own direction. */
export function nearestTip(tips: readonly (Tip | undefined)[]): (x: number, y: number) => Tip | null {
  return (x, y) => {
    let nearest: Tip | null = null;
    let least = Infinity;
    for (const tip of tips) {
      if (tip === undefined) continue;
      const distance = (tip.x - x) ** 2 + (tip.y - y) ** 2;
      if (distance < least) {
        least = distance;
        nearest = tip;
      }
    }
    return nearest;
  };
}

/**
 * Tips of words about a point. At the centre of a hole or mark the leader ends on its edge and points at the
 * centre; on a line it ends with an arrow; inside the outline with a dot (ISO 128-22).
 */
export function leaderTips(desk: Desk, { at }: LeaderDimension): TipSet {
  const { scene, placing, style } = desk;
  const sheet = toSheet(desk, at.x, at.y);
  const distanceTo = (round: { readonly x: number; readonly y: number }): number =>
    norm(round.x - at.x, round.y + at.y);
  const hole = scene.openings.find((round) => distanceTo(round) < SAME_PLACE);
  if (hole !== undefined) return circleTips(desk, sheet.x, sheet.y, hole.radius * placing.scale, anywhere);
  const mark = scene.marks.find((round) => distanceTo(round) < SAME_PLACE);
  if (mark !== undefined) {
    const radius = Math.max(style.size * 0.2, mark.radius * placing.scale);
    return circleTips(desk, sheet.x, sheet.y, radius, anywhere);
  }
  const edge = scene.openings.find((round) => Math.abs(distanceTo(round) - round.radius) < SAME_PLACE);
  if (edge !== undefined) return turnedTips(sheet.x, sheet.y, Math.atan2(-at.y - edge.y, at.x - edge.x));
  return {
    tips: DIRECTIONS.map(({ ux, uy }) => ({ ...sheet, ux, uy })),
    plan: OUTSIDE_PLAN,
    ending: solidNear(desk, sheet.x, sheet.y, 1) ? 'arrow' : 'dot',
  };
}

/** How many places along a ghost that is no circle are tried, and the order in which. */
const GHOST_PLACES = 12;
const GHOST_PLAN = planLeaders(
  Array.from({ length: 2 * GHOST_PLACES }, () => 0.5),
  true,
);

/** Tips along a ghost's own line, leaving it squarely on either side. */
export function ghostTips(desk: Desk, pieces: readonly Piece[]): TipSet {
  const { placing } = desk;
  const first = pieces[0];
  if (first?.kind === 'arc' && Math.abs(first.sweep) > 6.28) {
    return circleTips(
      desk,
      placing.x + first.x * placing.scale,
      placing.y + first.y * placing.scale,
      first.radius * placing.scale,
      (x, y) => !solidNear(desk, x, y, 1),
    );
  }
  const tips = Array.from({ length: GHOST_PLACES }, (_, i): readonly Tip[] => {
    const along = ((i + 0.5) / GHOST_PLACES) * pieces.length;
    const piece = pieces[Math.floor(along)];
    if (piece === undefined) return [];
    const t = along - Math.floor(along);
    const onLine = piece.kind === 'line';
    const angle = onLine
      ? Math.atan2(piece.x1 - piece.x2, piece.y2 - piece.y1) + 0.6
      : piece.start + piece.sweep * t;
    const x = onLine ? piece.x1 + (piece.x2 - piece.x1) * t : piece.x + piece.radius * Math.cos(angle);
    const y = onLine ? piece.y1 + (piece.y2 - piece.y1) * t : piece.y + piece.radius * Math.sin(angle);
    const tip = {
      x: placing.x + x * placing.scale,
      y: placing.y + y * placing.scale,
      ux: Math.cos(angle),
      uy: Math.sin(angle),
    };
    return [tip, { ...tip, ux: -tip.ux, uy: -tip.uy }];
  }).flat();
  return { tips, plan: GHOST_PLAN, ending: 'arrow' };
}
