// The figures of a plan, each redone by hand.
import { expect, test } from 'vitest';
import { figuresOf, planCuts } from '../../parts-library/cutting/index.js';
import { adapter, hole, outline, partOf, place, rectangle, settings } from './shop.js';

test('one hole of 8 at 0.6 of 1500: path pi x 6.4 = 20.106, lead-in 3.2, (20.106 + 3.2) / 900 min + 0.5 s = 2.054 s', () => {
  const part = partOf('plate', [outline(rectangle(100, 60)), hole('hole', 50, 30, 8)]);
  const figures = figuresOf(planCuts([place(part)], { ...settings, speed: 1500 }).value);
  expect(figures.contours[0]).toMatchObject({ featureId: 'hole', placementId: 'p1', pierceSeconds: 0.5 });
  expect(figures.contours[0]?.length).toBeCloseTo(20.1062, 4);
  expect(figures.contours[0]?.leadIn).toBeCloseTo(3.2, 9);
  expect(figures.contours[0]?.speed).toBeCloseTo(900, 9);
  expect(figures.contours[0]?.seconds).toBeCloseTo(2.0537, 4);
});

test('the adapter plate: 6 x pi x 9.4 + pi x 55.75 + pi x 151.6 = 828.595 in 8 pierces, 2 marks and 20 of etching beside it', () => {
  // 177.1858 + 175.1438 + 476.2654.
  const figures = figuresOf(planCuts([place(adapter)], settings).value);
  expect(figures.length).toBeCloseTo(828.595, 3);
  expect(figures.pierces).toBe(8);
  expect(figures.marks).toBe(2);
  expect(figures.lineLength).toBe(20);
  // 6 x 4.7 from the centres, 6 in the bore, 7.3539 on the outline.
  expect(figures.leadInLength).toBeCloseTo(41.5539, 4);
});

test('two copies are twice one, and the totals are the sums of the contours', () => {
  const one = figuresOf(planCuts([place(adapter)], settings).value);
  const two = figuresOf(
    planCuts([place(adapter), place(adapter, { id: 'p2', at: { x: 200, y: 0 } })], settings).value,
  );
  expect(two.length).toBeCloseTo(2 * one.length, 9);
  expect(two.pierces).toBe(16);
  expect(two.seconds.likely).toBeCloseTo(2 * one.seconds.likely, 9);
  expect(two.contours.reduce((sum, { seconds }) => sum + seconds, 0)).toBeCloseTo(two.seconds.likely, 9);
});

test('the range is 20 % either way', () => {
  const { seconds } = figuresOf(planCuts([place(adapter)], settings).value);
  expect(seconds.low / seconds.likely).toBeCloseTo(0.8, 12);
  expect(seconds.high / seconds.likely).toBeCloseTo(1.2, 12);
});

test('nothing placed is nothing cut', () => {
  expect(figuresOf(planCuts([], settings).value)).toMatchObject({
    length: 0,
    pierces: 0,
    marks: 0,
    seconds: { low: 0, likely: 0, high: 0 },
  });
});
