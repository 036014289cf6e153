// What is cut first.
import { expect, test } from 'vitest';
import { compareIds, cutOrder, planCuts } from '../../parts-library/cutting/index.js';
import { isCut } from '../../parts-library/model/index.js';
import { adapter, hole, opening, outline, partOf, place, rectangle, settings, slot } from './shop.js';

const ids = (features: readonly { readonly id: string }[]): readonly string[] => features.map(({ id }) => id);

test('bolt holes come before the bore and the bore before the outline', () => {
  expect(ids(cutOrder(adapter.features.filter(isCut)))).toEqual([
    'pattern1.hole.1',
    'pattern1.hole.2',
    'pattern1.hole.3',
    'pattern1.hole.4',
    'pattern1.hole.5',
    'pattern1.hole.6',
    'bore',
    'outline',
  ]);
});

test('like holes go by their number, the second before the tenth, whatever the drawing order', () => {
  const holes = [10, 2, 1, 9].map((n) => hole(`hole.${n}`, 20 * n, 0, 11));
  expect(ids(cutOrder(holes))).toEqual(['hole.1', 'hole.2', 'hole.9', 'hole.10']);
});

test('area decides, not diameter or length: a slot of 30 x 8 (226 mm²) after a hole of 16 (201 mm²)', () => {
  expect(ids(cutOrder([opening('slot', slot(30, 8)), hole('hole', 50, 0, 16)]))).toEqual(['hole', 'slot']);
});

test('ids are compared with their numbers read as numbers', () => {
  expect(compareIds('hole.2', 'hole.10')).toBeLessThan(0);
  expect(compareIds('hole.10', 'hole.2')).toBeGreaterThan(0);
  expect(compareIds('bore', 'hole.1')).toBeLessThan(0);
  expect(compareIds('a.1', 'a.1')).toBe(0);
  expect(compareIds('a', 'a.1')).toBeLessThan(0);
});

test('parts are cut in the order in which they were placed, each finished before the next', () => {
  const plate = partOf('plate', [outline(rectangle(60, 40)), hole('hole', 30, 20, 12)]);
  const plan = planCuts(
    [place(plate, { id: 'b' }), place(plate, { id: 'a', at: { x: 100, y: 0 } })],
    settings,
  ).value;
  expect(plan.contours.map(({ placementId, featureId }) => `${placementId} ${featureId}`)).toEqual([
    'b hole',
    'b outline',
    'a hole',
    'a outline',
  ]);
});

test('lines and marks stand apart, before everything that goes through the plate', () => {
  const plan = planCuts([place(adapter)], settings).value;
  expect(plan.lines.map(({ featureId, purpose, length }) => [featureId, purpose, length])).toEqual([
    ['label', 'etch', 20],
  ]);
  expect(plan.marks.map(({ featureId }) => featureId)).toEqual(['mark.1', 'mark.2']);
});
