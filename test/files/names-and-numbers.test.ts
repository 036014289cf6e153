// File names and numbers that every machine takes.
import { expect, test } from 'vitest';
import { fileName, layersOf, safeBaseName } from '../../parts-library/files/index.js';
import { decimals, rounded } from '../../parts-library/files/decimals.js';
import { shapeInUnit } from '../../parts-library/files/rounding.js';
import { cutSvg, everyDxf, finishedSvg } from './pieces.js';

test.each([
  ['Adapter plate, 6 mm', 'adapter-plate-6-mm'],
  ['  Tölva/große:Platte* ', 'tolva-gro-e-platte'],
  ['../../etc/passwd', 'etc-passwd'],
  ['CON', 'part-con'],
  ['lpt1', 'part-lpt1'],
  ['木', 'part'],
  ['', 'part'],
  ['hub_2', 'hub_2'],
  ['x'.repeat(300), 'x'.repeat(80)],
])('%j becomes %j', (name, safe) => {
  expect(safeBaseName(name)).toBe(safe);
});

test('the name says the kind', () => {
  expect(fileName('adapter plate', 'finished', 'dxf')).toBe('adapter-plate.finished.dxf');
  expect(fileName('adapter plate', 'cut', 'svg')).toBe('adapter-plate.cut.svg');
  expect([...everyDxf.map(({ file }) => file.name), finishedSvg.name, cutSvg.name]).toEqual([
    ...[1, 2, 3, 4].flatMap(() => ['tray-foot.finished.dxf', 'tray-foot.cut.dxf']),
    'tray-foot.finished.svg',
    'tray-foot.cut.svg',
  ]);
});

test.each([
  [-0.0000004, 6, '0'],
  [-0, 6, '0'],
  [1e-7, 6, '0'],
  [1234567.1234567, 6, '1234567.123457'],
  [100, 6, '100'],
  [0.1 + 0.2, 6, '0.3'],
  [-1.5, 0, '-2'],
  [Math.SQRT2 - 1, 9, '0.414213562'],
] as const)('%d with %i decimals is written %s', (value, places, text) => {
  expect(decimals(value, places)).toBe(text);
});

test('what is no number is refused', () => {
  for (const value of [Number.NaN, Infinity, -Infinity, 1e21])
    expect(() => decimals(value, 6)).toThrow(RangeError);
});

test('rounding never leaves minus nought', () => {
  expect(Object.is(rounded(-0.0000001, 6), 0)).toBe(true);
});

test('no layer name serves both kinds', () => {
  const finished = layersOf('finished').map(({ name }) => name);
  const cut = layersOf('cut').map(({ name }) => name);
  expect(finished.filter((name) => cut.includes(name))).toEqual([]);
  expect(new Set([...finished, ...cut]).size).toBe(10);
});

test('a segment shorter than the file can say is left out, a shape that small is refused', () => {
  const a = { x: 0, y: 0, bulge: 0 };
  const close = { x: 0, y: 2e-7, bulge: 0 };
  const far = { x: 10, y: 0, bulge: 0.5 };
  const shape = shapeInUnit({ kind: 'closed', vertices: [a, close, far] }, 'mm');
  expect(shape.kind === 'closed' && shape.vertices).toEqual([
    { x: 0, y: 0, bulge: 0 },
    { x: 10, y: 0, bulge: 0.5 },
  ]);
  expect(() => shapeInUnit({ kind: 'open', vertices: [a, close] }, 'mm')).toThrow(
    /smaller than the resolution/,
  );
});
