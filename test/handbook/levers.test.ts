// Levers and pedals: pressure, stress, deflection, and exact travel of a rod or cable.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  combinedStress,
  deflectionSource,
  eyeSource,
  forwardStopSource,
  freePlayRule,
  holeConcentration,
  leastLeverHeight,
  leverDeflection,
  leverOver,
  leverSource,
  leverStress,
  linePressure,
  linkAt,
  linkageSource,
  pedalFactor,
  pedalForce,
  sidewaysStress,
  slendernessLimit,
  swingForTravel,
  taperedDeflection,
  throttleSprings,
  twistSource,
  twistStress,
  usualBrakeRatio,
  type Linkage,
} from '../../parts-library/handbook/index.js';
import { inch } from './rows.js';

const poundForce = 4.4482216152605;
const psi = 0.006894757;

describe('line pressure', () => {
  // Master-cylinder table at 100 lbf and 6 to 1, published twice; printed with two to three figures of π (0.1 %).
  test.each([
    ['5/8, 375 lbf on the pedal rod', 5 / 8, 375, 1221],
    ['3/4', 3 / 4, 600, 1359],
    ['13/16', 13 / 16, 600, 1158],
    ['7/8', 7 / 8, 600, 998],
    ['15/16', 15 / 16, 600, 870],
    ['1', 1, 600, 764],
    ['1-1/8', 9 / 8, 600, 603],
  ])('bore %s', (_, bore, pounds, printed) => {
    const { value, source } = linePressure(pounds * poundForce, inch(bore));
    expect(Math.abs(value / psi / printed - 1)).toBeLessThan(0.0015);
    expect(source.certainty).toBe('published');
  });

  test('500 N at 5 to 1 into 3/4 in is 8.77 MPa, into 5/8 in 12.6; two cylinders share it', () => {
    // Worked by hand: 2500 / (π/4 19.05²), 2500 / (π/4 15.875²).
    expect(linePressure(2500, 19.05).value).toBeCloseTo(8.77, 2);
    expect(linePressure(2500, 15.875).value).toBeCloseTo(12.63, 2);
    expect(linePressure(2500, 19.05, 2).value).toBeCloseTo(8.771 / 2, 3);
  });

  test('published control forces', () => {
    // Formula SAE Rules 2019 T.5.1.10; ECE braking text, secondary brake by foot, M1.
    expect(pedalForce('proof').newtons).toBe(2000);
    expect(pedalForce('performance').newtons).toBe(500);
  });
});

describe('a worked arm: 2000 N at 250 mm, rod at 50, 40 × 10 with a 10 mm hole', () => {
  // Worked by hand from the formulas: M = 2000 × 0.2 = 400 N·m, I = 10 (40³ − 10³)/12 = 52 500.
  const section = { height: 40, thickness: 10, hole: 10 };

  test('second moment, edge and hole edge', () => {
    const stress = leverStress(400, section);
    expect(stress.secondMoment).toBeCloseTo(52_500, 6);
    expect(stress.edge).toBeCloseTo(152.4, 1);
    expect(stress.holeEdge).toBeCloseTo(76.2, 1);
    expect(leverStress(400, { height: 40, thickness: 10 })).toMatchObject({ edge: 150, holeEdge: 0 });
  });

  test('height for a factor of 1.5 in 10 mm A36 (250 MPa) is 37.9 mm', () => {
    expect(leastLeverHeight(400, 10, 250 / 1.5)).toBeCloseTo(37.9, 1);
  });

  test('the pad gives 0.63 mm at 200 GPa, and a straight arm in slices gives the same', () => {
    // F (L − a)² L / (3 E I) = 2000 × 200² × 250 / (3 × 200 000 × 53 333) = 0.625.
    const secondMoment = (40 ** 3 * 10) / 12;
    const beam = { newtons: 2000, length: 250, reaction: 50, modulusMegapascals: 200_000, secondMoment };
    expect(leverDeflection(beam)).toBeCloseTo(0.625, 3);
    const slices = Array.from({ length: 500 }, (_, index) => {
      const x = (index + 0.5) / 2;
      const newtonMetres = (x < 50 ? (2000 * 200 * x) / 50 : 2000 * (250 - x)) / 1000;
      return { length: 0.5, newtonMetres, secondMoment };
    });
    expect(taperedDeflection(slices, 2000, 200_000)).toBeCloseTo(0.625, 4);
  });

  test('sideways, 10 % of it over 200 mm: 40 N·m across 10 mm is 60 MPa', () => {
    // 6 × 40 000 / (40 × 10²), worked by hand.
    expect(sidewaysStress(40, 40, 10)).toBeCloseTo(60, 9);
  });

  test('twist of a rectangle: α of the torsion tables, τ = T / (α h t²)', () => {
    // Timoshenko & Goodier, table of torsion of rectangular bars (from memory): α 0.208 at 1, 0.258 at 3, 0.282 at 4, 0.312 at 10.
    for (const [ratio, alpha] of [
      [1, 0.208],
      [3, 0.267],
      [4, 0.282],
      [10, 0.312],
    ] as const) {
      const stress = twistStress(20, 10 * ratio, 10);
      expect(Math.abs((stress * alpha * 10 * ratio * 100) / 20_000 - 1)).toBeLessThan(0.01);
    }
    expect(twistStress(20, 40, 10)).toBe(twistStress(20, 10, 40));
  });

  test('together: √(100² + 3 × 50²) = 132.3', () => {
    expect(combinedStress(100, 50)).toBeCloseTo(132.288, 3);
  });

  test('a hole of a quarter of the width: Kt = 2 + 0.75³ = 2.42', () => {
    // Heywood's formula (from memory), worked by hand.
    expect(holeConcentration(10, 40)).toBeCloseTo(2.4219, 4);
  });

  test('each rule says where it comes from', () => {
    const sources = [
      leverSource,
      twistSource,
      deflectionSource,
      eyeSource,
      linkageSource,
      forwardStopSource,
      freePlayRule.source,
      pedalFactor.source,
      slendernessLimit.source,
      throttleSprings.source,
      usualBrakeRatio.source,
    ];
    for (const { title, where, certainty } of sources) {
      expect(title.length * where.length).toBeGreaterThan(0);
      expect(['published', 'common practice', 'from memory']).toContain(certainty);
    }
    expect([pedalFactor.value, slendernessLimit.value, throttleSprings.value]).toEqual([1.5, 8, 2]);
    expect(freePlayRule.usual).toBe(1);
  });
});

