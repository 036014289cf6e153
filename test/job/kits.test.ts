// Kits in a job: a shared number changes everywhere, what was set by hand stays and shows that it was.
import { describe, expect, test } from 'vitest';
import {
  addKit,
  applyChange,
  createDemoJob,
  expandKit,
  followKit,
  kitFindings,
  removeKit,
  runPart,
  requestForRow,
  setKitNumbers,
  setParameter,
  startingShop,
  type Change,
  type Job,
  type KitAnswer,
  type Row,
} from '../../parts-library/job/index.js';
import type { JsonObject } from '../../parts-library/model/index.js';
import { listKits } from '../../parts-library/kits/index.js';

const computedWith = { library: '0', chartVersion: '0', shopRevision: 0, seed: 1, lanes: 1, iterations: 0 };
const emptyJob: Job = { ...createDemoJob(computedWith), rows: [] };

function take(job: Job, answer: KitAnswer<Change> | Change): Job {
  const change = 'ok' in answer ? (answer.ok ? answer.value : undefined) : answer;
  if (change === undefined) throw new Error('The kit refused.');
  const applied = applyChange(job, change);
  if (!applied.ok) throw new Error(applied.problem.says);
  return applied.job;
}

const carrier = (numbers: object = {}): Job =>
  take(
    emptyJob,
    addKit(emptyJob, { id: 'carrier', kit: 'sprocket-carrier', name: 'Rear sprocket', numbers }),
  );

const rowOf = (job: Job, role: string) => {
  const row = job.rows.find((one) => one.role === role);
  if (row === undefined) throw new Error(`There is no ${role}.`);
  return row;
};

const run = (job: Job, row: Row) => runPart(requestForRow(job, row), startingShop);
const valueOf = (job: Job, role: string) => run(job, rowOf(job, role)).value;

describe.each(listKits())('$id', (kit) => {
  test('at its start every member is drawn, named once, and has no stop', () => {
    const added = take(emptyJob, addKit(emptyJob, { id: 'k', kit: kit.id, name: kit.title, numbers: {} }));
    expect(added.rows.length).toBeGreaterThan(1);
    expect(new Set(added.rows.map(({ role }) => role)).size).toBe(added.rows.length);
    for (const row of added.rows) {
      const ran = run(added, row);
      expect(ran.problems, row.name).toEqual([]);
      expect(ran.value, row.name).toBeDefined();
      const stops = ran.findings.filter(({ level, code }) => level === 'stop' && code !== 'machined-blank');
      expect(stops, row.name).toEqual([]);
    }
  });

  test('its numbers read back as themselves, whatever the unit', () => {
    const first = kit.read({}, 'mm');
    if (!first.ok) throw new Error(first.problems[0]?.says);
    const again = kit.read(first.value.numbers, 'in');
    expect(again.ok && again.value.numbers).toEqual(first.value.numbers);
  });
});

