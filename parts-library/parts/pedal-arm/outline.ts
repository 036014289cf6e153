// The outside of the arm: the bar, its horn and tab with round inside corners, the flap, and slots cut in on bends.
import {
  biteContour,
  GeometryError,
  hullContour,
  joinContours,
  makeContour,
  roundCorners,
  slotContour,
  tangentChain,
  type Contour,
  type Spliced,
} from '../../geometry/index.js';
import type { BendLine, Flap, Horn, Layout } from './layout.js';
import type { PedalArm } from './parameters.js';

export type OutlineResult =
  | { readonly ok: true; readonly contour: Contour }
  | { readonly ok: false; readonly field: string; readonly says: string };

/** Bulge of a quarter circle to the left. */
const QUARTER = Math.tan(Math.PI / 8);
/** Round corners of the pad's free edge, mm. */
const PAD_CORNER = 8;
/** How far a slot's tool starts outside the edge, mm: any length will do. */
const OUTSIDE = 6;

const rounded = ({ contour, corners }: Spliced, radius: number): Contour =>
  roundCorners(
    contour,
    contour.map((_, index) => (corners.includes(index) ? radius : 0)),
  );

/** Runs one step of the construction; geometry that does not go together is told with the field that would mend it. */
function attempt(step: () => Contour, field: string, what: string): OutlineResult {
  try {
    return { ok: true, contour: step() };
  } catch (error) {
    if (!(error instanceof GeometryError)) throw error;
    return { ok: false, field, says: `${what} ${error.message}` };
  }
}

const hornContour = ({ root, tip }: Horn): Contour => hullContour([root, tip], 'outline');

/** The flap from the arm's middle line out, round at its two free corners. */
function flapContour({ left, right, top, seat }: Flap): Contour {
  const corner = Math.min(PAD_CORNER, (right - left) / 4, (top - seat) / 4);
  return makeContour(
    [
      { x: left, y: seat, bulge: 0 },
      { x: right, y: seat, bulge: 0 },
      { x: right, y: top - corner, bulge: QUARTER },
      { x: right - corner, y: top, bulge: 0 },
      { x: left + corner, y: top, bulge: QUARTER },
      { x: left, y: top - corner, bulge: 0 },
    ],
    { direction: 'outline' },
  );
}

/** The two slots of a bend line, from its ends inward, leaving the bridge. */
function slotsOn(line: BendLine, bridge: number, width: number): readonly Contour[] {
  const inner = bridge / 2 + width / 2;
  const on = (distance: number) => ({
    x: line.at.x + line.along.x * distance,
    y: line.at.y + line.along.y * distance,
  });
  return [1, -1].map((side) =>
    slotContour(on(side * inner), on(side * (line.half + OUTSIDE)), width, 'outline'),
  );
}

/** The finished outside, counter-clockwise, or which parameter stands in its way. */
export function outlineOf(p: PedalArm, layout: Layout): OutlineResult {
  const { discs, horn, tab, flap, bends, bridge } = layout;
  const corner = p.fillet.mm;
  const steps: readonly (readonly [field: string, what: string, step: (body: Contour) => Contour])[] = [
    ...(horn === undefined
      ? []
      : [
          [
            'linkAngle',
            'The horn for the pin does not grow out of the boss; another angle, a smaller eye or smaller inside corners would do.',
            (body: Contour) => rounded(joinContours(body, hornContour(horn)), corner),
          ] as const,
        ]),
    ...(tab === undefined
      ? []
      : [
          [
            'stopAngle',
            'The stop tab does not grow out of the boss; another angle, a greater distance or smaller inside corners would do.',
            (body: Contour) => rounded(joinContours(body, hornContour(tab)), corner),
          ] as const,
        ]),
    ...(flap === undefined
      ? []
      : [
          [
            'padLength',
            'The folded pad does not sit on the arm’s end; a shorter pad or a knee farther from it would do.',
            (body: Contour) => rounded(joinContours(body, flapContour(flap)), flap.corner),
          ] as const,
        ]),
    ...(p.fold === 'slots' ? bends : []).flatMap((line) =>
      slotsOn(line, bridge, p.slotWidth.mm).map(
        (slot) =>
          [
            line.id === 'bend.pad' ? 'bridge' : 'jogAt',
            `The slots of the ${line.name} run into something; another place, a wider arm or a smaller bridge would do.`,
            (body: Contour) => biteContour(body, slot).contour,
          ] as const,
      ),
    ),
  ];
  const start = attempt(
    () => {
      const { contour, insideCorners } = tangentChain(discs, { flatEnd: p.pad === 'flat' });
      return rounded({ contour, corners: insideCorners }, corner);
    },
    p.profile === 'dog-leg' ? 'kneeAlong' : 'length',
    'The arm does not hold together; a gentler knee, lower heights or smaller inside corners would do.',
  );
  return steps.reduce<OutlineResult>(
    (body, [field, what, step]) => (body.ok ? attempt(() => step(body.contour), field, what) : body),
    start,
  );
}
