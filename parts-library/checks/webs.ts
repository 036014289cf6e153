// Webs: the metal left between openings, marks to be drilled, and the outside.
import {
  circleContour,
  distanceBetweenContours,
  isCircle,
  nearestOnContour,
  type Contour,
  type Point,
} from '../geometry/index.js';
import type { Source } from '../handbook/index.js';
import { isMark, outlineOf, type Finding, type Part } from '../model/index.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

const LEAST_WEB: Source = {
  title: 'Web between holes, and from hole to edge',
  where: 'at least one thickness and 3 mm; below it heat takes the metal away',
  certainty: 'common practice',
};
const WANTED_WEB: Source = {
  title: 'Plasma design guideline',
  where: 'hole to hole and hole to edge at least 1.5 thicknesses, a contract manufacturer’s published table',
  certainty: 'published',
};

interface Hollow {
  readonly id: string;
  readonly name: string;
  readonly contour: Contour;
  /** Set for a round opening, whose distances have a closed form. */
  readonly circle?: { readonly centre: Point; readonly radius: number } | undefined;
}

interface Web {
  readonly distance: number;
  readonly at: Point;
}

/** From a round opening to another contour: its centre's distance less its radius, unless the two cross. */
function webFromCircle(circle: { readonly centre: Point; readonly radius: number }, other: Contour): Web {
  const nearest = nearestOnContour(other, circle.centre);
  return { distance: Math.max(0, nearest.distance - circle.radius), at: nearest.point };
}

/** Exact least distance between two hollows, and where. */
function webBetween(a: Hollow, b: Hollow): Web {
  if (a.circle !== undefined && b.circle !== undefined) {
    const between = Math.hypot(a.circle.centre.x - b.circle.centre.x, a.circle.centre.y - b.circle.centre.y);
    // Apart, or one within the other: a bore inside its round outside.
    const apart = between - a.circle.radius - b.circle.radius;
    const within = Math.abs(a.circle.radius - b.circle.radius) - between;
    if (apart > 0) return webFromCircle(a.circle, b.contour);
    const small = a.circle.radius < b.circle.radius ? a : b;
    return { distance: Math.max(0, within), at: (small.circle ?? a.circle).centre };
  }
  if (a.circle !== undefined) return webFromCircle(a.circle, b.contour);
  if (b.circle !== undefined) return webFromCircle(b.circle, a.contour);
  const gap = distanceBetweenContours(a.contour, b.contour);
  return { distance: gap.distance, at: gap.from };
}

/** Openings as cut, marks as they will be drilled, a bore at its finished size, and the outline. */
function hollowsOf(part: Part): readonly Hollow[] {
  const outline = outlineOf(part);
  const round = (id: string, name: string, centre: Point, radius: number): Hollow => ({
    id,
    name,
    contour: circleContour(centre, radius, 'opening'),
    circle: { centre, radius },
  });
  return [
    { id: outline.id, name: 'the outside', contour: outline.contour, circle: isCircle(outline.contour) },
    ...part.features.flatMap((feature): readonly Hollow[] => {
      if (feature.purpose === 'opening') {
        const circle = isCircle(feature.contour);
        return circle !== undefined && feature.hole?.finish === 'bore'
          ? [round(feature.id, feature.name, circle.centre, feature.hole.size / 2)]
          : [{ id: feature.id, name: feature.name, contour: feature.contour, circle }];
      }
      return isMark(feature) && feature.hole !== undefined
        ? [round(feature.id, feature.name, feature.at, feature.hole.size / 2)]
        : [];
    }),
  ];
}

/** The thinnest web of the part, exactly, against one and one and a half thicknesses. */
export function checkWebs(part: Part, facts: Facts): readonly Finding[] {
  const hollows = hollowsOf(part);
  const least = Math.max(part.thickness, 3);
  const wanted = Math.max(1.5 * part.thickness, 3);
  let thinnest: { readonly a: Hollow; readonly b: Hollow; readonly gap: Web } | undefined;
  for (const [index, a] of hollows.entries()) {
    for (const b of hollows.slice(index + 1)) {
      const gap = webBetween(a, b);
      if (thinnest === undefined || gap.distance < thinnest.gap.distance) thinnest = { a, b, gap };
    }
  }
  if (thinnest === undefined) return [];
  const { a, b, gap } = thinnest;
  const level = judge(
    ['stop', gap.distance <= 0],
    ['caution', gap.distance < least],
    ['note', gap.distance < wanted],
  );
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
          ? `Wanted at least ${facts.format.length(wanted)}.`
          : `At least ${facts.format.length(least)} (one thickness), better ${facts.format.length(wanted)}. A larger outside, smaller holes, or fewer of them would do.`,
      value: quantity(gap.distance, 'mm'),
      limit: quantity(level === 'note' || level === 'pass' ? wanted : least, 'mm'),
      formula: `exact distance ${digits(gap.distance)}; max(1 × ${digits(part.thickness)}, 3) = ${digits(least)}, 1.5 × ${digits(part.thickness)} = ${digits(1.5 * part.thickness)}`,
      source: level === 'note' || level === 'pass' ? WANTED_WEB : LEAST_WEB,
    }),
  ];
}
