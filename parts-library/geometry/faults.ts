// What is wrong with a list of vertices as a contour, and where: the inspection before anything is made of it.
import { norm } from './norm.js';
import Flatbush from 'flatbush';
import { signedAreaOf, segmentBounds } from './measure.js';
import { intersectSegments, type Intersection } from './intersect.js';
import { nearestOnSegment } from './distance.js';
import { directionAlong, pointAlong, segmentsAlong, vertexAt } from './segments.js';
import {
  coincidentPoints,
  farthestCoordinate,
  halfCircleSlack,
  shortestSegment,
  tangentOverlap,
} from './tolerances.js';
import type { Bounds, Fault, FaultKind, Point, Segment, Vertex } from './types.js';

export interface InspectionOptions {
  /** Shortest segment allowed, mm. */
  readonly shortest?: number;
  /** Parts of the contour this close touch, mm. */
  readonly touching?: number;
}

/**
 * Every fault of a closed contour: too few vertices, bad numbers, zero-length segments, bulges over a half circle,
 * no area, places where it crosses or touches itself. Empty when the contour is sound. The orientation is not a
 * fault: it is the sign of the area.
 * @example the bow tie (0,0) (10,10) (10,0) (0,10) crosses itself at (5, 5), segments 0 and 2
 */
export function findFaults(vertices: readonly Vertex[], options: InspectionOptions = {}): Fault[] {
  const { shortest = shortestSegment, touching = coincidentPoints } = options;
  const basic = numberFaults(vertices);
  if (basic.length > 0) return basic;
  const faults = segmentFaults(vertices, shortest);
  if (faults.length > 0) return faults;
  const meetings = selfMeetings(segmentsAlong(vertices, true), touching);
  if (meetings.length > 0) return meetings;
  const area = signedAreaOf(vertices);
  if (Math.abs(area) <= shortest * shortest) {
    faults.push(
      fault('no-area', vertexAt(vertices, 0), [], 'it encloses no area; draw it as an open path instead'),
    );
  }
  return faults;
}

function fault(kind: FaultKind, at: Point, segments: readonly number[], what: string): Fault {
  const where =
    segments.length === 0 ? '' : `segment${segments.length > 1 ? 's' : ''} ${segments.join(' and ')} `;
  const place = `near (${at.x.toFixed(3)}, ${at.y.toFixed(3)}) `;
  return { kind, at: { x: at.x, y: at.y }, segments, says: `Contour ${place}${where}- ${what}.` };
}

function numberFaults(vertices: readonly Vertex[]): Fault[] {
  const first = vertices[0];
  if (first === undefined || vertices.length < 2) {
    const at = first ?? { x: 0, y: 0 };
    return [
      fault(
        'too-few-vertices',
        at,
        [],
        'a contour needs at least two vertices; a circle is two half circles',
      ),
    ];
  }
  const faults: Fault[] = [];
  vertices.forEach((v, i) => {
    if (!Number.isFinite(v.x) || !Number.isFinite(v.y) || !Number.isFinite(v.bulge)) {
      faults.push(
        fault('not-a-number', v, [i], 'a coordinate or bulge is not a number; give finite millimetres'),
      );
    } else if (Math.abs(v.x) > farthestCoordinate || Math.abs(v.y) > farthestCoordinate) {
      faults.push(fault('out-of-range', v, [i], 'it lies over 100 m from the origin; check the units'));
    }
  });
  return faults;
}

function segmentFaults(vertices: readonly Vertex[], shortest: number): Fault[] {
  const faults: Fault[] = [];
  vertices.forEach((v, i) => {
    const next = vertexAt(vertices, i + 1);
    if (norm(next.x - v.x, next.y - v.y) < shortest) {
      faults.push(fault('zero-segment', v, [i], 'two vertices fall on one point; leave one of them out'));
    }
    if (Math.abs(v.bulge) > 1 + halfCircleSlack) {
      faults.push(fault('bulge-too-large', v, [i], 'an arc sweeps more than half a circle; split it in two'));
    }
  });
  const [a, b] = vertices;
  if (faults.length === 0 && vertices.length === 2 && a !== undefined && b !== undefined) {
    if (Math.abs(a.bulge + b.bulge) < halfCircleSlack) {
      faults.push(fault('no-area', a, [0, 1], 'it goes out and comes back on the same line'));
    }
  }
  return faults;
}

/** Segments fewer than this are compared pair by pair; an index only pays beyond. */
const indexFrom = 48;

