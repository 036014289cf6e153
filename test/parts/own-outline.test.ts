// An own outline: a part from a drawing, scaled, turned, mirrored, checked like any other; areas worked by hand.
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDrawing } from '../../parts-library/files/index.js';
import { boundsOf } from '../../parts-library/geometry/index.js';
import { isMark, outlineOf, type Drawing, type DrawnShape } from '../../parts-library/model/index.js';
import { startDrawing } from '../../parts-library/parts/own-outline/start-drawing.js';
import { box, circle, dxf, entity, line, polyline, readWell } from '../files/drawn.js';
import { drawAtRandom, familyOf, sizes, takeAnything } from './sound.js';

const { run, part, finding, refused } = familyOf('own-outline');

const tiePlate = readFileSync(new URL('../files/drawings/tie-plate.dxf', import.meta.url), 'utf8');

const drawingOf = async (text: string): Promise<Drawing> => (await readWell(text)).read.drawing;

/** The drawing that stands before another is brought in, as it is stored. */
const start = (): Drawing => startDrawing;

/** The same drawing with one shape changed. */
const withShape = (id: string, change: Partial<DrawnShape>): Drawing => {
  const drawing = start();
  return {
    ...drawing,
    shapes: drawing.shapes.map((shape) => (shape.id === id ? { ...shape, ...change } : shape)),
  };
};

describe('the drawing', () => {
  test('that stands at first is what reading its file gives', async () => {
    const { value } = await readDrawing(tiePlate, { name: 'tie-plate.dxf' });
    expect(value?.drawing).toEqual(start());
  });

  test('becomes a part of its area: 160 × 90 less corners, holes, window and slot', () => {
    // 14400 − (4 − π) 12² − 4 π 4.5² − π 25² − (25 × 9 + π 4.5²)
    const area = 14400 - (4 - Math.PI) * 144 - 5 * Math.PI * 4.5 ** 2 - Math.PI * 625 - 225;
    expect(run().value?.area).toBeCloseTo(area, 9);
    expect(part().features.map(({ id, purpose }) => `${id} ${purpose}`)).toEqual([
      'contour.1 outline',
      'circle.1 opening',
      'circle.2 opening',
      'circle.3 opening',
      'circle.4 opening',
      'circle.5 opening',
      'contour.2 opening',
      'line.1 etch',
    ]);
  });

  test('brought in is stored and read back the same, and again after JSON', async () => {
    const drawing = await drawingOf(dxf([box('0', 0, 0, 100, 80), circle('0', 50, 40, 10)]));
    const first = run({ drawing });
    const again = run(JSON.parse(JSON.stringify(first.value?.parameters)));
    expect(again.value?.area).toBeCloseTo(8000 - 100 * Math.PI, 9);
    expect(again.value?.parameters).toEqual(first.value?.parameters);
  });

  test('says where it came from', () => {
    expect(run().value?.derived.find(({ id }) => id === 'source')?.text).toBe(
      'tie-plate.dxf, in mm, 160 × 90 mm: 6 openings, 1 line, 0 marks; a593d348',
    );
  });
});

