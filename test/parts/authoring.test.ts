// The bridge to makerjs: what it draws is kept as contours with true arcs.
import makerjs from 'makerjs';
import { describe, expect, test } from 'vitest';
import {
  areaOf,
  circleContour,
  isCircle,
  lengthOf,
  makeContour,
} from '../../parts-library/geometry/index.js';
import { contoursFromModel, modelFromContour } from '../../parts-library/parts/authoring/index.js';
import { drawLobes } from '../../parts-library/parts/shared/lobes.js';

describe('makerjs model to contours', () => {
  test('a rounded rectangle 100 × 60, R 10: four lines, four arcs, length 2 (80 + 40) + 20 π', () => {
    const { outline, openings } = contoursFromModel(new makerjs.models.RoundRectangle(100, 60, 10));
    expect(outline).toHaveLength(8);
    expect(lengthOf(outline)).toBeCloseTo(240 + 20 * Math.PI, 9);
    expect(areaOf(outline)).toBeCloseTo(6000 - (4 - Math.PI) * 100, 9);
    expect(openings).toEqual([]);
  });

  test('a ring with six bolt holes, moved: circles stay circles, openings run clockwise', () => {
    const model: MakerJs.IModel = {
      origin: [10, -5],
      models: {
        ring: new makerjs.models.Ring(75, 28.675),
        holes: new makerjs.models.BoltCircle(55, 5.5, 6, 90),
      },
    };
    const { outline, openings } = contoursFromModel(model);
    expect(isCircle(outline)).toEqual({ centre: { x: 10, y: -5 }, radius: 75 });
    const radii = openings.map((contour) => isCircle(contour)?.radius ?? 0);
    expect(radii[0]).toBeCloseTo(28.675, 12);
    expect(radii.slice(1).map((radius) => radius.toFixed(9))).toEqual(Array(6).fill('5.500000000'));
    for (const opening of openings) expect(areaOf(opening)).toBeLessThan(0);
  });

  test('an open line and a second outline are refused by name', () => {
    expect(() => contoursFromModel({ paths: { a: new makerjs.paths.Line([0, 0], [10, 0]) } })).toThrow(
      /does not close/,
    );
    const two = {
      paths: { a: new makerjs.paths.Circle([0, 0], 10), b: new makerjs.paths.Circle([50, 0], 5) },
    };
    expect(() => contoursFromModel(two)).toThrow(/second outline/);
    expect(() => contoursFromModel({})).toThrow(/empty/);
  });
});

describe('there and back', () => {
  test('a lobed outline keeps its area and length to 1e-9', () => {
    const lobes = [0, 1, 2, 3, 4].map((index) => ({ degrees: 90 + 72 * index, reach: 47.5 }));
    const drawn = drawLobes(lobes, 16, { floor: 34 });
    if (!drawn.ok) throw new Error(drawn.says);
    const contour = makeContour(drawn.value.vertices, { direction: 'outline' });
    const { outline } = contoursFromModel(modelFromContour(contour));
    expect(Math.abs(areaOf(outline) - areaOf(contour))).toBeLessThan(1e-9 * areaOf(contour));
    expect(lengthOf(outline)).toBeCloseTo(lengthOf(contour), 6);
  });

  test('a circle comes back as the same circle', () => {
    const circle = circleContour({ x: 3, y: 4 }, 12.5, 'outline');
    expect(isCircle(contoursFromModel(modelFromContour(circle)).outline)).toEqual({
      centre: { x: 3, y: 4 },
      radius: 12.5,
    });
  });
});
