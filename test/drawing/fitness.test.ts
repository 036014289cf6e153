// Nothing on a print runs into anything else; and the test that says so can fail.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  checkFitness,
  drawPrint,
  type Balloon,
  type DisplayItem,
  type DisplayList,
  type Stroke,
  type Text,
} from '../../parts-library/drawing/index.js';
import type { Dimension, Level } from '../../parts-library/model/index.js';
import { finding, lobedAdapter, polar, ringPlate, type Example } from './orchard-parts.js';
import { EXAMPLES, onPaper, onWindow, PAPERS, WINDOWS } from './prints.js';

const listOf = (...items: readonly DisplayItem[]): DisplayList => ({
  width: 100,
  height: 100,
  scale: 1,
  items,
  tabOrder: [],
});

const text = (x: number, y: number, words = '35'): Text => ({
  kind: 'text',
  role: 'dimension',
  at: { x, y },
  anchor: 'middle',
  degrees: 0,
  size: 10,
  face: 'condensed',
  text: words,
  box: [
    { x: x - 10, y: y - 5 },
    { x: x + 10, y: y - 5 },
    { x: x + 10, y: y + 5 },
    { x: x - 10, y: y + 5 },
  ],
});

const stroke = (role: Stroke['role'], path: Stroke['path']): Stroke => ({
  kind: 'stroke',
  role,
  type: 'continuous',
  weight: 'wide',
  path,
});

const balloon = (x: number, y: number, number = 1): Balloon => ({
  kind: 'balloon',
  at: { x, y },
  radius: 8,
  number,
  level: 'note',
  code: 'web',
});

const kindsOf = (...items: readonly DisplayItem[]): readonly string[] =>
  checkFitness(listOf(...items)).map(({ kind }) => kind);

describe('what the fitness test finds', () => {
  const level: Stroke['path'] = [
    ['M', 10, 50],
    ['L', 90, 50],
  ];

  test('a text over a text', () => {
    expect(kindsOf(text(40, 50), text(55, 52))).toEqual(['text-over-text']);
    expect(kindsOf(text(40, 50), text(61, 50))).toEqual([]);
  });

  test('a text over an outline, an opening, a leader, a border', () => {
    expect(kindsOf(text(50, 50), stroke('outline', level))).toEqual(['text-over-edge']);
    expect(kindsOf(text(50, 50), stroke('opening', level))).toEqual(['text-over-edge']);
    expect(kindsOf(text(50, 50), stroke('leader', level))).toEqual(['text-over-line']);
    expect(kindsOf(text(50, 50), stroke('frame', level))).toEqual(['text-over-border']);
    expect(kindsOf(text(50, 44), stroke('outline', level))).toEqual([]);
  });

  test('a text over the arc of an opening, but not one inside it', () => {
    const circle = stroke('opening', [
      ['M', 80, 50],
      ['A', 30, 0, 1, 20, 50],
      ['A', 30, 0, 1, 80, 50],
      ['Z'],
    ]);
    expect(kindsOf(text(50, 50), circle)).toEqual([]);
    expect(kindsOf(text(50, 78), circle)).toEqual(['text-over-edge']);
  });

  test('metal is a tint that a text may stand on', () => {
    expect(kindsOf(text(50, 50), stroke('metal', level))).toEqual([]);
  });

  test('balloons over texts, over balloons, over borders', () => {
    expect(kindsOf(text(40, 50), balloon(56, 50))).toEqual(['text-over-balloon']);
    expect(kindsOf(balloon(40, 50, 1), balloon(55, 50, 2))).toEqual(['balloon-over-balloon']);
    expect(kindsOf(balloon(40, 57), stroke('frame', level))).toEqual(['balloon-over-border']);
  });

  test('anything off the sheet', () => {
    expect(kindsOf(text(95, 50))).toEqual(['off-the-sheet']);
    expect(kindsOf(balloon(4, 50))).toEqual(['off-the-sheet']);
    expect(
      kindsOf(
        stroke('leader', [
          ['M', 50, 50],
          ['L', 50, 101],
        ]),
      ),
    ).toEqual(['off-the-sheet']);
  });
});

/** Every dimension's words and every balloon are there, once, and nothing collides. */
function expectWhole(example: Example, list: DisplayList): void {
  expect(checkFitness(list)).toEqual([]);
  const dimensionIds = list.items.flatMap((item) =>
    item.kind === 'text' && item.dimensionId !== undefined ? [item.dimensionId] : [],
  );
  expect(dimensionIds.toSorted()).toEqual(example.dimensions.map(({ id }) => id).toSorted());
}

