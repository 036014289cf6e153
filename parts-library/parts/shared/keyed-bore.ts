// A bore with a keyway in the plate itself: a circle with a square-cornered notch on top, clockwise.
import type { Vertex } from '../../geometry/index.js';

/**
 * Vertices of a clockwise opening of diameter `bore` with a keyway `width` wide whose floor lies `over` mm from the
 * far side of the bore (diameter plus hub depth, as DIN 6885-1 and ASME B17.1 measure it). The keyway points up.
 *
 * @throws nothing; a width of the bore or more has no geometry and gives an empty list.
 */
export function keyedBore(bore: number, width: number, over: number): readonly Vertex[] {
  const radius = bore / 2;
  const half = width / 2;
  if (half >= radius || over - radius <= radius) return [];
  const shoulder = Math.sqrt(radius * radius - half * half);
  const floor = over - radius;
  // The round part sweeps all but the notch; two arcs keep each within half a circle.
  const sweep = 2 * Math.PI - 2 * Math.asin(half / radius);
  const bulge = -Math.tan(sweep / 8);
  return [
    { x: -half, y: shoulder, bulge: 0 },
    { x: -half, y: floor, bulge: 0 },
    { x: half, y: floor, bulge: 0 },
    { x: half, y: shoulder, bulge },
    { x: 0, y: -radius, bulge },
  ];
}
