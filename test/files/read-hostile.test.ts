// Broken and hostile files: each is refused with what is wrong and where, soon, and without harm; nothing ever throws.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDrawing } from '../../parts-library/files/index.js';
import {
  block,
  box,
  circle,
  dxf,
  entity,
  insert,
  line,
  polyline,
  readWell,
  refusalOf,
  svg,
} from './drawn.js';

const runs = process.env['FISHPLATE_LONG'] === '1' ? 3000 : 150;
const square = box('0', 0, 0, 100, 80);
const plate = '<rect width="100" height="80"/>';

describe('files that are none', () => {
  test.each([
    ['nothing', '', 'The file is empty.'],
    ['blanks', ' \r\n\t', 'The file is empty.'],
    ['a letter', 'Dear customer,\nplease cut this.', 'neither DXF nor SVG'],
    ['a picture', '\u0089PNG\r\n\u001a\n\u0000\u0000', 'binary'],
    ['another XML', '<html><body/></html>', '<html>, not of <svg>'],
    ['XML that breaks off', '<svg viewBox="0 0 1 1"><g>', '1:26'],
    ['XML that is none', '<svg><rect</svg>', 'no sound SVG'],
  ])('%s', async (_, text, says) => {
    expect((await refusalOf(text)).says).toContain(says);
  });

  test('bytes: UTF-8, its mark in front, one byte a letter, and binary', async () => {
    const text = dxf([box('Bügel', 0, 0, 10, 10)]);
    const utf8 = new TextEncoder().encode(`\uFEFF${text}`);
    const latin = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    for (const bytes of [utf8, latin]) expect((await readWell(bytes)).read.layers[0]?.name).toBe('Bügel');
    expect((await refusalOf(Uint8Array.from([65, 0, 66]))).says).toContain('binary');
  });

  test('one too long is refused before it is looked at', async () => {
    expect((await refusalOf(`0\n${' '.repeat(12_000_001)}`)).says).toContain('accepted are up to 12000000');
  });
});

describe('damaged DXF', () => {
  test.each([
    ['a word for a group', `${dxf([square]).slice(0, 60)}\nhello\nworld\n`, /Line \d+ is "(hello|world)"/],
    [
      'a word for a number',
      dxf([square.replace('10\n100', '10\nnan')]),
      /Line \d+ is "nan", which is not a number \(group 10\)/,
    ],
    ['a number without end', dxf([square.replace('10\n100', '10\n1e999')]), /1e999; numbers beyond/],
    ['far too large a number', dxf([square.replace('10\n100', '10\n1e12')]), /1e12; numbers beyond/],
    ['cut off', dxf([square]).slice(0, -20), /ends within section ENTITIES.*cut off/],
    ['a section in a section', dxf([square]).replace('0\nENDSEC\n', ''), /is not closed before line/],
    ['groups outside sections', `0\nLINE\n${dxf([square])}`, /outside every section/],
    ['a line without its end', dxf([square, '0\nLINE\n8\n0\n10\n1\n20\n1']), /LINE of line \d+ has no end/],
    ['a circle without radius', dxf([square, circle('0', 1, 1, -3)]), /radius of -3/],
    [
      'a corner without y',
      dxf([
        polyline('0', [
          [0, 0],
          [1, 1],
        ]).replace('\n20\n1', ''),
      ]),
      /corner without y/,
    ],
    ['knots that fall', dxf([square, spline([0, 0, 0, 2, 1, 3, 3, 3])]), /its knots fall/],
    [
      'too few knots',
      dxf([square, spline([0, 0, 0, 1, 1, 1])]),
      /6 knots where 5 control points and degree 2 take 8/,
    ],
    [
      'an axis of nothing',
      dxf([square, entity('ELLIPSE', '0', [10, 1], [20, 1], [11, 0], [21, 0], [40, 0.5])]),
      /long axis/,
    ],
    [
      'a scale of nothing',
      dxf([square, insert('b', [10, 0], [20, 0], [41, 0])], { blocks: [block('b', [0, 0], square)] }),
      /scale of 0/,
    ],
  ] as const)('%s', async (_, text, says) => {
    expect((await refusalOf(text)).says).toMatch(says);
  });

  test('a polyline of the old kind without an end is read up to what comes next', async () => {
    const endless = [
      entity('POLYLINE', '0', [66, 1], [70, 1]),
      ...[
        [20, 20],
        [40, 20],
        [40, 40],
      ].map(([x = 0, y = 0]) => entity('VERTEX', '0', [10, x], [20, y])),
    ].join('\n');
    expect((await readWell(dxf([square, endless, circle('0', 70, 40, 5)]))).of('opening')).toHaveLength(2);
  });

  test('a polyline that claims a thousand million corners has those it has', async () => {
    expect((await readWell(dxf([square.replace('90\n4', '90\n1000000000')]))).net).toBeCloseTo(8000, 9);
  });

  test('a block that is not there, or of a name that objects have, is an empty place', async () => {
    for (const name of ['missing', 'constructor', '__proto__', 'toString'])
      expect((await readWell(dxf([square, insert(name, [10, 5], [20, 5])]))).codes).toContain('drawing-note');
  });
});

