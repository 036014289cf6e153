// The commands around `part`: help, version, the list of families.
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { listAbouts } from '../../parts-library/parts/index.js';
import { run } from '../../server/cli/run.js';

describe('fishplate', () => {
  it.each([[[]], [['--help']], [['help']]])('%j says what it can do', async (args) => {
    const { code, out } = await run(args);
    expect(code).toBe(0);
    for (const command of ['fishplate part', 'fishplate parts', 'fishplate serve'])
      expect(out).toContain(command);
  });

  it('says its version', async () => {
    const { code, out } = await run(['--version']);
    expect(code).toBe(0);
    expect(out).toMatch(/^fishplate \d+\.\d+\.\d+\n$/);
  });

  it('lists the families, readable and as JSON', async () => {
    const { code, out } = await run(['parts']);
    expect(code).toBe(0);
    expect(out).toContain('adapter-plate');
    expect(out).toContain('bent-bracket');
    const listed = z
      .object({
        parts: z.array(
          z.looseObject({
            id: z.string(),
            fields: z.array(z.looseObject({ path: z.string(), title: z.string() })),
          }),
        ),
      })
      .parse(JSON.parse((await run(['parts', '--json'])).out ?? ''));
    expect(listed.parts.map(({ id }) => id)).toEqual(listAbouts().map(({ id }) => id));
    expect(listed.parts[0]?.fields.map(({ path }) => path)).toContain('pattern2.boltCircle');
  });

  it('suggests the command that was meant', async () => {
    const { code, err } = await run(['prats']);
    expect(code).toBe(2);
    expect(err).toContain('Did you mean parts?');
  });
});
