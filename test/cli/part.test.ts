// `fishplate part`: the adapter of the orchard cart, from its measures to files in a folder.
import { existsSync } from 'node:fs';
import { lstat, mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { run } from '../../server/cli/run.js';
import { inFolder } from './in-folder.js';

const ADAPTER = (
  'part adapter-plate --bolts 6 --bolt-circle 110 --bolt M10 --holes drill --hub 57.15 --fit 0.2 ' +
  '--outside 150 --thickness 6 --material S275 --kerf 1.6'
).split(' ');

const FILES = [
  'adapter-plate.cut.dxf',
  'adapter-plate.cut.svg',
  'adapter-plate.finished.dxf',
  'adapter-plate.finished.svg',
  'adapter-plate.print.svg',
];

const reportSchema = z.looseObject({
  part: z.looseObject({
    family: z.string(),
    area: z.number(),
    perimeter: z.number(),
    mass: z.number(),
    thickness: z.number(),
    bounds: z.object({
      minX: z.number(),
      minY: z.number(),
      maxX: z.number(),
      maxY: z.number(),
      width: z.number(),
      height: z.number(),
    }),
    openings: z.array(z.looseObject({ id: z.string(), diameter: z.number().optional() })),
    marks: z.array(z.looseObject({ id: z.string(), x: z.number(), y: z.number() })),
  }),
  cut: z.looseObject({
    length: z.number(),
    pierces: z.number(),
    seconds: z.number(),
    marks: z.number(),
    kerf: z.number(),
    speed: z.number(),
    pierceSeconds: z.number(),
    leadInLength: z.number(),
    contours: z.array(
      z.looseObject({ featureId: z.string(), length: z.number(), leadIn: z.number(), speed: z.number() }),
    ),
  }),
  findings: z.array(z.looseObject({ code: z.string(), level: z.string() })),
  files: z.array(z.object({ name: z.string(), path: z.string(), bytes: z.number() })),
  error: z.looseObject({ exitCode: z.number(), code: z.string(), message: z.string() }).optional(),
});

/** The one JSON object that a command printed. */
const report = (out = '') => reportSchema.parse(JSON.parse(out));

/** Runs the adapter plate with a parameter file of this text. */
const runWithFile = (text: string) =>
  inFolder(async (folder) => {
    await writeFile(join(folder, 'plate.json'), text);
    return run(['part', 'adapter-plate', '--params', join(folder, 'plate.json'), '--json']);
  });

/** The one JSON object of a command that was refused. */
const refusal = (out = '') => errorSchema.parse(JSON.parse(out)).error;

const errorSchema = z.object({
  error: z.looseObject({
    exitCode: z.number(),
    code: z.string(),
    errors: z.array(z.looseObject({ field: z.string(), flag: z.string().optional(), says: z.string() })),
  }),
});

describe('the adapter with six marks and a bore', () => {
  it('gives the figures that a person computes by hand', async () => {
    const { code, out, err } = await run([...ADAPTER, '--json']);
    expect([code, err]).toEqual([0, undefined]);
    const { part, cut } = report(out);
    // A ring of 150 outside and 57.15 + 0.2 = 57.35 inside, 6 mm, 7850 kg/m³.
    expect(part.area).toBeCloseTo((Math.PI / 4) * (150 ** 2 - 57.35 ** 2), 5);
    expect(part.perimeter).toBeCloseTo(Math.PI * (150 + 57.35), 5);
    expect(part.mass).toBeCloseTo((Math.PI / 4) * (150 ** 2 - 57.35 ** 2) * 6 * 7850e-9, 5);
    expect([part.bounds.width, part.bounds.height]).toEqual([150, 150]);
    expect(part.openings).toMatchObject([{ id: 'centre', diameter: 57.35 }]);
    // Half the kerf inward on the bore, outward on the outline: pi (57.35 - 1.6) + pi (150 + 1.6).
    expect(cut.length).toBeCloseTo(Math.PI * (57.35 - 1.6) + Math.PI * (150 + 1.6), 5);
    expect([cut.pierces, cut.marks, cut.kerf]).toEqual([2, 6, 1.6]);
    // Time is lengths over speeds plus two pierce delays.
    const seconds = cut.contours.reduce(
      (sum, one) => sum + ((one.length + one.leadIn) / one.speed) * 60 + cut.pierceSeconds,
      0,
    );
    expect(cut.seconds).toBeCloseTo(seconds, 4);
    // Six marks on a circle of 110, 60 degrees apart, the first on top.
    expect(part.marks.map(({ x, y }) => Math.hypot(x, y).toFixed(4))).toEqual(
      Array.from({ length: 6 }, () => '55.0000'),
    );
    expect(part.marks[0]).toMatchObject({ id: 'pattern1.hole.1', x: 0, y: 55 });
  });

  it('writes the files, each saying what it is', async () => {
    await inFolder(async (folder) => {
      const { code, out } = await run([...ADAPTER, '--out', join(folder, 'new/folder'), '--json']);
      expect(code).toBe(0);
      const { files } = report(out);
      const directory = join(folder, 'new/folder');
      expect((await readdir(directory)).toSorted()).toEqual(FILES);
      expect(files.map(({ name }) => name).toSorted()).toEqual(FILES);
      for (const { name, path, bytes } of files) {
        expect(path).toBe(join(directory, name));
        expect((await readFile(path)).length).toBe(bytes);
      }
      const cut = await readFile(join(directory, 'adapter-plate.cut.dxf'), 'latin1');
      expect(cut).toContain('kerf 1.6 mm already in');
      expect(cut.replaceAll('\r\n', '')).not.toContain('\n');
      expect(await readFile(join(directory, 'adapter-plate.finished.dxf'), 'latin1')).toContain(
        'FINISHED SIZE',
      );
      expect(await readFile(join(directory, 'adapter-plate.print.svg'), 'utf8')).toContain('<svg');
    });
  });

  it('writes the same bytes twice, over its own files', async () => {
    await inFolder(async (folder) => {
      const read = () => Promise.all(FILES.map((name) => readFile(join(folder, name), 'utf8')));
      await run([...ADAPTER, '--out', folder]);
      const first = await read();
      expect((await run([...ADAPTER, '--out', folder])).code).toBe(0);
      expect(await read()).toEqual(first);
      expect((await readdir(folder)).length).toBe(FILES.length);
    });
  });

  it('reads as a table without --json', async () => {
    const { code, out } = await run(ADAPTER);
    expect(code).toBe(0);
    expect(out).toMatch(/openings +centre opening ⌀57\.35 mm/);
    expect(out).toMatch(/cut length +651\.41 mm/);
    expect(out).toMatch(/pierces +2, and 6 centre marks/);
    expect(out).toMatch(/passed +.*edge-distance/);
    expect(out).toContain('add --out DIR');
  });

  it('is the same part in inches', async () => {
    const inches = (
      'part adapter-plate --unit in --bolts 6 --bolt-circle 110mm --bolt M10 --holes drill --hub 2-1/4 ' +
      '--fit 0.2mm --outside 150mm --thickness 6mm --material S275 --kerf 1.6mm --json'
    ).split(' ');
    const [one, two] = await Promise.all([run([...ADAPTER, '--json']), run(inches)]);
    expect(two.code).toBe(0);
    expect(report(two.out).part.area).toBeCloseTo(report(one.out).part.area, 6);
    expect(report(two.out).cut.length).toBeCloseTo(report(one.out).cut.length, 6);
  });
});

describe('parameters', () => {
  it('come from a file, the flags winning', async () => {
    await inFolder(async (folder) => {
      const parameters = {
        bolts: 5,
        boltCircle: 'circle 95',
        bolt: 'M8',
        outside: 130,
        pattern2: { bolts: 4, boltCircle: 60 },
      };
      await writeFile(join(folder, 'plate.json'), JSON.stringify(parameters));
      const { code, out } = await run([
        'part',
        'adapter-plate',
        '--params',
        join(folder, 'plate.json'),
        '--bolts',
        '6',
        '--pattern2.bolts',
        '3',
        '--json',
      ]);
      expect(code).toBe(0);
      const openings = report(out).part.openings.map(({ id }) => id);
      expect(openings.filter((id) => id.startsWith('pattern1.hole'))).toHaveLength(6);
      expect(openings.filter((id) => id.startsWith('pattern2.hole'))).toHaveLength(3);
    });
  });

  it('come from a file with a byte-order mark', async () => {
    const { code, out } = await runWithFile('\uFEFF{"outside": 150}');
    expect(code).toBe(0);
    expect(report(out).part.bounds.width).toBe(150);
  });

  it('come from a file that is a whole request', async () => {
    const request = {
      parameters: { bolts: 6, holes: 'drill', outside: 150 },
      process: { kerf: 2 },
      name: 'Hub plate',
    };
    const { code, out } = await runWithFile(JSON.stringify(request));
    expect(code).toBe(0);
    expect(report(out).cut.kerf).toBe(2);
    expect(report(out).part['name']).toBe('Hub plate');
  });

  it('take a measure as it was read: five holes, adjacent 55.84, lie on a circle of 95', async () => {
    const args = [
      'part',
      'adapter-plate',
      '--bolts',
      '5',
      '--bolt-circle',
      'adjacent 55.84±0.1',
      '--holes',
      'drill',
    ];
    const { out } = await run([...args, '--json']);
    // The chord of a regular pentagon: 55.84 / sin(180°/5) = 95.00.
    for (const { x, y } of report(out).part.marks) expect(2 * Math.hypot(x, y)).toBeCloseTo(95.0, 2);
  });

  it('are listed by --help with unit, default and measuring', async () => {
    const { code, out } = await run(['part', 'adapter-plate', '--help']);
    expect(code).toBe(0);
    for (const flag of [
      '--bolt-circle',
      '--pattern2.bolts',
      '--hub',
      '--kerf-plus-minus',
      '--despite-findings',
    ]) {
      expect(out).toContain(flag);
    }
    expect(out).toMatch(/2 to 24; default 5/);
    expect(out).toContain('Measuring: Count the holes.');
  });
});

describe('bad input exits 2, writes nothing and names the field, what was given and what is accepted', () => {
  it.each<readonly [string, readonly string[], string, string]>([
    ['a misspelt flag', ['--bolt-cirlce', '110'], 'bolt-cirlce', 'did you mean --bolt-circle'],
    ['a flag of nothing', ['--zzz'], 'zzz', 'There is no flag'],
    ['a flag without value', ['--bolts'], 'bolts', 'needs a value'],
    ['a flag that swallows the next', ['--bolts', '--bolt', 'M8'], 'bolts', 'needs a value, but "--bolt"'],
    ['an empty value', ['--bolts='], 'bolts', 'needs a value'],
    ['a flag twice', ['--bolts', '5', '--bolts', '6'], 'bolts', 'twice'],
    ['a switch with a value', ['--despite-findings=no'], 'despite-findings', 'takes no value'],
    ['an unquoted value', ['--bolt-circle', 'adjacent', '55'], 'arguments', '"55" stands alone'],
    ['no whole number', ['--bolts', '5.5'], 'bolts', '"5.5"'],
    ['too many bolts', ['--bolts', '99'], 'bolts', '2 to 24'],
    ['a negative count', ['--bolts', '-5'], 'bolts', '"-5"'],
    ['words for a length', ['--outside', 'wide'], 'outside', 'wide'],
    ['an unknown unit', ['--outside', '150 furlong'], 'outside', 'furlong'],
    ['a division by zero', ['--outside', '1/0'], 'outside', 'division by zero'],
    ['a length out of range', ['--outside', '9999'], 'outside', '10 to 2000 mm'],
    ['a negative length', ['--hub', '-57'], 'hub', '-57'],
    ['infinity', ['--outside', 'Infinity'], 'outside', 'Infinity'],
    ['an unknown measure', ['--bolt-circle', 'about 110'], 'boltCircle', 'about'],
    ['an unknown thread', ['--bolt', 'M11.5'], 'bolt', 'M11.5'],
    ['an unknown material', ['--material', 'unobtainium'], 'material', 'unobtainium'],
    ['an unknown hole way', ['--holes', 'punched'], 'holes', 'clearance, tapped, drill'],
    ['an unknown choice', ['--shape', 'square'], 'shape', 'round, lobed'],
    ['an unknown chain', ['--chain', '999'], 'chain', '999'],
    ['words for an angle', ['--clocking', 'up'], 'clocking', 'up'],
    ['a word in the second pattern', ['--pattern2.bolts', 'four'], 'pattern2.bolts', '"four"'],
    ['a line break in the label', ['--label', 'one\ntwo'], 'label', 'control character'],
    ['a kerf out of range', ['--kerf', '20'], 'process.kerf', '0.1 to 8 mm'],
    ['no kerf', ['--kerf', '0'], 'process.kerf', '0.1 to 8 mm'],
    ['words for a kerf', ['--kerf', 'thin'], 'process.kerf', 'thin'],
    ['words for a speed', ['--speed', 'fast'], 'process.speed', 'fast'],
    ['a negative pierce delay', ['--pierce-seconds', '-1'], 'process.pierceSeconds', '-1'],
    ['an unknown class', ['--process', 'laser'], 'process.processClass', 'air-45A'],
    ['an unknown unit of the job', ['--unit', 'cm'], 'unit', 'mm or in'],
    ['an unknown DXF version', ['--dxf', 'r14'], 'dxf', 'r12 or r2000'],
    ['no quantity', ['--quantity', 'some'], 'quantity', '"some"'],
    ['none at all', ['--quantity', '0'], 'quantity', '1 to 10000'],
    ['a line break in the name', ['--name', 'a\nb'], 'name', 'without line breaks'],
    ['a file that is not there', ['--params', 'missing.json'], 'params', '"missing.json" cannot be read'],
  ])('%s', async (_, args, field, words) => {
    await inFolder(async (folder) => {
      const { code, out } = await run([
        'part',
        'adapter-plate',
        ...args,
        '--out',
        join(folder, 'out'),
        '--json',
      ]);
      expect(code).toBe(2);
      const error = refusal(out);
      expect(error).toMatchObject({ exitCode: 2, code: 'bad-input' });
      const said = error.errors.find((one) => one.field === field);
      expect(said?.says ?? JSON.stringify(error.errors)).toContain(words);
      expect(await readdir(folder)).toEqual([]);
    });
  });

  it.each<readonly [string, string, string, string]>([
    ['no JSON', '{"bolts": 5', 'params', 'is not JSON'],
    ['a list', '[1, 2]', 'params', 'no JSON object'],
    ['a prototype', '{"__proto__": {"bolts": 5}}', 'params', '__proto__'],
    ['an unknown unit', '{"parameters": {}, "unit": "cm"}', 'unit', '"cm"; accepted are unit ("mm" or "in")'],
    ['a name that is a number', '{"parameters": {}, "name": 5}', 'name', 'is 5'],
    ['a quantity in words', '{"parameters": {}, "quantity": "5"}', 'quantity', 'is "5"'],
    ['a list as process', '{"parameters": {}, "process": [1]}', 'process', 'is [1]'],
    ['an unknown name beside the parameters', '{"parameters": {}, "kerf": 2}', 'kerf', 'accepted are unit'],
    ['an unknown name', '{"boltCount": 5}', 'boltCount', 'no parameter "boltCount"'],
    ['a truth value', '{"bolts": true}', 'bolts', 'true'],
    ['a list of lengths', '{"outside": [150]}', 'outside', '[150]'],
    ['a truth value for a thread', '{"bolt": true}', 'bolt', 'true'],
    ['a number for a group', '{"pattern2": 4}', 'pattern2', '4'],
    ['an unknown name of a group', '{"pattern2": {"size": 4}}', 'pattern2.size', 'no parameter "size"'],
    ['nothing', '{"outside": null}', 'outside', 'null'],
    [
      'an unknown figure of the process',
      '{"parameters": {}, "process": {"power": 3}}',
      'process.power',
      'no "power"',
    ],
  ])('in a file: %s', async (_, text, field, words) => {
    const { code, out } = await runWithFile(text);
    expect(code).toBe(2);
    const error = refusal(out);
    const said = error.errors.find((one) => one.field === field);
    expect(said?.says ?? JSON.stringify(error.errors)).toContain(words);
  });

  it('a flag for a group that the file gives as a number does not hide it', async () => {
    await inFolder(async (folder) => {
      const file = join(folder, 'plate.json');
      await writeFile(file, '{"pattern2": 5}');
      const { code, out } = await run(
        `part adapter-plate --pattern2.bolts 3 --params ${file} --json`.split(' '),
      );
      expect(code).toBe(2);
      expect(refusal(out).errors).toMatchObject([{ field: 'pattern2' }]);
    });
  });

  it('names every field at once, with its flag, in plain text too', async () => {
    const { code, out, err } = await run([
      'part',
      'adapter-plate',
      '--bolts',
      'x',
      '--outside',
      'y',
      '--kerf',
      'z',
    ]);
    expect([code, out]).toEqual([2, undefined]);
    expect(err).toContain('3 values cannot be used');
    for (const flag of ['--bolts:', '--outside:', '--kerf:']) expect(err).toContain(flag);
  });

  it('suggests the family that was meant', async () => {
    const { code, err } = await run(['part', 'adaptor-plate']);
    expect(code).toBe(2);
    expect(err).toContain('Did you mean adapter-plate?');
  });

  it.each([[['prats']], [['part']], [['parts', '--all']]])('%j', async (args) => {
    expect((await run(args)).code).toBe(2);
  });
});

// M10 bolts 7 mm from the edge, less than one diameter: inside any edge distance.
const TOO_NEAR = [
  'part',
  'adapter-plate',
  '--bolts',
  '5',
  '--bolt-circle',
  '110',
  '--bolt',
  'M10',
  '--outside',
  '124',
];

describe('a stop finding', () => {
  it('exits 3 and writes nothing', async () => {
    await inFolder(async (folder) => {
      const { code, out } = await run([...TOO_NEAR, '--out', join(folder, 'out'), '--json']);
      expect(code).toBe(3);
      const { error, findings, files } = report(out);
      expect(error).toMatchObject({ exitCode: 3, code: 'stop-finding' });
      expect(findings[0]?.level).toBe('stop');
      expect(files).toEqual([]);
      expect(await readdir(folder)).toEqual([]);
    });
  });

  it('can be overruled; the files then say so', async () => {
    await inFolder(async (folder) => {
      const { code } = await run([...TOO_NEAR, '--out', join(folder, 'out'), '--despite-findings']);
      expect(code).toBe(0);
      for (const name of await readdir(join(folder, 'out'))) {
        expect(await readFile(join(folder, 'out', name), 'utf8')).toContain(
          'STOP FINDING, written despite it',
        );
      }
    });
  });

  it('warns of a cut file from an earlier run that would be taken for this one', async () => {
    await inFolder(async (folder) => {
      await writeFile(join(folder, 'adapter-plate.cut.dxf'), 'an older part');
      const { code, err } = await run([...TOO_NEAR, '--out', folder]);
      expect(code).toBe(3);
      expect(err).toMatch(/Beware: adapter-plate\.cut\.dxf from an earlier run/);
      expect(await readFile(join(folder, 'adapter-plate.cut.dxf'), 'utf8')).toBe('an older part');
    });
  });

  it('is at the top of the report', async () => {
    const { code, out, err } = await run(TOO_NEAR);
    expect(code).toBe(3);
    expect(out).toMatch(/Findings\n {2}STOP/);
    expect(err).toContain('--despite-findings');
  });
});

describe('a folder that cannot be written to', () => {
  it('is no folder', async () => {
    await inFolder(async (folder) => {
      await writeFile(join(folder, 'out'), 'mine');
      const { code, err } = await run([...ADAPTER, '--out', join(folder, 'out')]);
      expect(code).toBe(2);
      expect(err).toContain('--out');
      expect(await readFile(join(folder, 'out'), 'utf8')).toBe('mine');
    });
  });

  it.skipIf(!existsSync('/proc/self'))('takes no new folders', async () => {
    const { code, err } = await run([...ADAPTER, '--out', '/proc/fishplate/out']);
    expect(code).toBe(2);
    expect(err).toContain('"/proc/fishplate/out" cannot be made: a part of the path leads nowhere');
  });

  it('is a link to a folder that is gone', async () => {
    await inFolder(async (folder) => {
      await symlink('gone/deeper', join(folder, 'out'));
      const { code, err } = await run([...ADAPTER, '--out', join(folder, 'out')]);
      expect(code).toBe(2);
      expect(err).toContain('a part of the path leads nowhere');
    });
  });

  it.each(['a folder', 'a link'])('holds %s under the name of a file', async (what) => {
    await inFolder(async (folder) => {
      const inTheWay = join(folder, 'adapter-plate.cut.dxf');
      if (what === 'a link') await symlink('/dev/null', inTheWay);
      else await mkdir(inTheWay);
      const { code, err } = await run([...ADAPTER, '--out', folder]);
      expect(code).toBe(2);
      expect(err).toContain('not a plain file');
      expect(await readdir(folder)).toEqual(['adapter-plate.cut.dxf']);
      expect((await lstat(inTheWay)).isFile()).toBe(false);
    });
  });
});
