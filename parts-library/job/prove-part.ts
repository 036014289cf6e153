// Proves that a drawn part is one piece of metal: every opening inside the outline, no two openings in one another.
import { boundsOf, containsContour, containsPoint, distanceBetweenContours } from '../geometry/index.js';
import type { Bounds, Contour } from '../geometry/index.js';
import { isOpening, outlineOf, type CutFeature, type Finding, type Part } from '../model/index.js';

const apart = (a: Bounds, b: Bounds): boolean =>
  a.maxX < b.minX || b.maxX < a.minX || a.maxY < b.minY || b.maxY < a.minY;

/** True when two openings share metal that would be cut twice. */
function overlap(a: Contour, b: Contour): boolean {
  if (distanceBetweenContours(a, b).distance === 0) return true;
  const [startA] = a;
  const [startB] = b;
  return (
    (startB !== undefined && containsPoint(a, startB) === 'inside') ||
    (startA !== undefined && containsPoint(b, startA) === 'inside')
  );
}

const finding = (feature: CutFeature, title: string, says: string): Finding => {
  const { minX, minY, maxX, maxY } = boundsOf(feature.contour);
  return {
    code: 'no-part',
    level: 'stop',
    stage: 'draw',
    subject: { featureId: feature.id },
    anchor: { x: (minX + maxX) / 2, y: (minY + maxY) / 2 },
    title,
    says,
    source: {
      title: 'Plane geometry',
      where: 'a part is one outline with openings wholly inside it and clear of one another',
      certainty: 'common practice',
    },
  };
};

/**
 * What keeps a part from being one: area and mass of such a drawing would be nonsense.
 * @returns a stop finding for each opening that reaches the outline or another opening; none for a sound part
 */
export function provePart(part: Part): readonly Finding[] {
  const outline = outlineOf(part);
  const openings = part.features
    .filter(isOpening)
    .map((feature) => ({ feature, box: boundsOf(feature.contour) }));
  const findings: Finding[] = [];
  for (const [index, one] of openings.entries()) {
    const { feature, box } = one;
    if (!containsContour(outline.contour, feature.contour)) {
      findings.push(
        finding(
          feature,
          `${feature.name} reaches the outside`,
          `${feature.name} does not lie inside the outline: no part is left there. Make the outside larger, or the opening smaller.`,
        ),
      );
    }
    const other = openings
      .slice(0, index)
      .find((before) => !apart(before.box, box) && overlap(before.feature.contour, feature.contour));
    if (other !== undefined) {
      findings.push(
        finding(
          feature,
          `${feature.name} runs into ${other.feature.name}`,
          `${feature.name} and ${other.feature.name} overlap, so what is left is no longer the part that is meant. Move them apart, or make one smaller.`,
        ),
      );
    }
  }
  return findings;
}
