// Edge distance: bolt centre to the outside, and bolt to bolt.
import { circleContour, containsPoint, isCircle, nearestOnContour, type Contour } from '../geometry/index.js';
import { floorEdgeDistance, goodEdgeDistance, holeSpacing, minEdgeDistance } from '../handbook/index.js';
import { isOpening, outlineOf, type CutFeature, type Finding, type Part } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** A distance computed to be exactly the limit is not below it, mm. */
const NOISE = 1e-6;

const isNoBoltHole = ({ hole }: CutFeature): boolean => hole?.thread === undefined;

/** An opening that is bored or ground later counts at its finished size. */
function finishedContour({ contour, hole }: CutFeature): Contour {
  const circle = isCircle(contour);
  return circle === undefined || hole === undefined || hole.size <= 2 * circle.radius
    ? contour
    : circleContour(circle.centre, hole.size / 2, 'opening');
}

/**
 * Least distance from any bolt centre of the pattern to an edge, and where: the outline, or an opening that is not a
 * bolt hole, at its finished size. Negative outside the plate.
 */
export function nearestEdge(part: Part, pattern: BoltPattern) {
  const outline = outlineOf(part).contour;
  const edges = [outline, ...part.features.filter(isOpening).filter(isNoBoltHole).map(finishedContour)];
  return pattern.holes
    .map((hole) => {
      const nearest = edges
        .map((edge) => nearestOnContour(edge, hole.at))
        .reduce((a, b) => (b.distance < a.distance - NOISE ? b : a));
      const isOff = containsPoint(outline, hole.at) === 'outside';
      return { hole, point: nearest.point, distance: isOff ? -nearest.distance : nearest.distance };
    })
    .reduce((a, b) => (b.distance < a.distance - 1e-9 ? b : a));
}

/** `field` names the parameter that a person would change for more metal beside the bolts. */
export function checkEdgeDistance(
  part: Part,
  pattern: BoltPattern,
  facts: Facts,
  field = 'edge',
): readonly Finding[] {
  const { hole, distance, point } = nearestEdge(part, pattern);
  const bolt = pattern.thread.diameter;
  const least = minEdgeDistance(bolt, pattern.thread.system);
  const floor = floorEdgeDistance(bolt);
  const good = goodEdgeDistance(bolt);
  const level = judge(
    ['stop', distance < floor.value - NOISE],
    ['caution', distance < least.value - NOISE],
    ['note', distance < good.value - NOISE],
  );
  const limit = level === 'stop' ? floor : level === 'caution' ? least : good;
  return [
    found({
      code: 'edge-distance',
      level,
      subject: { featureId: hole.featureId },
      anchor: { x: (hole.at.x + point.x) / 2, y: (hole.at.y + point.y) / 2 },
      field,
      title:
        distance <= 0
          ? `Bolts for ${pattern.thread.name} lie off the plate`
          : `Edge distance ${facts.format.length(distance)}, ${facts.format.length(limit.value)} wanted for ${pattern.thread.name}`,
      says:
        level === 'pass'
          ? 'Bolt centre to the nearest edge, outside or opening.'
          : level === 'note'
            ? `At least ${facts.format.length(least.value)} is kept; two bolt diameters are better.`
            : `Bolt centre to the nearest edge, outside or opening. At least ${facts.format.length(least.value)}, two bolt diameters are better; more metal there or a smaller bolt would do.`,
      value: quantity(distance, 'mm'),
      limit: quantity(limit.value, 'mm'),
      formula: `${digits(distance)} ÷ ${digits(bolt)} = ${digits(distance / bolt)} d; least ${digits(least.value)}, good ${digits(good.value)}`,
      source: limit.source,
    }),
  ];
}

/** Least distance between neighbouring bolts of a pattern, mm. */
export function leastPitch({ holes }: BoltPattern): number {
  return Math.min(
    ...holes.map(({ at }, index) => {
      const next = holes[(index + 1) % holes.length] ?? { at };
      return Math.hypot(next.at.x - at.x, next.at.y - at.y);
    }),
  );
}

export function checkSpacing(pattern: BoltPattern, facts: Facts): readonly Finding[] {
  const first = pattern.holes[0];
  if (first === undefined || pattern.holes.length < 2) return [];
  const least = leastPitch(pattern);
  const rule = holeSpacing(pattern.thread.diameter);
  return [
    found({
      code: 'bolt-spacing',
      level: judge(['caution', least < rule.min - NOISE], ['note', least < rule.preferred - NOISE]),
      subject: { featureId: first.featureId },
      anchor: first.at,
      field: `${pattern.fieldPrefix}bolts`,
      title: `Bolts ${facts.format.length(least)} apart, ${facts.format.length(rule.preferred)} preferred`,
      says: `At least 2⅔ bolt diameters, ${facts.format.length(rule.min)}.`,
      value: quantity(least, 'mm'),
      limit: quantity(rule.preferred, 'mm'),
      formula: `3 × ${digits(pattern.thread.diameter)} = ${digits(rule.preferred)}`,
      source: rule.source,
    }),
  ];
}
