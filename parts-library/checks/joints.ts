// Whether two parts can be bolted to each other: as many holes, for the same bolts, standing alike within their room.
import { isCircle, type Point } from '../geometry/index.js';
import { isCut, isMark, type Feature, type Finding, type Format, type Part } from '../model/index.js';

import { digits, found, quantity } from './findings.js';

/** One side of a joint: a part and the holes that meet the other's. */
export interface JointSide {
  readonly name: string;
  readonly part: Part;
  /** Ids of the holes begin with this. */
  readonly holes: string;
}

interface MeetingHole {
  readonly at: Point;
  readonly size: number;
  readonly takes: number | undefined;
}

function holesOf({ part, holes }: JointSide): readonly MeetingHole[] {
  return part.features.flatMap((feature: Feature): readonly MeetingHole[] => {
    if (!feature.id.startsWith(holes)) return [];
    if (isMark(feature))
      return feature.hole === undefined
        ? []
        : [{ at: feature.at, size: feature.hole.size, takes: feature.hole.takes }];
    const circle = isCut(feature) ? isCircle(feature.contour) : undefined;
    return circle === undefined || !isCut(feature)
      ? []
      : [{ at: circle.centre, size: 2 * circle.radius, takes: feature.hole?.takes }];
  });
}

/** All distances between two holes, shortest first: alike for parts that fit, however they are turned. */
function distances(holes: readonly MeetingHole[]): readonly number[] {
  return holes
    .flatMap((a, i) => holes.slice(i + 1).map((b) => Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y)))
    .toSorted((a, b) => a - b);
}

const SOURCE = {
  title: 'Two parts on one set of bolts',
  where:
    'as many holes, one bolt, distances alike within the room that the bolts have (ASME Y14.5 appendix B)',
  certainty: 'from memory',
} as const;

/** Judges a joint between two parts. */
export function checkJoint(a: JointSide, b: JointSide, format: Format): readonly Finding[] {
  const [mine, theirs] = [holesOf(a), holesOf(b)];
  const place = { code: 'joint', source: SOURCE } as const;
  if (mine.length !== theirs.length || mine.length === 0) {
    return [
      found({
        ...place,
        level: 'stop',
        title: `${a.name} and ${b.name} cannot be bolted together: ${mine.length} and ${theirs.length} holes`,
        says: 'Let both follow the kit again, or give both the same number of bolts.',
      }),
    ];
  }
  const [first] = mine;
  const [other] = theirs;
  if (first?.takes !== other?.takes) {
    return [
      found({
        ...place,
        level: 'stop',
        title: `${a.name} and ${b.name} are drawn for bolts of ${format.length(first?.takes ?? 0)} and ${format.length(other?.takes ?? 0)}`,
        says: 'One bolt goes through both; let both follow the kit again.',
      }),
    ];
  }
  const bolt = first?.takes ?? 0;
  // A bolt has its play in each hole; two holes a distance apart use it from both ends.
  const room = Math.max(0, (first?.size ?? 0) - bolt) + Math.max(0, (other?.size ?? 0) - bolt);
  const [ours, others] = [distances(mine), distances(theirs)];
  const off = ours.reduce((worst, distance, i) => Math.max(worst, Math.abs(distance - (others[i] ?? 0))), 0);
  return [
    found({
      ...place,
      level: off > room ? 'stop' : 'pass',
      title:
        off > room
          ? `${a.name} and ${b.name} do not meet: holes ${format.length(off)} off, the bolts have ${format.length(room)}`
          : `${a.name} and ${b.name} meet on ${mine.length} bolts`,
      says:
        off > room
          ? 'Their patterns differ; let both follow the kit again, or measure the pattern once more.'
          : `Drawn ${format.length(off)} apart; the bolts have ${format.length(room)}.`,
      value: quantity(off, 'mm'),
      limit: quantity(room, 'mm'),
      formula: `(${digits(first?.size ?? 0)} − ${digits(bolt)}) + (${digits(other?.size ?? 0)} − ${digits(bolt)}) = ${digits(room)}`,
    }),
  ];
}
