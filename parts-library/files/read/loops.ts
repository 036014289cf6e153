// Closed runs made sound: one that visits a place twice comes apart there, and what draws a circle becomes one.
import type { Point, Vertex } from '../../geometry/index.js';
import { apart } from './runs.js';

/** Places closer than this are one, mm: contours that touch at a corner share it to the file's digits. */
const ONE_PLACE = 1e-4;

const keyOf = ({ x, y }: Point): string => `${Math.round(x / ONE_PLACE)} ${Math.round(y / ONE_PLACE)}`;

/** The loops of a closed run: one where no place comes twice. */
export function simpleLoops(vertices: readonly Vertex[]): readonly (readonly Vertex[])[] {
  const loops: (readonly Vertex[])[] = [];
  const path: Vertex[] = [];
  const places = new Map<string, number>();
  for (const vertex of vertices) {
    const key = keyOf(vertex);
    const before = places.get(key);
    if (before !== undefined) {
      const loop = path.splice(before);
      for (const one of loop) places.delete(keyOf(one));
      if (loop.length > 1) loops.push(loop);
    }
    places.set(key, path.length);
    path.push(vertex);
  }
  return path.length > 1 ? [...loops, path] : loops;
}

/** Fewest chords that are taken for a circle, and how far their corners may lie from it, mm. */
const FEWEST_CHORDS = 24;
const CHORDS_OFF = 0.005;

/** Vertices, and the middles of arcs: places that must lie on the circle. */
function placesOn(vertices: readonly Vertex[]): readonly Point[] {
  return vertices.flatMap((vertex, i): readonly Point[] => {
    const next = vertices[(i + 1) % vertices.length] ?? vertex;
    if (vertex.bulge === 0) return [vertex];
    const crown = {
      x: (vertex.x + next.x + vertex.bulge * (next.y - vertex.y)) / 2,
      y: (vertex.y + next.y - vertex.bulge * (next.x - vertex.x)) / 2,
    };
    return [vertex, crown];
  });
}

/** The circle through three places spread over the list. */
function circleThrough(
  places: readonly Point[],
): { readonly centre: Point; readonly radius: number } | undefined {
  const third = Math.floor(places.length / 3);
  const [a, b, c] = [places[0], places[third], places[2 * third]];
  if (a === undefined || b === undefined || c === undefined || third === 0) return undefined;
  const [bx, by, cx, cy] = [b.x - a.x, b.y - a.y, c.x - a.x, c.y - a.y];
  const double = 2 * (bx * cy - by * cx);
  if (double === 0) return undefined;
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const x = (cy * bb - by * cc) / double;
  const y = (bx * cc - cx * bb) / double;
  return { centre: { x: a.x + x, y: a.y + y }, radius: Math.hypot(x, y) };
}

export type Circular = { readonly vertices: readonly Vertex[]; readonly how: 'arcs' | 'chords' } | undefined;

/**
 * Two exact half circles in place of a run that draws one: of arcs that keep to it within `tolerance`, or of two
 * dozen chords and more with their corners on it.
 * @returns undefined for anything else
 */
export function asCircle(vertices: readonly Vertex[], tolerance: number): Circular {
  const bends = vertices.filter(({ bulge }) => bulge !== 0);
  const chords = bends.length === 0;
  if (chords ? vertices.length < FEWEST_CHORDS : bends.length !== vertices.length) return undefined;
  const [first] = vertices;
  if (first === undefined) return undefined;
  if (!chords && bends.some(({ bulge }) => bulge > 0 !== first.bulge > 0)) return undefined;
  const places = placesOn(vertices);
  const rough = circleThrough(places);
  if (rough === undefined) return undefined;
  const radii = places.map((place) => apart(place, rough.centre));
  const radius = (Math.min(...radii) + Math.max(...radii)) / 2;
  if (Math.max(...radii) - radius > (chords ? CHORDS_OFF : tolerance)) return undefined;
  const turns = chords ? turnsOnce(vertices, rough.centre) : sweepOf(vertices);
  if (turns === 0) return undefined;
  const bulge = Math.sign(turns);
  const { x, y } = rough.centre;
  return {
    vertices: [
      { x: x + radius, y, bulge },
      { x: x - radius, y, bulge },
    ],
    how: chords ? 'chords' : 'arcs',
  };
}

/** 1 or −1 when the arcs together go round just once, by their sweeps; 0 otherwise. */
function sweepOf(vertices: readonly Vertex[]): number {
  const sweep = vertices.reduce((sum, { bulge }) => sum + 4 * Math.atan(bulge), 0);
  return Math.abs(Math.abs(sweep) - 2 * Math.PI) < 0.01 ? sweep : 0;
}

/** 1 or −1 when chords of about the same length go round the centre once; 0 otherwise. */
function turnsOnce(vertices: readonly Vertex[], centre: Point): number {
  const angles = vertices.map((vertex, i) => {
    const next = vertices[(i + 1) % vertices.length] ?? vertex;
    const [u, v] = [
      { x: vertex.x - centre.x, y: vertex.y - centre.y },
      { x: next.x - centre.x, y: next.y - centre.y },
    ];
    return Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  });
  const [least, most] = [Math.min(...angles), Math.max(...angles)];
  const even = least > 0 ? most < 2 * least : most < 0 && least > 2 * most;
  const turn = angles.reduce((a, b) => a + b, 0);
  return even && Math.abs(Math.abs(turn) - 2 * Math.PI) < 1e-3 ? Math.sign(turn) : 0;
}
