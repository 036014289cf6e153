// DXF drawings brought in: each kind of entity, blocks, mirrored planes, units; areas worked by hand.
import { describe, expect, test } from 'vitest';
import { isCircle, makeContour } from '../../parts-library/geometry/index.js';
import {
  areaOfShape,
  block,
  box,
  circle,
  dxf,
  entity,
  insert,
  lengthOfShape,
  line,
  polyline,
  readWell,
  refusalOf,
} from './drawn.js';

const square = box('0', 0, 0, 100, 80);

/** Centre and radius of a shape that is a circle. */
function round(shape: { readonly vertices: Parameters<typeof makeContour>[0] } | undefined) {
  const found = shape === undefined ? undefined : isCircle(makeContour(shape.vertices));
  if (found === undefined) throw new Error('That is no circle.');
  return found;
}

describe('entities', () => {
  test('a plate of lines, arcs and circles: area to the last digit', async () => {
    // 100 x 80 with one corner of radius 10, a hole of 12 across: 8000 - (100 - 25π) - 36π.
    const { net, of } = await readWell(
      dxf([
        line('0', 10, 0, 100, 0),
        line('0', 100, 80, 100, 0),
        line('0', 100, 80, 0, 80),
        line('0', 0, 80, 0, 10),
        entity('ARC', '0', [10, 10], [20, 10], [40, 10], [50, 180], [51, 270]),
        circle('0', 50, 40, 6),
      ]),
    );
    expect(net).toBeCloseTo(8000 - (100 - 25 * Math.PI) - 36 * Math.PI, 9);
    expect(of('outline')[0]?.vertices).toHaveLength(5);
  });

  test('polylines of both kinds keep their bulges', async () => {
    // A slot 40 between centres, 10 wide: 400 + 25π.
    const corners: readonly (readonly [number, number, number])[] = [
      [20, 20, 0],
      [60, 20, 1],
      [60, 30, 0],
      [20, 30, 1],
    ];
    const old = [
      entity('POLYLINE', '0', [66, 1], [70, 1]),
      ...corners.map(([x, y, bulge]) => entity('VERTEX', '0', [10, x], [20, y], [42, bulge])),
      entity('SEQEND', '0'),
    ].join('\n');
    for (const slot of [polyline('0', corners), old]) {
      const { of } = await readWell(dxf([square, slot]));
      expect(of('opening').map(areaOfShape)).toEqual([expect.closeTo(-(400 + 25 * Math.PI), 9)]);
    }
  });

  test('a bulge over a half circle is the long way round', async () => {
    // Chord 10, bulge 2: sweep 4 atan 2 = 253.74°, radius 10 (1 + 4) / 8 = 6.25; length 6.25 x 4 atan 2.
    const { of } = await readWell(
      dxf([
        square,
        polyline(
          'slits',
          [
            [40, 40, 2],
            [50, 40],
          ],
          false,
        ),
      ]),
      { layers: { slits: 'etch' } },
    );
    expect(
      lengthOfShape(of('etch')[0] ?? { id: '', layer: '', operation: 'etch', closed: false, vertices: [] }),
    ).toBeCloseTo(6.25 * 4 * Math.atan(2), 9);
  });

  test('corners behind a group that few programs write are read too', async () => {
    const numbered = polyline('0', [
      [0, 0],
      [50, 0],
      [50, 30],
      [0, 30],
    ]).replaceAll('\n20\n', '\n91\n7\n20\n');
    // The vertex number (91) of newer files stands between x and y here, or behind each corner.
    expect((await readWell(dxf([numbered]))).net).toBeCloseTo(1500, 9);
  });

  test('an ellipse 60 x 30 becomes arcs within the tolerance: area π 30 15', async () => {
    const ellipse = entity(
      'ELLIPSE',
      '0',
      [10, 50],
      [20, 40],
      [11, 30],
      [21, 0],
      [40, 0.5],
      [41, 0],
      [42, 2 * Math.PI],
    );
    const { of, findings } = await readWell(dxf([square, ellipse]), { arcTolerance: 0.005 });
    const [opening] = of('opening');
    // The area between is at most length times tolerance: 145 mm x 0.005.
    expect(
      -areaOfShape(opening ?? { id: '', layer: '', operation: 'opening', closed: true, vertices: [] }),
    ).toBeCloseTo(450 * Math.PI, 0);
    const told = findings.find(({ code }) => code === 'arcs-fitted')?.value?.amount ?? 1;
    expect(told).toBeLessThanOrEqual(0.005);
  });

  test('an ellipse whose axes are alike is a circle', async () => {
    const even = entity(
      'ELLIPSE',
      '0',
      [10, 50],
      [20, 40],
      [11, 0],
      [21, 7],
      [40, 1],
      [41, 0],
      [42, 2 * Math.PI],
    );
    const { of } = await readWell(dxf([square, even]));
    expect(round(of('opening')[0]).radius).toBeCloseTo(7, 9);
  });

  test('a rational spline of second degree with weights √½ is a circle', async () => {
    // The circle of nine points (Piegl and Tiller, The NURBS Book, fig. 7.16): radius 10 about (50, 40).
    const w = Math.SQRT1_2;
    const points = [
      [1, 0, 1],
      [1, 1, w],
      [0, 1, 1],
      [-1, 1, w],
      [-1, 0, 1],
      [-1, -1, w],
      [0, -1, 1],
      [1, -1, w],
      [1, 0, 1],
    ] as const;
    const nurbs = entity(
      'SPLINE',
      '0',
      [70, 4],
      [71, 2],
      ...[0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4].map((knot) => [40, knot] as const),
      ...points.map(([, , weight]) => [41, weight] as const),
      ...points.flatMap(([x, y]) => [[10, 50 + 10 * x] as const, [20, 40 + 10 * y] as const]),
    );
    const { of } = await readWell(dxf([square, nurbs]));
    const { centre, radius } = round(of('opening')[0]);
    expect([centre.x, centre.y, radius]).toEqual([
      expect.closeTo(50, 4),
      expect.closeTo(40, 4),
      expect.closeTo(10, 4),
    ]);
  });

  test('a spline by its fit points alone runs through them, and says that it is assumed', async () => {
    const through = entity(
      'SPLINE',
      'etching',
      [70, 8],
      [71, 3],
      ...[
        [20, 20],
        [40, 50],
        [60, 20],
        [80, 50],
      ].flatMap(([x = 0, y = 0]) => [[11, x] as const, [21, y] as const]),
    );
    const { of, codes } = await readWell(dxf([square, through]));
    const [etched] = of('etch');
    for (const [x, y] of [
      [40, 50],
      [60, 20],
    ] as const)
      expect(etched?.vertices.some((v) => Math.hypot(v.x - x, v.y - y) < 0.001)).toBe(true);
    expect(codes).toContain('drawing-note');
  });

  test('a point is a centre mark', async () => {
    const { of } = await readWell(dxf([square, entity('POINT', '0', [10, 30], [20, 20])]));
    expect(of('mark')[0]?.vertices).toEqual([{ x: 30, y: 20, bulge: 0 }]);
  });
});

