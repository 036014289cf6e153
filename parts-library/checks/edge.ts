// Edge distance: bolt centre to the outside, and bolt to bolt.
import { containsPoint, nearestOnContour } from '../geometry/index.js';
import { floorEdgeDistance, goodEdgeDistance, holeSpacing, minEdgeDistance } from '../handbook/index.js';
import { outlineOf, type Finding, type Part } from '../model/index.js';
import type { BoltPattern } from './bolt-holes.js';
import type { Facts } from './facts.js';
import { digits, found, judge, quantity } from './findings.js';

/** A distance computed to be exactly the limit is not below it, mm. */
const NOISE = 1e-6;

/** Least distance from any bolt centre of the pattern to the outline, and where; negative outside the plate. */
export function nearestEdge(part: Part, pattern: BoltPattern) {
  const outline = outlineOf(part).contour;
  return pattern.holes
    .map((hole) => {
      const { distance, point } = nearestOnContour(outline, hole.at);
      const isOff = containsPoint(outline, hole.at) === 'outside';
      return { hole, point, distance: isOff ? -distance : distance };
    })
    .reduce((a, b) => (b.distance < a.distance - 1e-9 ? b : a));
}

export function checkEdgeDistance(part: Part, pattern: BoltPattern, facts: Facts): readonly Finding[] {
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
      field: 'edge',
      title:
        distance <= 0
          ? `Bolts for ${pattern.thread.name} lie off the plate`
          : `Edge distance ${facts.format.length(distance)}, ${facts.format.length(limit.value)} wanted for ${pattern.thread.name}`,
      says:
        level === 'pass'
          ? 'Bolt centre to the nearest edge.'
          : level === 'note'
            ? `At least ${facts.format.length(least.value)} is kept; two bolt diameters are better.`
            : `Bolt centre to the nearest edge. At least ${facts.format.length(least.value)}, two bolt diameters are better; a larger outside or a smaller bolt would do.`,
      value: quantity(distance, 'mm'),
      limit: quantity(limit.value, 'mm'),
      formula: `${digits(distance)} ÷ ${digits(bolt)} = ${digits(distance / bolt)} d; least ${digits(least.value)}, good ${digits(good.value)}`,
      source: limit.source,
    }),
  ];
}

export function checkSpacing(pattern: BoltPattern, facts: Facts): readonly Finding[] {
  const first = pattern.holes[0];
  if (first === undefined || pattern.holes.length < 2) return [];
  const gaps = pattern.holes.map(({ at }, index) => {
    const next = pattern.holes[(index + 1) % pattern.holes.length] ?? first;
    return Math.hypot(next.at.x - at.x, next.at.y - at.y);
  });
  const least = Math.min(...gaps);
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
