// The operation sequence of a part: the torch first, paint last, the cautions before the arc.
import { describe, expect, test } from 'vitest';
import { operationsOf, runPart, startingShop, summarise } from '../../parts-library/job/index.js';

const operations = (parameters: Readonly<Record<string, unknown>>) =>
  operationsOf(runPart({ family: 'adapter-plate', parameters, unit: 'mm' }, startingShop));
const kinds = (parameters: Readonly<Record<string, unknown>>) =>
  operations(parameters).map(({ kind }) => kind);

describe('operations', () => {
  test('begin at the torch with its settings and end with paint', () => {
    const steps = operations({ holes: 'tapped', bolt: 'M8' });
    expect(steps[0]?.kind).toBe('cut');
    // Settings of the starting chart, air-45A, 6 mm mild steel: kerf 1.6 ±0.3.
    expect(steps[0]?.says).toMatch(
      /^Cut air-45A, 6 mm S275: .*Kerf 1\.6 mm ±0\.3, \d+ mm\/min, pierce 0\.\d+ s/,
    );
    expect(steps.at(-1)?.kind).toBe('paint');
  });

  test('a tapped hole is drilled before it is tapped, and neither before the plate is measured', () => {
    const order = kinds({ holes: 'tapped', bolt: 'M8' });
    expect(order.indexOf('drill')).toBeLessThan(order.indexOf('tap'));
    expect(order.indexOf('measure')).toBeLessThan(order.indexOf('drill'));
  });

  test('where something is welded, salvaged parts are cautioned about before the weld', () => {
    const welded = operations({ centre: 'slip-to-weld', hub: '57.15' });
    const salvage = welded.findIndex(({ says }) => says.startsWith('Salvaged parts'));
    expect(salvage).toBeGreaterThan(0);
    expect(salvage).toBeLessThan(welded.findIndex(({ kind }) => kind === 'weld'));
    expect(operations({ centre: 'none' }).some(({ says }) => says.startsWith('Salvaged parts'))).toBe(false);
  });

  test('the summary carries them, and a part that cannot be drawn has none', () => {
    const run = runPart({ family: 'adapter-plate', parameters: {}, unit: 'mm' }, startingShop);
    expect(summarise(run)?.steps).toEqual(operationsOf(run));
    expect(operations({ outside: 20 })).toEqual([]);
  });
});
