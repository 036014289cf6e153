// The tooth as it is drawn: the published construction found again in the outline's arcs, and that outline closed.
import { describe, expect, test } from 'vitest';
import {
  directionAlong,
  findFaults,
  segmentsOf,
  turnedContour,
  type Arc,
  type Contour,
  type Segment,
} from '../../parts-library/geometry/index.js';
import { findChain, isoToothGap, sprocketDiameters, type Chain } from '../../parts-library/handbook/index.js';
import {
  ansiGap,
  bottomsOf,
  isoGap,
  landAt,
  leastOutside,
  outsideForLand,
  toothSector,
  type ToothGap,
} from '../../parts-library/parts/shared/sprocket/tooth-gap.js';

function raise(): never {
  throw new Error('No tooth.');
}

function chain(name: string): Chain {
  const found = findChain(name);
  return found.found ? found.row : raise();
}

const ansi = (name: string, teeth: number): ToothGap => ansiGap(chain(name), teeth) ?? raise();
const iso = (name: string, teeth: number): ToothGap => isoGap(chain(name), teeth) ?? raise();
const outlineOf = (gap: ToothGap, outside: number): Contour =>
  turnedContour(toothSector(gap, outside), gap.teeth);

const isArc = (segment: Segment | undefined): segment is Arc => segment?.kind === 'arc';
const arcAt = (outline: Contour, index: number): Arc => {
  const segment = segmentsOf(outline)[index];
  return isArc(segment) ? segment : raise();
};
const lengthOf = ({ from, to }: Segment): number => Math.hypot(to.x - from.x, to.y - from.y);

/** 80 chain on 28 teeth; outside about P (0.6 + cot(180°/28)) = 9.47 in. */
const worked = outlineOf(ansi('80', 28), 9.47 * 25.4);

describe('the ANSI tooth of the published worked sheet, P = 1, N = 28, Dr = 0.625 in', () => {
  // Segments of one tooth: shoulder, straight, working curve, seat, and the same up the other flank, then the tip.
  test.each([
    ['topping curve F', 0, 0.5114],
    ['working curve E', 2, 0.8156],
    ['seat R', 3, 0.3156],
    ['working curve E of the other flank', 4, 0.8156],
    ['topping curve F of the other flank', 6, 0.5114],
  ])('%s', (_name, index, printed) => {
    expect(Math.abs(arcAt(worked, index).radius / 25.4 - printed)).toBeLessThanOrEqual(0.00006);
  });

  test('straight yz 0.0844, chord xy 0.2270', () => {
    const segments = segmentsOf(worked);
    expect(Math.abs(lengthOf(segments[1] ?? raise()) / 25.4 - 0.0844)).toBeLessThanOrEqual(0.00006);
    expect(Math.abs(lengthOf(segments[2] ?? raise()) / 25.4 - 0.227)).toBeLessThanOrEqual(0.00006);
  });

  test('c lies M 0.3986 and T 0.3019 from the roller, b W 0.8695 and V 0.0980', () => {
    // The first gap lies straight above the middle; its roller at P / 2 sin(180°/28) = 4.4657 in, by hand.
    const roller = 4.4657;
    const c = arcAt(worked, 2).centre;
    const b = arcAt(worked, 0).centre;
    expect(c.x / 25.4).toBeCloseTo(-0.3986, 4);
    expect(c.y / 25.4 - roller).toBeCloseTo(0.3019, 4);
    expect(b.x / 25.4).toBeCloseTo(0.8695, 4);
    expect(roller - b.y / 25.4).toBeCloseTo(0.098, 4);
  });

  test('the seat spans 180° − 2 A = 105.714°, the working curve B = 16°', () => {
    expect((-arcAt(worked, 3).sweep * 180) / Math.PI).toBeCloseTo(105.7143, 3);
    expect((-arcAt(worked, 2).sweep * 180) / Math.PI).toBeCloseTo(16, 6);
  });
});

