// The part and its ghosts as lines at full size with y down, sorted by what they mean, before any scale is chosen.
import { norm } from '../geometry/index.js';
import { isCut, isLine, isMark, outlineOf } from '../model/index.js';
import type { CutFeature, Dimension, Ghost, Part } from '../model/index.js';
import {
  boundsOfPiece,
  circlePath,
  wholeCircle,
  pathOfContour,
  pathOfOpenPath,
  piecesOf,
  type Piece,
} from './pieces.js';
import type { LineType, LineWeight, PathCommand, Role } from './display-list.js';
import { CENTRE, GHOST, SOLID, type Content } from './occupancy.js';

export interface Shape {
  readonly role: Role;
  readonly type: LineType;
  readonly weight: LineWeight;
  readonly path: readonly PathCommand[];
  readonly pieces: readonly Piece[];
  /** How a text minds it. */
  readonly content: Content;
  readonly featureId?: string;
  readonly ghostId?: string;
}

/** A full circle: an opening, a mark (radius 0 until drilled) or a ghost. */
export interface Round {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export interface Extent {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface Scene {
  readonly shapes: readonly Shape[];
  readonly openings: readonly Round[];
  /** Spots to drill from, with the radius that the hole will have. */
  readonly marks: readonly Round[];
  readonly boltCircles: readonly Round[];
  readonly welds: readonly Round[];
  /** Circles that a weld may sit on. */
  readonly hubs: readonly Round[];
  readonly ghostRounds: readonly Round[];
  /** Openings with round ends, such as slots: the half circles of each. */
  readonly roundEnds: readonly (readonly Round[])[];
  readonly threads: readonly Round[];
  /** Outline and openings as points x, y, x, y…, for filling and for how far the part reaches. */
  readonly contours: readonly Float64Array[];
  readonly metal: readonly PathCommand[];
  /** Extent of the outline, and of everything drawn to scale. */
  readonly part: Extent;
  readonly whole: Extent;
}

/** Chord length for filling and reach, as a share of the radius; only label placement depends on it. */
const CHORD_ANGLE = Math.PI / 16;

function flatten(pieces: readonly Piece[]): Float64Array {
  const points: number[] = [];
  for (const piece of pieces) {
    if (piece.kind === 'line') {
      points.push(piece.x1, piece.y1);
      continue;
    }
    const steps = Math.max(1, Math.ceil(Math.abs(piece.sweep) / CHORD_ANGLE));
    for (let i = 0; i < steps; i++) {
      const angle = piece.start + (piece.sweep * i) / steps;
      points.push(piece.x + piece.radius * Math.cos(angle), piece.y + piece.radius * Math.sin(angle));
    }
  }
  return Float64Array.from(points);
}

/** The circle that a contour is, if all its segments are arcs about one centre. */
function roundOf(id: string, pieces: readonly Piece[]): Round | null {
  const first = pieces[0];
  if (first?.kind !== 'arc') return null;
  const { x, y, radius } = first;
  const near = radius * 1e-6;
  const same = pieces.every(
    (piece) => piece.kind === 'arc' && norm(piece.x - x, piece.y - y) < near && piece.sweep * first.sweep > 0,
  );
  return same ? { id, x, y, radius } : null;
}

/** Half circles of an opening that is no circle: the ends of a slot. */
function roundEndsOf(id: string, pieces: readonly Piece[]): readonly Round[] {
  return pieces.flatMap((piece) =>
    piece.kind === 'arc' && Math.abs(Math.abs(piece.sweep) - Math.PI) < 1e-3
      ? [{ id, x: piece.x, y: piece.y, radius: piece.radius }]
      : [],
  );
}

const extentOf = (pieces: readonly Piece[]): Extent => joinExtents(pieces.map(boundsOfPiece));

function joinExtents(extents: readonly Extent[]): Extent {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (const extent of extents) {
    minX = Math.min(minX, extent.minX);
    minY = Math.min(minY, extent.minY);
    maxX = Math.max(maxX, extent.maxX);
    maxY = Math.max(maxY, extent.maxY);
  }
  return { minX, minY, maxX, maxY };
}

/** Three quarters of a circle, open at the upper right, as ISO 6410-1 draws a thread seen along its axis. */
function threadPath(x: number, y: number, radius: number): readonly PathCommand[] {
  const at = (degrees: number): readonly [number, number] => [
    x + radius * Math.cos((degrees * Math.PI) / 180),
    y + radius * Math.sin((degrees * Math.PI) / 180),
  ];
  return [
    ['M', ...at(8)],
    ['A', radius, 1, 1, ...at(278)],
  ];
}

function cutShape(feature: CutFeature, path: readonly PathCommand[], pieces: readonly Piece[]): Shape {
  return {
    role: feature.purpose,
    type: 'continuous',
    weight: 'wide',
    path,
    pieces,
    content: SOLID,
    featureId: feature.id,
  };
}

function ghostShape(ghost: Ghost): Shape | null {
  if (ghost.kind === 'weld' && 'circle' in ghost.shape) return null;
  const { shape } = ghost;
  let path: readonly PathCommand[];
  let whole: Piece | null = null;
  if ('circle' in shape) {
    const { centre, radius } = shape.circle;
    if (ghost.kind === 'thread') {
      path = threadPath(centre.x, -centre.y, radius);
    } else {
      path = circlePath(centre.x, -centre.y, radius);
      whole = wholeCircle(centre.x, -centre.y, radius);
    }
  } else {
    path = 'contour' in shape ? pathOfContour(shape.contour) : pathOfOpenPath(shape.path);
  }
  const type: LineType =
    ghost.kind === 'thread'
      ? 'continuous'
      : ghost.kind === 'bolt-circle'
        ? 'long-dashed-dotted'
        : 'long-dashed-double-dotted';
  const role: Role = ghost.kind === 'bolt-circle' ? 'centre' : ghost.kind === 'weld' ? 'weld' : 'ghost';
  return {
    role,
    type,
    weight: 'narrow',
    path,
    pieces: whole === null ? piecesOf(path) : [whole],
    content: ghost.kind === 'thread' ? SOLID : GHOST,
    ghostId: ghost.id,
  };
}

const ghostRound = ({ id, shape }: Ghost): readonly Round[] =>
  'circle' in shape
    ? [{ id, x: shape.circle.centre.x, y: -shape.circle.centre.y, radius: shape.circle.radius }]
    : [];

/** Major diameter circles of tapped openings that no ghost shows already. */
function threadShapes(part: Part, ghosts: readonly Ghost[], openings: readonly Round[]): readonly Shape[] {
  const shown = ghosts.filter(({ kind }) => kind === 'thread').flatMap(ghostRound);
  return part.features.flatMap((feature) => {
    if (!isCut(feature) || feature.hole?.finish !== 'tap' || feature.hole.takes === undefined) return [];
    const round = openings.find(({ id }) => id === feature.id);
    if (round === undefined) return [];
    if (shown.some(({ x, y }) => norm(x - round.x, y - round.y) < round.radius * 0.1)) return [];
    const path = threadPath(round.x, round.y, feature.hole.takes / 2);
    return [
      {
        role: 'ghost',
        type: 'continuous',
        weight: 'narrow',
        path,
        pieces: piecesOf(path),
        content: SOLID,
        featureId: feature.id,
      } satisfies Shape,
    ];
  });
}

/** Circles that a diameter measures and nothing else draws, with holes or marks on them: bolt circles. */
function measuredCircles(
  dimensions: readonly Dimension[],
  drawn: readonly Round[],
  holes: readonly Round[],
): readonly Round[] {
  const near = 0.02;
  const circles: Round[] = [];
  for (const dimension of dimensions) {
    if (dimension.kind !== 'diameter') continue;
    const circle = {
      id: dimension.id,
      x: dimension.centre.x,
      y: -dimension.centre.y,
      radius: dimension.radius,
    };
    const away = (round: Round): number => norm(round.x - circle.x, round.y - circle.y);
    const isDrawn = [...drawn, ...circles].some(
      (round) => away(round) < near && Math.abs(round.radius - circle.radius) < near,
    );
    if (!isDrawn && holes.some((hole) => Math.abs(away(hole) - circle.radius) < near)) circles.push(circle);
  }
  return circles;
}

function centreCircle({ x, y, radius }: Round): Shape {
  return {
    role: 'centre',
    type: 'long-dashed-dotted',
    weight: 'narrow',
    path: circlePath(x, y, radius),
    pieces: [wholeCircle(x, y, radius)],
    content: CENTRE,
  };
}

/** Reads a part, its ghosts and the circles that its dimensions measure into lines. */
export function makeScene(
  part: Part,
  ghosts: readonly Ghost[],
  dimensions: readonly Dimension[] = [],
): Scene {
  const ghostShapes = ghosts.flatMap((ghost) => ghostShape(ghost) ?? []);
  const openings: Round[] = [];
  const roundEnds: (readonly Round[])[] = [];
  const openingShapes: Shape[] = [];
  const outlineShapes: Shape[] = [];
  const lineShapes: Shape[] = [];
  const metal: PathCommand[] = [];
  const contours: Float64Array[] = [];

  for (const feature of part.features) {
    if (isCut(feature)) {
      const path = pathOfContour(feature.contour);
      const halves = piecesOf(path);
      const round = roundOf(feature.id, halves);
      const pieces = round === null ? halves : [wholeCircle(round.x, round.y, round.radius)];
      const shape = cutShape(feature, path, pieces);
      (feature.purpose === 'outline' ? outlineShapes : openingShapes).push(shape);
      metal.push(...path);
      contours.push(flatten(pieces));
      if (feature.purpose === 'opening') {
        if (round !== null) openings.push(round);
        else roundEnds.push(roundEndsOf(feature.id, pieces));
      }
    } else if (isLine(feature)) {
      const path = pathOfOpenPath(feature.path);
      lineShapes.push({
        role: feature.purpose,
        type: 'continuous',
        weight: 'narrow',
        path,
        pieces: piecesOf(path),
        content: SOLID,
        featureId: feature.id,
      });
    }
  }

  const marks = part.features.filter(isMark).map(({ id, at, hole }) => ({
    id,
    x: at.x,
    y: -at.y,
    radius: (hole?.size ?? 0) / 2,
  }));
  const outline = outlineShapes.find(({ featureId }) => featureId === outlineOf(part).id);
  const partExtent = extentOf(outline?.pieces ?? []);
  const ofKind = (kind: Ghost['kind']): readonly Round[] =>
    ghosts.filter((ghost) => ghost.kind === kind).flatMap(ghostRound);
  const ghostRounds = ghosts.flatMap(ghostRound);
  const measured = measuredCircles(dimensions, [...ghostRounds, ...openings], [...openings, ...marks]);
  return {
    shapes: [
      ...ghostShapes,
      ...measured.map(centreCircle),
      ...threadShapes(part, ghosts, openings),
      ...lineShapes,
      ...openingShapes,
      ...outlineShapes,
    ],
    openings,
    marks,
    boltCircles: [...ofKind('bolt-circle'), ...measured],
    welds: ofKind('weld'),
    hubs: [...openings, ...ofKind('hub')],
    ghostRounds,
    roundEnds,
    threads: ofKind('thread'),
    contours,
    metal,
    part: partExtent,
    whole: joinExtents([
      partExtent,
      ...ghostShapes.map(({ pieces }) => extentOf(pieces)),
      ...ofKind('weld').map(({ x, y, radius }) => boundsOfPiece(wholeCircle(x, y, radius))),
    ]),
  };
}
