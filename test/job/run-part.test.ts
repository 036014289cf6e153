// The one-part flow: figures by hand, stages that stop and go on, problems and stops instead of exceptions.
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  continueRun,
  createDemoJob,
  createFormat,
  partFiles,
  requestForRow,
  resultOf,
  runPart,
  STAGES,
  startingShop,
  startRun,
  summarise,
  type PartRequest,
} from '../../parts-library/job/index.js';
import { listFamilies } from '../../parts-library/parts/index.js';
import { exampleJob } from './example-job.js';

const measures = {
  bolts: 6,
  boltCircle: '110',
  bolt: 'M10',
  holes: 'drill',
  bore: 57.35,
  outside: 150,
  thickness: 6,
};

const ring: PartRequest = {
  family: 'adapter-plate',
  unit: 'mm',
  parameters: measures,
  process: { kerf: 1.6 },
};

describe('figures of a ring of 150 outside and 57.35 inside, 6 mm, kerf 1.6', () => {
  const run = runPart(ring, startingShop);

  it('are those that a person computes by hand', () => {
    expect(run.problems).toEqual([]);
    // π/4 (150² − 57.35²) = 15088.27 mm²; × 6 mm × 7850 kg/m³ = 0.7107 kg; π (150 + 57.35) = 651.41 mm.
    expect(run.value?.area).toBeCloseTo(15088.27, 2);
    expect(run.value?.mass).toBeCloseTo(0.7107, 4);
    expect(run.value?.perimeter).toBeCloseTo(651.41, 2);
    // π (57.35 − 1.6) + π (150 + 1.6) = 175.14 + 476.27.
    expect(run.value?.figures.length).toBeCloseTo(175.14 + 476.27, 2);
    expect([run.value?.figures.pierces, run.value?.figures.marks]).toEqual([2, 6]);
  });

  it('take speed and delay from the chart, and say that they are starting values', () => {
    // The starting chart's 6 mm row of 45 A: 1450 mm/min, 0.5 s.
    expect(run.value?.process.settings).toMatchObject({ speed: 1450, pierceSeconds: 0.5, kerf: 1.6 });
    expect(run.findings.find(({ code }) => code === 'starting-values')?.title).toBe(
      'Starting values: cutting speed, pierce delay',
    );
  });

  it('carry the kerf as given, in small holes too unless they have their own', () => {
    expect(run.value?.process.settings.holeKerf).toBe(1.6);
    expect(
      runPart({ ...ring, process: { kerf: 1.6, holeKerf: 1.7 } }, startingShop).value?.process.settings
        .holeKerf,
    ).toBe(1.7);
    // From the chart: 1.3 + 0.05 × 6 = 1.6, in holes 1.075 times that.
    const { process: _, ...charted } = ring;
    expect(runPart(charted, startingShop).value?.process.settings).toMatchObject({
      kerf: 1.6,
      holeKerf: 1.72,
    });
  });

  it('are the same after a round trip of the parameters through JSON, also in the other unit', () => {
    const parameters: unknown = JSON.parse(JSON.stringify(run.value?.parameters));
    const again = runPart({ ...ring, parameters, unit: 'in' }, startingShop);
    expect(again.value?.area).toBe(run.value?.area);
    expect(again.value?.figures.length).toBe(run.value?.figures.length);
  });
});

describe('stages', () => {
  it('stop after the one that is named, and go on from there to the same result', () => {
    const started = startRun(ring, startingShop);
    for (const stage of STAGES) {
      const stopped = continueRun(started, stage);
      expect(stopped.done).toEqual(STAGES.slice(0, STAGES.indexOf(stage) + 1));
      expect(resultOf(stopped).value === undefined).toBe(stage !== 'estimate');
      expect(summarise(resultOf(continueRun(stopped)))).toEqual(summarise(runPart(ring, startingShop)));
    }
  });

  it('are not done twice', () => {
    const whole = continueRun(startRun(ring, startingShop));
    expect(continueRun(whole)).toBe(whole);
  });
});

