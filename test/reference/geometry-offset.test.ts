// The kerf offset of random contours against independent referees: a distance field, windings of points, and the buffer of
// another library on fine chords. Seeded; FISHPLATE_LONG=1 runs twelve times as many.
import Coordinate from 'jsts/org/locationtech/jts/geom/Coordinate.js';
import GeometryFactory, { type Geometry } from 'jsts/org/locationtech/jts/geom/GeometryFactory.js';
import BufferOp from 'jsts/org/locationtech/jts/operation/buffer/BufferOp.js';
import BufferParameters from 'jsts/org/locationtech/jts/operation/buffer/BufferParameters.js';
import IsValidOp from 'jsts/org/locationtech/jts/operation/valid/IsValidOp.js';
import { beforeAll, describe, expect, test } from 'vitest';
import {
  areaOf,
  lengthOf,
  offsetContour,
  reverseContour,
  type Contour,
  type OffsetResult,
} from '../../parts-library/geometry/index.js';
import { createField, flatten, polygonArea, walk, windings, type XY } from '../geometry/support/field.js';
import {
  randomBulged,
  randomComb,
  randomFilleted,
  randomPolygon,
  randomSkyline,
  seeded,
  type Random,
} from '../geometry/support/random.js';

const distances = [0.5, -0.5, 1.5, -1.5, 5, -5];
const roundDistances = [0.25, -0.25, 0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2];
const long = process.env['FISHPLATE_LONG'] === '1';
const perKind = long ? 1100 : 90;
/** Milliseconds allowed for one claim about all runs of a kind. */
const patience = long ? 900_000 : 60_000;

interface Kind {
  readonly name: string;
  readonly distances: readonly number[];
  readonly draw: (random: Random, distance: number) => Contour | undefined;
}

const kinds: readonly Kind[] = [
  { name: 'polygons', distances, draw: (random) => randomPolygon(random) },
  { name: 'filleted polygons', distances, draw: (random) => randomFilleted(random) },
  { name: 'random bulges', distances, draw: (random) => randomBulged(random) },
  {
    name: 'combs with gaps about twice the offset',
    distances,
    draw: (random, distance) => randomComb(random, 2 * Math.abs(distance)),
  },
  {
    name: 'skylines in whole millimetres',
    distances: roundDistances,
    draw: (random) => randomSkyline(random),
  },
];

const factory = new GeometryFactory();

/**
 * The referee is asked at a distance a ten-millionth larger: where walls lie exactly twice the distance apart it loses
 * whole pieces (seen against areas counted on a grid), and the area does not notice the difference.
 */
const nudge = 1.0000001;

/** 64 chords to a quarter turn, and the source simplified by a thousandth of the distance instead of a hundredth. */
const fine = new BufferParameters(64);
fine.setSimplifyFactor(0.001);

function toJsts(points: readonly XY[]): Geometry {
  const ring = [...points, ...points.slice(0, 1)].map((p) => new Coordinate(p.x, p.y));
  return factory.createPolygon(factory.createLinearRing(ring));
}

interface Drawn {
  readonly label: string;
  readonly contour: Contour;
  readonly distance: number;
  readonly result: OffsetResult;
}

/** The contours of one kind, half of them openings. */
function drawAll(kind: Kind): Drawn[] {
  const drawn: Drawn[] = [];
  for (let seed = 1; drawn.length < perKind; seed++) {
    const random = seeded(seed * 7919 + 13);
    for (let i = 0; i < 5; i++) random();
    const distance = kind.distances[Math.floor(random() * kind.distances.length)] ?? 1;
    const outline = kind.draw(random, distance);
    if (outline === undefined) continue;
    const contour = random() < 0.5 ? outline : reverseContour(outline);
    const label = `${kind.name} ${seed} by ${distance}`;
    drawn.push({ label, contour, distance, result: offsetContour(contour, distance) });
  }
  return drawn;
}

