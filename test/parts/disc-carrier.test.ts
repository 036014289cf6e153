// The brake-disc carrier: withheld by default, a blank with its allowances when released, patterns, pilots, windows.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  containsContour,
  distanceBetweenContours,
  findFaults,
  isCircle,
} from '../../parts-library/geometry/index.js';
import { partFiles, printOf, runPart, startingShop } from '../../parts-library/job/index.js';
import {
  isCut,
  isMark,
  isOpening,
  outlineOf,
  type Finding,
  type Part,
} from '../../parts-library/model/index.js';
import { windowBetween } from '../../parts-library/parts/disc-carrier/windows.js';

type Parameters = Readonly<Record<string, unknown>>;

const carrier = (parameters: Parameters, unit: 'mm' | 'in' = 'mm') =>
  runPart({ family: 'disc-carrier', parameters, unit }, startingShop);

const partOf = (parameters: Parameters): Part => carrier(parameters).value?.part ?? raise();

const finding = (parameters: Parameters, code: string, field?: string): Finding =>
  carrier(parameters).findings.find(
    (one) => one.code === code && (field === undefined || one.field === field),
  ) ?? raise(code);

const printed = (parameters: Parameters): string =>
  (printOf(carrier(parameters)) ?? raise()).replaceAll(/<[^>]*>/g, ' ').replaceAll(/\s+/g, ' ');

describe('release', () => {
  test('a label is etched clear of heads, and a note says that it is faced off', () => {
    expect(finding({ label: 'CART 4' }, 'label-faced').level).toBe('note');
    expect(carrier({}).findings.some(({ code }) => code === 'label-faced')).toBe(false);
  });

  test('by default files are withheld, and nothing but the release stands in the way', () => {
    const run = carrier({});
    expect(run.findings.filter(({ level }) => level === 'stop').map(({ code }) => code)).toEqual([
      'machined-blank',
    ]);
    expect(partFiles(run, {}).ok).toBe(false);
  });

  test('chosen as a blank to be machined it is written, and stays a caution', () => {
    const run = carrier({ release: 'machined' });
    expect(partFiles(run, {}).ok).toBe(true);
    expect(run.findings.find(({ code }) => code === 'machined-blank')?.level).toBe('caution');
  });

  test('its remedy is the choice itself', () => {
    expect(finding({}, 'machined-blank').remedies?.[0]?.change).toEqual([
      { op: 'add', path: '/release', value: 'machined' },
    ]);
  });

  test('the print carries fits, seats, runout, grade, allowances, and who checks it', () => {
    // ISO 286: H7 over 30 to 50 mm +0.025 (published); f7 over 120 to 180 mm −0.043, −0.083 (from memory).
    const print = printed({ release: 'machined' });
    for (const words of [
      'cut ⌀36, turn ⌀40 H7 (40 to 40.025)',
      'turn pilot ⌀150 f7 (149.917 to 149.957), 3 high',
      't 10, face both sides to 8',
      'seats flat, parallel 0.03 mm',
      'runout 0.2 mm at most',
      'Bolts 8.8',
      'have a qualified person check it',
      'The hub’s pilot carries the centring',
    ]) {
      expect(print).toContain(words.replaceAll('⌀', print.includes('⌀') ? '⌀' : 'Ø'));
    }
  });

  test('bores leave the table undersize, whatever the release says', () => {
    for (const release of ['withheld', 'machined']) {
      const centre = partOf({ release }).features.find(({ id }) => id === 'centre');
      expect(
        centre !== undefined && isCut(centre) ? isCircle(centre.contour)?.radius : undefined,
      ).toBeCloseTo((40 - 4) / 2, 9);
    }
  });
});

