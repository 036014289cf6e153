// SVG drawings brought in: shapes, paths with arcs and Béziers, transforms, copies, page units; areas worked by hand.
import { describe, expect, test } from 'vitest';
import { isCircle, makeContour, nearestOnContour } from '../../parts-library/geometry/index.js';
import type { DrawnShape } from '../../parts-library/model/index.js';
import { areaOfShape, lengthOfShape, readWell, refusalOf, svg } from './drawn.js';

const plate = '<rect x="0" y="0" width="100" height="80"/>';

const extents = (shape: DrawnShape | undefined): readonly number[] => {
  const xs = shape?.vertices.map(({ x }) => x) ?? [];
  const ys = shape?.vertices.map(({ y }) => y) ?? [];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].map(
    (n) => Number(n.toFixed(6)) + 0,
  );
};

/** How far a place lies off a line, mm. */
const offLine = (shape: DrawnShape | undefined, x: number, y: number): number =>
  nearestOnContour({ vertices: shape?.vertices ?? [] }, { x, y }).distance;

const openingAreas = async (content: string): Promise<readonly number[]> =>
  (await readWell(svg(plate + content))).of('opening').map((shape) => -areaOfShape(shape));

describe('shapes', () => {
  test.each([
    ['circle', '<circle cx="50" cy="40" r="10"/>', 100 * Math.PI],
    ['rectangle', '<rect x="20" y="20" width="30" height="10"/>', 300],
    [
      'rectangle with round corners',
      '<rect x="20" y="20" width="30" height="20" rx="5"/>',
      600 - 25 * (4 - Math.PI),
    ],
    ['rectangle that is all corner', '<rect x="20" y="20" width="10" height="10" rx="40"/>', 25 * Math.PI],
    ['polygon', '<polygon points="20,20 50 20, 50 50"/>', 450],
    ['polyline that comes back', '<polyline points="20,20 50,20 50,50 20,20"/>', 450],
    // 2 mm are 2 × 96 / 25.4 user units, whatever these are.
    ['length with its unit', '<circle cx="50" cy="40" r="2mm"/>', Math.PI * ((2 * 96) / 25.4) ** 2],
  ] as const)('a %s', async (_, content, area) => {
    expect(await openingAreas(content)).toEqual([expect.closeTo(area, 9)]);
  });

  test('an ellipse is arcs: area π 30 15 within its tolerance', async () => {
    const [area = 0] = await openingAreas('<ellipse cx="50" cy="40" rx="30" ry="15"/>');
    expect(area).toBeCloseTo(450 * Math.PI, 0);
  });

  test('y points up: what is at the top of the page is at the top of the plate', async () => {
    const { of } = await readWell(svg(`${plate}<circle cx="20" cy="10" r="5"/>`));
    const [hole] = of('opening');
    expect(hole === undefined ? undefined : isCircle(makeContour(hole.vertices))?.centre).toEqual({
      x: 20,
      y: 70,
    });
  });
});