function spline(knots: readonly number[]): string {
  return entity(
    'SPLINE',
    '0',
    [71, 2],
    ...knots.map((knot) => [40, knot] as const),
    ...Array.from({ length: 5 }, (_, i) => [[10, 10 * i] as const, [20, i % 2] as const]).flat(),
  );
}

describe('files built to stall', () => {
  test('a block that holds itself, by way of another too', async () => {
    const blocks = [
      block('a', [0, 0], insert('b', [10, 0], [20, 0])),
      block('b', [0, 0], insert('a', [10, 0], [20, 0])),
    ];
    expect((await refusalOf(dxf([insert('a', [10, 0], [20, 0])], { units: 4, blocks }))).says).toContain(
      'holds itself',
    );
  });

  test('blocks that come to a thousand million copies', async () => {
    const tenfold = (of: string) => Array.from({ length: 10 }, (_, i) => insert(of, [10, i], [20, 0]));
    const blocks = [
      block('0', [0, 0], line('0', 0, 0, 1, 1)),
      ...Array.from({ length: 9 }, (_, i) => block(`${i + 1}`, [0, 0], ...tenfold(`${i}`))),
    ];
    expect((await refusalOf(dxf([insert('9', [10, 0], [20, 0])], { units: 4, blocks }))).says).toContain(
      'more than 20000 copies',
    );
  });

  test('an array of a hundred million', async () => {
    const array = insert('b', [10, 0], [20, 0], [70, 10_000], [71, 10_000]);
    expect(
      (await refusalOf(dxf([array], { units: 4, blocks: [block('b', [0, 0], square)] }))).says,
    ).toContain('10000 × 10000');
  });

  test('ten thousand lines over one another, ten thousand across each other', async () => {
    const same = Array.from({ length: 10_000 }, () => line('0', 0, 0, 100, 0));
    expect((await readWell(dxf([square, ...same]))).of('ignore')).toEqual([]);
    const star = Array.from({ length: 10_000 }, (_, i) => {
      const angle = (i * Math.PI) / 10_000;
      return line('hatch', 50, 40, 50 + 30 * Math.cos(angle), 40 + 30 * Math.sin(angle));
    });
    expect((await refusalOf(dxf([square, ...star]))).says).toMatch(/line ends|shapes; accepted/);
  });

  test('copies of copies in SVG', async () => {
    const levels = Array.from(
      { length: 9 },
      (_, i) => `<g id="l${i + 1}">${`<use href="#l${i}"/>`.repeat(10)}</g>`,
    ).join('');
    const bomb = svg(`<defs><path id="l0" d="M0 0h1"/>${levels}</defs><use href="#l9"/>`);
    expect((await refusalOf(bomb)).says).toContain('more than 20000 copies');
  });

  test('entities of entities are not expanded', async () => {
    const lol = `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]><svg viewBox="0 0 1 1"><text>&b;</text></svg>`;
    expect((await refusalOf(lol)).says).toContain('declares entities');
    expect((await refusalOf('<svg viewBox="0 0 1 1"><text>&unknown;</text></svg>')).says).toContain('entity');
  });

  test('groups a thousand deep', async () => {
    expect((await refusalOf(svg(`${'<g>'.repeat(1000)}${plate}${'</g>'.repeat(1000)}`))).says).toContain(
      'deep in each other',
    );
  });

  test('a spline across twenty metres in five thousand swings', async () => {
    const points = Array.from({ length: 4999 }, (_, i) => [
      [10, i] as const,
      [20, (i % 2) * 15_000] as const,
    ]).flat();
    const knots = [0, 0, 0, ...Array.from({ length: 4998 }, (_, i) => i), 4997, 4997, 4997];
    const swings = entity(
      'SPLINE',
      '0',
      [71, 3],
      ...knots.slice(0, 5003).map((knot) => [40, knot] as const),
      ...points,
    );
    expect((await refusalOf(dxf([swings]))).says).toMatch(/more than 10000 arcs/);
  }, 60_000);

  test('one larger than any plate asks for its unit', async () => {
    const { says, field } = await refusalOf(dxf([box('0', 0, 0, 500, 300)], { units: 6 }));
    expect([field, says.includes('500000 × 300000 mm (taken as m)')]).toEqual(['unit', true]);
  });

  test('a part of more shapes than a job can hold', async () => {
    const holes = Array.from({ length: 700 }, (_, i) =>
      circle('0', 2 + (i % 35) * 2.8, 2 + Math.floor(i / 35) * 3.8, 1),
    );
    expect((await refusalOf(dxf([square, ...holes]))).says).toContain('701 shapes; accepted are up to 600');
  });
});