describe('two measured patterns', () => {
  test('six hub holes 25.00 apart lie on ⌀50', () => {
    // Published worked example of the bolt-circle formula D = s / sin(180°/n): 6 holes, 25.00, gives 50.00.
    const run = carrier({
      hubPilot: 24,
      pattern2: { bolts: 6, boltCircle: 'adjacent 25.00', bolt: 'M6', boltedBy: 'hole' },
    });
    expect(run.value?.derived.find(({ id }) => id === 'pattern2.circle')?.value.amount).toBeCloseTo(50, 6);
  });

  test('five disc bolts on 114.3: where the formula puts them', () => {
    // x = D/2 cos(90° + 72° i), y = D/2 sin(…), worked by hand: (0, 57.15), (−54.353, 17.660), (−33.592, −46.235).
    const marks = partOf({
      bolts: 5,
      boltCircle: 'adjacent 67.184',
      boltedBore: 90,
      disc: 180,
      pattern2: { boltCircle: 'circle 60' },
    })
      .features.filter(isMark)
      .filter(({ id }) => id.startsWith('pattern1'));
    expect(marks[1]?.at.x).toBeCloseTo(-54.353, 2);
    expect(marks[1]?.at.y).toBeCloseTo(17.66, 2);
    expect(marks[2]?.at.x).toBeCloseTo(-33.592, 2);
    expect(marks[2]?.at.y).toBeCloseTo(-46.235, 2);
  });

  test('both patterns are weighed for bolting up', () => {
    const run = carrier({ boltedHole: 8.5, pattern2: { boltedBy: 'hole', boltedHole: 8.1 } });
    const fields = run.findings.filter(({ code }) => code === 'bolt-up').map(({ field }) => field);
    expect(new Set(fields)).toEqual(new Set(['boltedHole', 'pattern2.boltedHole']));
  });

  test('holes cut by the torch are a caution, and the remedy drills them', () => {
    expect(finding({ holes: 'clearance' }, 'cut-holes')).toMatchObject({ level: 'caution', field: 'holes' });
    const remedy = finding({ pattern2: { holes: 'clearance' } }, 'cut-holes').remedies?.[0]?.change[0];
    // The second pattern as a whole, so that it applies whether or not anything of it was typed.
    expect(remedy).toMatchObject({ op: 'add', path: '/pattern2', value: { holes: 'drill', bolts: 4 } });
  });

  test('hub holes that reach the pilot are a stop', () => {
    const { level } = finding({ pattern2: { boltCircle: 'circle 46' } }, 'web');
    expect(level).toBe('stop');
  });
});

describe('thicknesses', () => {
  test('10 mm faced by 1 a side, shoulder 3: 8 between the faces, 5 under the bolts, disc 5 from the hub', () => {
    const derived = carrier({}).value?.derived ?? raise();
    expect(derived.find(({ id }) => id === 'finished')?.value.amount).toBeCloseTo(8, 9);
    expect(derived.find(({ id }) => id === 'offset')?.value.amount).toBeCloseTo(5, 9);
    expect(finding({}, 'lobe-thickness').value?.amount).toBeCloseTo(5, 9);
  });

  test('an offset that the caliper asks for sets how deep the seat is turned', () => {
    // Far side: 8 − 4 = 4 deep, 4 left. Near side, disc toward the hub: 3.5 deep, 4.5 left.
    expect(finding({ offset: 4 }, 'lobe-thickness').value?.amount).toBeCloseTo(4, 9);
    expect(finding({ offset: 4 }, 'pilot-shoulder').value?.amount).toBeCloseTo(4, 9);
    expect(finding({ discSide: 'near', offset: 3.5 }, 'lobe-thickness').value?.amount).toBeCloseTo(4.5, 9);
  });

  test('a shoulder of 1 mm is a stop, one as high as the disc a caution', () => {
    // Common practice: 2 mm of full diameter past the chamfers.
    expect(finding({ shoulder: 1 }, 'pilot-shoulder').level).toBe('stop');
    expect(finding({ shoulder: 3 }, 'pilot-shoulder').level).toBe('pass');
    expect(finding({ shoulder: 5, thickness: 16 }, 'pilot-shoulder').level).toBe('caution');
  });

  test('bolt holes that break into the shoulder are a stop: 172/2 − 9/2 − 164/2 = −0.5', () => {
    expect(finding({ boltedBore: 164 }, 'pilot-land')).toMatchObject({
      level: 'stop',
      field: 'boltedBore',
      value: { amount: -0.5 },
    });
  });

  test('a disc held by bolts alone is a caution', () => {
    expect(finding({ discPilot: 'bolts' }, 'disc-centring').level).toBe('caution');
  });

  test('a bore that does not reach 2 mm onto the hub’s pilot is a stop', () => {
    expect(finding({ hubPilotHeight: 1.5 }, 'hub-centric').level).toBe('stop');
    expect(finding({ hubPilotHeight: 6 }, 'hub-centric').level).toBe('pass');
  });
});

