// A kit on the bench: its numbers reach every part, and a part set by hand says so.
import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { createBench, type Bench } from '../../client/state/bench.js';
import { readRoute, writeRoute } from '../../client/state/route.js';
import { createDemoJob, startingShop } from '../../parts-library/job/index.js';

const computedWith = { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 };

async function openKit(): Promise<Bench> {
  const job = createDemoJob(computedWith);
  const route = signal(readRoute(writeRoute(job.id, undefined)));
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
  const [carrier] = bench.kit.kits.filter(({ id }) => id === 'sprocket-carrier');
  if (carrier === undefined) throw new Error('There is no sprocket carrier.');
  await bench.kit.add(carrier);
  return bench;
}

const thickness = (bench: Bench): number | undefined => bench.print.good.value?.value?.part.thickness;

describe('a kit on the bench', () => {
  it('comes with its parts, and shows the first', async () => {
    const bench = await openKit();
    expect(bench.row.value?.role).toBe('adapter');
    expect(bench.kit.use.value?.name).toBe('Sprocket carrier');
    expect(bench.kit.fields.value.map(({ field }) => field.path)).toContain('boltCircle');
    bench.stop();
  });

  it('sets a number in every part, as one step of undo', async () => {
    const bench = await openKit();
    bench.kit.type('thickness', '8');
    bench.kit.settle();
    expect(thickness(bench)).toBe(8);
    bench.undo();
    expect(thickness(bench)).toBe(6);
    bench.stop();
  });

  it('says what it cannot read at the number, and changes nothing', async () => {
    const bench = await openKit();
    bench.kit.type('gap', 'wide');
    expect(bench.kit.fields.value.find(({ field }) => field.path === 'gap')?.problem).toContain('Accepted');
    expect(thickness(bench)).toBe(6);
    bench.stop();
  });

  it('a part set by hand says so, keeps its value, and can follow again', async () => {
    const bench = await openKit();
    bench.type('thickness', '10');
    bench.leave('thickness');
    expect(bench.kit.overridden.value).toEqual(['thickness']);
    bench.kit.type('thickness', '8');
    expect(thickness(bench)).toBe(10);
    bench.kit.follow('thickness');
    expect(thickness(bench)).toBe(8);
    expect(bench.kit.overridden.value).toEqual([]);
    bench.stop();
  });

  it('a pattern set by hand that no longer meets its rings is a stop of the kit', async () => {
    const bench = await openKit();
    expect(bench.kit.findings.value).toEqual([]);
    bench.type('boltCircle', 'circle 110');
    expect(bench.kit.findings.value.map(({ code, level }) => [code, level])).toContainEqual([
      'joint',
      'stop',
    ]);
    bench.kit.remove();
    expect(bench.kit.use.value).toBeUndefined();
    expect(bench.edits.job.value.kits).toEqual([]);
    bench.stop();
  });
});