describe('blocks', () => {
  const bolt = block('bolt', [0, 0], circle('0', 0, 0, 5));

  test('scaled, turned and moved about their base', async () => {
    const slot = block(
      'slot',
      [10, 0],
      polyline('0', [
        [10, -2],
        [30, -2],
        [30, 2],
        [10, 2],
      ]),
    );
    const { of } = await readWell(
      dxf([square, insert('slot', [10, 50], [20, 20], [41, 2], [42, 2], [50, 90])], {
        units: 4,
        blocks: [slot],
      }),
    );
    const [opening] = of('opening');
    // 20 x 4 doubled is 40 x 8, upright from (50, 20) to (50, 60).
    const xs = opening?.vertices.map(({ x }) => x) ?? [];
    const ys = opening?.vertices.map(({ y }) => y) ?? [];
    expect(
      [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)].map((n) => Number(n.toFixed(9))),
    ).toEqual([46, 54, 20, 60]);
  });

  test('in rows and columns, along the turned axes', async () => {
    const grid = insert('bolt', [10, 20], [20, 20], [70, 3], [71, 2], [44, 25], [45, 30]);
    const { of } = await readWell(dxf([square, grid], { units: 4, blocks: [bolt] }));
    const places = of('opening').map((shape) => round(shape).centre);
    expect(places.map(({ x, y }) => `${x.toFixed(0)},${y.toFixed(0)}`).toSorted()).toEqual([
      '20,20',
      '20,50',
      '45,20',
      '45,50',
      '70,20',
      '70,50',
    ]);
  });

  test('within blocks, each with its own layer or that of its place', async () => {
    const outer = block('outer', [0, 0], insert('bolt', [10, 10], [20, 0]), circle('drill', 0, 20, 3));
    const placed = insert('outer', [10, 30], [20, 30]).replace('8\n0', '8\nplaced');
    const { of, read } = await readWell(dxf([square, placed], { units: 4, blocks: [bolt, outer] }));
    expect(round(of('opening')[0]).centre).toEqual({ x: 40, y: 30 });
    expect(read.layers.map(({ name, operation }) => [name, operation])).toEqual(
      expect.arrayContaining([
        ['placed', 'cut'],
        ['drill', 'mark'],
      ]),
    );
    expect(of('mark')[0]?.layer).toBe('drill');
  });

  test('stretched unevenly, a circle is an ellipse: area π 10 5', async () => {
    const { of } = await readWell(
      dxf([square, insert('bolt', [10, 50], [20, 40], [41, 2], [42, 1])], { units: 4, blocks: [bolt] }),
    );
    const [opening] = of('opening');
    expect(opening === undefined ? 0 : -areaOfShape(opening)).toBeCloseTo(50 * Math.PI, 0);
  });
});

