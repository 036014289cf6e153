// Kerf on the torch path: what grows, what shrinks, what closes.
import { expect, test } from 'vitest';
import {
  areaOf,
  isCircle,
  lengthOf,
  makeContour,
  polygonContour,
} from '../../parts-library/geometry/index.js';
import { CutSettingsError, planCuts } from '../../parts-library/cutting/index.js';
import { chordPaths } from '../../parts-library/cutting/plan-findings.js';
import { hole, opening, outline, partOf, place, rectangle, settings, slot } from './shop.js';

test('a rectangle of 100 x 60 with a kerf of 2 is cut along 320 of straight and pi x 2 of corner', () => {
  const { value } = planCuts([place(partOf('plate', [outline(rectangle(100, 60))]))], {
    ...settings,
    kerf: 2,
  });
  // Half a kerf round: four quarter circles of radius 1.
  expect(value.contours[0]?.length).toBeCloseTo(320 + 2 * Math.PI, 9);
  expect(value.contours[0]?.exact).toBe(true);
});

test('a slot of 30 x 8 with a kerf of 1.6 is cut along 28.4 x 6.4: 2 x 22 + pi x 6.4 = 64.106', () => {
  const part = partOf('plate', [outline(rectangle(100, 60)), opening('slot', slot(30, 8, 50, 30))]);
  const path = planCuts([place(part)], settings).value.contours[0];
  expect(path?.featureId).toBe('slot');
  expect(path?.length).toBeCloseTo(64.1062, 3);
});

test('round holes up to 37 take the hole kerf, larger ones and slots the ordinary one', () => {
  const part = partOf('plate', [
    outline(rectangle(300, 100)),
    hole('at-37', 50, 50, 37),
    hole('above-37', 150, 50, 37.2),
    opening('slot', slot(30, 12, 250, 50)),
  ]);
  const { contours } = planCuts([place(part)], { ...settings, holeKerf: 2 }).value;
  const radius = (id: string): number => {
    const found = contours.find(({ featureId }) => featureId === id);
    return (found && isCircle(found.path)?.radius) ?? 0;
  };
  expect(radius('at-37')).toBeCloseTo(18.5 - 1, 9);
  expect(radius('above-37')).toBeCloseTo(18.6 - 0.8, 9);
  // 12 - 1.6 wide: two straights of 18 and a circle of 10.4.
  const found = contours.find(({ featureId }) => featureId === 'slot');
  expect(found?.length).toBeCloseTo(36 + Math.PI * 10.4, 9);
});

test('small holes run slower: 0.60 of chart speed at 11, 0.65 at 24.75, 0.70 at 37, full at 80', () => {
  const part = partOf('plate', [
    outline(rectangle(300, 100)),
    ...[11, 24.75, 37, 80].map((size, index) => hole(`hole.${index}`, 40 + 70 * index, 50, size)),
  ]);
  const { contours } = planCuts([place(part)], { ...settings, speed: 1000 }).value;
  expect(contours.map(({ speed }) => speed.toFixed(6))).toEqual([
    '600.000000',
    '650.000000',
    '700.000000',
    '1000.000000',
    '1000.000000',
  ]);
});

test('a slot of 1.5 vanishes under a kerf of 1.6: stop, drill it, and nothing of it is in the plan', () => {
  const part = partOf('plate', [outline(rectangle(100, 60)), opening('thin', slot(30, 1.5, 50, 30))]);
  const { value, findings } = planCuts([place(part)], settings);
  expect(value.contours.map(({ featureId }) => featureId)).toEqual(['outline']);
  expect(findings).toHaveLength(1);
  expect(findings[0]).toMatchObject({
    code: 'kerf-closes-opening',
    level: 'stop',
    subject: { featureId: 'thin', placementId: 'p1', rowId: 'row1' },
  });
  expect(findings[0]?.says).toContain('cannot be cut');
  expect(findings[0]?.says).toContain('Drill it');
});

/** Two windows of 30 x 30 joined by a neck 10 long and 1.2 wide. */
const dogbone = polygonContour(
  [
    { x: 20, y: 15 },
    { x: 50, y: 15 },
    { x: 50, y: 29.4 },
    { x: 60, y: 29.4 },
    { x: 60, y: 15 },
    { x: 90, y: 15 },
    { x: 90, y: 45 },
    { x: 60, y: 45 },
    { x: 60, y: 30.6 },
    { x: 50, y: 30.6 },
    { x: 50, y: 45 },
    { x: 20, y: 45 },
  ],
  { direction: 'opening' },
);

test('two windows joined by a neck of 1.2 come apart: cut as two, with a caution', () => {
  const part = partOf('plate', [outline(rectangle(110, 60)), opening('window', dogbone)]);
  const { value, findings } = planCuts([place(part)], settings);
  expect(value.contours.map(({ featureId }) => featureId)).toEqual(['window', 'window', 'outline']);
  const caution = findings.find(({ code }) => code === 'kerf-parts-opening');
  expect(caution).toMatchObject({ level: 'caution', subject: { featureId: 'window' }, value: { amount: 2 } });
});

