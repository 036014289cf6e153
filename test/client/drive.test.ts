// The drive on the page: its address, its picture, and what another unit of the job does to it.
import { describe, expect, it } from 'vitest';
import { placeRollers } from '../../client/drive/rollers.js';
import { differences } from '../../client/sheet/differences.js';
import { readRoute, writeDriveRoute } from '../../client/state/route.js';
import { hasBareNumbers, turnUnit } from '../../client/state/turn-unit.js';
import { readDrive } from '../../parts-library/drive/index.js';
import { applyChange, createJob, setDrive, type Job } from '../../parts-library/job/index.js';

const computedWith = {
  library: 'test',
  chartVersion: 'starting',
  shopRevision: 0,
  seed: 1,
  lanes: 1,
  iterations: 0,
};

const jobWith = (drive: NonNullable<Job['drive']>): Job => ({
  ...createJob({ id: 'cart', name: 'Cart', unit: 'mm', computedWith }),
  drive,
});

const after = (job: Job, change: Parameters<typeof applyChange>[1]): Job => {
  const result = applyChange(job, change);
  if (!result.ok) throw new Error(result.problem.says);
  return result.job;
};

describe('the address of the drive numbers', () => {
  it('names the part that they stand beside', () => {
    expect(writeDriveRoute('cart', 'adapter')).toBe('#/cart/adapter/drive');
    expect(readRoute('#/cart/adapter/drive')).toEqual({ jobId: 'cart', rowId: 'adapter', beside: 'drive' });
  });

  it('holds in a job without parts, and a part called drive is a part', () => {
    expect(readRoute(writeDriveRoute('cart', undefined))).toEqual({ jobId: 'cart', beside: 'drive' });
    expect(readRoute('#/cart/drive').beside).toBeUndefined();
  });
});

describe('the chain in the picture', () => {
  const motor = { x: 100, y: 200 };
  const wheel = { x: 500, y: 200 };
  const drawn = placeRollers({ motor, wheel, motorRadius: 25, wheelRadius: 97, links: 98, sag: 0 });

  it('has as many rollers as links, all at equal steps', () => {
    expect(drawn.spots).toHaveLength(98);
    const steps = drawn.spots.map(({ x, y }, index) => {
      const next = drawn.spots[(index + 1) % 98] ?? { x, y };
      return Math.hypot(next.x - x, next.y - y);
    });
    // A chord is a little shorter than its arc, the more so on the small sprocket.
    expect(Math.max(...steps) / Math.min(...steps)).toBeLessThan(1.03);
  });

  it('lies on both sprockets and between them, and nowhere inside one', () => {
    for (const { x, y } of drawn.spots) {
      expect(Math.hypot(x - motor.x, y - motor.y)).toBeGreaterThan(25 - 1e-6);
      expect(Math.hypot(x - wheel.x, y - wheel.y)).toBeGreaterThan(97 - 1e-6);
    }
    expect(Math.max(...drawn.spots.map(({ x }) => x))).toBeGreaterThan(597 - 1);
    expect(Math.min(...drawn.spots.map(({ x }) => x))).toBeLessThan(75 + 1);
  });

  it('hangs in its lower strand only', () => {
    const slack = placeRollers({ motor, wheel, motorRadius: 25, wheelRadius: 97, links: 98, sag: 30 });
    expect(slack.loose.y - drawn.loose.y).toBeCloseTo(30, 9);
    expect(Math.min(...slack.spots.map(({ y }) => y))).toBeCloseTo(
      Math.min(...drawn.spots.map(({ y }) => y)),
      9,
    );
  });

  // sin lean = (97 − 25) ÷ 400 = 0.18; its angle is 10.37°.
  it('falls to the larger sprocket by the lean of the strand', () => {
    expect(drawn.looseDegrees).toBeCloseTo(10.37, 2);
  });
});

describe('another unit of the job', () => {
  it('leaves sizes that were stored bare as they were meant', () => {
    const job = jobWith({ centres: '420', chain: '40', mass: '310', motorTorque: '38' });
    expect(hasBareNumbers(job.drive)).toBe(true);
    const turned = after(job, turnUnit(job, 'in', readDrive));
    expect(turned.unit).toBe('in');
    expect(turned.drive).toEqual({
      centres: { typed: '420', mm: 420 },
      chain: '40',
      mass: { typed: '310', value: 310 },
      motorTorque: { typed: '38', value: 38 },
    });
  });

  it('needs no reading where every text carries its unit', () => {
    expect(hasBareNumbers({ centres: '420 mm', ground: 'earth', grade: '18 %' })).toBe(false);
    expect(hasBareNumbers(undefined)).toBe(false);
  });
});

it('two versions of a job differ in their drives, entry by entry', () => {
  const mine = jobWith({ motorTeeth: 12, centres: { typed: '420', mm: 420 } });
  const theirs = after(mine, setDrive(mine, { motorTeeth: 11, mass: '310 kg' }));
  expect(differences(mine, theirs)).toEqual([
    { what: 'Drive: motor teeth', mine: '12', theirs: '11' },
    { what: 'Drive: centres', mine: '420', theirs: 'not given' },
    { what: 'Drive: mass', mine: 'not given', theirs: '310 kg' },
  ]);
});