describe.each([
  ['80', 28, 'ansi'],
  ['40', 15, 'ansi'],
  ['41', 60, 'ansi'],
  ['35', 9, 'ansi'],
  ['50', 90, 'ansi'],
  ['08B', 20, 'iso'],
  ['428', 45, 'iso'],
  ['16B', 9, 'iso'],
  ['06B', 90, 'iso'],
] as const)('%s on %d teeth, %s', (name, teeth, form) => {
  const gap = form === 'ansi' ? ansi(name, teeth) : iso(name, teeth);
  const diameters = sprocketDiameters(chain(name), teeth) ?? raise();
  const outline = outlineOf(gap, form === 'ansi' ? diameters.outside : diameters.isoOutside.min);
  const perTooth = outline.length / teeth;

  test('is sound by the general inspection of contours', () => {
    expect(findFaults(outline)).toEqual([]);
  });

  test('closes to 1e-9: turned once more, the last tooth ends where the first begins', () => {
    const [first = raise()] = outline;
    const last = outline[outline.length - perTooth] ?? raise();
    const step = (2 * Math.PI) / teeth;
    const x = last.x * Math.cos(step) - last.y * Math.sin(step);
    const y = last.x * Math.sin(step) + last.y * Math.cos(step);
    expect(Math.hypot(x - first.x, y - first.y)).toBeLessThan(1e-9);
  });

  test('flanks run into seats and shoulders without a corner, to 1e-9', () => {
    const segments = segmentsOf(outline).slice(0, perTooth);
    // Every join of a tooth but the two at the tip.
    for (const [index, segment] of segments.slice(0, -2).entries()) {
      const u = directionAlong(segment, 1);
      const v = directionAlong(segments[index + 1] ?? raise(), 0);
      expect(Math.abs(u.x * v.y - u.y * v.x)).toBeLessThan(1e-9);
      expect(u.x * v.x + u.y * v.y).toBeGreaterThan(0);
    }
  });

  test('every seat has the same radius to 1e-9, as far from the middle as the first', () => {
    const seats = segmentsOf(outline)
      .filter(isArc)
      .filter(({ radius, sweep }) => sweep < 0 && Math.abs(radius - gap.seat) < 1e-3);
    expect(seats).toHaveLength(teeth);
    for (const { centre, radius } of seats) {
      expect(Math.abs(radius - gap.seat)).toBeLessThan(1e-9);
      expect(Math.abs(Math.hypot(centre.x, centre.y) - gap.seatCentre)).toBeLessThan(1e-9);
    }
  });

  test('a roller of the chain lies in the gap without touching the flanks', () => {
    // The roller rests on the bottom of its seat; nothing of the first tooth may be nearer to it than its radius.
    const { roller } = chain(name);
    const rests = gap.seatCentre - gap.seat + roller / 2;
    for (const { from, to } of segmentsOf(outline).slice(0, perTooth)) {
      for (const { x, y } of [from, to]) {
        expect(Math.hypot(x, y - rests)).toBeGreaterThan(roller / 2 - 1e-9);
      }
    }
  });
});

describe('tips', () => {
  // Pointed outside diameters of the construction, worked apart from this code: 2.7142 and 9.3541 in.
  test('the ANSI teeth of 40 on 15 come to a point at 2.7142 in, of 520 on 45 at 9.3541', () => {
    expect(outsideForLand(ansi('40', 15), 0) / 25.4).toBeCloseTo(2.7142, 4);
    expect(outsideForLand(ansi('520', 45), 0) / 25.4).toBeCloseTo(9.3541, 4);
  });

  test('an outside asked for by the breadth of its tips has tips as broad', () => {
    for (const gap of [ansi('41', 60), iso('08B', 13)]) {
      expect(landAt(gap, outsideForLand(gap, 1.5))).toBeCloseTo(1.5, 9);
    }
  });

  test('below the shoulder there is no tooth', () => {
    expect(leastOutside(ansi('41', 60))).toBeLessThan(outsideForLand(ansi('41', 60), 0));
  });
});

describe('the ISO 606 gap', () => {
  // Geometry of the limits worked apart from this code, 08B z 20 at the least outside: gap 10.59 to 12.89 mm wide,
  // tooth pitch there 13.20 mm.
  test('08B z 20 lies between the narrowest and the widest gap', () => {
    const gap = iso('08B', 20);
    const width = 13.2 - landAt(gap, 84.358);
    expect(width).toBeGreaterThan(10.79);
    expect(width).toBeLessThan(12.46);
  });

  test.each(['06B', '08B', '10B', '12B', '16B', '428', '520'])(
    '%s keeps seat and flank in their limits',
    (name) => {
      for (const teeth of [9, 20, 45, 90]) {
        const limits = isoToothGap({ ...chain(name), teeth });
        const gap = iso(name, teeth);
        expect(gap.seat).toBeLessThanOrEqual(limits.ri.max + 1e-12);
        expect(gap.seat).toBeGreaterThanOrEqual(limits.ri.min);
        expect(gap.shoulder.radius).toBeGreaterThan(limits.re.min);
        expect(gap.shoulder.radius).toBeLessThan(limits.re.max);
      }
    },
  );

  // Root 72.674 mm (published formula), tolerance 0 / −0.25 (from memory): its middle is 72.549.
  test('the bottoms of 08B z 20 lie in the middle of their tolerance', () => {
    expect(bottomsOf(iso('08B', 20)).root).toBeCloseTo(72.549, 3);
  });
});

describe('caliper over two gaps', () => {
  // ANSI seat 1.005 Dr + 0.003 in: for 41 0.31053 in. PD 9.5537 in on 60 teeth, published formula sheet; by hand 9.2432.
  test('41 on 60 teeth reads 9.2432 in across opposite gaps', () => {
    expect(bottomsOf(ansi('41', 60)).caliper / 25.4).toBeCloseTo(9.2432, 3);
  });

  // 40 on 15: 2.4049 cos 6° = 2.39173 in, less the seat of 0.31656 in; by hand 2.07517.
  test('40 on 15 teeth reads 2.0752 in from a gap to the next but opposite', () => {
    const { root, caliper } = bottomsOf(ansi('40', 15));
    expect(caliper / 25.4).toBeCloseTo(2.0752, 3);
    expect(root / 25.4).toBeCloseTo(2.4049 - 0.31656, 3);
  });
});
