// From strokes to sound contours and open lines: curves to arcs, doubles out, ends joined, loops parted, circles told.
import { GeometryError, makeContour, type Contour, type Point, type Vertex } from '../../geometry/index.js';
import { withoutDoubles } from './doubles.js';
import { joinRuns } from './join.js';
import { READ_LIMITS } from './limits.js';
import { asCircle, simpleLoops } from './loops.js';
import type { ReadOptions } from './options.js';
import { drawPiece, type Stroke } from './pieces.js';
import { DrawingProblem } from './problem.js';
import { reachOf, SHORTEST_LINE, withoutNeedlessCorners, withoutSpecks, type Run } from './runs.js';

export interface ClosedShape {
  readonly layer: string;
  readonly contour: Contour;
  readonly isCircle: boolean;
}

export interface OpenShape {
  readonly layer: string;
  readonly vertices: readonly Vertex[];
}

/** A closed run that is no contour. */
export interface BrokenShape {
  readonly layer: string;
  readonly at: Point;
  readonly says: string;
  readonly vertices: readonly Vertex[];
}

export interface Shapes {
  readonly closed: readonly ClosedShape[];
  readonly open: readonly OpenShape[];
  readonly broken: readonly BrokenShape[];
  readonly told: {
    /** Curves that arcs stand for, and how far these lie from them, mm. */
    readonly curves: number;
    readonly deviation: number;
    readonly doubles: number;
    readonly doublesComplete: boolean;
    readonly gaps: number;
    readonly widest: number;
    /** By layer, the narrowest gap left between ends, mm. */
    readonly nextGaps: ReadonlyMap<string, number>;
    /** Contours that touched themselves at a corner and were parted there. */
    readonly parted: number;
    /** Circles that were drawn as chords. */
    readonly chorded: number;
    /** Lines too short to be any. */
    readonly specks: number;
  };
}

interface Drawn {
  readonly runs: readonly Run[];
  readonly curves: number;
  readonly deviation: number;
}

function drawStrokes(strokes: readonly Stroke[], tolerance: number): Drawn {
  let [arcs, curves, deviation] = [0, 0, 0];
  const runs = strokes.map(({ layer, pieces, closed }): Run => {
    const chain: Vertex[] = [];
    for (const piece of pieces) {
      const drawn = drawPiece(piece, tolerance, READ_LIMITS.arcs - arcs);
      // The end of one piece is the start of the next.
      chain.pop();
      chain.push(...drawn.vertices);
      if (drawn.fitted) {
        curves += 1;
        arcs += drawn.vertices.length - 1;
      }
      deviation = Math.max(deviation, drawn.deviation);
    }
    if (closed) chain.pop();
    return { layer, vertices: withoutSpecks(chain, closed), closed };
  });
  return { runs, curves, deviation };
}

function drawWithin(strokes: readonly Stroke[], tolerance: number): Drawn {
  try {
    return drawStrokes(strokes, tolerance);
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    throw new DrawingProblem(
      `The curves of the drawing come to more than ${READ_LIMITS.arcs} arcs; a larger arc tolerance than ${tolerance} mm, or leaving out what is not cut, would do.`,
      'arcTolerance',
    );
  }
}

/** A closed run as contours: loops, circles where they are that, or what is wrong with it. */
function contoursOf(
  run: Run,
  tolerance: number,
): {
  readonly closed: readonly ClosedShape[];
  readonly broken: readonly BrokenShape[];
  readonly loops: number;
  readonly chorded: number;
} {
  const closed: ClosedShape[] = [];
  const broken: BrokenShape[] = [];
  const { layer } = run;
  let chorded = 0;
  const loops = simpleLoops(run.vertices).filter((loop) => reachOf(loop) > 2 * SHORTEST_LINE);
  for (const loop of loops) {
    const circle = asCircle(loop, Math.max(2 * tolerance, 0.002));
    if (circle?.how === 'chords') chorded += 1;
    const vertices = circle?.vertices ?? withoutNeedlessCorners(withoutSpecks(loop, true), true);
    try {
      closed.push({ layer, contour: makeContour(vertices), isCircle: circle !== undefined });
    } catch (error) {
      if (!(error instanceof GeometryError)) throw error;
      const at = error.faults[0]?.at ?? vertices[0] ?? { x: 0, y: 0 };
      broken.push({ layer, at, says: error.faults[0]?.says ?? error.message, vertices });
    }
  }
  return { closed, broken, loops: loops.length, chorded };
}

/** @throws DrawingProblem when it comes to too much */
export function shapesOf(strokes: readonly Stroke[], options: ReadOptions): Shapes {
  const drawn = drawWithin(strokes, options.arcTolerance);
  const whole = drawn.runs.filter(({ vertices }) => reachOf(vertices) >= SHORTEST_LINE);
  const undoubled = withoutDoubles(whole);
  const joined = joinRuns(undoubled.runs, options.gap);
  const made = joined.runs.filter(({ closed }) => closed).map((run) => contoursOf(run, options.arcTolerance));
  return {
    closed: made.flatMap(({ closed }) => closed),
    open: joined.runs
      .filter(({ closed, vertices }) => !closed && vertices.length > 1)
      .map(({ layer, vertices }) => ({ layer, vertices: withoutNeedlessCorners(vertices, false) })),
    broken: made.flatMap(({ broken }) => broken),
    told: {
      curves: drawn.curves,
      deviation: drawn.deviation,
      doubles: undoubled.removed,
      doublesComplete: undoubled.complete,
      gaps: joined.gaps,
      widest: joined.widest,
      nextGaps: joined.nextGaps,
      parted: made.reduce((sum, { loops }) => sum + Math.max(0, loops - 1), 0),
      chorded: made.reduce((sum, one) => sum + one.chorded, 0),
      specks: drawn.runs.length - whole.length,
    },
  };
}
