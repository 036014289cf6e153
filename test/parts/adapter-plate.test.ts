// The adapter plate from what was measured to figures and findings, against values worked outside the project.
import { describe, expect, test } from 'vitest';
import { isCircle } from '../../parts-library/geometry/index.js';
import { isLine, isMark, isOpening, outlineOf } from '../../parts-library/model/index.js';
import { CART_ADAPTER, draw, finding, format, read, run } from './plate.js';

describe('the plate of the README', () => {
  const part = draw(CART_ADAPTER);

  test('outline 150, bore 57.15 + 0.2, six marks on 110: finished sizes as asked', () => {
    expect(isCircle(outlineOf(part).contour)?.radius).toBeCloseTo(75, 12);
    const openings = part.features.filter(isOpening);
    expect(openings.map(({ id, contour }) => [id, isCircle(contour)?.radius])).toEqual([['centre', 28.675]]);
    const marks = part.features.filter(isMark);
    expect(marks.map(({ id }) => id)).toEqual([1, 2, 3, 4, 5, 6].map((n) => `pattern1.hole.${n}`));
    for (const { at } of marks) expect(Math.hypot(at.x, at.y)).toBeCloseTo(55, 12);
  });

  test('figures by hand: area π/4 (150² − 57.35²), cut π (151.6 + 55.75), two pierces, mass at 7850 kg/m³', () => {
    const { value } = run(CART_ADAPTER);
    expect(value?.area).toBeCloseTo((Math.PI / 4) * (150 ** 2 - 57.35 ** 2), 6);
    expect(value?.perimeter).toBeCloseTo(Math.PI * (150 + 57.35), 6);
    expect(value?.figures.length).toBeCloseTo(Math.PI * (151.6 + 55.75), 6);
    expect(value?.figures.pierces).toBe(2);
    expect(value?.figures.marks).toBe(6);
    // EN 1993-1-1, 3.2.6 (from memory): 7850 kg/m³. 15088.266 mm² × 6 mm × 7.85e-6 kg/mm³.
    expect(value?.mass).toBeCloseTo(0.710657, 5);
  });
});

describe('a pattern typed in the ways it can be measured is one pattern', () => {
  // Published wheel pattern 5 × 114.3: adjacent 67.184, every second 108.706, holes at the angles of a pentagon
  // (bolt-circle formula D = s / sin(180 k/n), published with worked example).
  const ways = [
    'circle 114.3',
    'adjacent 67.184',
    'every-2nd 108.706',
    'near-edges 54.484 hole 12.7',
    'far-edges 79.884 hole 12.7',
    'near-edges 54.484; far-edges 79.884',
    'from-bore 22.225 bore 57.15 hole 12.7',
    'centres (0, 57.15) (-54.353, 17.66) (-33.592, -46.235) (33.592, -46.235) (54.353, 17.66)',
  ];
  test.each(ways)('%s', (boltCircle) => {
    const part = draw({ bolts: 5, boltCircle, bolt: 'M12', hub: 40, thickness: 8 });
    const holes = part.features.filter(({ id }) => id.startsWith('pattern1')).filter(isOpening);
    expect(holes).toHaveLength(5);
    const expected = [
      [0, 57.15],
      [-54.353, 17.66],
      [-33.592, -46.235],
      [33.592, -46.235],
      [54.353, 17.66],
    ];
    holes.forEach(({ contour }, index) => {
      const centre = isCircle(contour)?.centre;
      expect(centre?.x).toBeCloseTo(expected[index]?.[0] ?? Number.NaN, 2);
      expect(centre?.y).toBeCloseTo(expected[index]?.[1] ?? Number.NaN, 2);
    });
  });

  test('an inch job: 4 1/2 circle, 1/2-13 bolts take ASME B18.2.8 normal holes of 9/16', () => {
    const part = draw(
      { bolts: 5, boltCircle: '4 1/2', bolt: '1/2-13', hub: '2 1/4', fit: '0.008', thickness: '1/4' },
      'in',
    );
    const hole = part.features.filter(isOpening).find(({ id }) => id === 'pattern1.hole.1');
    // Machinery's Handbook 31st ed. p. 1741: 1/2 normal 9/16.
    expect((isCircle(hole?.contour ?? outlineOf(part).contour)?.radius ?? 0) * 2).toBeCloseTo(14.2875, 9);
    expect(part.thickness).toBeCloseTo(6.35, 12);
  });

  test('odd clocking is kept: a hole 3° off its even place is drawn there', () => {
    const at = (degrees: number) =>
      `(${(50 * Math.cos((degrees * Math.PI) / 180)).toFixed(4)}, ${(50 * Math.sin((degrees * Math.PI) / 180)).toFixed(4)})`;
    const parameters = {
      bolts: 4,
      boltCircle: `centres ${[90, 180, 270, 3].map(at).join(' ')}`,
      bolt: 'M8',
      hub: 30,
    };
    const holes = draw(parameters)
      .features.filter(({ id }) => id.startsWith('pattern1'))
      .filter(isOpening);
    const angles = holes.map(({ contour }) => {
      const c = isCircle(contour)?.centre ?? { x: 0, y: 0 };
      return (Math.atan2(c.y, c.x) * 180) / Math.PI;
    });
    expect((angles[3] ?? 0) - (angles[0] ?? 0)).toBeCloseTo(-87, 1);
    expect(finding(parameters, 'hole-places').level).toBe('caution');
  });
});

