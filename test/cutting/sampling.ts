// Plain sampling of contours, written apart from the geometry room, so that a proof is not checked by itself.

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Corner extends Spot {
  readonly bulge: number;
}

/** Points along a list of vertices with bulge, at most `step` apart; the last point is left out. */
export function sample(vertices: readonly Corner[], closed: boolean, step: number): Spot[] {
  const spots: Spot[] = [];
  const last = closed ? vertices.length : vertices.length - 1;
  for (let i = 0; i < last; i++) {
    const a = vertices[i];
    const b = vertices[(i + 1) % vertices.length];
    if (a === undefined || b === undefined) continue;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const angle = 4 * Math.atan(a.bulge);
    if (Math.abs(angle) < 1e-12) {
      const count = Math.max(1, Math.ceil(chord / step));
      for (let k = 0; k < count; k++)
        spots.push({ x: a.x + ((b.x - a.x) * k) / count, y: a.y + ((b.y - a.y) * k) / count });
      continue;
    }
    // Turn the start about the centre: chord = 2 r sin(angle / 2), the centre on the chord's bisector.
    const radius = chord / (2 * Math.sin(angle / 2));
    const height = radius * Math.cos(angle / 2);
    const centreX = (a.x + b.x) / 2 - (height * (b.y - a.y)) / chord;
    const centreY = (a.y + b.y) / 2 + (height * (b.x - a.x)) / chord;
    const count = Math.max(1, Math.ceil(Math.abs(radius * angle) / step));
    for (let k = 0; k < count; k++) {
      const turn = (angle * k) / count;
      const [dx, dy] = [a.x - centreX, a.y - centreY];
      spots.push({
        x: centreX + dx * Math.cos(turn) - dy * Math.sin(turn),
        y: centreY + dx * Math.sin(turn) + dy * Math.cos(turn),
      });
    }
  }
  return spots;
}

const CELL = 4;
const cellOf = (coordinate: number): number => Math.floor(coordinate / CELL);
const keyOf = (column: number, row: number): number => column * 4096 + row;

/** Distance from a place to a chord. */
function toChord({ x, y }: Spot, a: Spot, b: Spot): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(a.x + t * dx - x, a.y + t * dy - y);
}

/**
 * Distance from a place to the chords between many spots; infinite beyond 4 mm (one cell of the grid). The spots must
 * be far closer than that.
 */
export function nearness(spots: readonly Spot[], closed: boolean): (place: Spot) => number {
  const cells = new Map<number, [Spot, Spot][]>();
  spots.forEach((spot, index) => {
    const next = spots[index + 1] ?? (closed ? spots[0] : undefined);
    if (next === undefined) return;
    const key = keyOf(cellOf(spot.x), cellOf(spot.y));
    const cell = cells.get(key);
    if (cell === undefined) cells.set(key, [[spot, next]]);
    else cell.push([spot, next]);
  });
  return (place) => {
    let best = Infinity;
    const [column, row] = [cellOf(place.x), cellOf(place.y)];
    for (const across of [-1, 0, 1])
      for (const up of [-1, 0, 1])
        for (const [a, b] of cells.get(keyOf(column + across, row + up)) ?? [])
          best = Math.min(best, toChord(place, a, b));
    return best <= CELL ? best : Infinity;
  };
}

/** Whether a place lies inside a ring of spots: how often a ray to the right crosses it, odd or even. */
export function surrounds(ring: readonly Spot[], { x, y }: Spot): boolean {
  let inside = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length];
    if (b === undefined || a.y > y === b.y > y) return;
    if (x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) inside = !inside;
  });
  return inside;
}

/** A stream of numbers from 0 to 1 that is the same in every run (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}
