// The gap between two teeth, by the ANSI construction or inside the ISO 606 limits: seat, flanks, how far a tip reaches.
import type { Point, Vertex } from '../../../geometry/index.js';
import {
  ansiToothForm,
  isoToothGap,
  pitchDiameter,
  rootLimits,
  type Chain,
  type Source,
} from '../../../handbook/index.js';

export type ToothForm = 'ansi' | 'iso';

/**
 * One gap, its roller straight above the middle of the sprocket. The right half is given, the left is its mirror. mm.
 */
export interface ToothGap {
  readonly form: ToothForm;
  readonly teeth: number;
  readonly pitchRadius: number;
  /** Radius of the roller's seat, and how far its centre lies from the middle of the sprocket. */
  readonly seat: number;
  readonly seatCentre: number;
  /** From the end of the seat up to where the last arc begins; each bulge belongs to the segment toward the tip. */
  readonly rises: readonly Vertex[];
  /** The arc of the tooth's shoulder, hollow side to the tooth, on which the last of `rises` lies. */
  readonly shoulder: { readonly centre: Point; readonly radius: number };
  readonly source: Source;
}

const RADIANS = Math.PI / 180;

/**
 * ANSI Type II: seat xx', working curve xy about c, straight yz, topping curve about b (letters of the construction).
 *
 * @returns undefined where the topping curve does not reach the pitch line
 */
export function ansiGap({ pitch, roller }: Chain, teeth: number): ToothGap | undefined {
  const form = ansiToothForm({ pitch, roller, teeth });
  if (form === undefined) return undefined;
  const pitchRadius = pitchDiameter(pitch, teeth) / 2;
  const A = form.A * RADIANS;
  const B = form.B * RADIANS;
  const x = { x: form.R * Math.cos(A), y: pitchRadius - form.R * Math.sin(A) };
  const y = {
    x: form.E * Math.cos(A - B) - form.M,
    y: pitchRadius + form.T - form.E * Math.sin(A - B),
  };
  const z = { x: y.x + form.yz * Math.sin(A - B), y: y.y + form.yz * Math.cos(A - B) };
  return {
    form: 'ansi',
    teeth,
    pitchRadius,
    seat: form.R,
    seatCentre: pitchRadius,
    rises: [
      { ...x, bulge: Math.tan(B / 4) },
      { ...y, bulge: 0 },
      { ...z, bulge: 0 },
    ],
    shoulder: { centre: { x: form.W, y: pitchRadius - form.V }, radius: form.F },
    source: form.source,
  };
}

/**
 * ISO 606, inside its limits: the greatest seat radius, since the torch leaves a rough seat, its bottom in the middle of
 * the root diameter's tolerance, and the middle of seating angle and flank radius.
 *
 * @returns undefined when there are too few teeth for a sprocket
 */
export function isoGap(chain: Chain, teeth: number): ToothGap | undefined {
  const { pitch, roller } = chain;
  const root = rootLimits(chain, teeth, 'iso');
  if (root === undefined) return undefined;
  const limits = isoToothGap({ pitch, roller, teeth });
  const seat = limits.ri.max;
  const flank = (limits.re.min + limits.re.max) / 2;
  const half = ((limits.alpha.min + limits.alpha.max) / 4) * RADIANS;
  const pitchRadius = pitchDiameter(pitch, teeth) / 2;
  const seatCentre = pitchRadius - roller / 2 - (root.most - root.least) / 4 + seat;
  const along = (distance: number): Point => ({
    x: distance * Math.sin(half),
    y: seatCentre - distance * Math.cos(half),
  });
  return {
    form: 'iso',
    teeth,
    pitchRadius,
    seat,
    seatCentre,
    rises: [{ ...along(seat), bulge: 0 }],
    shoulder: { centre: along(seat + flank), radius: flank },
    source: limits.source,
  };
}

/** How far the shoulder's circle reaches out, measured `aside` mm from the tooth's middle line on its own side. */
function reachOfShoulder({ shoulder, teeth }: ToothGap, aside: number): number {
  const { x, y } = shoulder.centre;
  const out = { x: Math.sin(Math.PI / teeth), y: Math.cos(Math.PI / teeth) };
  // The shoulder lies left of the middle line, its centre right of it.
  const beside = x * out.y - y * out.x + aside;
  const along = x * out.x + y * out.y + Math.sqrt(Math.max(0, shoulder.radius ** 2 - beside ** 2));
  return Math.hypot(along, aside);
}

