// `fishplate import`: a drawing becomes a part at the command line, or is refused with the flag that would help.
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { run } from '../../server/cli/run.js';
import { box, circle, dxf, line } from '../files/drawn.js';
import { inFolder } from './in-folder.js';
import { runCli } from './run-cli.js';

const TIE_PLATE = fileURLToPath(new URL('../files/drawings/tie-plate.dxf', import.meta.url));

const answer = z.looseObject({
  part: z.looseObject({ name: z.string(), area: z.number() }),
  parameters: z.looseObject({
    drawing: z.looseObject({ shapes: z.array(z.looseObject({ operation: z.string() })) }),
  }),
  reading: z.looseObject({
    parts: z.array(z.unknown()),
    findings: z.array(z.looseObject({ code: z.string() })),
  }),
  files: z.array(z.looseObject({ name: z.string() })),
});

const refusal = z.object({
  error: z.looseObject({
    errors: z.array(z.looseObject({ field: z.string(), flag: z.string().optional(), says: z.string() })),
  }),
});

const importing = async (...args: readonly string[]) => run(['import', ...args]);

async function refused(...args: readonly string[]) {
  const { code, out } = await importing(...args, '--json');
  return { code, errors: refusal.parse(JSON.parse(out ?? '')).error.errors };
}

describe('a drawing', () => {
  test('is told, drawn and written under the name of its file', async () => {
    await inFolder(async (folder) => {
      const out = join(folder, 'out');
      const {
        code,
        out: said,
        err,
      } = await importing(TIE_PLATE, '--thickness', '6', '--kerf', '1.6', '--out', out);
      expect([code, err]).toEqual([0, undefined]);
      expect(said).toContain('tie-plate.dxf (DXF), numbers in mm');
      expect(said).toContain('cut: cut (7); etch: etch (1)');
      expect(said).toContain('160 mm × 90 mm');
      expect((await readdir(out)).toSorted()).toEqual([
        'tie-plate.cut.dxf',
        'tie-plate.cut.svg',
        'tie-plate.finished.dxf',
        'tie-plate.finished.svg',
        'tie-plate.print.svg',
      ]);
    });
  });

  test('from its own finished file is the same part again', async () => {
    await inFolder(async (folder) => {
      const areaOf = async (path: string, ...more: readonly string[]): Promise<number> => {
        const { out } = await importing(path, ...more, '--json');
        return answer.parse(JSON.parse(out ?? '')).part.area;
      };
      // 14400 − (4 − π) 12² − 5 π 4.5² − π 25² − 225, worked by hand.
      const area = 14400 - (4 - Math.PI) * 144 - 5 * Math.PI * 4.5 ** 2 - Math.PI * 625 - 225;
      expect(await areaOf(TIE_PLATE, '--out', folder)).toBeCloseTo(area, 6);
      for (const name of ['tie-plate.finished.dxf', 'tie-plate.finished.svg'])
        expect(await areaOf(join(folder, name))).toBeCloseTo(area, 2);
    });
  });

  test('takes a name, the flags of the part, and what is done on each layer', async () => {
    await inFolder(async (folder) => {
      const path = join(folder, 'two.dxf');
      await writeFile(
        path,
        dxf(
          [
            box('0', 0, 0, 4, 3),
            circle('holes', 2, 1.5, 0.25),
            line('fold', 0, 1, 4, 1),
            box('0', 9, 0, 2, 2),
          ],
          { units: 0 },
        ),
      );
      const { code, out } = await importing(
        path,
        '--as',
        'Cart foot',
        '--file-unit',
        'in',
        '--pick',
        '1',
        '--layers',
        'holes=mark, fold=etch',
        '--width',
        '8 in',
        '--json',
      );
      expect(code).toBe(0);
      const { part, parameters, reading } = answer.parse(JSON.parse(out ?? ''));
      expect(part.name).toBe('Cart foot');
      // 8 in × 6 in, nothing cut out of it.
      expect(part.area).toBeCloseTo(48 * 25.4 ** 2, 6);
      expect(parameters.drawing.shapes.map(({ operation }) => operation)).toEqual([
        'outline',
        'mark',
        'etch',
      ]);
      expect(reading.parts).toHaveLength(2);
      expect(reading.findings.map(({ code: told }) => told)).toContain('several-outlines');
    });
  });

  test('kept as a file makes the same part by its family', async () => {
    await inFolder(async (folder) => {
      const kept = join(folder, 'tie-plate.json');
      await importing(TIE_PLATE, '--mark-up-to', '9', '--save', kept);
      const { parameters } = z
        .object({ parameters: z.looseObject({ markUpTo: z.string() }), name: z.literal('tie-plate') })
        .loose()
        .parse(JSON.parse(await readFile(kept, 'utf8')));
      expect(parameters.markUpTo).toBe('9');
      const { code, out } = await run(['part', 'own-outline', '--params', kept, '--json']);
      expect(code).toBe(0);
      expect(
        z.looseObject({ part: z.looseObject({ marks: z.array(z.unknown()) }) }).parse(JSON.parse(out ?? ''))
          .part.marks,
      ).toHaveLength(4);
    });
  });

  test('comes through a pipe too, as bytes', async () => {
    const { code, out } = await runCli(['import', '-', '--json'], {
      input: await readFile(TIE_PLATE, 'utf8'),
    });
    expect(code).toBe(0);
    expect(answer.parse(JSON.parse(out)).part.name).toBe('drawing');
  });
});