describe('the centre', () => {
  test('--bore is the finished bore, instead of hub and fit', () => {
    const part = draw({ ...CART_ADAPTER, hub: undefined, bore: 57.35 });
    expect(
      isCircle(part.features.filter(isOpening)[0]?.contour ?? outlineOf(part).contour)?.radius,
    ).toBeCloseTo(28.675, 12);
  });

  test('bored after cutting: 3 mm on diameter is left, and the finished bore is 57.35', () => {
    const part = draw({ ...CART_ADAPTER, centre: 'bore-after' });
    const centre = part.features.filter(isOpening)[0];
    expect(isCircle(centre?.contour ?? outlineOf(part).contour)?.radius).toBeCloseTo((57.35 - 3) / 2, 12);
    expect(centre?.hole).toMatchObject({ finish: 'bore', size: 57.35 });
  });

  test('ground by 0.3 a side the bore is cut 0.6 smaller', () => {
    const part = draw({ ...CART_ADAPTER, grind: 0.3 });
    expect(
      isCircle(part.features.filter(isOpening)[0]?.contour ?? outlineOf(part).contour)?.radius,
    ).toBeCloseTo(28.375, 12);
  });

  test('a 25 mm keyed bore has the 8 × 7 keyway of DIN 6885-1, 28.3 over bore and key', () => {
    const part = draw({ ...CART_ADAPTER, hub: undefined, bore: 25, keyway: 'metric' });
    const ys = (part.features.filter(isOpening)[0]?.contour ?? []).map(({ y }) => y);
    // DIN 6885-1, shaft 22 to 30: b 8, hub depth t2 3.3.
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(28.3, 9);
  });

  test('a centre without a hub names the field', () => {
    const drawn = read({ centre: 'slip-to-weld' }).draw({ format });
    expect(drawn.value).toBeUndefined();
    expect(drawn.findings[0]).toMatchObject({ level: 'stop', field: 'hub' });
  });
});

describe('the etched label', () => {
  test('says which letters it lacks, even when it lacks them all', () => {
    expect(finding({ ...CART_ADAPTER, label: 'ÄÖÜ' }, 'label')).toMatchObject({
      level: 'caution',
      field: 'label',
      title: 'The lettering has no Ä Ö Ü',
    });
  });

  test('lies on metal, clear of bore, weld and holes, wherever the first clear place is', () => {
    const part = draw({ ...CART_ADAPTER, label: 'CART 4' });
    const points = part.features.filter(isLine).flatMap(({ path }) => path.vertices);
    expect(points.length).toBeGreaterThan(20);
    for (const { x, y } of points) {
      expect(Math.hypot(x, y)).toBeGreaterThan(57.15 / 2 + 3);
      expect(Math.hypot(x, y)).toBeLessThan(75 - 2);
      for (const { at } of part.features.filter(isMark)) {
        expect(Math.hypot(x - at.x, y - at.y)).toBeGreaterThan(5.5 + 2);
      }
    }
  });

  test('without room it is left out and says so, since a mark off the metal fires the torch into air', () => {
    const parameters = { ...CART_ADAPTER, shape: 'lobed', web: 5, label: 'ORCHARD HAUL CART 4' };
    expect(draw(parameters).features.filter(isLine)).toEqual([]);
    expect(finding(parameters, 'label-room')).toMatchObject({ level: 'caution', field: 'label' });
  });
});

describe('marks that lie where there is no metal', () => {
  test.each([
    ['inside a lightening hole', { lightening: 6, lighteningDiameter: 30, lighteningClocking: 90 }],
    ['off the plate', { outside: 80, hub: 20 }],
  ])('%s break into it', (_, change) => {
    // M10 on a circle of 110: the bolts stand 55 from the middle.
    const web = finding({ ...CART_ADAPTER, lighteningCircle: 110, ...change }, 'web');
    expect(web).toMatchObject({ level: 'stop', value: { amount: 0, unit: 'mm' } });
    expect(web.title).toContain('breaks into');
  });
});

describe('what cannot be drawn or read says which field and what would do', () => {
  test.each([
    [{ bolts: 'x' }, 'bolts'],
    [{ boltCircle: 'adj 3' }, 'boltCircle'],
    [{ boltCircle: 'across 110', bolts: 5 }, 'boltCircle'],
    [{ boltCircle: 'adjacent 2' }, 'boltCircle'],
    [{ boltCircle: 'circle 5000' }, 'boltCircle'],
    [{ bolt: 'M11' }, 'bolt'],
    [{ hub: '57 mn' }, 'hub'],
    [{ hub: -3 }, 'hub'],
    [{ thickness: 0 }, 'thickness'],
    [{ material: 'cheese' }, 'material'],
    [{ use: 'fly' }, 'use'],
    [{ label: 'a\nb' }, 'label'],
    [{ label: 'a\u0085b' }, 'label'],
    [{ bolts: '0x5' }, 'bolts'],
    [{ bolts: '1e1' }, 'bolts'],
    [{ threadPercent: '0x40' }, 'threadPercent'],
    [{ hub: '57.15±60' }, 'hub'],
    [{ outside: { typed: '150', mm: 150, plusMinus: 1e300 } }, 'outside'],
    [{ boltCircle: '95±200' }, 'boltCircle'],
    [{ pattern2: { bolts: 1 } }, 'pattern2.bolts'],
    [{ pattern2: { foo: 1 } }, 'pattern2.foo'],
    [{ zzz: 1 }, 'zzz'],
    [{ shape: 'lobed', bolts: 12, boltCircle: 95, edge: 20 }, 'edge'],
    [{ keyway: 'metric', bore: 70 }, 'keyway'],
    [{ grind: 2, bore: 3, centre: 'slip-to-weld' }, 'grind'],
  ])('%j names %s', (parameters, field) => {
    const { problems, findings, value } = run(parameters);
    const named = [
      ...problems.map((one) => one.field),
      ...findings.filter(({ level }) => level === 'stop').map((one) => one.field),
    ];
    expect(named).toContain(field);
    expect(value).toBeUndefined();
  });
});