describe('paths', () => {
  test.each([
    ['lines to and fro', 'M20 20h30v10H20z', 300],
    ['relative after a close', 'M20 20h10v10h-10z m30 0 h10 v10 h-10 z', 100],
    // A half circle of radius 10 on a chord of 20.
    ['a half circle', 'M30 40A10 10 0 0 1 50 40Z', 50 * Math.PI],
    ['flags run together', 'M30 40a10 10 0 0120 0Z', 50 * Math.PI],
    // The long way: three quarters of a circle of 10 and the triangle of its chord.
    ['the long way round', 'M40 30 A10 10 0 1 1 30 40 Z', 75 * Math.PI + 50],
    // Radii too small for the chord are made to reach (SVG 1.1, F.6.6).
    ['radii too small', 'M30 40A1 1 0 0 1 50 40Z', 50 * Math.PI],
    // Under a parabola with its control point at height 20 over a chord of 30: 2/3 × 30 × 10.
    ['a quadratic curve', 'M30 40Q45 20 60 40Z', 200],
  ] as const)('%s', async (_, d, area) => {
    const areas = await openingAreas(`<path d="${d}"/>`);
    expect(Math.abs((areas[0] ?? 0) - area)).toBeLessThan(d.includes('Q') ? 0.3 : 1e-6);
  });

  test('a smooth cubic and a smooth quadratic go on as they came', async () => {
    const { of } = await readWell(
      svg(
        `${plate}<g id="etching"><path d="M10 40 C10 30 20 30 20 40 S30 50 30 40 M50 40 Q55 30 60 40 T70 40"/></g>`,
      ),
    );
    const [cubic, quadratic] = of('etch');
    // Half way along each curve, by hand: the second of each pair mirrors the first.
    for (const [x, y] of [
      [15, 47.5],
      [25, 32.5],
    ] as const)
      expect(offLine(cubic, x, y)).toBeLessThan(0.01);
    for (const [x, y] of [
      [55, 45],
      [65, 35],
    ] as const)
      expect(offLine(quadratic, x, y)).toBeLessThan(0.01);
  });

  test('a circle of four Béziers, as drawing programs write one, is a circle', async () => {
    // The usual control length 4/3 tan(π/8) = 0.5522847: 0.03 % off the radius at most.
    const [r, k] = [8, 8 * 0.5522847];
    const d = `M${50 + r} 40C${50 + r} ${40 + k} ${50 + k} ${40 + r} 50 ${40 + r}S${50 - r} ${40 + k} ${50 - r} 40 ${50 - k} ${40 - r} 50 ${40 - r} ${50 + r} ${40 - k} ${50 + r} 40Z`;
    const { of } = await readWell(svg(`${plate}<path d="${d}"/>`));
    const [hole] = of('opening');
    expect(hole === undefined ? 0 : isCircle(makeContour(hole.vertices))?.radius).toBeCloseTo(8, 2);
  });

  test('a path that only dots is a centre mark', async () => {
    const { of } = await readWell(svg(`${plate}<path d="M30 20h0"/>`));
    expect(of('mark').map(({ vertices }) => vertices)).toEqual([[{ x: 30, y: 60, bulge: 0 }]]);
  });

  test('data that are no path are refused with what stands there', async () => {
    expect((await refusalOf(svg(`${plate}<path d="M 10 10 L 20 zwanzig"/>`))).says).toContain(
      'M 10 10 L 20 zwanzig',
    );
  });
});

describe('transforms', () => {
  const bar = '<rect x="0" y="0" width="20" height="4"/>';

  test.each([
    ['translate(10 20)', [10, 56, 30, 60]],
    ['rotate(90 50 40)', [86, 70, 90, 90]],
    ['scale(2)translate(10,10)', [20, 52, 60, 60]],
    ['matrix(0 1 -1 0 50 20)', [46, 40, 50, 60]],
    ['translate(50,20) scale(-1,1)', [30, 56, 50, 60]],
    ['translate(10 20) skewX(45)', [10, 56, 34, 60]],
  ] as const)('%s', async (transform, box) => {
    const wide = svg(`<rect x="0" y="-20" width="100" height="100"/><g transform="${transform}">${bar}</g>`);
    const { of } = await readWell(wide);
    // The plate's lower edge is y = 80 of the page.
    expect(extents(of('opening')[0])).toEqual(box.map((value) => value));
  });

  test('an even one keeps a circle, a skewed one makes it an ellipse of the same area times its measure', async () => {
    const turned = await readWell(
      svg(`${plate}<circle cx="0" cy="0" r="5" transform="translate(50 40) rotate(30) scale(2)"/>`),
    );
    const [hole] = turned.of('opening');
    expect(hole === undefined ? 0 : isCircle(makeContour(hole.vertices))?.radius).toBeCloseTo(10, 9);
    // Shear keeps area: π 25; the arcs keep within 0.01 mm of a line some 35 mm long.
    const [area = 0] = await openingAreas(
      '<circle cx="0" cy="0" r="5" transform="translate(50 40) skewX(45)"/>',
    );
    expect(Math.abs(area - 25 * Math.PI)).toBeLessThan(0.35);
  });

  test('groups within groups move one after the other', async () => {
    const { of } = await readWell(
      svg(
        `${plate}<g transform="translate(50,40)"><g transform="scale(2)"><svg x="5" y="0"><circle r="2"/></svg></g></g>`,
      ),
    );
    const [hole] = of('opening');
    expect(hole === undefined ? undefined : isCircle(makeContour(hole.vertices))).toEqual({
      centre: { x: 60, y: 40 },
      radius: 4,
    });
  });

  test('one that is no transform is refused by name', async () => {
    expect((await refusalOf(svg(`<g transform="shuffle(3)">${plate}</g>`))).says).toContain('shuffle(3)');
  });
});

