// What the reader mends and sorts: gaps, doubled lines, corners that touch, circles in disguise, several parts.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isCircle, makeContour } from '../../parts-library/geometry/index.js';
import { writeFinishedDxf, writeFinishedSvg } from '../../parts-library/files/index.js';
import { bracket, areaByHand } from './pieces.js';
import { areaOfShape, box, circle, dxf, entity, line, polyline, readWell, refusalOf } from './drawn.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 1000 : 60;

const frame = (gap: number): string =>
  dxf([
    line('0', 0, 0, 100, 0),
    line('0', 100, gap, 100, 80),
    line('0', 100, 80, 0, 80),
    line('0', 0, 80, 0, 0),
  ]);

const titleOf = (findings: readonly { code: string; title: string }[], code: string): string =>
  findings.find((one) => one.code === code)?.title ?? '';

describe('gaps', () => {
  test('a gap within the tolerance is closed half way and told', async () => {
    const { net, findings } = await readWell(frame(0.04));
    // The corner moves to (100, 0.02): a triangle 100 x 0.02 / 2 = 1 mm² less.
    expect(net).toBeCloseTo(7999, 6);
    expect(titleOf(findings, 'gaps-closed')).toBe('1 gap closed, the widest 0.04 mm');
  });

  test('a wider one leaves no outline, and says how wide it is', async () => {
    const { says, field } = await refusalOf(frame(0.3));
    expect(field).toBe('gap');
    expect(says).toContain('0.3 mm, and the gap tolerance is 0.05 mm');
    expect((await readWell(frame(0.3), { gap: 0.4 })).net).toBeCloseTo(8000 - 7.5, 6);
  });

  test('a line that closes nothing is kept to be seen, told, and made when asked for', async () => {
    const drawing = dxf([box('0', 0, 0, 100, 80), line('0', 10, 10, 60, 40)]);
    const { of, codes } = await readWell(drawing);
    expect(of('ignore').map(({ id }) => id)).toEqual(['line.1']);
    expect(codes).toContain('open-lines');
    expect((await readWell(drawing, { lines: 'score' })).of('score')).toHaveLength(1);
  });

  test('lines of two layers are not joined', async () => {
    const half = dxf([
      polyline(
        'one',
        [
          [0, 0],
          [50, 0],
          [50, 50],
        ],
        false,
      ),
      polyline(
        'two',
        [
          [50, 50],
          [0, 50],
          [0, 0],
        ],
        false,
      ),
    ]);
    expect((await refusalOf(half)).says).toContain('no closed outline');
  });
});

describe('doubled lines', () => {
  test('a contour drawn twice, the other way round and from another corner, is one', async () => {
    const again = polyline('0', [
      [100, 80],
      [100, 0],
      [0, 0],
      [0, 80],
    ]);
    const { of, net, findings } = await readWell(
      dxf([box('0', 0, 0, 100, 80), again, circle('0', 50, 40, 5), circle('0', 50, 40, 5)]),
    );
    expect(net).toBeCloseTo(8000 - 25 * Math.PI, 9);
    expect(of('opening')).toHaveLength(1);
    expect(titleOf(findings, 'doubled-lines')).toBe('2 doubled lines left out');
  });

  test('a line over another, and one that goes on beyond it, leave the outline whole', async () => {
    const { net, findings } = await readWell(
      dxf([
        line('0', 0, 0, 100, 0),
        line('0', 100, 0, 0, 0),
        line('0', 20, 0, 70, 0),
        line('0', 100, 0, 100, 50),
        line('0', 100, 30, 100, 80),
        line('0', 100, 80, 0, 80),
        line('0', 0, 80, 0, 0),
      ]),
    );
    expect(net).toBeCloseTo(8000, 9);
    expect(titleOf(findings, 'doubled-lines')).toBe('3 doubled lines left out');
  });

  test('two arcs that share a stretch of one circle make the circle', async () => {
    const arc = (from: number, to: number): string =>
      entity('ARC', '0', [10, 50], [20, 40], [40, 10], [50, from], [51, to]);
    const { of } = await readWell(dxf([box('0', 0, 0, 100, 80), arc(0, 200), arc(150, 360)]));
    expect(of('opening').map((shape) => isCircle(makeContour(shape.vertices))?.radius)).toEqual([
      expect.closeTo(10, 6),
    ]);
  });

  test('the same line on two layers stays on both', async () => {
    const { of } = await readWell(
      dxf([box('cut', 0, 0, 100, 80), line('bend', 0, 40, 100, 40), line('etch', 0, 40, 100, 40)]),
    );
    expect([of('score').length, of('etch').length]).toEqual([1, 1]);
  });

  test('two parts that share an edge keep it both', async () => {
    const { read, net } = await readWell(dxf([box('0', 0, 0, 50, 50), box('0', 50, 0, 60, 50)]));
    expect(read.parts.map(({ width, height }) => [width, height])).toEqual([
      [60, 50],
      [50, 50],
    ]);
    expect(net).toBeCloseTo(3000, 9);
  });
});

