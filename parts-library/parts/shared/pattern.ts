// A bolt pattern resolved: from what was measured to hole centres, hole sizes and what is known about them.
import type { BoltPattern } from '../../checks/index.js';
import type { Point } from '../../geometry/index.js';
import { boltCircleFrom, boltHoles, findThread, type BoltCircle } from '../../handbook/index.js';
import { sizeHole, type SizedHole } from './holes.js';
import { LARGEST_CIRCLE, SMALLEST_CIRCLE, type Pattern } from './pattern-fields.js';

export interface ResolvedPattern {
  readonly pattern: BoltPattern;
  readonly circle: BoltCircle;
  readonly parameters: Pattern;
  readonly size: SizedHole;
}

export type PatternResult =
  | { readonly ok: true; readonly value: ResolvedPattern }
  | { readonly ok: false; readonly field: string; readonly says: string };

function turnTo(points: readonly Point[], degrees: number): readonly Point[] {
  const first = points[0];
  if (first === undefined) return points;
  const turn = (degrees * Math.PI) / 180 - Math.atan2(first.y, first.x);
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return points.map(({ x, y }) => ({ x: x * cos - y * sin, y: x * sin + y * cos }));
}

/** Where the holes go: evenly on the circle, or where they were measured when the pattern is odd. */
function placeHoles(circle: BoltCircle, count: number, degrees: number): readonly Point[] {
  const { centre, holes } = circle;
  if (circle.evenlySpaced || centre === undefined || holes === undefined || holes.length !== count) {
    return boltHoles(circle.diameter, count, degrees);
  }
  return turnTo(
    holes.map(({ at }) => ({ x: at.x - centre.x, y: at.y - centre.y })),
    degrees,
  );
}

/** Resolves the first or second pattern of the parameters. */
export function resolvePattern(p: Pattern, id: BoltPattern['id']): PatternResult {
  const fieldPrefix = id === 'pattern1' ? '' : 'pattern2.';
  const thread = findThread(p.bolt);
  if (!thread.found) return { ok: false, field: `${fieldPrefix}bolt`, says: thread.says };
  const answer = boltCircleFrom(p.boltCircle.measure, p.bolts);
  if (!answer.ok) return { ok: false, field: `${fieldPrefix}boltCircle`, says: answer.problem.says };
  const { diameter } = answer.value;
  if (diameter < SMALLEST_CIRCLE || diameter > LARGEST_CIRCLE) {
    return {
      ok: false,
      field: `${fieldPrefix}boltCircle`,
      says: `That gives a bolt circle of ${diameter.toFixed(2)} mm; accepted is ${SMALLEST_CIRCLE} to ${LARGEST_CIRCLE} mm. Measure again, or check the number of bolts.`,
    };
  }
  const size = sizeHole(p);
  if (typeof size === 'string') return { ok: false, field: `${fieldPrefix}holes`, says: size };
  const circle = answer.value;
  const holes = placeHoles(circle, p.bolts, p.clocking.value).map((at, index) => ({
    featureId: `${id}.hole.${index + 1}`,
    at,
  }));
  const optional = (entry: { readonly mm: number; readonly plusMinus?: number | undefined } | undefined) =>
    entry === undefined ? undefined : { diameter: entry.mm, plusMinus: entry.plusMinus ?? 0 };
  const boltedHole = optional(p.boltedHole);
  const boltedBore = optional(p.boltedBore);
  return {
    ok: true,
    value: {
      circle,
      parameters: p,
      size,
      pattern: {
        id,
        fieldPrefix,
        thread: thread.row,
        count: p.bolts,
        circle: circle.diameter,
        circlePlusMinus: circle.plusMinus,
        made: p.holes.kind,
        boltedBy: p.boltedBy,
        holeDiameter: size.diameter,
        holes,
        ...(boltedHole === undefined ? {} : { boltedHole }),
        ...(boltedBore === undefined ? {} : { boltedBore }),
      },
    },
  };
}

/** Both patterns, or the first thing that is wrong with one of them. */
export function resolvePatterns(
  p: Pattern & { readonly pattern2?: Pattern | undefined },
): { readonly ok: true; readonly value: readonly ResolvedPattern[] } | Extract<PatternResult, { ok: false }> {
  const first = resolvePattern(p, 'pattern1');
  if (!first.ok) return first;
  if (p.pattern2 === undefined) return { ok: true, value: [first.value] };
  const second = resolvePattern(p.pattern2, 'pattern2');
  return second.ok ? { ok: true, value: [first.value, second.value] } : second;
}