describe('brake torque', () => {
  test('300 N·m on six bolts of ⌀172 is 581 N each', () => {
    // T/(n R) = 300 ÷ (6 × 0.086) = 581.4 N, worked by hand.
    expect(finding({ torque: 300 }, 'bolt-shear', 'bolt').value?.amount).toBeCloseTo(581.4, 1);
  });

  test('M12 in 6 mm S235, 20 from the edge, hole 13.5: half of 34.34 kN', () => {
    // AISC 360 J3.10, published form: 1.2 lc t Fu = 1.2 × 13.25 × 6 × 360 = 34 344 N, over Ω 2.00. Faced thickness counts.
    const m12 = {
      torque: 300,
      bolt: 'M12',
      edge: 20,
      thickness: 8,
      material: 'S235',
      discPilot: 'bolts',
      windows: 'none',
    };
    expect(finding(m12, 'bearing').limit?.amount).toBeCloseTo(17172, 0);
  });

  test('friction of four M8 8.8 on ⌀72 holds 344 N·m', () => {
    // Preload 0.75 × 580 × 36.6 = 15.92 kN (published tables); 4 × 15 921 × 0.15 × 0.036 = 343.9 N·m by hand.
    const slip = finding({ torque: 300 }, 'joint-slip', 'pattern2.bolt');
    expect(slip.limit?.amount).toBeCloseTo(343.9, 0);
    expect(slip.level).toBe('note');
    expect(finding({ torque: 400 }, 'joint-slip', 'pattern2.bolt').level).toBe('caution');
  });

  test('the tyre’s grip gives the torque when none is known: 0.8 × 100 kg × 9.80665 × 0.25 m', () => {
    const gripped = finding({ wheelMass: 100, tyreDiameter: 500 }, 'joint-slip', 'pattern2.bolt');
    expect(gripped.value?.amount).toBeCloseTo(196.1, 1);
  });

  test('bolts are listed with grip, length and torque', () => {
    // Disc: 5 + 5 grip, two washers 1.8, nut 6.8, two threads 2.5 are 22.9, so 25. Torque of M8 8.8 dry 25.5 N·m (T = K D F).
    const hardware = carrier({}).value?.hardware ?? raise();
    const bolts = hardware.find(({ id }) => id === 'disc.bolts');
    expect(bolts).toMatchObject({ name: 'M8 × 25 hexagon bolt, 8.8', quantity: 6 });
    expect(bolts?.says).toContain('25.5 N·m');
  });
});

describe('room and runout', () => {
  test('flatness 0.05 on ⌀172 and a hub face out by 0.02 on ⌀72 are 0.148 at a disc of ⌀260', () => {
    // 0.05 × 260/172 + 0.02 × 260/72 = 0.0756 + 0.0722, worked by hand.
    const out = { flatness: '0.05 mm', hubRunout: '0.02 mm' };
    expect(finding(out, 'runout').value?.amount).toBeCloseTo(0.1478, 4);
    expect(finding(out, 'runout').level).toBe('pass');
    expect(finding({ ...out, runout: '0.1 mm' }, 'runout').level).toBe('caution');
  });

  test('the caliper’s nearest point stands off the lobes, which reach 86 + 16', () => {
    expect(finding({ caliperInner: 101 }, 'caliper-room').level).toBe('stop');
    expect(finding({ caliperInner: 104 }, 'caliper-room')).toMatchObject({
      level: 'caution',
      value: { amount: 2 },
    });
    expect(finding({ caliperInner: 106 }, 'caliper-room').level).toBe('pass');
    expect(finding({ caliperInner: 106, caliperOuter: 150, rim: 149 }, 'rim-room').level).toBe('stop');
  });
});

describe('lobes and windows', () => {
  test('a spoke between two windows has its width from end to end', () => {
    const windows = partOf({})
      .features.filter(isOpening)
      .filter(({ id }) => id.startsWith('window'));
    expect(windows).toHaveLength(6);
    const [a, b] = windows;
    expect(
      a === undefined || b === undefined ? 0 : distanceBetweenContours(a.contour, b.contour).distance,
    ).toBeCloseTo(18, 6);
  });

  test('a window keeps between its two arcs', () => {
    const shape = { inner: 50, outer: 70, spoke: 18, corner: 4 };
    const window = windowBetween(0, 60, shape) ?? raise();
    const middle = { x: 0, y: 0 };
    const radii = window.map(({ x, y }) => Math.hypot(x - middle.x, y - middle.y));
    expect(Math.min(...radii)).toBeGreaterThan(50 - 1e-9);
    expect(Math.max(...radii)).toBeLessThan(70 + 1e-9);
    // Spokes wider than the pitch leave none: 60° at 50 mm is 52.4 mm along the arc.
    expect(windowBetween(0, 60, { ...shape, spoke: 60 })).toBeUndefined();
    expect(windowBetween(0, 60, { ...shape, corner: 11 })).toBeUndefined();
  });

  test('windows stay a web away from the disc’s bolt holes on a round outside too', () => {
    const round = finding({ shape: 'round' }, 'web');
    expect(round.level).not.toBe('stop');
    expect(round.value?.amount).toBeGreaterThan(10);
  });

  test('windows without room are left out, and a note says so', () => {
    const run = carrier({ spoke: 60 });
    expect(run.findings.find(({ code }) => code === 'windows')?.level).toBe('note');
    expect(run.value?.part.features.some(({ id }) => id.startsWith('window'))).toBe(false);
  });

  test('the hollows leave the shoulder a whole ring', () => {
    expect(finding({}, 'pilot-shoulder').says).toContain('A whole ring');
    expect(finding({ scallop: 30 }, 'pilot-shoulder').says).toContain('Interrupted');
  });
});