describe('contours', () => {
  test('two squares that touch at a corner come apart there', async () => {
    const eight = dxf([
      box('0', -10, -10, 120, 120),
      polyline('0', [
        [20, 20],
        [50, 20],
        [50, 80],
        [80, 80],
        [80, 50],
        [20, 50],
      ]),
      ...[
        [20, 20, 40, 20],
        [40, 20, 40, 40],
        [40, 40, 20, 40],
        [20, 40, 20, 20],
      ].map(([x = 0, y = 0, u = 0, v = 0]) => line('corner', x + 60, y, u + 60, v)),
    ]);
    // The second crosses itself at (50, 50), no corner of it: that is a fault, told with its place.
    const { read, findings } = await readWell(eight);
    expect(read.drawing.faults).toHaveLength(1);
    expect(findings.find(({ code }) => code === 'unsound-contour')?.says).toContain('(60.000, 60.000)');

    const touching = await readWell(
      dxf([
        box('0', 0, 0, 100, 100),
        polyline('0', [
          [20, 20],
          [50, 20],
          [50, 50],
          [80, 50],
          [80, 80],
          [50, 80],
          [50, 50],
          [20, 50],
        ]),
      ]),
    );
    expect(touching.of('opening').map(areaOfShape)).toEqual([
      expect.closeTo(-900, 9),
      expect.closeTo(-900, 9),
    ]);
    expect(touching.codes).toContain('corners-parted');
  });

  test('a circle drawn as 72 chords is a circle of the radius of its corners', async () => {
    const corners = Array.from({ length: 72 }, (_, i): [number, number] => [
      50 + 6 * Math.cos((i * Math.PI) / 36),
      40 + 6 * Math.sin((i * Math.PI) / 36),
    ]);
    const { of, codes } = await readWell(dxf([box('0', 0, 0, 100, 80), polyline('0', corners)]));
    expect(of('opening').map((shape) => isCircle(makeContour(shape.vertices))?.radius)).toEqual([
      expect.closeTo(6, 9),
    ]);
    expect(codes).toContain('chords-to-circles');
  });

  test('a nut’s pocket of six sides stays one', async () => {
    const hexagon = Array.from({ length: 6 }, (_, i): [number, number] => [
      50 + 10 * Math.cos((i * Math.PI) / 3),
      40 + 10 * Math.sin((i * Math.PI) / 3),
    ]);
    const { of } = await readWell(dxf([box('0', 0, 0, 100, 80), polyline('0', hexagon)]));
    // 3√3 / 2 × 10² = 259.81
    expect(of('opening').map(areaOfShape)).toEqual([expect.closeTo(-259.8076, 4)]);
  });

  test('corners on a straight edge are taken out', async () => {
    const { of } = await readWell(
      dxf([
        polyline('0', [
          [0, 0],
          [30, 0],
          [60, 0],
          [100, 0],
          [100, 80],
          [0, 80],
        ]),
      ]),
    );
    expect(of('outline')[0]?.vertices).toHaveLength(4);
  });
});

