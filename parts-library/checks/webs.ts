// Webs: the metal left between openings, marks to be drilled, and the outside.
import {
  areaOf,
  boundsOf,
  circleContour,
  containsPoint,
  distanceBetweenContours,
  distanceWithin,
  isCircle,
  nearestOnContour,
  type Bounds,
  type Contour,
  type Point,
} from '../geometry/index.js';
import { goodWeb, minWeb } from '../handbook/index.js';
import { isMark, outlineOf, type Finding, type Hole, type Part } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

interface Hollow {
  readonly id: string;
  readonly name: string;
  readonly contour: Contour;
  /** The side of its line that metal lies on. */
  readonly metal: 'inside' | 'outside';
  /** Set for a round hole, whose distances have a closed form; never for the outline, which lies round the others. */
  readonly circle?: { readonly centre: Point; readonly radius: number } | undefined;
}

interface Web {
  readonly distance: number;
  readonly at: Point;
}

/**
 * From a round hole to a contour beside it, or to the outline round it: its centre's distance less its radius. None
 * where they cross, and none where the centre lies on the side without metal: in the other hole, or off the plate.
 */
function webFromCircle(
  circle: { readonly centre: Point; readonly radius: number },
  { contour: other, metal }: Hollow,
): Web {
  const nearest = nearestOnContour(other, circle.centre);
  const onMetal = containsPoint(other, circle.centre) === metal;
  return { distance: onMetal ? Math.max(0, nearest.distance - circle.radius) : 0, at: nearest.point };
}

/** Exact least distance between two hollows, and where. */
function webBetween(a: Hollow, b: Hollow): Web {
  if (a.circle !== undefined) return webFromCircle(a.circle, b);
  if (b.circle !== undefined) return webFromCircle(b.circle, a);
  const gap = distanceBetweenContours(a.contour, b.contour);
  return { distance: gap.distance, at: gap.from };
}

/** Contours of more segments than this are asked by what lies near. */
const MANY = 24;

/** True when a round hole is known to be on the metal of a long contour and at least `distance` from its line. */
function staysClear(a: Hollow, b: Hollow, distance: number): boolean {
  const [circle, other] = a.circle === undefined ? [b.circle, a] : [a.circle, b];
  if (circle === undefined || other.contour.length <= MANY) return false;
  const { centre, radius } = circle;
  const reach = radius + distance;
  return (
    distanceWithin(other.contour, centre, reach) >= reach &&
    containsPoint(other.contour, centre) === other.metal
  );
}

/** What two hollows are apart at the least: the gap between their boxes. */
const leastApart = (a: Bounds, b: Bounds): number =>
  Math.hypot(Math.max(0, a.minX - b.maxX, b.minX - a.maxX), Math.max(0, a.minY - b.maxY, b.minY - a.maxY));

/** A tapped hole ends at its thread's outside. */
const threadOf = (hole: Hole): number => (hole.finish === 'tap' ? (hole.takes ?? 0) : 0);

const sideOfMetal = (contour: Contour): Hollow['metal'] => (areaOf(contour) > 0 ? 'inside' : 'outside');

/** Openings as cut, marks as they will be drilled, a bore at its finished size, and the outline. */
function hollowsOf(part: Part): readonly Hollow[] {
  const outline = outlineOf(part);
  const round = (id: string, name: string, centre: Point, radius: number): Hollow => ({
    id,
    name,
    contour: circleContour(centre, radius, 'opening'),
    metal: 'outside',
    circle: { centre, radius },
  });
  return [
    { id: outline.id, name: 'the outside', contour: outline.contour, metal: sideOfMetal(outline.contour) },
    ...part.features.flatMap((feature): readonly Hollow[] => {
      if (feature.purpose === 'opening') {
        const circle = isCircle(feature.contour);
        // Bored or ground later: what counts is the finished size.
        return circle === undefined
          ? [
              {
                id: feature.id,
                name: feature.name,
                contour: feature.contour,
                metal: sideOfMetal(feature.contour),
              },
            ]
          : [
              round(
                feature.id,
                feature.name,
                circle.centre,
                Math.max(circle.radius, (feature.hole?.size ?? 0) / 2),
              ),
            ];
      }
      return isMark(feature) && feature.hole !== undefined
        ? [
            round(
              feature.id,
              feature.name,
              feature.at,
              Math.max(feature.hole.size, threadOf(feature.hole)) / 2,
            ),
          ]
        : [];
    }),
  ];
}

/** The thinnest web of the part, exactly, against one and one and a half thicknesses. */
export function checkWebs(part: Part, facts: Facts): readonly Finding[] {
  const hollows = hollowsOf(part);
  const least = minWeb(part.thickness);
  const good = goodWeb(part.thickness);
  // On thin sheet 1.5 thicknesses are less than the least web.
  const wanted = good.value > least.value ? good : least;
  const boxes = new Map(hollows.map((hollow) => [hollow, boundsOf(hollow.contour)]));
  let thinnest: { readonly a: Hollow; readonly b: Hollow; readonly gap: Web } | undefined;
  for (const [index, a] of hollows.entries()) {
    for (const b of hollows.slice(index + 1)) {
      const [boxA, boxB] = [boxes.get(a), boxes.get(b)];
      const isFar =
        thinnest !== undefined &&
        boxA !== undefined &&
        boxB !== undefined &&
        leastApart(boxA, boxB) >= thinnest.gap.distance;
      if (isFar || (thinnest !== undefined && staysClear(a, b, thinnest.gap.distance))) continue;
      const gap = webBetween(a, b);
      if (thinnest === undefined || gap.distance < thinnest.gap.distance) thinnest = { a, b, gap };
    }
  }
  if (thinnest === undefined) return [];
  const { a, b, gap } = thinnest;
  const level = judge(
    ['stop', gap.distance <= 0],
    ['caution', gap.distance < least.value],
    ['note', gap.distance < wanted.value],
  );
  const limit = level === 'note' || level === 'pass' ? wanted : least;
  return [
    found({
      code: 'web',
      level,
      subject: { featureId: b.id },
      anchor: gap.at,
      title:
        level === 'stop'
          ? `${b.name} breaks into ${a.name}`
          : `Thinnest web ${facts.format.length(gap.distance)}, between ${b.name} and ${a.name}`,
      says:
        level === 'pass'
          ? `Wanted at least ${facts.format.length(wanted.value)}.`
          : `At least ${facts.format.length(least.value)} (one thickness), better ${facts.format.length(wanted.value)}. A larger outside, smaller holes, or fewer of them would do.`,
      value: quantity(gap.distance, 'mm'),
      limit: quantity(limit.value, 'mm'),
      formula: `exact distance ${digits(gap.distance)}; max(1 × ${digits(part.thickness)}, 3) = ${digits(least.value)}, 1.5 × ${digits(part.thickness)} = ${digits(good.value)}`,
      source: limit.source,
    }),
  ];
}