describe('what cannot be drawn names the field', () => {
  test.each([
    ['faceAllowance', { thickness: 4, faceAllowance: 2 }],
    ['offset', { offset: 9 }],
    ['shoulder', { shoulder: 8 }],
    ['offset', { discSide: 'near', offset: 8 }],
    ['boreAllowance', { hubPilot: 10, boreAllowance: 12 }],
    ['pattern2.boltCircle', { pattern2: { boltCircle: 'circle 172' } }],
    ['pattern2.boltCircle', { pattern2: { boltCircle: 'adjacent 1600' } }],
    ['boltCircle', { boltCircle: 'circle 2500' }],
    ['edge', { edge: 50 }],
    ['edge', { bolts: 2, scallop: 71 }],
    ['scallop', { scallop: 5 }],
    ['holes', { bolt: '9/16-12' }],
  ])('%s %j', (field, parameters) => {
    const { value, findings } = carrier(parameters);
    expect(value).toBeUndefined();
    expect(findings[0]).toMatchObject({ code: 'cannot-draw', level: 'stop', field });
  });
});

const tenths = (min: number, max: number) => fc.integer({ min: min * 10, max: max * 10 }).map((n) => n / 10);
const runs = process.env['FISHPLATE_LONG'] === '1' ? 1000 : 60;

describe('random carriers', () => {
  const carriers = fc.record(
    {
      bolts: fc.integer({ min: 3, max: 12 }),
      boltCircle: tenths(130, 260).map((d) => `circle ${d}±0.1`),
      bolt: fc.constantFrom('M6', 'M8', 'M10', '3/8-16'),
      holes: fc.constantFrom('clearance', 'tapped', 'drill'),
      boltedBore: tenths(90, 200),
      discPilot: fc.constantFrom('turned', 'bolts'),
      discSide: fc.constantFrom('far', 'near'),
      shape: fc.constantFrom('lobed', 'round'),
      windows: fc.constantFrom('between', 'none'),
      spoke: tenths(8, 30),
      windowCorner: tenths(2, 8),
      thickness: fc.constantFrom('8', '10', '12', '3/8 in', '16'),
      hubPilot: tenths(20, 60),
      pattern2: fc.record({
        bolts: fc.integer({ min: 3, max: 8 }),
        boltCircle: tenths(50, 110).map((d) => `circle ${d}`),
        boltedBy: fc.constantFrom('hole', 'thread', 'stud'),
      }),
      torque: fc.constantFrom(100, 900, undefined),
      label: fc.constantFrom('L', undefined),
    },
    { requiredKeys: ['boltCircle', 'pattern2'] },
  );

  test('contours are sound and openings lie inside, or a stop says why; no figure is missing', () => {
    let drawn = 0;
    fc.assert(
      fc.property(carriers, (parameters) => {
        const { problems, findings, value } = carrier({ release: 'machined', ...parameters });
        for (const { says, title } of findings)
          expect(`${title} ${says}`).not.toMatch(/NaN|undefined|Infinity/);
        const stopped = problems.length > 0 || findings.some(({ level }) => level === 'stop');
        if (value === undefined) {
          expect(stopped).toBe(true);
          return;
        }
        drawn += 1;
        for (const { contour } of value.part.features.filter(isCut)) expect(findFaults(contour)).toEqual([]);
        if (stopped) return;
        const outline = outlineOf(value.part).contour;
        for (const { contour } of value.part.features.filter(isOpening))
          expect(containsContour(outline, contour)).toBe(true);
        expect(JSON.stringify([value.steps, value.hardware, value.dimensions])).not.toMatch(/NaN|undefined/);
      }),
      { numRuns: runs, seed: 20261125 },
    );
    expect(drawn / runs).toBeGreaterThan(0.7);
  });

  test('whatever is put in a field, reading answers and never throws', () => {
    const anything = fc.oneof(fc.string(), fc.double(), fc.constant(null), fc.object());
    const field = fc.constantFrom(
      'bolts',
      'boltCircle',
      'pattern2',
      'offset',
      'release',
      'scallop',
      '__proto__',
    );
    fc.assert(
      fc.property(fc.dictionary(field, anything), (parameters) => {
        const { problems, value, findings } = carrier(parameters);
        expect(
          value !== undefined || problems.length > 0 || findings.some(({ level }) => level === 'stop'),
        ).toBe(true);
      }),
      { numRuns: runs, seed: 20261125 },
    );
  });
});

function raise(what = 'part'): never {
  throw new Error(`No ${what}.`);
}