describe('size and place', () => {
  test('a width scales it evenly, holes too, and says so', () => {
    const wide = part({ width: 320 });
    expect(boundsOf(outlineOf(wide).contour)).toEqual({ minX: 0, minY: 0, maxX: 320, maxY: 180 });
    expect(wide.features.find(({ id }) => id === 'circle.1')).toMatchObject({ hole: { size: 18 } });
    expect(finding({ width: 320 }, 'drawing-scaled')).toMatchObject({ level: 'caution', field: 'width' });
    expect(run({ width: 320 }).value?.area).toBeCloseTo(4 * (run().value?.area ?? 0), 6);
  });

  test('a height does so too, as the part lies', () => {
    expect(boundsOf(outlineOf(part({ turn: 90, height: 80 })).contour)).toMatchObject({ maxX: 45, maxY: 80 });
  });

  test('width and height that do not go together are refused with what would', () => {
    expect(refused({ width: 320, height: 100 })).toEqual({
      drawn: false,
      field: 'height',
      says: expect.stringContaining('At 320 mm wide the drawing is 180 mm high, not 100'),
    });
    expect(refused({ width: 320, height: 180 }).drawn).toBe(true);
  });

  test('inches taken for millimetres are made right by 25.4', () => {
    expect(boundsOf(outlineOf(part({ scale: 25.4 })).contour).maxX).toBeCloseTo(160 * 25.4, 9);
  });

  test('mirrored, what was left is right; turned by a right angle, what was right is up', () => {
    const at = (parameters: Readonly<Record<string, unknown>>) => {
      const window = part(parameters).features.find(({ id }) => id === 'circle.5');
      if (window === undefined || !('contour' in window)) throw new Error('No window.');
      const { minX, minY, maxX, maxY } = boundsOf(window.contour);
      return [(minX + maxX) / 2, (minY + maxY) / 2].map((n) => Number(n.toFixed(9)));
    };
    expect(at({})).toEqual([62, 45]);
    expect(at({ mirrored: 'yes' })).toEqual([98, 45]);
    expect(at({ turn: 90 })).toEqual([45, 62]);
    expect(at({ mirrored: 'yes', turn: 90 })).toEqual([45, 98]);
  });

  test('one too large or too small for any plate is refused', () => {
    expect(refused({ scale: 100 })).toMatchObject({ drawn: false, field: 'scale' });
    expect(refused({ width: 5, drawing: { ...start() } }).drawn).toBe(true);
  });

  test('a width far from the drawing is refused by its name', async () => {
    const drawing = await drawingOf(dxf([box('0', 0, 0, 10, 5)]));
    expect(refused({ drawing, width: 2000 })).toMatchObject({ drawn: false, field: 'width' });
    expect(refused({ drawing, height: 2000 })).toMatchObject({ drawn: false, field: 'height' });
  });
});

describe('operations', () => {
  test('holes up to a size become marks to drill; the others stay', () => {
    const drilled = part({ markUpTo: 9 });
    expect(drilled.features.filter(isMark).map(({ id, hole }) => [id, hole?.size])).toEqual([
      ['circle.1', 9],
      ['circle.2', 9],
      ['circle.3', 9],
      ['circle.4', 9],
    ]);
    expect(run({ markUpTo: 9 }).value?.steps.map(({ says }) => says)).toContain(
      'Punch 4 marks, pilot 4 mm, drill 9 mm.',
    );
  });

  test('a hole too small for the torch offers to be drilled, and the offer mends it', async () => {
    const drawing = await drawingOf(dxf([box('0', 0, 0, 100, 80), circle('0', 50, 40, 2)]));
    const small = finding({ drawing }, 'small-hole');
    // 4 mm in 6 mm plate is under one thickness: a stop (contract cutters' guideline, as for any part).
    expect(small.level).toBe('stop');
    const [change] = small.remedies?.[0]?.change ?? [];
    expect(change).toEqual({ op: 'add', path: '/markUpTo', value: '4 mm' });
    const mended = run({ drawing, markUpTo: '4 mm' });
    expect(mended.findings.filter(({ level }) => level === 'stop')).toEqual([]);
  });

  test('a scored line is folded, an etched contour comes back to its start', async () => {
    const drawing = await drawingOf(
      dxf([
        box('0', 0, 0, 100, 80),
        line('bend', 0, 40, 100, 40),
        circle('etch', 50, 20, 6),
        entity('POINT', 'marks', [10, 20], [20, 20]),
      ]),
    );
    const { features } = part({ drawing });
    expect(features.map(({ purpose }) => purpose)).toEqual(['outline', 'etch', 'score', 'mark']);
    const etched = features.find(({ purpose }) => purpose === 'etch');
    const vertices = etched !== undefined && 'path' in etched ? etched.path.vertices : [];
    expect(vertices[0]).toMatchObject({ x: vertices.at(-1)?.x, y: vertices.at(-1)?.y });
    const steps = run({ drawing }).value?.steps.map(({ kind }) => kind);
    expect(steps).toEqual(expect.arrayContaining(['bend', 'punch']));
  });

  test('what is ignored is seen beside the part and not made', () => {
    const value = run({ drawing: withShape('circle.5', { operation: 'ignore' }) }).value;
    expect(value?.part.features.some(({ id }) => id === 'circle.5')).toBe(false);
    expect(value?.ghosts).toHaveLength(1);
  });

  test.each([
    ['no outline', withShape('contour.1', { operation: 'ignore' }), /No shape of the drawing is the outline/],
    ['two outlines', withShape('circle.5', { operation: 'outline' }), /2 shapes are called the outline/],
    [
      'an open outline',
      withShape('contour.1', { operation: 'outline', closed: false }),
      /contour\.1 is not closed/,
    ],
    [
      'an open opening',
      withShape('line.1', { operation: 'opening' }),
      /line\.1 is not closed, so it can be no opening/,
    ],
    [
      'a mark that is no circle',
      withShape('contour.2', { operation: 'mark' }),
      /neither a circle nor a point/,
    ],
    [
      'a point to etch',
      withShape('line.1', { operation: 'etch', vertices: [{ x: 10, y: 10, bulge: 0 }] }),
      /a point, which is no line to etch/,
    ],
    [
      'an opening off the plate',
      withShape('circle.5', {
        vertices: [
          { x: 200, y: 45, bulge: -1 },
          { x: 150, y: 45, bulge: -1 },
        ],
      }),
      /runs out of the plate/,
    ],
  ] as const)('%s is refused, naming the shape', (_, drawing, says) => {
    const stop = refused({ drawing });
    expect([stop.drawn, stop.field]).toEqual([false, 'drawing']);
    expect(stop.says).toMatch(says);
  });
});

