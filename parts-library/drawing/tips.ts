// Where leaders may end: round a circle, at one place on it, at a point, or along a ghost.
import type { LeaderDimension, RoundDimension } from '../model/index.js';
import { toSheet, type Desk } from './desk.js';
import { SOLID } from './occupancy.js';
import type { Piece } from './pieces.js';
import type { Ending, Tip } from './place-leader.js';

/** Directions that are neither level nor upright nor along another, degrees in each quarter. */
const QUARTER = [18, 31, 45, 59, 72];
const ANGLES = [0, 90, 180, 270].flatMap((quarter) =>
  QUARTER.map((angle) => ((quarter + angle) * Math.PI) / 180),
);

/** How far a leader to one place on a circle may turn off the radius, degrees, and what a degree costs. */
const TURNS = [0, -14, 14, -28, 28, -44, 44, -62, 62];
const COST_OF_DEGREE = 0.06;

/** A circle on the sheet must be this many font sizes in radius before words fit inside it. */
const ROOMY = 2.2;

function solidAt({ grid }: Desk, x: number, y: number): boolean {
  const column = Math.floor(x / grid.cell);
  const row = Math.floor(y / grid.cell);
  for (let r = row - 1; r <= row + 1; r++) {
    for (let c = column - 1; c <= column + 1; c++) {
      if (grid.cells[r * grid.columns + c] === SOLID) return true;
    }
  }
  return false;
}

/** Leaders from one place in a direction and turned a little either way. */
function turnedTips(x: number, y: number, direction: number, cost: number): readonly Tip[] {
  return TURNS.map((turn) => {
    const angle = direction + (turn * Math.PI) / 180;
    return { x, y, ux: Math.cos(angle), uy: Math.sin(angle), cost: cost + Math.abs(turn) * COST_OF_DEGREE };
  });
}

/**
 * Tips on a circle on the sheet: the leader lies on a radius, outside the circle, or inside where there is room.
 * On an arc that is only partly drawn the leader ends on the drawn part; on a bolt circle it avoids the holes.
 */
function circleTips(
  desk: Desk,
  x: number,
  y: number,
  radius: number,
  partial: boolean,
  small: boolean,
): readonly Tip[] {
  const places = ANGLES.map((angle) => ({
    angle,
    ux: Math.cos(angle),
    uy: Math.sin(angle),
    solid: !small && solidAt(desk, x + radius * Math.cos(angle), y + radius * Math.sin(angle)),
  }));
  const solids = places.filter(({ solid }) => solid).length;
  const drawn = partial ? solids > 0 : solids > places.length * 0.3;
  const usable = small ? places : places.filter(({ solid }) => solid === drawn);
  return usable.flatMap(({ ux, uy }): readonly Tip[] => {
    const tip = { x: x + ux * radius, y: y + uy * radius, cost: 0 };
    const outward = { ...tip, ux, uy };
    return radius < ROOMY * desk.style.size ? [outward] : [outward, { ...tip, ux: -ux, uy: -uy, cost: 0.5 }];
  });
}

/** Tips of a diameter or a radius. */
export function roundTips(desk: Desk, dimension: RoundDimension): readonly Tip[] {
  const centre = toSheet(desk, dimension.centre.x, dimension.centre.y);
  const radius = dimension.radius * desk.placing.scale;
  if (dimension.degrees === undefined) {
    return circleTips(desk, centre.x, centre.y, radius, dimension.kind === 'radius', false);
  }
  const angle = (-dimension.degrees * Math.PI) / 180;
  const x = centre.x + radius * Math.cos(angle);
  const y = centre.y + radius * Math.sin(angle);
  return [...turnedTips(x, y, angle, 0), ...turnedTips(x, y, angle + Math.PI, 0.5)];
}

/** A tip on a circle for any elbow: the radius that points at it. */
export function roundTipFor(desk: Desk, dimension: RoundDimension): (x: number, y: number) => Tip | null {
  const centre = toSheet(desk, dimension.centre.x, dimension.centre.y);
  const radius = dimension.radius * desk.placing.scale;
  if (dimension.degrees !== undefined || dimension.kind === 'radius') {
    return nearestTip(roundTips(desk, dimension));
  }
  return (x, y) => {
    const distance = Math.hypot(x - centre.x, y - centre.y);
    if (distance < 1) return null;
    const ux = (x - centre.x) / distance;
    const uy = (y - centre.y) / distance;
    return { x: centre.x + ux * radius, y: centre.y + uy * radius, ux, uy, cost: 0 };
  };
}