describe('problems', () => {
  it.each<readonly [string, Partial<PartRequest> | { readonly process: unknown }, string, string]>([
    ['a family that there is not', { family: 'flange' }, 'family', 'adapter-plate'],
    ['a parameter', { parameters: { bolts: 1 } }, 'bolts', '2 to 24'],
    ['no parameters', { parameters: 'all' }, 'parameters', 'object'],
    ['a kerf', { process: { kerf: '1,5 furlong' } }, 'process.kerf', 'furlong'],
    ['a kerf whose ± is too wide', { process: { kerf: '1.6±5' } }, 'process.kerfPlusMinus', '0 to 3 mm'],
    [
      'a ± given twice',
      { process: { kerf: '1.6±0.1', kerfPlusMinus: 0.2 } },
      'process.kerfPlusMinus',
      'given twice',
    ],
    ['a ± of the hole kerf', { process: { holeKerf: '1.7±0.1' } }, 'process.holeKerf', 'no place here'],
    ['a process that is none', { process: 45 }, 'process', 'object'],
    ['a class', { process: { processClass: 'water' } }, 'process.processClass', 'air-45A'],
    ['a name', { name: 'a\nb' }, 'name', 'line breaks'],
    ['a quantity', { quantity: 1.5 }, 'quantity', '1.5'],
  ])('name %s', (_, change, field, words) => {
    const run = runPart({ ...ring, ...change }, startingShop);
    expect(run.value).toBeUndefined();
    expect(run.problems.find((one) => one.field === field)?.says).toContain(words);
  });

  it.each([
    ['a bore larger than the plate', { bore: 160 }, 'centre opening reaches the outside'],
    ['a bore that meets the edge', { bore: 150 }, 'centre opening reaches the outside'],
    ['holes within the bore', { holes: 11, bore: 130 }, 'bolt hole 1 runs into centre opening'],
    ['holes that meet', { holes: 11, bolts: 24, boltCircle: 80 }, 'bolt hole 2 runs into bolt hole 1'],
  ])('%s is a stop finding and no part', (_, change, title) => {
    const run = runPart({ ...ring, parameters: { ...measures, ...change } }, startingShop);
    expect(run.value).toBeUndefined();
    expect(run.findings.find((finding) => finding.title === title)).toMatchObject({
      level: 'stop',
      stage: 'draw',
    });
    expect(partFiles(run, { despiteFindings: true }).ok).toBe(false);
  });

  it('anything at all as parameters is answered, never thrown', () => {
    const names = listFamilies().flatMap(({ fields }) => fields.map(({ path }) => path));
    const value = fc.oneof(fc.anything(), fc.double(), fc.integer({ min: 0, max: 300 }), fc.string());
    fc.assert(
      fc.property(
        fc.constantFrom(...listFamilies().map(({ id }) => id)),
        fc.oneof(fc.anything(), fc.dictionary(fc.constantFrom(...names), value, { maxKeys: 4 })),
        fc.anything(),
        (family, parameters, process) => {
          const run = runPart({ family, parameters, unit: 'mm', process }, startingShop);
          expect(run.value !== undefined || run.problems.length > 0 || run.findings.length > 0).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('any sizes in the middle of the range give a part, a problem or a stop', () => {
    const size = fc.double({ min: 1, max: 300, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          bolts: fc.integer({ min: 2, max: 24 }),
          boltCircle: size,
          bore: size,
          outside: size,
          thickness: size,
        }),
        (parameters) => {
          const run = runPart({ ...ring, parameters }, startingShop);
          const stopped = run.findings.some(({ level }) => level === 'stop');
          expect(run.value !== undefined || run.problems.length > 0 || stopped).toBe(true);
          // A plan that leaves out a contour always says stop.
          if (run.value !== undefined && !stopped) {
            const openings = run.value.part.features.filter(({ purpose }) => purpose === 'opening').length;
            expect(run.value.figures.pierces).toBeGreaterThanOrEqual(openings + 1);
          }
        },
      ),
      { numRuns: 150 },
    );
  }, 120_000);
});

describe('the summary', () => {
  it('has no negative nothing: four marks on the axes are at 0 and 50', () => {
    const parameters = { bolts: 4, boltCircle: 100, bolt: 'M8', holes: 'drill', hub: 30, outside: 140 };
    const summary = summarise(runPart({ ...ring, parameters }, startingShop));
    expect(summary?.part.marks.map(({ x, y }) => [x, y])).toEqual([
      [0, 50],
      [-50, 0],
      [0, -50],
      [50, 0],
    ]);
  });
});

describe('figures that look like a slip', () => {
  // The chart has a kerf of 1.6 mm and 1450 mm/min for 6 mm plate at 45 A.
  it.each([
    ['kerf', { kerf: 0.16 }],
    ['kerf', { kerf: 3.3 }],
    ['holeKerf', { kerf: 1.6, holeKerf: 8 }],
    ['speed', { speed: 145 }],
  ])('%s of %j is a caution', (field, process) => {
    const { findings } = runPart({ ...ring, process }, startingShop);
    expect(findings.find(({ code }) => code === 'unlike-chart')).toMatchObject({
      level: 'caution',
      field: `process.${field}`,
    });
  });

  it('figures near the chart are taken as they are', () => {
    const process = { kerf: 1.2, holeKerf: 1.4, speed: 1900 };
    const { findings } = runPart({ ...ring, process }, startingShop);
    expect(findings.map(({ code }) => code)).not.toContain('unlike-chart');
  });
});

describe('the kerf as typed', () => {
  it('brings its ± with it', () => {
    const run = runPart({ ...ring, process: { kerf: '1.6±0.1' } }, startingShop);
    expect(run.value?.process.settings).toMatchObject({ kerf: 1.6, kerfPlusMinus: 0.1 });
  });
});

describe('a plate that no class holds', () => {
  it('is stopped when it is thicker than any, because nothing pierces it', () => {
    const run = runPart({ ...ring, parameters: { ...measures, thickness: 30 } }, startingShop);
    expect(run.findings.filter(({ level }) => level === 'stop').map(({ code }) => code)).toContain(
      'cannot-pierce',
    );
  });
});

describe('files', () => {
  const run = runPart(ring, startingShop);

  it('are four and a print, none of which can be taken for another', () => {
    const made = partFiles(run);
    expect(made.ok && made.files.map(({ name, kind }) => [name, kind])).toEqual([
      ['adapter-plate.finished.dxf', 'finished'],
      ['adapter-plate.cut.dxf', 'cut'],
      ['adapter-plate.finished.svg', 'finished'],
      ['adapter-plate.cut.svg', 'cut'],
      ['adapter-plate.print.svg', 'print'],
    ]);
  });

  it('are the same bytes for the same input', () => {
    expect(partFiles(runPart(ring, startingShop))).toEqual(partFiles(run));
  });

  it('are in inches and of the other version when asked', () => {
    const made = partFiles(run, { dxf: 'r2000', unit: 'in', baseName: 'Hub plate' });
    const [finished] = made.ok ? made.files : [];
    expect(finished?.name).toBe('hub-plate.finished.dxf');
    expect(finished?.text).toContain('AC1015');
    // $INSUNITS 1 is inches (DXF reference).
    expect(finished?.text).toMatch(/\$INSUNITS\r\n *70\r\n *1\r\n/);
  });

  const stopped = runPart({ ...ring, parameters: { ...measures, outside: 115 } }, startingShop);

  it('are withheld by a stop finding', () => {
    const made = partFiles(stopped);
    expect(made.ok).toBe(false);
    expect(!made.ok && made.stops.length).toBeGreaterThan(0);
  });

  it('carry the stop when they are written despite it', () => {
    const made = partFiles(stopped, { despiteFindings: true });
    expect(made.ok && made.files.length).toBe(5);
    for (const { text } of made.ok ? made.files : [])
      expect(text).toContain('STOP FINDING, written despite it');
  });

  it('have no cut path where a contour cannot have a lead-in', () => {
    // A bore of 3 mm under a kerf of 4 vanishes.
    const parameters = { ...measures, bore: 3 };
    const closed = runPart({ ...ring, parameters, process: { kerf: 4 } }, startingShop);
    expect(closed.findings.some(({ level, stage }) => level === 'stop' && stage === 'plan')).toBe(true);
    const made = partFiles(closed, { despiteFindings: true });
    expect(made.ok && made.files.map(({ kind }) => kind)).toEqual(['finished', 'finished', 'print']);
    expect(made.ok && made.withoutCut).toContain('centre opening');
  });
});

describe('a job', () => {
  const demo = createDemoJob(exampleJob.computedWith);

  it('of the demo has two parts that may be cut', () => {
    for (const row of demo.rows) {
      const run = runPart(requestForRow(demo, row), startingShop);
      expect(run.problems).toEqual([]);
      expect(run.findings.filter(({ level }) => level === 'stop')).toEqual([]);
      expect(run.value?.part).toMatchObject({ name: row.name, quantity: row.quantity });
      expect(run.findings.every(({ subject }) => subject.rowId === row.id)).toBe(true);
      expect(partFiles(run).ok).toBe(true);
    }
  });

  it('gives its rows the process that was chosen for their plate', () => {
    const [row] = demo.rows;
    if (row === undefined) throw new Error('the demo has no rows');
    const chosen = { ...demo, choices: { process: [{ material: 'S275', thickness: 6, kerf: 1.45 }] } };
    expect(requestForRow(chosen, row, { material: 'S275', thickness: 6 }).process).toEqual({ kerf: 1.45 });
    expect(requestForRow(chosen, row, { material: 'S275', thickness: 8 }).process).toBeUndefined();
    expect(requestForRow(chosen, row, { material: 'S355', thickness: 6 }).process).toBeUndefined();
  });
});

describe('wording', () => {
  it('is in the unit of the job', () => {
    const [mm, inch] = [createFormat('mm'), createFormat('in')];
    expect([mm.length(35), inch.length(35)]).toEqual(['35 mm', '1.378 in']);
    expect([mm.bare(57.354), inch.bare(57.15)]).toEqual(['57.35', '2.25']);
    expect(mm.lengthWithin(35, 0.1)).toBe('35 mm ±0.1');
    // NIST SP 811: 1 lbf = 4.448222 N, 1 lbf·ft = 1.355818 N·m, 1 ksi = 6.894757 MPa.
    expect([mm.force(4448.222), inch.force(4448.222)]).toEqual(['4448 N', '1000 lbf']);
    expect(inch.torque(135.5818)).toBe('100 lbf·ft');
    expect([mm.stress(68.94757), inch.stress(68.94757)]).toEqual(['68.9 MPa', '10 ksi']);
  });
});