describe('prints in a window', () => {
  describe.each(WINDOWS)('$width × $height', (size) => {
    test.each(EXAMPLES)('$name', ({ example }) => {
      const list = drawPrint(onWindow(example, size));
      expectWhole(example, list);
      const anchored = example.findings.filter(
        ({ level, anchor }) => level !== 'pass' && anchor !== undefined,
      );
      expect(list.items.filter(({ kind }) => kind === 'balloon')).toHaveLength(anchored.length);
    });
  });
});

describe('prints on paper', () => {
  describe.each(PAPERS)('$width × $height mm', (size) => {
    test.each(EXAMPLES)('$name', ({ example }) => {
      expectWhole(example, drawPrint(onPaper(example, size)));
    });
  });
});

describe('any set of dimensions', () => {
  const runs = process.env['FISHPLATE_LONG'] === undefined ? 60 : 2000;
  const degrees = fc.integer({ min: 0, max: 359 });
  const words = fc.constantFrom(
    '35',
    '⌀57.35',
    '6 × ⌀8.5, tap M10',
    '102.4 ±0.1',
    'lobe R18',
    't 6',
    'flat 110.0',
    '⌀57.35, slip to weld; cut ⌀56.95, grind',
  );
  const place = fc.tuple(fc.double({ min: 0.1, max: 0.95, noNaN: true }), degrees);

  type Draft = (id: string, order: number, half: number) => Dimension;
  const linear = fc
    .record({ text: words, from: place, to: place, along: fc.constantFrom('x', 'y', 'aligned') })
    .map(({ text, from, to, along }): Draft => (id, order, half) => ({
      id,
      order,
      kind: 'linear',
      along,
      from: polar(from[0] * half, from[1]),
      to: polar(to[0] * half, to[1] + 7),
      text,
      field: id,
    }));
  const round = fc
    .record({ text: words, share: fc.constantFrom(0.38, 0.76, 1) })
    .map(({ text, share }): Draft => (id, order, half) => ({
      id,
      order,
      kind: 'diameter',
      centre: { x: 0, y: 0 },
      radius: share * half,
      text,
      field: id,
    }));
  const leader = fc.record({ text: words, at: place }).map(({ text, at }): Draft => (id, order, half) => ({
    id,
    order,
    kind: 'leader',
    at: polar(at[0] * half, at[1]),
    text,
    field: id,
  }));
  const angle = fc
    .record({ from: degrees, sweep: fc.integer({ min: 8, max: 150 }) })
    .map(({ from, sweep }): Draft => (id, order, half) => ({
      id,
      order,
      kind: 'angle',
      centre: { x: 0, y: 0 },
      radius: 0.76 * half,
      fromDegrees: from,
      toDegrees: from + sweep,
      text: `${sweep}°`,
      field: id,
    }));

  test('finds room for up to twelve dimensions and eight findings', () => {
    fc.assert(
      fc.property(
        fc.record({
          drafts: fc.array(fc.oneof(linear, round, leader, angle), { minLength: 1, maxLength: 12 }),
          findings: fc.array(fc.tuple(fc.constantFrom<Level>('stop', 'caution', 'note'), place), {
            maxLength: 8,
          }),
          outside: fc.integer({ min: 40, max: 600 }),
          holes: fc.integer({ min: 4, max: 12 }),
          lobed: fc.boolean(),
          paper: fc.option(fc.constantFrom(...PAPERS), { nil: undefined, freq: 4 }),
          size: fc.oneof(
            fc.constantFrom(...WINDOWS),
            fc.record({
              width: fc.integer({ min: 300, max: 1600 }),
              height: fc.integer({ min: 300, max: 1000 }),
            }),
          ),
        }),
        ({ drafts, findings, outside, holes, lobed, size, paper }) => {
          const base = lobed ? lobedAdapter(outside, holes) : ringPlate(outside, holes);
          const half = outside / 2;
          const example: Example = {
            ...base,
            dimensions: drafts.map((draft, i) => draft(`dimension ${i}`, i, half)),
            findings: findings.map(([level, at]) => finding(level, 'web', polar(at[0] * half, at[1]), 'Web')),
          };
          expectWhole(
            example,
            drawPrint(paper === undefined ? onWindow(example, size) : onPaper(example, paper)),
          );
        },
      ),
      { seed: 20250314, numRuns: runs },
    );
  }, 600_000);
});
