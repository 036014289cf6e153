// Seeded random plates: whatever lies on them, leads stay in scrap, order holds, and the kerf stays off the part.
import { expect, test } from 'vitest';
import { areaOf, circleContour, makeContour, polygonContour } from '../../parts-library/geometry/index.js';
import type { Contour } from '../../parts-library/geometry/index.js';
import { planCuts } from '../../parts-library/cutting/index.js';
import type { CutSettings, PlacedPart } from '../../parts-library/cutting/index.js';
import { isCut } from '../../parts-library/model/index.js';
import type { CutFeature } from '../../parts-library/model/index.js';
import { nearness, sample, seeded, surrounds } from './sampling.js';
import type { Spot } from './sampling.js';
import { hole, opening, outline, partOf, place, rectangle, settings, slot } from './shop.js';

const PLATES = process.env['FISHPLATE_LONG'] === '1' ? 400 : 16;

type Random = () => number;
const between = (random: Random, low: number, high: number): number => low + (high - low) * random();

/** A star-shaped polygon whose corners lie 70 to 95 mm from its middle, some of its sides bulged to arcs. */
function randomOutline(random: Random): Contour {
  const count = 4 + Math.floor(7 * random());
  return makeContour(
    Array.from({ length: count }, (_, index) => {
      const angle = (2 * Math.PI * (index + 0.5 * random())) / count;
      const radius = between(random, 70, 95);
      return {
        x: radius * Math.cos(angle),
        y: radius * Math.sin(angle),
        bulge: random() < 0.3 ? between(random, -0.15, 0.3) : 0,
      };
    }),
    { direction: 'outline' },
  );
}

/** Openings on a grid of 30 mm about the middle, so that none meets another. */
function randomOpenings(random: Random): readonly CutFeature[] {
  const features: CutFeature[] = [];
  for (const column of [-1, 0, 1])
    for (const row of [-1, 0, 1]) {
      const [x, y] = [30 * column, 30 * row];
      const id = `opening.${features.length}`;
      const kind = Math.floor(6 * random());
      if (kind === 0) features.push(hole(id, x, y, between(random, 5, 26)));
      if (kind === 1) features.push(opening(id, slot(between(random, 15, 26), between(random, 2, 14), x, y)));
      if (kind === 2) {
        const [w, h] = [between(random, 4, 24), between(random, 4, 24)];
        features.push(opening(id, rectangle(w, h, 'opening', x - w / 2, y - h / 2)));
      }
      if (kind === 3)
        features.push(
          opening(
            id,
            polygonContour(
              [0, 1, 2, 3, 4].map((i) => {
                const angle = (2 * Math.PI * (i + 0.4 * random())) / 5;
                const radius = between(random, 5, 13);
                return { x: x + radius * Math.cos(angle), y: y + radius * Math.sin(angle) };
              }),
              { direction: 'opening' },
            ),
          ),
        );
      if (kind === 4) features.push(opening(id, circleContour({ x, y }, 13, 'opening')));
    }
  return features;
}

function randomPlate(seed: number): { placed: readonly PlacedPart[]; with_: CutSettings } {
  const random = seeded(seed);
  const kerf = between(random, 1, 2.2);
  const placed = [0, 1, 2].map((index) => {
    const part = partOf(`part ${index}`, [outline(randomOutline(random)), ...randomOpenings(random)]);
    return place(part, {
      id: `p${index}`,
      // Near enough for some leads to be in each other's way; parts that overlap are moved apart below.
      at: { x: 196 * index, y: between(random, -20, 20) },
      turnDegrees: index === 0 ? 90 : between(random, 0, 360),
      mirrored: random() < 0.5,
    });
  });
  return {
    placed,
    with_: {
      ...settings,
      kerf,
      holeKerf: kerf * between(random, 1, 1.1),
      thickness: between(random, 1.5, 10),
      squareSide: random() < 0.5 ? 'right' : 'left',
    },
  };
}

/** A contour where the placement puts it: mirrored in x, turned, moved. */
function placedSpots({ placement }: PlacedPart, contour: Contour, step: number): Spot[] {
  const turn = (placement.turnDegrees * Math.PI) / 180;
  return sample(contour, true, step).map(({ x, y }) => {
    const side = placement.mirrored ? -x : x;
    return {
      x: side * Math.cos(turn) - y * Math.sin(turn) + placement.at.x,
      y: side * Math.sin(turn) + y * Math.cos(turn) + placement.at.y,
    };
  });
}

/** Chords of 0.05 mm lie within 0.05² / (8 x 2) = 0.16 µm of an arc of 2 mm radius, the smallest drawn here. */
const FINE = 0.05;
/** Fine enough to tell inside from outside half a kerf away. */
const COARSE = 0.5;
const MICROMETRE = 1e-3;

const seeds = Array.from({ length: PLATES }, (_, index) => index + 1);

