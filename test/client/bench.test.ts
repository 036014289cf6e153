// The bench without a window: what is typed, drawn, withheld, taken back and turned.
import { signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { createBench, type Bench } from '../../client/state/bench.js';
import { openStops } from '../../client/state/files.js';
import { writeRoute, readRoute } from '../../client/state/route.js';
import { createDemoJob, startingShop } from '../../parts-library/job/index.js';

const computedWith = { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 };

/** A bench on the demo job's adapter: 5 holes adjacent 55.84 ±0.1, hub 57.15, outside 130, 6 mm S275. */
function openBench(ready = signal(true)): Bench {
  const job = createDemoJob(computedWith);
  const route = signal(readRoute(writeRoute(job.id, 'sprocket-adapter')));
  const bench = createBench({
    job,
    tag: '"0"',
    put: async () => ({ kind: 'saved', tag: '"1"' }),
    shop: startingShop,
    route,
    ready,
    go: (fragment) => {
      route.value = readRoute(fragment);
    },
  });
  bench.print.room.value = { width: 800, height: 700 };
  return bench;
}

const hubOf = (bench: Bench): string => bench.viewOf('hub').value?.text ?? '';

describe('typing on the bench', () => {
  it('draws what is typed, and shows it the same on the drawing and in the list', () => {
    const bench = openBench();
    bench.type('hub', '60');
    expect(bench.print.good.value?.value?.process).toBeDefined();
    expect(
      bench.print.drawing.value?.items.some((item) => item.kind === 'text' && item.text.includes('60.2')),
    ).toBe(true);
    expect(hubOf(bench)).toBe('60');
    expect(bench.viewOf('hub').value?.echo).toEqual(['60 mm', '2.3622 in']);
    bench.stop();
  });

  it('a broken entry keeps the last good drawing, says why, and the job is untouched', () => {
    const bench = openBench();
    const before = bench.print.drawing.value;
    const stored = bench.edits.job.value;
    bench.type('hub', '57.x');
    expect(bench.print.drawing.value).toBe(before);
    expect(bench.edits.job.value).toBe(stored);
    expect(bench.viewOf('hub').value?.problem).toContain('Accepted: 35, 35 mm');
    expect(bench.print.brokenSays.value).toContain('last good drawing');
    bench.stop();
  });

  it('another entry still counts while one is broken', () => {
    const bench = openBench();
    bench.type('hub', '57.x');
    bench.type('thickness', '8');
    expect(bench.print.good.value?.value?.part.thickness).toBe(8);
    expect(bench.viewOf('hub').value?.problem).toBeDefined();
    expect(hubOf(bench)).toBe('57.x');
    bench.stop();
  });

  it('undo first takes back what could not be read, then what could', () => {
    const bench = openBench();
    bench.type('hub', '60');
    bench.leave('hub');
    bench.type('hub', '60.x');
    bench.undo();
    expect(hubOf(bench)).toBe('60');
    bench.undo();
    expect(hubOf(bench)).toBe('57.15');
    bench.redo();
    expect(hubOf(bench)).toBe('60');
    bench.stop();
  });

  it('an optional field that is emptied is no longer given; one that is needed says so', () => {
    const bench = openBench();
    bench.type('outside', '');
    expect(bench.edits.job.value.rows[0]?.parameters['outside']).toBeUndefined();
    bench.type('thickness', '');
    expect(bench.viewOf('thickness').value?.problem).toBeDefined();
    bench.stop();
  });

  it('sizes that give no part keep the last good drawing and name the field', () => {
    const bench = openBench();
    const before = bench.print.good.value;
    bench.type('hub', '140');
    expect(bench.print.run.value?.value).toBeUndefined();
    expect(bench.print.good.value).toBe(before);
    expect(bench.print.brokenSays.value).toContain('last good drawing');
    bench.stop();
  });

  it('starting values say that they are, until something is entered', () => {
    const bench = openBench();
    expect(bench.viewOf('grip').value?.isStart).toBe(true);
    bench.type('grip', '0.9');
    bench.leave('grip');
    expect(bench.viewOf('grip').value?.isStart).toBe(false);
    expect(bench.viewOf('hub').value?.isStart).toBe(false);
    bench.stop();
  });
});

describe('groups and what applies', () => {
  const applying = (bench: Bench): readonly string[] => bench.applying.value.map(({ path }) => path);

  it('a second pattern applies when it is added, and is left out again as a whole', () => {
    const bench = openBench();
    expect(applying(bench)).not.toContain('pattern2.bolts');
    bench.setGroup('pattern2', true);
    expect(applying(bench)).toContain('pattern2.bolts');
    bench.setGroup('pattern2', false);
    expect(applying(bench)).not.toContain('pattern2.bolts');
    bench.stop();
  });

  it('a condition of a group looks at the group, not at its namesake outside', () => {
    const bench = openBench();
    bench.setGroup('pattern2', true);
    bench.type('holes', 'tapped');
    expect(applying(bench)).toContain('threadPercent');
    expect(applying(bench)).not.toContain('pattern2.threadPercent');
    bench.stop();
  });
});

describe('findings and files', () => {
  it('numbers stops before cautions before notes, and passes not at all', () => {
    const bench = openBench();
    bench.type('boltCircle', 'circle 116');
    const levels = bench.print.notes.value.map(({ level }) => level);
    expect(levels[0]).toBe('stop');
    expect(levels).toEqual([
      ...levels.filter((level) => level === 'stop'),
      ...levels.filter((level) => level === 'caution'),
      ...levels.filter((level) => level === 'note'),
    ]);
    expect(bench.print.notes.value.map(({ number }) => number)).toEqual(levels.map((_, index) => index + 1));
    expect(openStops(bench.print.notes.value, bench.edits.job.value)).toHaveLength(
      levels.filter((level) => level === 'stop').length,
    );
    bench.stop();
  });

  it('a remedy changes the row and is one step of undo', () => {
    const bench = openBench();
    bench.type('holes', '5');
    bench.leave('holes');
    const remedy = bench.print.notes.value.flatMap(({ finding }) => finding.remedies ?? [])[0];
    expect(remedy?.says).toContain('Mark the holes and drill them');
    if (remedy !== undefined) bench.mend(remedy);
    expect(bench.viewOf('holes').value?.text).toBe('drill');
    bench.undo();
    expect(bench.viewOf('holes').value?.text).toBe('5');
    bench.stop();
  });
});

describe('the whole job', () => {
  it('turned to inches keeps every size, entered bare or not', () => {
    const bench = openBench();
    const before = bench.print.good.value?.value?.bounds;
    bench.setUnit('in');
    expect(bench.print.good.value?.value?.bounds).toEqual(before);
    expect(hubOf(bench)).toBe('2.25 in');
    bench.setUnit('mm');
    expect(hubOf(bench)).toBe('57.15');
    bench.stop();
  });

  it('a part that is added gets a name and an address that nothing else has', async () => {
    const bench = openBench();
    const [family] = bench.families;
    if (family === undefined) throw new Error('There is no family.');
    await bench.addPart(family);
    await bench.addPart(family);
    expect(bench.edits.job.value.rows.map(({ id }) => id).slice(2)).toEqual([
      'adapter-plate',
      'adapter-plate-2',
    ]);
    expect(bench.row.value?.name).toBe('Adapter plate 2');
    bench.duplicate();
    expect(bench.row.value?.name).toBe('Adapter plate 3');
    bench.remove();
    expect(bench.edits.job.value.rows.map(({ id }) => id)).not.toContain('adapter-plate-3');
    bench.stop();
  });
});

describe('how the plate is cut', () => {
  it('the chart counts until a figure is given, and again when it is emptied', () => {
    const bench = openBench();
    const kerf = () => bench.cut.figures.value.find(({ field }) => field.name === 'kerf');
    expect(kerf()?.isStart).toBe(true);
    const before = bench.print.good.value?.value?.figures.length ?? 0;
    bench.cut.type('kerf', '2 mm');
    bench.cut.settle('kerf');
    expect(kerf()?.isStart).toBe(false);
    expect(bench.print.good.value?.value?.process.settings.kerf).toBe(2);
    expect(bench.print.good.value?.value?.figures.length).not.toBe(before);
    bench.cut.type('kerf', '');
    bench.cut.settle('kerf');
    expect(kerf()?.isStart).toBe(true);
    expect(bench.print.good.value?.value?.figures.length).toBe(before);
    bench.stop();
  });

  it('a figure that cannot be is said at its entry and not taken', () => {
    const bench = openBench();
    bench.cut.type('kerf', '80');
    expect(bench.cut.figures.value.find(({ field }) => field.name === 'kerf')?.problem).toContain(
      'accepted is',
    );
    expect(bench.edits.job.value.choices.process).toEqual([]);
    bench.stop();
  });
});

describe('before everything is loaded', () => {
  it('the part is drawn; its cut, the words about it and the change of unit wait', () => {
    const ready = signal(false);
    const bench = openBench(ready);
    expect(bench.print.drawing.value).toBeDefined();
    expect(bench.print.run.value).toBeUndefined();
    expect(bench.print.title.value).toBeUndefined();
    ready.value = true;
    expect(bench.print.good.value?.value?.figures.pierces).toBeGreaterThan(0);
    expect(bench.print.title.value?.cutLength).toContain('mm');
    bench.stop();
  });
});