describe('the sprocket carrier', () => {
  test('a gap of 7.8 is filled by 6.05 + 1.52 = 7.57, the fewest rings within half a millimetre', () => {
    // Worked by hand: 6.05 alone leaves 1.75; 6.05 + 1.52 leaves 0.23.
    const job = carrier();
    expect(job.rows.map(({ role, quantity }) => [role, quantity])).toEqual([
      ['adapter', 1],
      ['ring-1', 1],
      ['ring-2', 1],
    ]);
    expect(valueOf(job, 'ring-1')?.part.thickness).toBe(6.05);
    expect(valueOf(job, 'ring-2')?.part.thickness).toBe(1.52);
  });

  test('the bolt circle is one number: plate and rings have the same holes', () => {
    const job = take(carrier(), setKitNumbers(carrier(), 'carrier', { boltCircle: 'circle 104', bolts: 4 }));
    const centres = (role: string) =>
      (valueOf(job, role)?.part.features ?? []).flatMap((feature) =>
        feature.purpose === 'opening' && feature.hole?.thread === 'M8' ? [feature.contour[0]?.y] : [],
      );
    expect(centres('adapter')).toHaveLength(4);
    expect(centres('ring-1')).toEqual(centres('adapter'));
  });

  test('a role that is no longer needed goes, and comes back', () => {
    const seated = take(carrier(), setKitNumbers(carrier(), 'carrier', { gap: 0 }));
    expect(seated.rows.map(({ role }) => role)).toEqual(['adapter']);
    const again = take(seated, setKitNumbers(seated, 'carrier', { gap: 6.05 }));
    expect(again.rows.map(({ role }) => role)).toEqual(['adapter', 'ring-1']);
  });

  test('a number that cannot be read is named, and the job is as it was', () => {
    const answer = setKitNumbers(carrier(), 'carrier', { gap: 'wide' });
    expect(answer.ok ? [] : answer.problems.map(({ field }) => field)).toEqual(['gap']);
    expect(expandKit('no-such-kit', {}, 'mm')).toMatchObject({ ok: false, problems: [{ field: 'kit' }] });
  });
});

describe('a member set by hand', () => {
  const set = take(carrier(), setParameter(carrier(), 'carrier.adapter', 'outside', '150'));

  test('shows that it is', () => {
    expect(rowOf(set, 'adapter').overrides).toEqual({ outside: '150' });
  });

  test('keeps its value when the kit changes, and follows in everything else', () => {
    const changed = take(set, setKitNumbers(set, 'carrier', { outside: 140, thickness: 8 }));
    const value = valueOf(changed, 'adapter');
    expect(value?.bounds.maxX).toBeCloseTo(75, 6);
    expect(value?.part.thickness).toBe(8);
  });

  test('typing the kit’s own value again is no override', () => {
    const back = take(set, setParameter(set, 'carrier.adapter', 'outside', '130 mm'));
    expect(rowOf(back, 'adapter').overrides).toEqual({});
  });

  test('follows the kit again when asked to', () => {
    const follows = take(set, followKit(set, 'carrier.adapter', 'outside'));
    expect(rowOf(follows, 'adapter').overrides).toEqual({});
    expect(valueOf(follows, 'adapter')?.bounds.maxX).toBeCloseTo(65, 6);
  });

  test('a kit leaves with its rows', () => {
    const gone = take(set, removeKit(set, 'carrier'));
    expect(gone.rows).toEqual([]);
    expect(gone.kits).toEqual([]);
  });
});

describe('findings that span the members', () => {
  const findingsOf = (job: Job) =>
    kitFindings(job, 'carrier', new Map(job.rows.map((row) => [row.id, run(job, row)])));

  test('plate and rings on one pattern meet, on five M8 in clearance holes of 9: 2 × (9 − 8) mm of room', () => {
    // Clearance hole for M8, medium: 9 mm (ISO 273).
    const joints = findingsOf(carrier()).filter(({ code }) => code === 'joint');
    expect(joints.map(({ level }) => level)).toEqual(['pass', 'pass']);
    expect(joints[0]?.limit?.amount).toBeCloseTo(2, 9);
  });

  test('a ring set by hand to another circle, number or bolt can no longer be bolted on', () => {
    const job = carrier();
    const turned = (pattern: JsonObject): readonly string[] => {
      const changed = take(job, setParameter(job, 'carrier.ring-1', 'pattern', pattern));
      return findingsOf(changed).flatMap(({ level, title }) => (level === 'stop' ? [title] : []));
    };
    expect(turned({ bolts: 4, circle: 'circle 95', bolt: 'M8' })[0]).toContain('5 and 4 holes');
    expect(turned({ bolts: 5, circle: 'circle 100', bolt: 'M8' })[0]).toContain('do not meet');
    expect(turned({ bolts: 5, circle: 'adjacent 55.84', bolt: 'M6' })[0]).toContain('bolts of 8 mm and 6 mm');
  });
});