/**
 * Outside diameter at which the tooth's tip is `land` mm broad; with 0, where it comes to a point.
 *
 * @example the ANSI tooth of 40 chain on 15 teeth comes to a point at 68.94 mm (2.7142 in)
 */
export function outsideForLand(gap: ToothGap, land: number): number {
  return 2 * reachOfShoulder(gap, land / 2);
}

/** Where the shoulder ends on the outside, on the right of the gap. */
function tipOf({ shoulder }: ToothGap, outside: number): Point {
  const reach = outside / 2;
  const { x, y } = shoulder.centre;
  const away = Math.hypot(x, y);
  const along = (reach ** 2 - shoulder.radius ** 2 + away ** 2) / (2 * away);
  const across = Math.sqrt(Math.max(0, reach ** 2 - along ** 2));
  return { x: (x * along - y * across) / away, y: (y * along + x * across) / away };
}

/**
 * Breadth of the tooth's tip at an outside diameter, mm; below 0 the flanks have crossed.
 *
 * @example landAt(gap of 40 chain on 15 teeth, 67.37) is 1.31 mm
 */
export function landAt(gap: ToothGap, outside: number): number {
  const tip = tipOf(gap, outside);
  return outside * Math.sin(Math.PI / gap.teeth - Math.atan2(tip.x, tip.y));
}

/** The outside diameter below which the shoulder would be cut away, mm. */
export function leastOutside({ rises }: ToothGap): number {
  const last = rises.at(-1) ?? { x: 0, y: 0 };
  return 2 * Math.hypot(last.x, last.y);
}

/**
 * Bottom diameter, and what a caliper reads over two gaps as they are drawn: from bottom to bottom on even teeth, on
 * odd ones from one bottom to the next but opposite.
 */
export function bottomsOf({ seatCentre, seat, teeth }: ToothGap): {
  readonly root: number;
  readonly caliper: number;
} {
  const root = 2 * (seatCentre - seat);
  return {
    root,
    caliper: teeth % 2 === 0 ? root : 2 * (seatCentre * Math.cos(Math.PI / 2 / teeth) - seat),
  };
}

/**
 * One tooth's share of the outline, counter-clockwise: from the tip on the gap's right down one flank, round the seat,
 * up the other, over the next tip. It begins at its farthest point; the next tooth's begins where it ends.
 *
 * @param outside between `leastOutside` and where the teeth come to a point
 */
export function toothSector(gap: ToothGap, outside: number): readonly Vertex[] {
  const { rises, shoulder, teeth } = gap;
  const tip = tipOf(gap, outside);
  const last = rises.at(-1) ?? tip;
  const { centre } = shoulder;
  const seen = (p: Point): number => Math.atan2(p.y - centre.y, p.x - centre.x);
  const sweep = (seen(last) - seen(tip) + 2 * Math.PI) % (2 * Math.PI);
  const shoulderBulge = Math.tan(sweep / 4);
  const down = rises.toReversed();
  const [seatEnd = tip] = rises;
  // Round the roller clockwise, from one end of the seat to the other.
  const seatSweep = Math.PI - 2 * Math.atan2(gap.seatCentre - seatEnd.y, seatEnd.x);
  const tipSweep = 2 * (Math.PI / teeth - Math.atan2(tip.x, tip.y));
  const zero = (bulge: number): number => (bulge === 0 ? 0 : -bulge);
  return [
    { ...tip, bulge: shoulderBulge },
    ...down.slice(0, -1).map(({ x, y }, index) => ({ x, y, bulge: zero(down[index + 1]?.bulge ?? 0) })),
    { x: seatEnd.x, y: seatEnd.y, bulge: -Math.tan(seatSweep / 4) },
    ...rises.slice(0, -1).map(({ x, y, bulge }) => ({ x: -x, y, bulge: zero(bulge) })),
    { x: -last.x, y: last.y, bulge: shoulderBulge },
    { x: -tip.x, y: tip.y, bulge: Math.tan(tipSweep / 4) },
  ];
}
