// Named shapes that a kerf offset must get right, drawn from their dimensions.
import {
  circleContour,
  makeContour,
  polygonContour,
  roundCorners,
  type Contour,
  type Vertex,
} from '../../../parts-library/geometry/index.js';

type Pair = readonly [number, number];

export function polygon(...points: readonly Pair[]): Contour {
  return polygonContour(points.map(([x, y]) => ({ x, y })));
}

export function rectangle(width: number, height: number): Contour {
  return polygon([0, 0], [width, 0], [width, height], [0, height]);
}

function turned(contour: Contour, direction: 'outline' | 'opening'): Contour {
  return makeContour(contour, { direction });
}

function moved(vertices: readonly Vertex[], dx: number, dy: number): Vertex[] {
  return vertices.map((v) => ({ x: v.x + dx, y: v.y + dy, bulge: v.bulge }));
}

/** A ring of 120 outside and 50 inside with six holes of 9 on a circle of 90. */
export function ringWithHoles(): Contour[] {
  const holes = Array.from({ length: 6 }, (_, i) => {
    const angle = (i * Math.PI) / 3;
    return circleContour({ x: 45 * Math.cos(angle), y: 45 * Math.sin(angle) }, 4.5, 'opening');
  });
  return [
    circleContour({ x: 0, y: 0 }, 60, 'outline'),
    circleContour({ x: 0, y: 0 }, 25, 'opening'),
    ...holes,
  ];
}

/** A slot of length `between` centres and half width `r`, as an opening. */
export function slot(between: number, r: number, x: number, y: number): Contour {
  return makeContour([
    { x: x - between / 2, y: y + r, bulge: 0 },
    { x: x + between / 2, y: y + r, bulge: -1 },
    { x: x + between / 2, y: y - r, bulge: 0 },
    { x: x - between / 2, y: y - r, bulge: -1 },
  ]);
}

/** A pedal arm: the hull of discs of radius 20 and 12, 150 apart, with a hole in each end. */
export function pedalArm(): Contour[] {
  // The tangent points lie at +-a from the axis, cos a = (20 - 12) / 150.
  const a = Math.acos(8 / 150);
  const at = (cx: number, r: number, angle: number): { x: number; y: number } => ({
    x: cx + r * Math.cos(angle),
    y: r * Math.sin(angle),
  });
  // The small end sweeps 2a, under half a circle; the large end 2 pi - 2a, over half, so it is split at (-20, 0).
  return [
    makeContour([
      { ...at(150, 12, -a), bulge: Math.tan(a / 2) },
      { ...at(150, 12, a), bulge: 0 },
      { ...at(0, 20, a), bulge: Math.tan((Math.PI - a) / 4) },
      { x: -20, y: 0, bulge: Math.tan((Math.PI - a) / 4) },
      { ...at(0, 20, -a), bulge: 0 },
    ]),
    circleContour({ x: 0, y: 0 }, 8.1, 'opening'),
    circleContour({ x: 150, y: 0 }, 4.1, 'opening'),
  ];
}

/**
 * The outline of a chain sprocket of 52 teeth, pitch 12.7: per tooth gap a flank, a seat and a flank, all tangent, then a
 * tip arc that meets the flanks at corners.
 */