describe('refusals', () => {
  test('name the flag that would help', async () => {
    await inFolder(async (folder) => {
      const path = join(folder, 'silent.dxf');
      await writeFile(path, dxf([box('0', 0, 0, 4, 3)], { units: undefined }));
      expect(await refused(path)).toMatchObject({
        code: 2,
        errors: [{ field: 'unit', flag: '--file-unit' }],
      });
      expect(await refused(path, '--file-unit', 'mm', '--pick', '2')).toMatchObject({
        errors: [{ flag: '--pick' }],
      });
      expect(await refused(path, '--file-unit', 'cubit')).toMatchObject({
        errors: [{ flag: '--file-unit' }],
      });
      expect(await refused(path, '--file-unit', 'mm', '--layers', 'x=cut')).toMatchObject({
        errors: [{ flag: '--layers' }],
      });
    });
  });

  test.each([
    [['--layers', 'bend'], '--layers'],
    [['--layers', 'bend=weld'], '--layers'],
    [['--lines', 'cut'], '--lines'],
    [['--gap', 'wide'], '--gap'],
    [['--pick', 'first'], '--pick'],
    [['--arc-tolerance', '3 m'], '--arc-tolerance'],
    [['--thicknes', '6'], '--thicknes'],
  ] as const)('%s', async (args, flag) => {
    expect((await refused(TIE_PLATE, ...args)).errors.map((one) => one.flag)).toContain(flag);
  });

  test('no file, two files, one that is not there, one that is no drawing', async () => {
    await inFolder(async (folder) => {
      const letter = join(folder, 'letter.txt');
      await writeFile(letter, 'Dear customer');
      expect((await refused()).errors[0]?.says).toContain('Name the drawing');
      expect((await refused(TIE_PLATE, TIE_PLATE)).errors[0]?.says).toContain('one drawing');
      expect((await refused(join(folder, 'none.dxf'))).errors[0]?.says).toContain('cannot be read');
      expect((await refused(letter)).errors[0]?.says).toContain('neither DXF nor SVG');
    });
  });

  test('a contour that could not be used withholds the files', async () => {
    await inFolder(async (folder) => {
      const path = join(folder, 'crossed.dxf');
      const bow = [
        line('0', 10, 10, 20, 20),
        line('0', 20, 20, 20, 10),
        line('0', 20, 10, 10, 20),
        line('0', 10, 20, 10, 10),
      ];
      await writeFile(path, dxf([box('0', 0, 0, 60, 40), ...bow]));
      const { code, err } = await importing(path, '--out', join(folder, 'out'));
      expect(code).toBe(3);
      expect(err).toContain('Nothing was written');
    });
  });

  test('help says how a drawing is read', async () => {
    const { code, out } = await importing('--help');
    expect(code).toBe(0);
    for (const flag of ['--as', '--file-unit', '--pick', '--layers', '--gap', '--arc-tolerance', '--save'])
      expect(out).toContain(flag);
  });
});