describe('what is no drawing', () => {
  const bow = withShape('contour.2', {
    vertices: [
      { x: 100, y: 40, bulge: 0 },
      { x: 130, y: 50, bulge: 0 },
      { x: 130, y: 40, bulge: 0 },
      { x: 100, y: 50, bulge: 0 },
    ],
  });

  test.each([
    ['a word', 'bracket.dxf', /accepted is a drawing as bringing in/],
    ['nothing in it', {}, /at source/],
    ['a contour that crosses itself', bow, /contour\.2 is no contour.*\(115\.000, 45\.000\)/],
    [
      'two shapes of one name',
      { ...start(), shapes: [...start().shapes, ...start().shapes] },
      /two of its shapes are called contour\.1/,
    ],
    [
      'a number that is none',
      withShape('line.1', { vertices: [{ x: Number.NaN, y: 0, bulge: 0 }] }),
      /at shapes\.7\.vertices\.0\.x/,
    ],
    [
      'a place beyond reach',
      withShape('line.1', { vertices: [{ x: 1e6, y: 0, bulge: 0 }] }),
      /at shapes\.7\.vertices\.0\.x/,
    ],
    ['a bulge beyond a half circle', withShape('line.1', { vertices: [{ x: 1, y: 0, bulge: 3 }] }), /bulge/],
    [
      'an operation that there is not',
      { ...start(), shapes: start().shapes.map((shape) => ({ ...shape, operation: 'weld' })) },
      /operation/,
    ],
    [
      'more vertices than a part holds',
      withShape('line.1', {
        vertices: Array.from({ length: 2999 }, (_, i) => ({ x: i / 100, y: 5, bulge: 0 })),
      }),
      /vertices; accepted are up to 3000/,
    ],
  ] as const)('%s is refused with its place', (_, drawing, says) => {
    const { problems, value } = run({ drawing });
    expect(value).toBeUndefined();
    expect(problems.map(({ field }) => field)).toEqual(['drawing']);
    expect(problems[0]?.says).toMatch(says);
  });
});

