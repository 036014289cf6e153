// Path data of SVG as pieces of line: arcs stay arcs, Béziers stay Béziers, one run for each that it moves to.
import { SVGPathData } from 'svg-pathdata';
import type { Point } from '../../geometry/index.js';
import { READ_LIMITS } from './limits.js';
import type { Piece, RoundPiece } from './pieces.js';
import { DrawingProblem } from './problem.js';

export interface PathRun {
  readonly pieces: readonly Piece[];
  readonly closed: boolean;
}

/** Runs of a path, and the places where it only dots. */
export interface PathRead {
  readonly runs: readonly PathRun[];
  readonly dots: readonly Point[];
}

const line = (from: Point, to: Point): Piece => ({ kind: 'segment', from, to, bulge: 0 });

const same = (a: Point, b: Point): boolean => a.x === b.x && a.y === b.y;

/**
 * An arc by its ends as one by its centre (SVG 1.1, F.6.5), radii enlarged where they do not reach (F.6.6).
 * @returns undefined for one that draws nothing; a line for one without a radius
 */
function arcByEnds(
  from: Point,
  to: Point,
  arc: {
    readonly rX: number;
    readonly rY: number;
    readonly degrees: number;
    readonly large: boolean;
    readonly positive: boolean;
  },
): Piece | undefined {
  if (same(from, to)) return undefined;
  let [rx, ry] = [Math.abs(arc.rX), Math.abs(arc.rY)];
  if (rx === 0 || ry === 0) return line(from, to);
  const angle = (arc.degrees * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const half = { x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 };
  const x = cosine * half.x + sine * half.y;
  const y = cosine * half.y - sine * half.x;
  const reach = (x / rx) ** 2 + (y / ry) ** 2;
  if (reach > 1) [rx, ry] = [rx * Math.sqrt(reach), ry * Math.sqrt(reach)];
  const left = Math.max(0, 1 / Math.min(1, reach) - 1);
  const side = Math.sqrt(reach > 1 ? 0 : left) * (arc.large === arc.positive ? -1 : 1);
  const inner = { x: (side * rx * y) / ry, y: (-side * ry * x) / rx };
  const centre = {
    x: cosine * inner.x - sine * inner.y + (from.x + to.x) / 2,
    y: sine * inner.x + cosine * inner.y + (from.y + to.y) / 2,
  };
  const start = Math.atan2((y - inner.y) / ry, (x - inner.x) / rx);
  const end = Math.atan2((-y - inner.y) / ry, (-x - inner.x) / rx);
  const turn = 2 * Math.PI;
  let sweep = end - start;
  if (arc.positive && sweep < 0) sweep += turn;
  if (!arc.positive && sweep > 0) sweep -= turn;
  const round: RoundPiece = {
    kind: 'round',
    centre,
    u: { x: rx * cosine, y: rx * sine },
    v: { x: -ry * sine, y: ry * cosine },
    start,
    sweep,
  };
  return round;
}

function commandsOf(d: string) {
  try {
    // Lines along x and y become plain lines, smooth curves get their control points; a close stays a close.
    return new SVGPathData(d).toAbs().normalizeHVZ(false, true, true).normalizeST().commands;
  } catch (error) {
    throw new DrawingProblem(
      `Path data "${d.trim().slice(0, 40)}" cannot be read: ${error instanceof Error ? error.message.slice(0, 120) : 'unreadable'}.`,
    );
  }
}

/** @throws DrawingProblem for data that are no path, with the place in them */
export function readPath(d: string): PathRead {
  const runs: PathRun[] = [];
  const dots: Point[] = [];
  let pieces: Piece[] = [];
  let start: Point = { x: 0, y: 0 };
  let at: Point = start;
  let dotted = false;
  const end = (closed: boolean): void => {
    if (pieces.length > 0) runs.push({ pieces, closed });
    else if (dotted) dots.push(start);
    pieces = [];
    dotted = false;
  };
  for (const command of commandsOf(d)) {
    for (const value of Object.values(command)) {
      if (typeof value === 'number' && !(Math.abs(value) <= READ_LIMITS.coordinate))
        throw new DrawingProblem(
          `Path data hold the number ${value}; numbers beyond ${READ_LIMITS.coordinate} are a slip.`,
        );
    }
    if (command.type === SVGPathData.CLOSE_PATH) {
      if (!same(at, start)) pieces.push(line(at, start));
      else dotted = true;
      end(true);
      at = start;
      continue;
    }
    if (!('x' in command && 'y' in command)) continue;
    const to = { x: command.x, y: command.y };
    if (command.type === SVGPathData.MOVE_TO) {
      end(false);
      start = to;
    } else if (command.type === SVGPathData.LINE_TO) {
      if (same(at, to)) dotted = true;
      else pieces.push(line(at, to));
    } else if (command.type === SVGPathData.CURVE_TO) {
      pieces.push({
        kind: 'bezier',
        points: [at, { x: command.x1, y: command.y1 }, { x: command.x2, y: command.y2 }, to],
      });
    } else if (command.type === SVGPathData.QUAD_TO) {
      pieces.push({ kind: 'bezier', points: [at, { x: command.x1, y: command.y1 }, to] });
    } else if (command.type === SVGPathData.ARC) {
      const arc = arcByEnds(at, to, {
        rX: command.rX,
        rY: command.rY,
        degrees: command.xRot,
        large: command.lArcFlag === 1,
        positive: command.sweepFlag === 1,
      });
      if (arc !== undefined) pieces.push(arc);
    }
    at = to;
  }
  end(false);
  return { runs, dots };
}