test.each(seeds)('plate %i', (seed) => {
  const { placed, with_ } = randomPlate(seed);
  const { value: plan, findings } = planCuts(placed, with_);
  const features = placed.flatMap((one) =>
    one.part.features.filter(isCut).map((feature) => {
      const spots = placedSpots(one, feature.contour, FINE);
      const ring = placedSpots(one, feature.contour, COARSE);
      return { placementId: one.placement.id, feature, ring, near: nearness(spots, true) };
    }),
  );
  const isMetal = (spot: Spot): boolean =>
    features.filter(({ ring }) => surrounds(ring, spot)).length % 2 === 1;
  const kerfFor = ({ feature }: { feature: CutFeature }): number => {
    const [a, b] = feature.contour;
    const round = feature.purpose === 'opening' && feature.contour.length === 2 && a?.bulge === b?.bulge;
    return round && Math.hypot((a?.x ?? 0) - (b?.x ?? 0), (a?.y ?? 0) - (b?.y ?? 0)) <= 37
      ? with_.holeKerf
      : with_.kerf;
  };

  // Nothing is lost in silence: each contour is in the plan, or a stop finding names it.
  for (const { placementId, feature } of features) {
    const planned = plan.contours.some((c) => c.placementId === placementId && c.featureId === feature.id);
    const stopped = findings.some(
      ({ level, subject }) =>
        level === 'stop' && subject.placementId === placementId && subject.featureId === feature.id,
    );
    expect(planned || stopped, `${placementId} ${feature.id}`).toBe(true);
  }

  const pathSoFar: ((spot: Spot) => number)[] = [];
  for (const contour of plan.contours) {
    const own = features.find(
      ({ placementId, feature }) => placementId === contour.placementId && feature.id === contour.featureId,
    );
    if (own === undefined) throw new Error(`${contour.featureId} was never drawn`);
    const kerf = kerfFor(own);

    // The path keeps half a kerf from its own edge, no more and no less, where it is exact.
    const distances = sample(contour.path, true, 0.5).map(own.near);
    expect(Math.min(...distances)).toBeGreaterThan(kerf / 2 - MICROMETRE);
    if (contour.exact) expect(Math.max(...distances)).toBeLessThan(kerf / 2 + MICROMETRE);

    // The pierce is in scrap, its crater off every edge, and farther off other parts.
    const crater = 1.5 * with_.kerf;
    const { pierce } = contour.leadIn;
    for (const { placementId, near } of features) {
      const least = crater + with_.kerf / 2 + (placementId === contour.placementId ? 0 : 1);
      expect(near(pierce)).toBeGreaterThan(Math.min(least, 3.9) - MICROMETRE);
    }

    // The lead-in's own kerf touches no finished edge, and its middle never enters metal.
    const lead = sample(contour.leadIn.path.vertices, false, 0.05);
    const nearest = (near: (spot: Spot) => number): number => Math.min(...lead.map(near));
    expect(lead.filter((_, index) => index % 10 === 0).some(isMetal)).toBe(false);
    expect(Math.min(...features.map(({ near }) => nearest(near)))).toBeGreaterThan(kerf / 2 - MICROMETRE);

    // The pierce keeps two kerfs from what is already cut, the lead-in's kerf does not run into it.
    const toCuts = Math.min(Infinity, ...pathSoFar.map((near) => near(pierce)));
    expect(toCuts).toBeGreaterThan(Math.min(2 * with_.kerf, 3.9) - MICROMETRE);
    expect(Math.min(Infinity, ...pathSoFar.map(nearest))).toBeGreaterThan(
      kerf / 2 + with_.kerf / 2 - MICROMETRE,
    );
    pathSoFar.push(
      nearness(sample(contour.path, true, FINE), true),
      nearness(sample(contour.leadIn.path.vertices, false, FINE), false),
    );

    // Square side on the part.
    const clockwise = areaOf(contour.path) < 0;
    expect(clockwise).toBe((contour.purpose === 'outline') === (with_.squareSide === 'right'));
  }

  // Openings before the outline, smallest first, part after part.
  const seen = plan.contours.map((contour) => {
    const feature = features.find(
      (each) => each.placementId === contour.placementId && each.feature.id === contour.featureId,
    )?.feature;
    const size = feature?.purpose === 'outline' ? 1e9 : Math.abs(areaOf(feature?.contour ?? contour.path));
    return Number(contour.placementId.slice(1)) * 1e10 + size;
  });
  expect(seen).toEqual([...seen].sort((a, b) => a - b));
});

test('the random plates are worth cutting: most contours are planned, some are refused', () => {
  const results = seeds.map((seed) => {
    const { placed, with_ } = randomPlate(seed);
    return { drawn: placed.flatMap(({ part }) => part.features).length, ...planCuts(placed, with_) };
  });
  const drawn = results.reduce((sum, each) => sum + each.drawn, 0);
  const planned = results.reduce((sum, { value }) => sum + value.contours.length, 0);
  const stops = results.reduce(
    (sum, { findings }) => sum + findings.filter(({ level }) => level === 'stop').length,
    0,
  );
  expect(planned / drawn).toBeGreaterThan(0.7);
  expect(stops).toBeGreaterThan(5);
});