/** A plate of 100 x 60 with a notch 1.2 wide and 20 deep in its top edge. */
const notched = polygonContour(
  [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 60 },
    { x: 50.6, y: 60 },
    { x: 50.6, y: 40 },
    { x: 49.4, y: 40 },
    { x: 49.4, y: 60 },
    { x: 0, y: 60 },
  ],
  { direction: 'outline' },
);

test('a notch of 1.2 in the outline closes: caution at its bottom, 20 deep less what the kerf rounds into it', () => {
  const { value, findings } = planCuts([place(partOf('plate', [outline(notched)]))], settings);
  expect(value.contours).toHaveLength(1);
  const caution = findings.find(({ code }) => code === 'kerf-out-of-reach');
  expect(caution).toMatchObject({ level: 'caution', subject: { featureId: 'outline' } });
  expect(caution?.anchor?.y).toBeCloseTo(40, 6);
  // The two corner arcs of radius 0.8 about (49.4, 60) and (50.6, 60) meet at x = 50, y = 60 + sqrt(0.64 - 0.36) = 60.529.
  // From there to the middle of the bottom (50, 40) is 20.529 and to its corner 20.538; less 0.8: 19.729 to 19.738.
  expect(caution?.value?.amount).toBeGreaterThan(19.728);
  expect(caution?.value?.amount).toBeLessThan(19.739);
});

test('a pocket of 10 x 10 behind a mouth of 1.2 is cut as an opening of its own before the outline', () => {
  const keyhole = polygonContour(
    [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 60 },
      { x: 50.6, y: 60 },
      { x: 50.6, y: 50 },
      { x: 60, y: 50 },
      { x: 60, y: 30 },
      { x: 40, y: 30 },
      { x: 40, y: 50 },
      { x: 49.4, y: 50 },
      { x: 49.4, y: 60 },
      { x: 0, y: 60 },
    ],
    { direction: 'outline' },
  );
  const { value, findings } = planCuts([place(partOf('plate', [outline(keyhole)]))], settings);
  expect(value.contours.map(({ featureId, purpose }) => [featureId, purpose])).toEqual([
    ['outline', 'opening'],
    ['outline', 'outline'],
  ]);
  expect(value.contours.map(({ path }) => Math.sign(areaOf(path)))).toEqual([1, -1]);
  expect(findings.map(({ code }) => code)).toContain('kerf-out-of-reach');
});

test('ordinary inside corners of 90 degrees are no finding: the torch leaves its own radius there', () => {
  const ell = polygonContour(
    [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: 100, y: 30 },
      { x: 30, y: 30 },
      { x: 30, y: 80 },
      { x: 0, y: 80 },
    ],
    { direction: 'outline' },
  );
  expect(planCuts([place(partOf('angle', [outline(ell)]))], settings).findings).toEqual([]);
});

test('arcs stay arcs: a rounded plate of 100 x 60 r 10 is four straights and four arcs of 10.8', () => {
  const quarter = Math.SQRT2 - 1;
  const rounded = makeContour(
    [
      { x: 10, y: 0, bulge: 0 },
      { x: 90, y: 0, bulge: quarter },
      { x: 100, y: 10, bulge: 0 },
      { x: 100, y: 50, bulge: quarter },
      { x: 90, y: 60, bulge: 0 },
      { x: 10, y: 60, bulge: quarter },
      { x: 0, y: 50, bulge: 0 },
      { x: 0, y: 10, bulge: quarter },
    ],
    { direction: 'outline' },
  );
  const path = planCuts([place(partOf('plate', [outline(rounded)]))], settings).value.contours[0];
  // One vertex more than eight: where the lead-in meets the straight.
  expect(path?.path).toHaveLength(9);
  expect(path && lengthOf(path.path)).toBeCloseTo(2 * 80 + 2 * 40 + 2 * Math.PI * 10.8, 9);
});

test('mirrored and turned, a path is as long as before and runs the same way round', () => {
  const part = partOf('plate', [outline(rectangle(100, 60)), opening('slot', slot(30, 8, 30, 20))]);
  const straight = planCuts([place(part)], settings).value.contours;
  const turned = planCuts([place(part, { mirrored: true, turnDegrees: 37, at: { x: 500, y: 90 } })], settings)
    .value.contours;
  expect(turned).toHaveLength(2);
  turned.forEach((contour, index) => {
    expect(contour.length).toBeCloseTo(straight[index]?.length ?? 0, 9);
    expect(Math.sign(areaOf(contour.path))).toBe(Math.sign(areaOf(straight[index]?.path ?? contour.path)));
  });
});

test.each([
  ['kerf', 0],
  ['kerf', Number.NaN],
  ['holeKerf', -1],
  ['speed', 0],
  ['thickness', Number.POSITIVE_INFINITY],
  ['pierceSeconds', -0.1],
] as const)('%s of %d is refused by name', (field, value) => {
  const plan = () => planCuts([], { ...settings, [field]: value });
  expect(plan).toThrow(CutSettingsError);
  expect(plan).toThrow(field);
});

test('paths that had to be chords are counted in one note', () => {
  // The offset keeps arcs true on every shape here, so the sentence is asked for directly.
  expect(chordPaths(1)).toMatchObject({ level: 'note', title: '1 contour follows short straight lines' });
  expect(chordPaths(3).title).toBe('3 contours follow short straight lines');
});
