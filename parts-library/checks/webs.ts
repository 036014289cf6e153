// Webs: the metal left between openings, marks to be drilled, and the outside.
import { circleContour, distanceBetweenContours, isCircle, type Contour } from '../geometry/index.js';
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
  readonly isOutline: boolean;
}

/** Openings as cut, marks as they will be drilled, and the outline. */
function hollowsOf(part: Part): readonly Hollow[] {
  const outline = outlineOf(part);
  return [
    { id: outline.id, name: 'the outside', contour: outline.contour, isOutline: true },
    ...part.features.flatMap((feature): readonly Hollow[] => {
      if (feature.purpose === 'opening') {
        // A bore that is machined later ends at its finished size.
        const circle = isCircle(feature.contour);
        const contour =
          circle !== undefined && feature.hole?.finish === 'bore'
            ? circleContour(circle.centre, feature.hole.size / 2, 'opening')
            : feature.contour;
        return [{ id: feature.id, name: feature.name, contour, isOutline: false }];
      }
      if (isMark(feature) && feature.hole !== undefined) {
        return [
          {
            id: feature.id,
            name: feature.name,
            contour: circleContour(feature.at, feature.hole.size / 2, 'opening'),
            isOutline: false,
          },
        ];
      }
      return [];
    }),
  ];
}

/** The thinnest web of the part, exactly, against one and one and a half thicknesses. */
export function checkWebs(part: Part, facts: Facts): readonly Finding[] {
  const hollows = hollowsOf(part);
  const least = Math.max(part.thickness, 3);
  const wanted = Math.max(1.5 * part.thickness, 3);
  let thinnest:
    | { readonly a: Hollow; readonly b: Hollow; readonly gap: ReturnType<typeof distanceBetweenContours> }
    | undefined;
  for (const [index, a] of hollows.entries()) {
    for (const b of hollows.slice(index + 1)) {
      const gap = distanceBetweenContours(a.contour, b.contour);
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
      anchor: gap.from,
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