describe('options out of bounds', () => {
  test.each([
    [{ gap: -1 }, 'gap', 'accepted is 0 to 5 mm'],
    [{ gap: Number.NaN }, 'gap', 'accepted is 0 to 5 mm'],
    [{ arcTolerance: 0 }, 'arcTolerance', 'accepted is 0.001 to 1 mm'],
    [{ part: 1.5 }, 'part', 'whole number'],
    [{ unit: 'cubit' }, 'unit', 'accepted are mm, cm, m, in, ft, pt, px'],
  ] as const)('%o', async (options, field, says) => {
    const refusal = await refusalOf(dxf([square]), options);
    expect(refusal.field).toBe(field);
    expect(refusal.says).toContain(says);
  });
});

describe('whatever the file', () => {
  const broken = (text: string) =>
    fc
      .tuple(fc.nat(text.length), fc.nat(40), fc.string({ maxLength: 12 }))
      .map(([at, drop, put]) => text.slice(0, at) + put + text.slice(at + drop));
  const whole = dxf(
    [square, circle('holes', 50, 40, 8), insert('b', [10, 20], [20, 20]), spline([0, 0, 0, 1, 2, 3, 3, 3])],
    { units: 4, blocks: [block('b', [0, 0], circle('0', 0, 0, 2))] },
  );
  const drawn = svg(
    `${plate}<g transform="rotate(3)"><path d="M20 20a5 5 0 1 0 10 0Z M50 50Q60 60 70 50"/></g>`,
  );

  test.each([
    ['DXF', whole],
    ['SVG', drawn],
  ])('%s with a piece torn out and something put in is read or refused with a sentence', async (_, text) => {
    await fc.assert(
      fc.asyncProperty(broken(text), async (torn) => {
        const { value, findings } = await readDrawing(torn);
        for (const { title, says } of findings)
          expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
        if (value === undefined) expect(findings[0]?.says.length).toBeGreaterThan(10);
        else
          for (const { vertices } of value.drawing.shapes)
            for (const { x, y, bulge } of vertices) expect(Number.isFinite(x + y + bulge)).toBe(true);
      }),
      { numRuns: runs, seed: 20261125 },
    );
  });
});