describe('nesting', () => {
  const sheet = dxf([
    box('0', 0, 0, 100, 80),
    circle('0', 20, 20, 5),
    circle('0', 60, 40, 20),
    box('0', 55, 35, 10, 10),
    box('0', 200, 0, 50, 40),
    circle('0', 225, 20, 8),
    box('frame', -20, -20, 300, 200),
  ]);

  test('the largest outline is the part, what lies in its openings falls out', async () => {
    const { net, of, codes, read } = await readWell(sheet);
    expect(net).toBeCloseTo(8000 - 425 * Math.PI, 9);
    expect(of('opening')).toHaveLength(2);
    expect(codes).toEqual(expect.arrayContaining(['several-outlines', 'islands', 'outside-part']));
    expect(read.parts).toEqual([
      { number: 1, width: 100, height: 80, openings: 2 },
      { number: 2, width: 50, height: 40, openings: 1 },
    ]);
  });

  test('another part by its number, its lower left corner at the origin', async () => {
    const { net, of } = await readWell(sheet, { part: 2 });
    expect(net).toBeCloseTo(2000 - 64 * Math.PI, 9);
    expect(Math.min(...(of('outline')[0]?.vertices ?? []).map(({ x }) => x))).toBe(0);
  });

  test('a part that there is not is named', async () => {
    expect(await refusalOf(sheet, { part: 3 })).toEqual({
      says: 'There is no part 3; the drawing has 2 outlines.',
      field: 'part',
    });
  });
});

describe('this house’s own files', () => {
  const bracketArea = bracket.features.reduce(
    (sum, feature) => sum + ('contour' in feature ? areaByHand(feature.contour) : 0),
    0,
  );

  test.each([
    ['R12', 'mm'],
    ['R12', 'in'],
    ['R2000', 'mm'],
    ['R2000', 'in'],
  ] as const)('DXF %s in %s comes back as it went out', async (version, unit) => {
    const { net, of } = await readWell(writeFinishedDxf(bracket, { baseName: 'foot', version, unit }).text);
    expect(net).toBeCloseTo(bracketArea, 3);
    expect([of('opening').length, of('score').length, of('etch').length, of('mark').length]).toEqual([
      3, 1, 1, 1,
    ]);
  });

  test('SVG comes back as it went out', async () => {
    const { net, of } = await readWell(writeFinishedSvg(bracket, { baseName: 'foot' }).text);
    expect(net).toBeCloseTo(bracketArea, 3);
    expect([of('opening').length, of('score').length, of('etch').length, of('mark').length]).toEqual([
      3, 1, 1, 1,
    ]);
  });

  test('a drawing chopped into its segments, shuffled and turned round, is the same part', async () => {
    // The outline of the bracket in pieces: whatever their order and direction, they close to the same area.
    const outline = bracket.features[0];
    const vertices = outline !== undefined && 'contour' in outline ? outline.contour : [];
    const pieces = vertices.map((vertex, i) => ({
      from: vertex,
      to: vertices[(i + 1) % vertices.length] ?? vertex,
    }));
    await fc.assert(
      fc.asyncProperty(
        fc.shuffledSubarray(pieces, { minLength: pieces.length }),
        fc.array(fc.boolean(), { minLength: pieces.length, maxLength: pieces.length }),
        async (shuffled, flips) => {
          const text = dxf(
            shuffled.map(({ from, to }, i) =>
              flips[i] === true
                ? polyline(
                    '0',
                    [
                      [to.x, to.y, -from.bulge],
                      [from.x, from.y],
                    ],
                    false,
                  )
                : polyline(
                    '0',
                    [
                      [from.x, from.y, from.bulge],
                      [to.x, to.y],
                    ],
                    false,
                  ),
            ),
          );
          const { net } = await readWell(text);
          // 120 x 80, corners of 10: −(400 − 100π), a half circle of 15 out of the top: −112.5π.
          expect(net).toBeCloseTo(9600 - (400 - 100 * Math.PI) - 112.5 * Math.PI, 6);
        },
      ),
      { numRuns: runs, seed: 20261125 },
    );
  });
});
