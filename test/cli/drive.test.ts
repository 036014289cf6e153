// `fishplate drive`: the orchard cart's drive from its readings, as a report and as JSON.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { run } from '../../server/cli/run.js';
import { driveSummarySchema } from '../../server/http/schemas.js';
import { inFolder } from './in-folder.js';

const MOTOR_AND_HILL = [
  '--motor-torque',
  '38 N·m',
  '--mass',
  '310 kg',
  '--grade',
  '18 %',
  '--driven-mass',
  '190 kg',
];
const CART = [
  ...'drive --motor-teeth 12 --wheel-teeth 48 --inner-width 7.8±0.05 --roller 8.5 --centres 420'.split(' '),
  ...'--twelve-pitches 153.1±0.1 --motor-speed 1400 --tyre-diameter 406 --loaded-radius 191'.split(' '),
  ...MOTOR_AND_HILL,
];

const errorSchema = z.object({
  error: z.looseObject({
    exitCode: z.number(),
    errors: z.array(z.looseObject({ field: z.string(), flag: z.string().optional(), says: z.string() })),
  }),
});

describe('the drive of the cart', () => {
  it('gives the figures that a person computes by hand', async () => {
    const { code, out, err } = await run([...CART, '--json']);
    expect([code, err]).toEqual([0, undefined]);
    const numbers = driveSummarySchema.parse(JSON.parse(out ?? ''));
    const amount = (id: string) => numbers.figures.find((one) => one.id === id)?.value.amount ?? 0;
    // 1400 ÷ 4 = 350 rpm; 203 − 12 ÷ 3 = 199 mm; 350 × 398 ÷ 5305.16 = 26.257 km/h.
    expect(amount('road-speed')).toBeCloseTo(26.257, 3);
    // 38 × 4 × 0.94 ÷ 0.191 = 748.06 N.
    expect(amount('ground-pull')).toBeCloseTo(748.06, 2);
    // 153.1 ÷ 152.4 − 1 = 0.459 %.
    expect(amount('wear')).toBeCloseTo(0.459, 3);
    expect(numbers.candidates.map(({ name }) => name)).toEqual(['08B', '428']);
    expect(numbers.changes[0]).toMatchObject({ motorTeeth: 12, wheelTeeth: 48, climbs: true });
  });

  it('reads as a table without --json', async () => {
    const { code, out } = await run(CART);
    expect(code).toBe(0);
    expect(out).toMatch(/Road speed +26\.3 km\/h/);
    expect(out).toMatch(/08B .*fits, counted with/);
    expect(out).toMatch(/97 +419\.12 mm +-0\.88 mm +offset link/);
    expect(out).toMatch(/14\/48 .* no\n/);
    expect(out).toMatch(/passed +.*wrap/);
    for (const line of (out ?? '').split('\n')) expect(line.length).toBeLessThanOrEqual(100);
  });

  it('is worded in inches and mph in an inch job', async () => {
    const { code, out } = await run(
      'drive --unit in --chain 40 --centres 15 --wheel-speed 600 --tyre-diameter 18'.split(' '),
    );
    expect(code).toBe(0);
    // Published rule: 600 rpm on an 18 in tyre is 32.13 mph.
    expect(out).toMatch(/Road speed +32\.1 mph/);
    expect(out).toMatch(/Exact centre distance +\d+\.\d+ in/);
  });

  it('too heavy for its hill exits 3 and says so on both streams', async () => {
    const heavy = [...CART.slice(0, -5), '620 kg', '--grade', '18 %', '--driven-mass', '400 kg'];
    const { code, out, err } = await run(heavy);
    expect(code).toBe(3);
    expect(err).toContain('It stalls on 18 %');
    expect(out).toContain('STOP');
    const json = await run([...heavy, '--json']);
    expect(json.code).toBe(3);
    expect(JSON.parse(json.out ?? '')).toMatchObject({ error: { exitCode: 3, code: 'stop-finding' } });
  });

  it('comes from a file, the flags winning', async () => {
    await inFolder(async (folder) => {
      const path = join(folder, 'drive.json');
      await writeFile(path, JSON.stringify({ motorTeeth: 11, wheelTeeth: 44, chain: '40' }));
      const { out } = await run(['drive', '--params', path, '--wheel-teeth', '55', '--json']);
      const { figures, chain } = driveSummarySchema.parse(JSON.parse(out ?? ''));
      expect(figures.find(({ id }) => id === 'ratio')?.value.amount).toBe(5);
      expect(chain).toEqual({ name: '40', from: 'name' });
    });
  });

  it('is described by --help with unit, default and measuring', async () => {
    const { code, out } = await run(['drive', '--help']);
    expect(code).toBe(0);
    for (const flag of ['--motor-teeth N', '--twelve-pitches LENGTH', '--motor-speed RPM', '--grade PERCENT'])
      expect(out).toContain(flag);
    expect(out).toMatch(/6 to 150; default 12/);
    expect(out).toContain('Measuring: Mark one tooth with chalk');
    expect(out).not.toContain('--out');
  });
});

describe('bad input exits 2 and names the flag', () => {
  it.each<readonly [string, readonly string[], string, string]>([
    ['a misspelt flag', ['--motor-tooth', '12'], 'motor-tooth', 'did you mean --motor-teeth'],
    ['an unquoted value', ['--mass', '310', 'kg'], 'arguments', '"kg" stands alone'],
    ['a count out of range', ['--motor-teeth', '3'], 'motorTeeth', '6 to 150'],
    ['a chain that is none', ['--chain', 'velo'], 'chain', '08B'],
    ['a torque in kg', ['--motor-torque', '38kg'], 'motorTorque', 'N·m'],
    ['a slope beyond 45°', ['--grade', '140 %'], 'grade', '0 to 100 %'],
    ['a list with a word', ['--wheel-others', '40,many'], 'wheelOthers', '"many"'],
    ['a unit of nothing', ['--unit', 'ell'], 'unit', 'mm or in'],
    ['a file that is not there', ['--params', '/nowhere.json'], 'params', 'cannot be read'],
  ])('%s', async (_, flags, field, says) => {
    const { code, out } = await run(['drive', ...flags, '--json']);
    expect(code).toBe(2);
    const { errors } = errorSchema.parse(JSON.parse(out ?? '')).error;
    const found = errors.find((one) => one.field === field);
    expect(found?.says).toContain(says);
  });

  it('a slip of the command finds it', async () => {
    expect((await run(['drvie'])).err).toContain('Did you mean drive?');
  });
});