describe('planes seen from behind', () => {
  test('circles, arcs and polylines of extrusion (0, 0, -1) are mirrored in x', async () => {
    const { of } = await readWell(
      dxf([
        box('0', -100, 0, 100, 80),
        circle('0', 30, 40, 5, -1),
        polyline(
          '0',
          [
            [60, 20, 1],
            [60, 30],
            [80, 30, 1],
            [80, 20],
          ],
          true,
          [230, -1],
        ),
      ]),
    );
    const [hole, slot] = of('opening');
    // The outline's corner (-100, 0) is the drawing's origin: x = -30 stands at 70.
    expect(round(hole).centre).toEqual({ x: 70, y: 40 });
    // The plate 20 x 10 is bitten round at both ends as before: a bulge seen from behind turns the other way.
    expect(slot === undefined ? 0 : -areaOfShape(slot)).toBeCloseTo(200 - 25 * Math.PI, 9);
  });

  test('an arc from 0° to 90° lies in the second quarter, an ellipse goes round the other way', async () => {
    const arc = entity('ARC', 'score', [10, 0], [20, 0], [40, 10], [50, 0], [51, 90], [230, -1]);
    const half = entity(
      'ELLIPSE',
      'etch',
      [10, 0],
      [20, 0],
      [11, 20],
      [21, 0],
      [40, 0.5],
      [41, 0],
      [42, Math.PI],
      [230, -1],
    );
    const { of } = await readWell(dxf([box('0', -50, -50, 100, 100), arc, half]));
    const middle = (operation: 'score' | 'etch') => {
      const all = of(operation)[0]?.vertices ?? [];
      return { x: Math.min(...all.map(({ x }) => x)) - 50, low: Math.min(...all.map(({ y }) => y)) - 50 };
    };
    expect(middle('score').x).toBeCloseTo(-10, 6);
    // Seen from behind, the half from 0 to π hangs below its long axis.
    expect(middle('etch').low).toBeLessThan(-9.9);
  });

  test('what leans in space is left out and told', async () => {
    const tilted = entity('CIRCLE', '0', [10, 50], [20, 40], [40, 5], [210, 0.5], [220, 0], [230, 0.8]);
    const { of, findings } = await readWell(dxf([square, tilted]));
    expect(of('opening')).toEqual([]);
    expect(findings.find(({ code }) => code === 'passed-over')?.says).toContain('CIRCLE tilted in space');
  });
});