export function sprocket52(): Contour {
  const teeth = 52;
  const pitchRadius = 12.7 / 2 / Math.sin(Math.PI / teeth);
  const seat = 4;
  const flank = 14;
  const tipRadius = pitchRadius + 2.5;
  const open = (75 * Math.PI) / 180;
  // In the frame of one gap: y outward along its middle, seat centre at (0, pitchRadius).
  const seatEnd = { x: seat * Math.sin(open), y: pitchRadius - seat * Math.cos(open) };
  const centre = {
    x: (seat + flank) * Math.sin(open),
    y: pitchRadius - (seat + flank) * Math.cos(open),
  };
  // Where the flank circle meets the tip circle, on the side of the gap.
  const d = Math.hypot(centre.x, centre.y);
  const along = (d * d + tipRadius * tipRadius - flank * flank) / (2 * d);
  const half = Math.sqrt(tipRadius * tipRadius - along * along);
  const tip = {
    x: (centre.x * along - centre.y * half) / d,
    y: (centre.y * along + centre.x * half) / d,
  };
  const angleAt = (p: { x: number; y: number }): number => Math.atan2(p.y - centre.y, p.x - centre.x);
  const flankSweep = angleAt(seatEnd) - angleAt(tip);
  const wrapped = Math.atan2(Math.sin(flankSweep), Math.cos(flankSweep));
  const tipSweep = (2 * Math.PI) / teeth - 2 * Math.atan2(tip.x, tip.y);
  const flankBulge = Math.tan(Math.abs(wrapped) / 4);
  const gap: Vertex[] = [
    { ...tip, bulge: flankBulge },
    { ...seatEnd, bulge: -Math.tan((2 * open) / 4) },
    { x: -seatEnd.x, y: seatEnd.y, bulge: flankBulge },
    { x: -tip.x, y: tip.y, bulge: Math.tan(tipSweep / 4) },
  ];
  return makeContour(
    Array.from({ length: teeth }, (_, k) => {
      const turn = (2 * Math.PI * k) / teeth;
      return gap.map(({ x, y, bulge }) => ({
        x: x * Math.cos(turn) - y * Math.sin(turn),
        y: x * Math.sin(turn) + y * Math.cos(turn),
        bulge,
      }));
    }).flat(),
  );
}

/** A 60 x 40 block with a notch 3 wide and 20 deep from the top. */
export function notched(): Contour {
  return polygon([0, 0], [60, 0], [60, 40], [31.5, 40], [31.5, 20], [28.5, 20], [28.5, 40], [0, 40]);
}

/** An opening like a dogbone about (50, 30): two discs of radius 8, 40 apart, joined by a neck 2 wide. */
export function dogbone(): Contour {
  // The neck meets the discs at +-asin(1/8) from the axis; each disc keeps 2 pi - 2 asin(1/8), split in two.
  const a = Math.asin(1 / 8);
  const x = 20 - 8 * Math.cos(a);
  const quarter = Math.tan((Math.PI - a) / 4);
  const vertices = [
    { x: -x, y: -1, bulge: 0 },
    { x, y: -1, bulge: quarter },
    { x: 28, y: 0, bulge: quarter },
    { x, y: 1, bulge: 0 },
    { x: -x, y: 1, bulge: quarter },
    { x: -28, y: 0, bulge: quarter },
  ];
  return makeContour(moved(vertices, 50, 30), { direction: 'opening' });
}

/** An opening of two chambers 10 x 10, joined by a channel 3 wide and 5 long. */
export function chambers(): Contour {
  const vertices = polygon(
    [0, 0],
    [10, 0],
    [10, 3.5],
    [15, 3.5],
    [15, 0],
    [25, 0],
    [25, 10],
    [15, 10],
    [15, 6.5],
    [10, 6.5],
    [10, 10],
    [0, 10],
  );
  return turned(vertices, 'opening');
}

/** A star of seven points of 12 degrees, 50 out. */
export function star(): Contour {
  const half = Math.tan((6 * Math.PI) / 180);
  const step = Math.PI / 7;
  // Seen from a tip, the inner corner lies 6 degrees off the axis: r sin(step) = (50 - r cos(step)) tan(6).
  const inner = (50 * half) / (Math.sin(step) + half * Math.cos(step));
  return polygonContour(
    Array.from({ length: 14 }, (_, i) => {
      const r = i % 2 === 0 ? 50 : inner;
      return { x: r * Math.cos(i * step), y: r * Math.sin(i * step) };
    }),
  );
}

/** An isosceles triangle with a tip of 8 degrees, 100 long. */
export function needle(): Contour {
  const half = 100 * Math.tan((4 * Math.PI) / 180);
  return polygon([0, 0], [100, -half], [100, half]);
}

/** An L of 80 x 60, legs 20 wide, its inner corner with a fillet. */
export function filletedL(radius: number): Contour {
  const corners = polygon([0, 0], [80, 0], [80, 20], [20, 20], [20, 60], [0, 60]);
  return roundCorners(corners, [0, 0, 0, radius, 0, 0]);
}

export const plate = (): Contour => rectangle(100, 60);
export const roundedPlate = (radius: number): Contour => roundCorners(rectangle(100, 60), radius);

/** A rounded rectangle 40 x 20 as an opening in the middle of the plate. */
export function roundedOpening(radius: number): Contour {
  return turned(makeContour(moved(roundCorners(rectangle(40, 20), radius), 30, 20)), 'opening');
}