describe('exact linkage', () => {
  /** Slider-crank of the textbooks: crank 50, rod 130, line of the slide through the pivot. */
  const crank: Linkage = {
    kind: 'rod',
    pin: { x: 50, y: 0 },
    anchor: { x: 0, y: -120 },
    slide: { x: 0, y: -1 },
  };

  test('slider-crank: 50 sin θ + √(130² − 50² cos² θ) − 120', () => {
    // Worked by hand: 25 + √(16 900 − 1 875) − 120 = 27.577 at 30°, 60 at 90°.
    expect(linkAt(crank, Math.PI / 6)?.travel).toBeCloseTo(27.577, 3);
    expect(linkAt(crank, Math.PI / 2)?.travel).toBeCloseTo(60, 9);
    // Lever 50 cos θ + 2500 sin θ cos θ / √(…): 50 at rest, 0 at dead centre.
    expect(linkAt(crank, 0)?.lever).toBeCloseTo(50, 9);
    expect(linkAt(crank, Math.PI / 2)?.lever).toBeCloseTo(0, 9);
    expect(leverOver(crank, 0, Math.PI / 2 + 0.01).overCentre).toBe(true);
  });

  test('a cable from far away square to the arm: 50 sin θ, 30° for 25 mm', () => {
    const cable: Linkage = {
      kind: 'cable',
      pin: { x: 50, y: 0 },
      anchor: { x: 50, y: 5e6 },
      slide: { x: 0, y: 0 },
    };
    expect(linkAt(cable, Math.PI / 6)?.travel).toBeCloseTo(25, 3);
    expect(((swingForTravel(cable, 25) ?? 0) * 180) / Math.PI).toBeCloseTo(30, 3);
  });

  test('a cable from (30, 40) to a pin at (30, 0): 40 at rest, √(30² + 70²) after a quarter turn', () => {
    const cable: Linkage = {
      kind: 'cable',
      pin: { x: 30, y: 0 },
      anchor: { x: 30, y: 40 },
      slide: { x: 0, y: 0 },
    };
    expect(linkAt(cable, Math.PI / 2)?.travel).toBeCloseTo(Math.sqrt(5800) - 40, 9);
    // Its lever is the distance of the cable's line from the pivot: 30 at rest.
    expect(linkAt(cable, 0)?.lever).toBeCloseTo(30, 9);
  });

  test('a cable that pressing lets go has a negative lever and no swing for any pull', () => {
    const slack: Linkage = {
      kind: 'cable',
      pin: { x: 50, y: 0 },
      anchor: { x: 50, y: -200 },
      slide: { x: 0, y: 0 },
    };
    expect(leverOver(slack, 0, 0.5).overCentre).toBe(true);
    expect(swingForTravel(slack, 10)).toBeUndefined();
  });

  test('a rod that no longer reaches its piston has no state', () => {
    expect(
      linkAt({ kind: 'rod', pin: { x: 50, y: 0 }, anchor: { x: 50, y: -20 }, slide: { x: 0, y: -1 } }, 2),
    ).toBeUndefined();
  });

  test('swing and travel undo each other; the lever is the slope of the travel', () => {
    const place = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom('rod', 'cable'),
        place(20, 90),
        place(-30, 30),
        place(80, 250),
        place(-0.3, 0.3),
        place(0.02, 0.6),
        (kind, x, y, away, lean, swing) => {
          const sign = kind === 'rod' ? -1 : 1;
          const anchor = { x: x + away * Math.sin(lean), y: y + sign * away * Math.cos(lean) };
          const link: Linkage = { kind, pin: { x, y }, anchor, slide: { x: 0, y: -1 } };
          fc.pre(!leverOver(link, 0, swing).overCentre);
          const state = linkAt(link, swing);
          if (state === undefined) return;
          expect(swingForTravel(link, state.travel)).toBeCloseTo(swing, 5);
          const after = linkAt(link, swing + 1e-6);
          expect(((after?.travel ?? 0) - state.travel) / 1e-6).toBeCloseTo(state.lever, 2);
        },
      ),
      { numRuns: 200, seed: 20261125 },
    );
  });
});
