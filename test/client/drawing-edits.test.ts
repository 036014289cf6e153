// What is done along the shapes of a drawing, on the page: choices, layers, one outline, and taking it all back.
import { signal } from '@preact/signals';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createBench } from '../../client/state/bench.js';
import { readFileInHand, takeUp } from '../../client/state/bring-in.js';
import { isOnLayer, layersOf, operationsOf, withOperation } from '../../client/state/drawing-edits.js';
import { writeCommand } from '../../client/sheet/command-line.js';
import { readRoute, writeRoute } from '../../client/state/route.js';
import { createDemoJob, drawingParameters, startingShop } from '../../parts-library/job/index.js';
import type { Drawing } from '../../parts-library/model/index.js';
import { findFamily, listAbouts } from '../../parts-library/parts/index.js';
import { box, circle, dxf, line, readWell } from '../files/drawn.js';

const TIE_PLATE = readFileSync(new URL('../files/drawings/tie-plate.dxf', import.meta.url));

const tiePlate = async (): Promise<Drawing> => (await readWell(TIE_PLATE)).read.drawing;

const operations = ({ shapes }: Drawing): readonly string[] =>
  shapes.map(({ id, operation }) => `${id} ${operation}`);

describe('choices', () => {
  test('a circle may be a mark, a line no opening, a point only a mark', async () => {
    const { shapes } = await tiePlate();
    const choicesOf = (id: string) => {
      const shape = shapes.find((one) => one.id === id);
      return shape === undefined ? [] : operationsOf(shape);
    };
    expect(choicesOf('circle.1')).toEqual(['outline', 'opening', 'mark', 'score', 'etch', 'ignore']);
    expect(choicesOf('contour.2')).not.toContain('mark');
    expect(choicesOf('line.1')).toEqual(['score', 'etch', 'ignore']);
    expect(
      operationsOf({
        id: 'point.1',
        layer: '0',
        operation: 'mark',
        closed: false,
        vertices: [{ x: 0, y: 0, bulge: 0 }],
      }),
    ).toEqual(['mark', 'ignore']);
  });

  test('a layer changes all its shapes that can, and never the outline', async () => {
    const drawing = await tiePlate();
    expect(layersOf(drawing)).toEqual([
      {
        name: 'cut',
        count: 6,
        operation: 'opening',
        choices: ['opening', 'mark', 'score', 'etch', 'ignore'],
      },
      { name: 'etch', count: 1, operation: 'etch', choices: ['score', 'etch', 'ignore'] },
    ]);
    const marked = withOperation(drawing, isOnLayer('cut'), 'mark');
    expect(operations(marked)).toEqual([
      'contour.1 outline',
      ...[1, 2, 3, 4, 5].map((number) => `circle.${number} mark`),
      'contour.2 opening',
      'line.1 etch',
    ]);
    expect(layersOf(marked)[0]?.operation).toBeUndefined();
  });

  test('another outline puts the first among what is ignored', async () => {
    const other = withOperation(await tiePlate(), ({ id }) => id === 'circle.5', 'outline');
    expect(operations(other).filter((one) => /outline|ignore/.test(one))).toEqual([
      'contour.1 ignore',
      'circle.5 outline',
    ]);
  });
});

describe('the command that brings the same file in', () => {
  test('names file, unit, part and layers', async () => {
    const family = findFamily('own-outline');
    const drawing = await tiePlate();
    if (family === undefined) throw new Error('No family for drawings.');
    const written = (of: Drawing): string => {
      const entered = { ...drawingParameters(of), thickness: { typed: '8', mm: 8 } };
      const row = { id: 'tie-plate', family: family.id, name: 'Tie plate', quantity: 1, parameters: entered };
      return writeCommand({ family, row, entered, unit: 'mm', process: {} });
    };
    expect(written({ ...drawing, source: { ...drawing.source, name: 'tie plate.dxf', part: 2 } })).toBe(
      "npx fishplate import 'tie plate.dxf' --file-unit mm --pick 2 --layers 'cut=cut, etch=etch' --thickness 8 --as 'Tie plate' --out tie-plate",
    );
    // Of a layer with several things done on it, only the shapes themselves tell.
    expect(written(withOperation(drawing, ({ id }) => id === 'circle.1', 'mark'))).toContain(
      '--layers etch=etch ',
    );
  });
});

describe('a file in hand', () => {
  test('is taken up and read again in another unit', async () => {
    const file = new File([dxf([box('0', 0, 0, 4, 3)], { units: 0 })], 'foot.dxf');
    const taken = await takeUp(file);
    if (typeof taken === 'string') throw new Error(taken);
    const silent = await readFileInHand(taken, {});
    if (typeof silent === 'string') throw new Error(silent);
    expect([silent.value, silent.findings[0]?.field]).toEqual([undefined, 'unit']);
    const inches = await readFileInHand(taken, { unit: 'in' });
    if (typeof inches === 'string') throw new Error(inches);
    expect(inches.value?.parts[0]?.width).toBeCloseTo(101.6, 9);
    expect(inches.value?.drawing.source.name).toBe('foot.dxf');
  });
});

describe('on the bench', () => {
  test('a drawing is one step: the part, its name, and back again', async () => {
    const job = createDemoJob({
      library: '0',
      chartVersion: '0',
      shopRevision: 0,
      seed: 1,
      lanes: 1,
      iterations: 0,
    });
    const route = signal(readRoute(writeRoute(job.id, job.rows[0]?.id)));
    const bench = createBench({
      job,
      tag: '"0"',
      put: async () => ({ kind: 'saved', tag: '"1"' }),
      shop: startingShop,
      route,
      go: (fragment) => {
        route.value = readRoute(fragment);
      },
    });
    const about = listAbouts().find(({ id }) => id === 'own-outline');
    if (about === undefined) throw new Error('No family for drawings.');
    await bench.addPart(about);
    expect(bench.row.value?.name).toBe('Own outline');
    const { read } = await readWell(
      dxf([box('0', 0, 0, 50, 40), circle('0', 25, 20, 8), line('bend', 0, 10, 50, 10)]),
      {
        name: 'cart foot.dxf',
      },
    );
    bench.setDrawing('drawing', read.drawing);
    expect(bench.row.value?.name).toBe('cart foot');
    expect(bench.print.run.value?.value?.area).toBeCloseTo(2000 - 64 * Math.PI, 9);
    bench.setDrawing('drawing', withOperation(read.drawing, isOnLayer('bend'), 'ignore'));
    expect(bench.print.run.value?.value?.ghosts).toHaveLength(1);
    expect(bench.row.value?.name).toBe('cart foot');
    bench.undo();
    bench.undo();
    expect([bench.row.value?.name, bench.row.value?.parameters]).toEqual(['Own outline', {}]);
    bench.stop();
  });
});
