// The ring plate, worked through by hand: 150 outside, bore 57.35, kerf 1.6, 6 mm plate.
import { expect, test } from 'vitest';
import { areaOf, isCircle } from '../../parts-library/geometry/index.js';
import { figuresOf, planCuts } from '../../parts-library/cutting/index.js';
import { place, ring, settings } from './shop.js';

const { value: plan, findings } = planCuts([place(ring)], settings);
const [bore, rim] = plan.contours;

test('the bore is cut first, then the outline', () => {
  expect(plan.contours.map(({ featureId }) => featureId)).toEqual(['bore', 'outline']);
});

test('the torch runs half a kerf into the scrap: radius (57.35 - 1.6) / 2 = 27.875 and (150 + 1.6) / 2 = 75.8', () => {
  expect(bore && isCircle(bore.path)?.radius).toBeCloseTo(27.875, 9);
  expect(rim && isCircle(rim.path)?.radius).toBeCloseTo(75.8, 9);
  expect(plan.contours.map(({ exact }) => exact)).toEqual([true, true]);
});

test('cut length is pi x 55.75 + pi x 151.6 = 175.144 + 476.265 = 651.409', () => {
  expect(bore?.length).toBeCloseTo(175.1438, 3);
  expect(rim?.length).toBeCloseTo(476.2654, 3);
  // One kerf more outside, one less inside: the sum is that of the finished edges, pi x 207.35.
  expect(figuresOf(plan).length).toBeCloseTo(651.4092, 3);
});

test('square side right: outline clockwise, bore counter-clockwise', () => {
  expect(rim && areaOf(rim.path)).toBeLessThan(0);
  expect(bore && areaOf(bore.path)).toBeGreaterThan(0);
});

test('square side left turns both round', () => {
  const other = planCuts([place(ring)], { ...settings, squareSide: 'left' }).value.contours;
  expect(other.map(({ path }) => Math.sign(areaOf(path)))).toEqual([-1, 1]);
});

test('the bore is entered square at 6 o’clock from 6 mm inside its path: pierce at radius 27.875 - 6 = 21.875', () => {
  expect(bore?.path[0]?.x).toBeCloseTo(0, 9);
  expect(bore?.path[0]?.y).toBeCloseTo(-27.875, 9);
  expect(bore?.leadIn.pierce.x).toBeCloseTo(0, 9);
  expect(bore?.leadIn.pierce.y).toBeCloseTo(-21.875, 9);
  expect(bore?.leadIn.length).toBeCloseTo(6, 9);
});

test('the outline is entered at 6 o’clock on a slant of 45°, (6 - 0.8) / sin 45° = 7.354 long', () => {
  expect(rim?.path[0]?.x).toBeCloseTo(0, 9);
  expect(rim?.path[0]?.y).toBeCloseTo(-75.8, 9);
  expect(rim?.leadIn.length).toBeCloseTo(7.3539, 4);
  // Clockwise at the bottom is towards -x, so the torch comes from +x, 5.2 below the path.
  expect(rim?.leadIn.pierce.x).toBeCloseTo(5.2, 9);
  expect(rim?.leadIn.pierce.y).toBeCloseTo(-81, 9);
});

test('the plan says where a round outline starts, and nothing worse', () => {
  expect(findings.map(({ code, level }) => [code, level])).toEqual([['lead-in-round-outline', 'note']]);
});

test('time: the bore of 57.35 at 0.70 + 0.30 x 20.35 / 38 = 0.8607 of 1450, the rim at 1450, 0.5 s each to pierce', () => {
  // 1450 x 0.860658 = 1247.954. Bore (175.1438 + 6) / 1247.954 x 60 + 0.5 = 9.2091 s.
  // Rim (476.2654 + 7.3539) / 1450 x 60 + 0.5 = 20.5119 s. Together 29.7210 s.
  const { seconds, contours } = figuresOf(plan);
  expect(bore?.speed).toBeCloseTo(1247.954, 2);
  expect(rim?.speed).toBe(1450);
  expect(contours.map((each) => each.seconds.toFixed(3))).toEqual(['9.209', '20.512']);
  expect(seconds.likely).toBeCloseTo(29.721, 3);
  expect(seconds.low).toBeCloseTo(23.7768, 3);
  expect(seconds.high).toBeCloseTo(35.6652, 3);
});

test('two pierces, no marks, 6 + 7.354 of lead-in beside the cut length', () => {
  const figures = figuresOf(plan);
  expect(figures.pierces).toBe(2);
  expect(figures.marks).toBe(0);
  expect(figures.lineLength).toBe(0);
  expect(figures.leadInLength).toBeCloseTo(13.3539, 4);
});

test('planning twice gives the same plan to the last digit', () => {
  expect(JSON.stringify(planCuts([place(ring)], settings))).toBe(JSON.stringify({ value: plan, findings }));
});
