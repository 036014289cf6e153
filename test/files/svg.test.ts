// SVG read back: true scale, true arcs, one path per contour, the kind in words.
import { expect, test } from 'vitest';
import { areaOf } from '../../parts-library/geometry/index.js';
import { planCuts } from '../../parts-library/cutting/index.js';
import { writeCutSvg, writeFinishedSvg } from '../../parts-library/files/index.js';
import { isCut } from '../../parts-library/model/index.js';
import { place, settings } from '../cutting/shop.js';
import { areaByHand, bracket, bracketPlan, cutSvg, finishedSvg, info } from './pieces.js';
import { elementsOf, readPath } from './read-svg.js';

const read = (text: string) => {
  const elements = elementsOf(text);
  const root = elements[0];
  if (root?.name !== 'svg') throw new Error('no svg element');
  const paths = elements
    .filter(({ name }) => name === 'path')
    .map(({ attributes }) => ({
      id: attributes.get('id'),
      class: attributes.get('class'),
      ...readPath(attributes.get('d') ?? ''),
    }));
  const textIn = (name: string) => elements.find((element) => element.name === name)?.text ?? '';
  return { root, paths, title: textIn('title'), description: textIn('desc') };
};

const finished = read(finishedSvg.text);
const cut = read(cutSvg.text);

test.each([
  ['finished', finished, '130mm', '90mm', '-5 -85 130 90'],
  // Kerf of 0.8 all round, and the outline's pierce above: 87.919596.
  ['cut', cut, '131.6mm', '98.719596mm', '-5.8 -92.919596 131.6 98.719596'],
] as const)(
  '%s: width and height in mm are those of the view box, 5 mm round the drawing',
  (_, svg, ...size) => {
    expect(['width', 'height', 'viewBox'].map((name) => svg.root.attributes.get(name))).toEqual(size);
  },
);

test('one path per feature, in cut order, with the feature’s own id', () => {
  const order = ['bend.1', 'label', 'mark.1', 'hole.1', 'hole.2', 'slot', 'outline'];
  expect(finished.paths.map(({ id }) => id)).toEqual(order);
  expect(cut.paths.map(({ id }) => id)).toEqual(order);
});

test('classes tell the two kinds apart', () => {
  expect(new Set(finished.paths.map((path) => path.class))).toEqual(
    new Set(['score', 'etch', 'mark', 'opening', 'outline'].map((operation) => `finished-${operation}`)),
  );
  expect(new Set(cut.paths.map((path) => path.class))).toEqual(
    new Set(['score', 'etch', 'mark', 'opening', 'outline'].map((operation) => `cutpath-${operation}`)),
  );
});

test('title and description say the kind', () => {
  expect(finished.title).toBe('battery tray foot: finished size, no kerf');
  expect(finished.description).toContain('for a program that adds kerf itself');
  expect(cut.title).toBe('battery tray foot: cut path, kerf already in');
  expect(cut.description).toContain('do not add kerf again');
});

test('finished contours enclose what the part’s do; but for circles, which have no direction, the same way round', () => {
  for (const feature of bracket.features.filter(isCut)) {
    const path = finished.paths.find(({ id }) => id === feature.id);
    expect(path?.closed).toBe(true);
    // Radii rounded to 1e-6 mm move an arc of at most half a circle by less than 2e-6 mm: 400 mm of edge, 8e-4 mm2.
    const area = areaByHand(path?.corners ?? []);
    const drawn = areaOf(feature.contour);
    const circle = feature.id.startsWith('hole');
    expect(Math.abs(area - (circle ? Math.abs(drawn) : drawn))).toBeLessThan(8e-4);
  }
});

test('cut paths are open, start at their pierce and come back to the end of the lead-in', () => {
  bracketPlan.contours.forEach((contour) => {
    const path = cut.paths.find(({ id }) => id === contour.featureId);
    expect(path?.closed).toBe(false);
    const [pierce, start, ...rest] = path?.corners ?? [];
    expect(pierce?.x).toBeCloseTo(contour.leadIn.pierce.x, 6);
    expect(pierce?.y).toBeCloseTo(contour.leadIn.pierce.y, 6);
    expect([rest.at(-1)?.x, rest.at(-1)?.y]).toEqual([start?.x, start?.y]);
    const loop = path?.corners.slice(1, -1) ?? [];
    expect(Math.abs(areaByHand(loop) - areaOf(contour.path))).toBeLessThan(8e-4);
  });
});

test('a half circle is written so that its crown stays within 1e-6 mm: the hollow of 15 reaches down to y = 65', () => {
  const corners = finished.paths.find(({ id }) => id === 'outline')?.corners ?? [];
  const crown = corners.find(({ x, y }) => Math.abs(x - 60) < 1e-6 && Math.abs(y - 65) < 1e-6);
  expect(crown).toBeDefined();
});

test('a mark has a place but no length', () => {
  const mark = finished.paths.find(({ id }) => id === 'mark.1');
  expect(mark?.corners).toEqual([
    { x: 100, y: 20, bulge: 0 },
    { x: 100, y: 20, bulge: 0 },
  ]);
});

test('with several parts on a plate the placement stands in front, and no id is there twice', () => {
  const plan = planCuts([place(bracket), place(bracket, { id: 'p2', at: { x: 150, y: 0 } })], settings).value;
  const ids = read(writeCutSvg(plan, info, { baseName: 'plate' }).text).paths.map(({ id }) => id);
  expect(ids).toContain('p1.outline');
  expect(ids).toContain('p2.outline');
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids).toHaveLength(14);
});

test('a name with markup in it stays a name', () => {
  const name = 'A & B <script>"x"</script>\u0000';
  const svg = read(writeFinishedSvg({ ...bracket, name }, { baseName: 'x' }).text);
  expect(svg.title).toBe('A & B <script>"x"</script>: finished size, no kerf');
  expect(svg.paths).toHaveLength(7);
});

test('the same input gives the same bytes', () => {
  expect(writeFinishedSvg(bracket, { baseName: 'tray-foot' })).toEqual(finishedSvg);
  expect(writeCutSvg(bracketPlan, info, { baseName: 'tray-foot' })).toEqual(cutSvg);
});
