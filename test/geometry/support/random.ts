// Seeded random contours: polygons, filleted polygons, random bulges and combs.
import {
  GeometryError,
  makeContour,
  polygonContour,
  roundCorners,
  transformContour,
  type Contour,
} from '../../../parts-library/geometry/index.js';

export type Random = () => number;

/** Numbers in [0, 1) from a seed: a linear congruential generator modulo 2^32 (Numerical Recipes, 3rd ed., p. 353). */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

function between(random: Random, low: number, high: number): number {
  return low + (high - low) * random();
}

/** A polygon about the origin whose corners lie at rising angles: 6 to 30 corners, 10 to 60 mm out. */
export function randomPolygon(random: Random, corners = Math.floor(between(random, 6, 31))): Contour {
  const points = Array.from({ length: corners }, (_, i) => {
    const angle = ((i + between(random, 0.1, 0.9)) / corners) * 2 * Math.PI;
    const radius = between(random, 10, 60);
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
  return polygonContour(points);
}

/** A polygon with fillets on most corners, each as large as a third of its shorter neighbour allows at most. */
export function randomFilleted(random: Random, corners?: number): Contour {
  const polygon = randomPolygon(random, corners);
  const count = polygon.length;
  const radii = polygon.map((b, i) => {
    const a = polygon[(i + count - 1) % count] ?? b;
    const c = polygon[(i + 1) % count] ?? b;
    const before = Math.atan2(b.y - a.y, b.x - a.x);
    const after = Math.atan2(c.y - b.y, c.x - b.x);
    const turn = Math.abs(Math.atan2(Math.sin(after - before), Math.cos(after - before)));
    const room = Math.min(Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(c.x - b.x, c.y - b.y)) * 0.45;
    return random() < 0.2 ? 0 : (room / Math.tan(turn / 2)) * between(random, 0.05, 1);
  });
  return roundCorners(polygon, radii);
}

/** A polygon with random bulges; undefined when the arcs happen to meet. */
export function randomBulged(random: Random): Contour | undefined {
  const vertices = randomPolygon(random).map((v) => ({
    ...v,
    bulge: random() < 0.3 ? 0 : between(random, -0.8, 0.8),
  }));
  try {
    return makeContour(vertices);
  } catch (error) {
    if (error instanceof GeometryError) return undefined;
    throw error;
  }
}

/**
 * A skyline in whole millimetres, square, with small fillets or with some sides bent to half circles, turned by a round
 * angle: slots, walls and radii come to exactly once or twice a round offset all the time.
 */
export function randomSkyline(random: Random): Contour {
  const pick = <T>(list: readonly T[], otherwise: T): T =>
    list[Math.floor(random() * list.length)] ?? otherwise;
  const columns = Math.floor(between(random, 3, 9));
  const top: { x: number; y: number }[] = [];
  let x = 0;
  let height = 0;
  for (let i = 0; i < columns; i++) {
    const next = Math.floor(between(random, 2, 10));
    height = next === height ? next + 1 : next;
    const width = Math.floor(between(random, 1, 5));
    top.push({ x, y: height }, { x: x + width, y: height });
    x += width;
  }
  const square = polygonContour([{ x: 0, y: 0 }, { x, y: 0 }, ...top.reverse()]);
  const kind = pick(['square', 'filleted', 'bent'], 'square');
  const shaped = kind === 'filleted' ? roundCorners(square, pick([0.25, 0.5], 0.5)) : square;
  const vertices = shaped.map((v) =>
    kind === 'bent' && random() < 0.25 ? { ...v, bulge: random() < 0.5 ? 1 : -1 } : v,
  );
  const move = { rotateDegrees: pick([0, 90, 30, 45], 0), dx: random() < 0.5 ? 0 : 3.3 };
  try {
    return transformContour(makeContour(vertices), move);
  } catch (error) {
    // Half circles that run into each other: the square one will do.
    if (error instanceof GeometryError) return transformContour(square, move);
    throw error;
  }
}

/** A comb: a bar with slots cut from the top, each within 0.1 mm of `gap` wide. */
export function randomComb(random: Random, gap: number): Contour {
  const teeth = Math.floor(between(random, 3, 9));
  const points = [{ x: 0, y: 0 }];
  const upper: { x: number; y: number }[] = [];
  let x = 0;
  for (let i = 0; i < teeth; i++) {
    const height = between(random, 20, 40);
    const floor = between(random, 5, 18);
    upper.push({ x, y: height });
    x += between(random, 3, 14);
    upper.push({ x, y: height });
    if (i === teeth - 1) break;
    const slant = random() < 0.5 ? 0 : between(random, -0.05, 0.05);
    upper.push({ x: x + slant, y: floor });
    x += gap + between(random, -0.1, 0.1);
    upper.push({ x, y: floor });
  }
  points.push({ x, y: 0 }, ...upper.reverse());
  return polygonContour(points);
}
