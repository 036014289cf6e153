// Centre lines, centre marks, weld ticks: the lines whose size on the sheet does not grow with the part.
import { norm } from '../geometry/index.js';
import type { PathCommand } from './display-list.js';
import type { Placing } from './occupancy.js';
import type { Extent, Round, Scene } from './scene.js';
import type { Style } from './style.js';

export interface CentreLine {
  readonly id: string;
  readonly path: readonly PathCommand[];
}

type Direction = readonly [x: number, y: number];

const UPRIGHT: readonly Direction[] = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
];

/**
 * Lines from a centre outwards. Each starts at the centre with a long dash, so that the lines always cross on a
 * dash and both sides look alike, as ISO 128-2 wants.
 */
function spokes(
  x: number,
  y: number,
  directions: readonly Direction[],
  reach: (direction: Direction) => number,
): readonly PathCommand[] {
  return directions.flatMap((direction): readonly PathCommand[] => {
    const length = reach(direction);
    return [
      ['M', x, y],
      ['L', x + direction[0] * length, y + direction[1] * length],
    ];
  });
}

const sameCentre = (a: Round, b: { readonly x: number; readonly y: number }, near: number): boolean =>
  norm(a.x - b.x, a.y - b.y) <= near;

/** Distance from a centre to the edge of an extent in one of the four directions. */
const toEdge = (extent: Extent, { x, y }: Round, [dx, dy]: Direction): number =>
  dx > 0 ? extent.maxX - x : dx < 0 ? x - extent.minX : dy > 0 ? extent.maxY - y : y - extent.minY;

/** The centres that the whole part is built about: of its bolt circles, and of a bore in the middle. */
function mainCentres(scene: Scene): readonly Round[] {
  const { part } = scene;
  const size = Math.max(part.maxX - part.minX, part.maxY - part.minY);
  const middle = { x: (part.minX + part.maxX) / 2, y: (part.minY + part.maxY) / 2 };
  const bores = scene.openings.filter(
    (round) => sameCentre(round, middle, size * 0.02) && round.radius > size * 0.1,
  );
  const centres: Round[] = [];
  for (const candidate of [...scene.boltCircles, ...bores]) {
    if (!centres.some((centre) => sameCentre(centre, candidate, size * 1e-4))) centres.push(candidate);
  }
  return centres;
}

/** All centre lines on the sheet, long ones first. */
export function centreLines(scene: Scene, placing: Placing, style: Style): readonly CentreLine[] {
  const { scale } = placing;
  const sheet = (round: Round): { readonly x: number; readonly y: number } => ({
    x: placing.x + round.x * scale,
    y: placing.y + round.y * scale,
  });
  const near = 1e-3 + Math.max(scene.part.maxX - scene.part.minX, 1) * 1e-4;
  const main = mainCentres(scene);
  const lines: CentreLine[] = main.map((centre) => {
    const ghostly = scene.ghostRounds
      .filter((round) => sameCentre(round, centre, near))
      .reduce((most, { radius }) => Math.max(most, radius), 0);
    const { x, y } = sheet(centre);
    const reach = (direction: Direction): number =>
      Math.max(toEdge(scene.part, centre, direction), ghostly) * scale + style.centrePast * 1.4;
    return { id: centre.id, path: spokes(x, y, UPRIGHT, reach) };
  });
  // A mark has a cross of its own.
  for (const hole of scene.openings) {
    if (main.some((centre) => sameCentre(centre, hole, near))) continue;
    const circle = scene.boltCircles.find(
      (bolts) => Math.abs(norm(hole.x - bolts.x, hole.y - bolts.y) - bolts.radius) < 0.02 + near,
    );
    const { x, y } = sheet(hole);
    const length = hole.radius * scale + style.centrePast;
    if (circle === undefined) {
      lines.push({ id: hole.id, path: spokes(x, y, UPRIGHT, () => length) });
      continue;
    }
    // The bolt circle itself is the other line of the mark.
    const dx = (hole.x - circle.x) / circle.radius;
    const dy = (hole.y - circle.y) / circle.radius;
    const radial: readonly Direction[] = [
      [dx, dy],
      [-dx, -dy],
    ];
    lines.push({ id: hole.id, path: spokes(x, y, radial, () => length) });
  }
  for (const ends of scene.roundEnds) lines.push(...slotLines(ends, placing, style));
  return lines;
}

/** A slot has one line along its axis and one across at each end's centre; any other round end has a cross. */
function slotLines(ends: readonly Round[], { scale, x, y }: Placing, style: Style): readonly CentreLine[] {
  const [a, b, more] = ends;
  if (a === undefined) return [];
  const reach = (round: Round): number => round.radius * scale + style.centrePast;
  const at = (round: Round): Direction => [x + round.x * scale, y + round.y * scale];
  if (b === undefined || more !== undefined) {
    return ends.map((end) => ({ id: end.id, path: spokes(...at(end), UPRIGHT, () => reach(end)) }));
  }
  const length = norm(b.x - a.x, b.y - a.y);
  const along: Direction = [(b.x - a.x) / length, (b.y - a.y) / length];
  const across: readonly Direction[] = [
    [-along[1], along[0]],
    [along[1], -along[0]],
  ];
  const middle = { ...a, x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const half = (length / 2) * scale;
  return [
    {
      id: a.id,
      path: spokes(...at(middle), [along, [-along[0], -along[1]]], () => half + reach(a)),
    },
    ...[a, b].map((end) => ({ id: end.id, path: spokes(...at(end), across, () => reach(end)) })),
  ];
}

/** Ticks round a weld, from the hub that it joins out to its toe, about one font size apart at most. */
export function weldTicks(weld: Round, scene: Scene, placing: Placing, style: Style): readonly PathCommand[] {
  const outer = weld.radius * placing.scale;
  const hub = scene.hubs
    .filter((round) => sameCentre(round, weld, weld.radius * 1e-3) && round.radius < weld.radius * 0.999)
    .reduce((most, { radius }) => Math.max(most, radius), 0);
  const inner = Math.max(hub * placing.scale, outer - style.size * 0.8);
  const x = placing.x + weld.x * placing.scale;
  const y = placing.y + weld.y * placing.scale;
  const count = Math.max(24, Math.round((2 * Math.PI * outer) / (style.size * 0.36)));
  return Array.from({ length: count }, (_, i): readonly PathCommand[] => {
    const angle = (2 * Math.PI * i) / count;
    return [
      ['M', x + inner * Math.cos(angle), y + inner * Math.sin(angle)],
      ['L', x + outer * Math.cos(angle), y + outer * Math.sin(angle)],
    ];
  }).flat();
}