describe('units', () => {
  test.each([
    [1, 'in', 25.4],
    [2, 'ft', 304.8],
    [4, 'mm', 1],
    [5, 'cm', 10],
    [6, 'm', 1000],
  ] as const)('$INSUNITS %d is %s', async (units, name, millimetres) => {
    const { net, read } = await readWell(dxf([box('0', 0, 0, 3, 2)], { units }));
    expect(net).toBeCloseTo(6 * millimetres ** 2, 6);
    expect(read.drawing.source.unit).toBe(name);
  });

  test.each([0, undefined, 20])(
    'a file that says %s is asked about, with what it would be',
    async (units) => {
      const { says, field } = await refusalOf(dxf([box('0', 0, 0, 4, 2)], { units }));
      expect(field).toBe('unit');
      expect(says).toContain('4 × 2 mm');
      expect(says).toContain('101.6 × 50.8 mm');
    },
  );

  test('a unit that is told wins, and a contradiction is a caution', async () => {
    const { net, codes } = await readWell(dxf([box('0', 0, 0, 4, 2)], { units: 4 }), { unit: 'in' });
    expect(net).toBeCloseTo(8 * 25.4 ** 2, 9);
    expect(codes).toContain('drawing-unit');
  });
});

describe('layers', () => {
  const tables = [
    '0\nTABLE\n2\nLAYER\n70\n2',
    '0\nLAYER\n2\nhelp lines\n70\n0\n62\n-3',
    '0\nLAYER\n2\nbend\n70\n0\n62\n1',
    '0\nENDTAB',
  ];

  test('a layer that is off is kept but not made, and one says by its name what it is', async () => {
    const { of, read } = await readWell(
      dxf([square, circle('help lines', 50, 40, 10), line('bend', 30, 10, 30, 70)], { units: 4, tables }),
    );
    expect(of('opening')).toEqual([]);
    expect(of('ignore').map(({ layer }) => layer)).toEqual(['help lines']);
    expect(of('score').map(({ layer }) => layer)).toEqual(['bend']);
    expect(read.layers.map(({ because }) => because).toSorted()).toEqual(['hidden', 'name', 'usual']);
  });

  test('what is told of a layer wins over its name', async () => {
    const { of } = await readWell(dxf([square, circle('engraving', 50, 40, 10)]), {
      layers: { engraving: 'cut' },
    });
    expect(of('opening')).toHaveLength(1);
  });

  test('a layer that there is not is named', async () => {
    const { says, field } = await refusalOf(dxf([square]), { layers: { etching: 'etch' } });
    expect([says, field]).toEqual(['There is no layer "etching"; there are 0.', 'layers']);
  });

  test('what is on paper, invisible, or no line is left out', async () => {
    const onPaper = entity('CIRCLE', '0', [67, 1], [10, 20], [20, 20], [40, 5]);
    const invisible = entity('CIRCLE', '0', [60, 1], [10, 60], [20, 20], [40, 5]);
    const text = entity('TEXT', '0', [10, 5], [20, 5], [40, 3], [1, 'PLATE']);
    const { of, findings } = await readWell(dxf([square, onPaper, invisible, text]));
    expect(of('opening')).toEqual([]);
    expect(findings.find(({ code }) => code === 'passed-over')?.says).toContain('1 × TEXT');
  });
});