/** The tip nearest to an elbow, whatever its own direction. */
export function nearestTip(tips: readonly Tip[]): (x: number, y: number) => Tip | null {
  return (x, y) => {
    let nearest: Tip | null = null;
    let least = Infinity;
    for (const tip of tips) {
      const distance = (tip.x - x) ** 2 + (tip.y - y) ** 2;
      if (distance < least) {
        least = distance;
        nearest = tip;
      }
    }
    return nearest;
  };
}

export interface LeaderTips {
  readonly tips: readonly Tip[];
  readonly ending: Ending;
}

/**
 * Tips of words about a point. At the centre of a hole or mark the leader ends on its edge and points at the
 * centre; on a line it ends with an arrow; inside the outline with a dot (ISO 128-22).
 */
export function leaderTips(desk: Desk, { at }: LeaderDimension): LeaderTips {
  const { scene, placing, style } = desk;
  const sheet = toSheet(desk, at.x, at.y);
  const near = 0.05;
  const hole = scene.openings.find((round) => Math.hypot(round.x - at.x, round.y + at.y) < near);
  if (hole !== undefined) {
    return {
      tips: circleTips(desk, sheet.x, sheet.y, hole.radius * placing.scale, false, true),
      ending: 'arrow',
    };
  }
  const mark = scene.marks.find((round) => Math.hypot(round.x - at.x, round.y + at.y) < near);
  if (mark !== undefined) {
    const radius = Math.max(style.size * 0.2, mark.radius * placing.scale);
    return { tips: circleTips(desk, sheet.x, sheet.y, radius, false, true), ending: 'arrow' };
  }
  const edge = scene.openings.find(
    (round) => Math.abs(Math.hypot(round.x - at.x, round.y + at.y) - round.radius) < near,
  );
  if (edge !== undefined) {
    const outward = Math.atan2(-at.y - edge.y, at.x - edge.x);
    return { tips: turnedTips(sheet.x, sheet.y, outward, 0), ending: 'arrow' };
  }
  return {
    tips: ANGLES.map((angle) => ({ ...sheet, ux: Math.cos(angle), uy: Math.sin(angle), cost: 0 })),
    ending: solidAt(desk, sheet.x, sheet.y) ? 'arrow' : 'dot',
  };
}

/** How many places along a ghost's line are tried. */
const GHOST_PLACES = 10;

/** Tips along a ghost's own line, leaving it squarely on either side. */
export function ghostTips(desk: Desk, pieces: readonly Piece[]): readonly Tip[] {
  const { placing } = desk;
  const places = Math.max(1, Math.round(GHOST_PLACES / pieces.length));
  const round = pieces.length <= 2 && pieces.every(({ kind }) => kind === 'arc');
  return pieces.flatMap((piece) =>
    Array.from({ length: places }, (_, i): readonly Tip[] => {
      const t = (i + 0.5) / places;
      if (piece.kind === 'line') {
        const dx = piece.x2 - piece.x1;
        const dy = piece.y2 - piece.y1;
        const length = Math.hypot(dx, dy);
        const at = {
          x: placing.x + (piece.x1 + dx * t) * placing.scale,
          y: placing.y + (piece.y1 + dy * t) * placing.scale,
        };
        const angle = Math.atan2(dx / length, -dy / length);
        return [...turnedTips(at.x, at.y, angle, 1), ...turnedTips(at.x, at.y, angle + Math.PI, 1)];
      }
      const angle = piece.start + piece.sweep * t;
      const tip = {
        x: placing.x + (piece.x + piece.radius * Math.cos(angle)) * placing.scale,
        y: placing.y + (piece.y + piece.radius * Math.sin(angle)) * placing.scale,
      };
      const outward = { ...tip, ux: Math.cos(angle), uy: Math.sin(angle), cost: 0 };
      return [outward, { ...outward, ux: -outward.ux, uy: -outward.uy, cost: round ? 0.5 : 1 }];
    }).flat(),
  );
}