function selfMeetings(segments: readonly Segment[], touching: number): Fault[] {
  const boxes = segments.map(segmentBounds);
  const faults: Fault[] = [];
  const consider = (i: number, j: number): void => {
    const a = segments[i];
    const b = segments[j];
    if (a === undefined || b === undefined) return;
    const gap = j - i;
    const found =
      gap === 1 || gap === segments.length - 1
        ? neighbourFault(segments, gap === 1 ? i : j, gap === 1 ? j : i, touching)
        : strangerFault(a, b, i, j, touching);
    if (found !== undefined) faults.push(found);
  };
  if (segments.length < indexFrom) {
    for (let i = 0; i < boxes.length; i++) {
      for (let j = i + 1; j < boxes.length; j++) {
        if (boxesMeet(boxes[i], boxes[j], touching)) consider(i, j);
      }
    }
    return faults;
  }
  const tree = new Flatbush(segments.length);
  for (const box of boxes) tree.add(box.minX, box.minY, box.maxX, box.maxY);
  tree.finish();
  boxes.forEach((box, i) => {
    tree.search(box.minX - touching, box.minY - touching, box.maxX + touching, box.maxY + touching, (j) => {
      if (j > i) consider(i, j);
      return false;
    });
  });
  return faults;
}

function boxesMeet(a: Bounds | undefined, b: Bounds | undefined, slack: number): boolean {
  if (a === undefined || b === undefined) return false;
  return (
    a.minX <= b.maxX + slack &&
    b.minX <= a.maxX + slack &&
    a.minY <= b.maxY + slack &&
    b.minY <= a.maxY + slack
  );
}

function strangerFault(a: Segment, b: Segment, i: number, j: number, touching: number): Fault | undefined {
  const meeting = intersectSegments(a, b, touching)[0];
  if (meeting === undefined) return undefined;
  const at = meeting.kind === 'point' ? meeting.point : meeting.from;
  return crosses(meeting)
    ? fault('crosses-itself', at, [i, j], 'cross each other; split it into separate contours')
    : fault('touches-itself', at, [i, j], 'touch each other; part them or split it into separate contours');
}

function crosses(meeting: Intersection): boolean {
  if (meeting.kind === 'overlap' || meeting.tangent) return false;
  return meeting.a > 0 && meeting.a < 1 && meeting.b > 0 && meeting.b < 1;
}

/** Segment j follows i, so they share a vertex: only a second meeting or a way back along itself is a fault. */
function neighbourFault(
  segments: readonly Segment[],
  i: number,
  j: number,
  touching: number,
): Fault | undefined {
  const a = segments[i];
  const b = segments[j];
  if (a === undefined || b === undefined) return undefined;
  const vertex = b.from;
  const u = directionAlong(a, 1);
  const v = directionAlong(b, 0);
  if (a.kind === 'line' && b.kind === 'line') {
    // Two lines from one vertex meet again only when one runs back along the other.
    if (u.x * v.x + u.y * v.y > 0 || Math.abs(u.x * v.y - u.y * v.x) > 1e-9) return undefined;
    return fault(
      'touches-itself',
      vertex,
      [i, j],
      'the second runs back along the first; take the spike out',
    );
  }
  const straightOn = u.x * v.x + u.y * v.y > 0;
  const opposed = a.kind === 'line' || b.kind === 'line' || a.sweep > 0 !== b.sweep > 0;
  if (straightOn && opposed && segments.length > 2) {
    // Beside a tangent join that bends away on one side only, the overlap of rounded numbers is r turn^2 / 2 at most.
    const turn = Math.abs(u.x * v.y - u.y * v.x);
    const radius = Math.max(a.kind === 'arc' ? a.radius : 0, b.kind === 'arc' ? b.radius : 0);
    if ((radius * turn * turn) / 2 < tangentOverlap) return undefined;
  }
  const shared = segments.length === 2 ? [vertex, a.from] : [vertex];
  for (const meeting of intersectSegments(a, b, touching)) {
    if (meeting.kind === 'overlap') {
      const length = norm(meeting.from.x - meeting.to.x, meeting.from.y - meeting.to.y);
      if (length <= tangentOverlap) continue;
      return fault('touches-itself', meeting.from, [i, j], 'the second runs back along the first');
    }
    const { point } = meeting;
    if (shared.some((s) => norm(s.x - point.x, s.y - point.y) <= 2 * touching)) continue;
    // A tangent join read from rounded numbers meets twice, with next to nothing between: no fault. A point so sharp
    // that its sides cross is one.
    const allowed = straightOn ? tangentOverlap : touching;
    const half = pointAlong(a, segments.length === 2 ? meeting.a / 2 : (1 + meeting.a) / 2);
    if (nearestOnSegment(b, half).distance <= allowed) continue;
    return fault(
      meeting.tangent ? 'touches-itself' : 'crosses-itself',
      point,
      [i, j],
      'meet again after their common vertex; part them',
    );
  }
  return undefined;
}