describe('copies', () => {
  test('a use stands where it is put, in the look of its place', async () => {
    const { of } = await readWell(
      svg(
        `<defs><circle id="bolt" r="4"/><symbol id="pair"><use href="#bolt"/><use href="#bolt" x="20"/></symbol></defs>${plate}` +
          '<use href="#bolt" x="20" y="20"/><use xlink:href="#pair" x="40" y="60" xmlns:xlink="http://www.w3.org/1999/xlink"/>',
      ),
    );
    const places = of('opening').map(({ vertices }) => isCircle(makeContour(vertices))?.centre);
    expect(places).toEqual([
      { x: 20, y: 60 },
      { x: 40, y: 20 },
      { x: 60, y: 20 },
    ]);
  });

  test('one that holds itself is refused', async () => {
    expect(
      (await refusalOf(svg('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'))).says,
    ).toContain('used within itself');
  });

  test('one from another file is left out and told', async () => {
    const { findings } = await readWell(svg(`${plate}<use href="http://example.invalid/a.svg#b"/>`));
    expect(findings.find(({ code }) => code === 'passed-over')?.says).toContain('not in the file');
  });
});

describe('the page', () => {
  test.each([
    ['width="100mm" height="80mm" viewBox="0 0 100 80"', 1, 'mm'],
    ['width="10cm" height="8cm" viewBox="0 0 100 80"', 1, 'cm'],
    ['width="100in" height="80in" viewBox="0 0 100 80"', 25.4, 'in'],
    ['width="72pt" height="72pt" viewBox="0 0 72 72"', 25.4 / 72, 'pt'],
    // Without a view box a user unit is a pixel, a 96th of an inch (CSS Values and Units).
    ['width="200mm" height="200mm"', 25.4 / 96, 'px'],
    ['width="960px" height="960px" viewBox="0 0 960 960"', 25.4 / 96, 'px'],
    // A page twice as wide as its box is tall: the smaller measure holds, unless it may stretch.
    ['width="200mm" height="80mm" viewBox="0 0 100 80"', 1, 'mm'],
  ] as const)('%s', async (attributes, scale, unit) => {
    const { net, read } = await readWell(svg(plate, attributes));
    expect(net).toBeCloseTo(8000 * scale ** 2, 6);
    expect(read.drawing.source.unit).toBe(unit);
  });

  test('one that may stretch does', async () => {
    const { net } = await readWell(
      svg(plate, 'width="200mm" height="80mm" viewBox="0 0 100 80" preserveAspectRatio="none"'),
    );
    expect(net).toBeCloseTo(16_000, 6);
  });

  test.each(['viewBox="0 0 100 80"', 'width="100" height="80"', 'width="100%" viewBox="0 0 100 80"', ''])(
    '"%s" does not say its unit, and is asked',
    async (attributes) => {
      expect((await refusalOf(svg(plate, attributes))).field).toBe('unit');
      expect((await readWell(svg(plate, attributes), { unit: 'mm' })).net).toBeCloseTo(8000, 9);
    },
  );
});

describe('layers and what is not cut', () => {
  test('a class, a label, a colour, a group: whichever stands nearest in that order', async () => {
    const { read } = await readWell(
      svg(
        `<g id="g1" label="plate">${plate}</g><path class="bend it" d="M10 40H90"/>` +
          '<g id="g7" stroke="#f00"><path d="M10 20H90"/></g><g id="etching"><path d="M10 60H90"/></g>',
      ),
      { layers: { '#f00': 'etch' } },
    );
    expect(read.layers.map(({ name, operation }) => `${name} ${operation}`)).toEqual([
      'plate cut',
      'bend score',
      '#f00 etch',
      'etching etch',
    ]);
  });

  test('text, pictures, scripts and what is hidden are left out and told', async () => {
    const { of, findings } = await readWell(
      svg(
        `${plate}<text x="5" y="5">PLATE</text><image href="x.png"/><script>alert(1)</script>` +
          '<foreignObject><p>x</p></foreignObject><g display="none"><circle cx="50" cy="40" r="5"/></g>' +
          '<circle cx="20" cy="40" r="5" style="fill:none;visibility:hidden"/><circle cx="70" cy="40" r="5" onclick="alert(2)"/>',
      ),
    );
    expect(of('opening')).toHaveLength(1);
    const says = findings.find(({ code }) => code === 'passed-over')?.says;
    expect(says).toContain('1 × text, 1 × image, 1 × script, 1 × foreignObject, 2 × hidden');
  });

  test('a line etched is as long as it was drawn', async () => {
    const { of } = await readWell(svg(`${plate}<g id="etch"><path d="M10 10 l30 40"/></g>`));
    expect(of('etch').map(lengthOfShape)).toEqual([expect.closeTo(50, 9)]);
  });
});