describe.each(kinds)('offset of $name', (kind) => {
  let runs: readonly Drawn[] = [];
  beforeAll(() => {
    runs = drawAll(kind);
  }, patience);

  test(
    'keeps its distance: within 1e-6 mm where exact, 0.01 mm beyond where in chords',
    () => {
      const wrong = runs.flatMap(({ label, contour, distance, result }) => {
        const field = createField([contour]);
        return result.pieces.flatMap((piece) => {
          const off = walk(piece.contour, 2).map((p) => field(p) - Math.abs(distance));
          const least = Math.min(...off);
          const most = Math.max(...off);
          if (piece.exact) return least < -1e-6 || most > 1e-6 ? [`${label}: ${least}..${most}`] : [];
          // Chords lie on the right of the ideal: farther from the source when it was moved right, nearer when left.
          const [low, high] = distance > 0 ? [least, most] : [-most, -least];
          return low < -1e-6 || high > 0.01 + 1e-6 ? [`${label} in chords: ${low}..${high}`] : [];
        });
      });
      expect(wrong).toEqual([]);
    },
    patience,
  );

  test(
    'at most one piece in two hundred is in chords',
    () => {
      const pieces = runs.flatMap(({ result }) => result.pieces);
      expect(pieces.length).toBeGreaterThan(perKind / 2);
      expect(pieces.filter((piece) => !piece.exact).length / pieces.length).toBeLessThanOrEqual(0.005);
    },
    patience,
  );

  test(
    'gives contours that another library finds valid',
    () => {
      const wrong = runs.flatMap(({ label, result }) =>
        result.pieces.flatMap((piece) =>
          IsValidOp.isValid(toJsts(flatten(piece.contour, 2e-5))) ? [] : [label],
        ),
      );
      expect(wrong).toEqual([]);
    },
    patience,
  );

  test(
    'encloses the area of the buffer of another library, within 0.3 % of distance times perimeter',
    () => {
      const wrong = runs.flatMap(({ label, contour, distance, result }) => {
        const outline = areaOf(contour) > 0;
        const buffer = BufferOp.bufferOp(
          toJsts(flatten(contour, 2e-4)),
          (outline ? distance : -distance) * nudge,
          fine,
        );
        // Signed like the source, so that closed pockets and islands subtract.
        const area = result.pieces.reduce((sum, p) => sum + polygonArea(flatten(p.contour, 1e-5)), 0);
        const off = Math.abs((outline ? area : -area) - buffer.getArea());
        return off > 0.003 * Math.abs(distance) * lengthOf(contour) ? [`${label}: ${off}`] : [];
      });
      expect(wrong).toEqual([]);
    },
    patience,
  );

  test(
    'parts the plane where it should, at 200 points each',
    () => {
      const wrong = runs.flatMap(({ label, contour, distance, result }, run) => {
        const field = createField([contour]);
        const source = flatten(contour, 1e-4);
        const out = result.pieces.map((piece) => flatten(piece.contour, 1e-4));
        const slack = result.exact ? 1e-3 : 0.012;
        const xs = source.map((p) => p.x);
        const ys = source.map((p) => p.y);
        const [left, right] = [Math.min(...xs) - 6, Math.max(...xs) + 6];
        const [low, high] = [Math.min(...ys) - 6, Math.max(...ys) + 6];
        const random = seeded(run + 1);
        for (let i = 0; i < 200; i++) {
          const p = { x: left + random() * (right - left), y: low + random() * (high - low) };
          const away = field(p);
          if (Math.abs(away - Math.abs(distance)) < slack || away < slack) continue;
          // Near the source's line the point belongs to whatever grew; farther off it stays as it was.
          const grew = distance > 0 === areaOf(contour) > 0;
          const belongs = away < Math.abs(distance) ? grew : windings(source, p) !== 0;
          const found = out.reduce((sum, polygon) => sum + windings(polygon, p), 0) !== 0;
          if (found !== belongs) return [`${label}: (${p.x}, ${p.y})`];
        }
        return [];
      });
      expect(wrong).toEqual([]);
    },
    patience,
  );
});