describe('checks', () => {
  test('what reading mended is told again, what it left out is a stop', async () => {
    const crossed = polyline('0', [
      [60, 20],
      [80, 60],
      [80, 20],
      [60, 60],
    ]);
    const drawing = await drawingOf(
      dxf([box('0', 0, 0, 100, 80), circle('0', 30, 40, 8), circle('0', 30, 40, 8), crossed]),
    );
    expect(finding({ drawing }, 'drawing-fault')).toMatchObject({ level: 'stop', field: 'drawing' });
    expect(finding({ drawing }, 'drawing-note')).toMatchObject({
      level: 'note',
      title: '1 doubled line left out',
    });
  });

  test('a thin web, a hole near the edge, a detail finer than the kerf', async () => {
    const drawing = await drawingOf(
      dxf([
        polyline('0', [
          [0, 0],
          [100, 0],
          [100, 39.5],
          [99.5, 40],
          [100, 40.5],
          [100, 80],
          [0, 80],
        ]),
        circle('0', 10, 40, 6),
        circle('0', 50, 40, 10),
        circle('0', 73, 40, 10),
      ]),
    );
    // Between the two windows 73 − 50 − 20 = 3 mm stay, in 6 mm plate.
    expect(finding({ drawing }, 'web')).toMatchObject({ level: 'caution', value: { amount: 3 } });
    // Centre 10 from the edge for a hole of 12: 1.5 × 12 = 18 wanted (common practice below the AISC table's sizes).
    expect(finding({ drawing }, 'edge-distance')).toMatchObject({
      level: 'caution',
      value: { amount: 10 },
      limit: { amount: 18 },
    });
    expect(finding({ drawing }, 'detail-below-kerf')).toMatchObject({ level: 'note', value: { amount: 2 } });
  });

  test('a part that somebody hangs on gets its caution', () => {
    expect(finding({ use: 'brake' }, 'use-brake').level).toBe('caution');
    expect(run().findings.some(({ code }) => code.startsWith('use-'))).toBe(false);
  });

  test('a label that finds no room is left out and told', () => {
    expect(finding({ label: 'MOTOR TIE PLATE OF THE CART', labelHeight: 40 }, 'label-room').level).toBe(
      'caution',
    );
    expect(part({ label: 'CART 4' }).features.some(({ name }) => name === 'label')).toBe(true);
  });
});

describe('random drawings', () => {
  /** A plate of any size with holes of any size on a grid: some meet, some reach out. */
  const drawings = fc
    .record({
      width: sizes(40, 300),
      height: sizes(40, 200),
      radius: sizes(1, 8),
      columns: fc.integer({ min: 1, max: 4 }),
      rows: fc.integer({ min: 1, max: 3 }),
    })
    .map(({ width, height, radius, columns, rows }): Drawing => {
      const holes = Array.from({ length: columns * rows }, (_, i): DrawnShape => {
        const x = (width * ((i % columns) + 1)) / (columns + 1);
        const y = (height * (Math.floor(i / columns) + 1)) / (rows + 1);
        return {
          id: `circle.${i + 1}`,
          layer: '0',
          operation: 'opening',
          closed: true,
          vertices: [
            { x: x + radius, y, bulge: 1 },
            { x: x - radius, y, bulge: 1 },
          ],
        };
      });
      const corners = [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 }));
      const outline: DrawnShape = {
        id: 'contour.1',
        layer: '0',
        operation: 'outline',
        closed: true,
        vertices: corners,
      };
      return { ...start(), shapes: [outline, ...holes] };
    });

  test('are sound parts, or say why not', () => {
    const share = drawAtRandom(
      'own-outline',
      fc.record(
        {
          drawing: drawings,
          width: sizes(40, 400),
          turn: fc.integer({ min: -180, max: 180 }),
          mirrored: fc.constantFrom('yes', 'no'),
          markUpTo: sizes(2, 20),
          label: fc.constantFrom('CART', 'H2'),
          thickness: fc.constantFrom(3, 6, 10),
        },
        { requiredKeys: ['drawing'] },
      ),
    );
    expect(share).toBeGreaterThan(0.8);
  });

  test('anything in any field is answered', () => {
    takeAnything('own-outline', [
      'drawing',
      'width',
      'height',
      'scale',
      'turn',
      'mirrored',
      'markUpTo',
      'label',
    ]);
  });
});
