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
  | {
      readonly ok: true;
      readonly contour: Contour;
      /** Smallest radius that an inside corner came to, mm. */
      readonly least: number;
    }
  | { readonly ok: false; readonly field: string; readonly says: string };

interface Body {
  readonly contour: Contour;
  readonly least: number;
}

/** Bulge of a quarter circle to the left. */
const QUARTER = Math.tan(Math.PI / 8);
/** Round corners of the pad's free edge, mm. */
const PAD_CORNER = 8;
/** How far a slot's tool starts outside the edge, mm: any length will do. */
const OUTSIDE = 6;

/** Shares of the radius asked for that are tried at a corner without room for all of it. */
const SHARES = [1, 0.6, 0.35, 0.2, 0.08, 0];

/** Inside corners made round, as far as their neighbours let them. */
function rounded({ contour, corners }: Spliced, radius: number, least: number): Body {
  const at = (share: number): Contour =>
    roundCorners(
      contour,
      contour.map((_, index) => (corners.includes(index) ? share * radius : 0)),
    );
  let trouble: unknown;
  for (const share of SHARES) {
    try {
      return { contour: at(share), least: corners.length === 0 ? least : Math.min(least, share * radius) };
    } catch (error) {
      if (!(error instanceof GeometryError)) throw error;
      trouble = error;
    }
  }
  throw trouble;
}

/** Runs one step of the construction; geometry that does not go together is told with the field that would mend it. */
function attempt(step: () => Body, field: string, what: string): OutlineResult {
  try {
    return { ok: true, ...step() };
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
function slotsOn(line: BendLine, width: number): readonly Contour[] {
  const inner = line.bridge / 2 + width / 2;
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
  const { discs, horn, tab, flap, bends } = layout;
  const corner = p.fillet.mm;
  const steps: readonly (readonly [field: string, what: string, step: (body: Body) => Body])[] = [
    ...(horn === undefined
      ? []
      : [
          [
            'linkAngle',
            'The horn for the pin does not grow out of the boss; another angle, a smaller eye or smaller inside corners would do.',
            ({ contour, least }: Body) => rounded(joinContours(contour, hornContour(horn)), corner, least),
          ] as const,
        ]),
    ...(tab === undefined
      ? []
      : [
          [
            'stopAngle',
            'The stop tab does not grow out of the boss; another angle, a greater distance or smaller inside corners would do.',
            ({ contour, least }: Body) => rounded(joinContours(contour, hornContour(tab)), corner, least),
          ] as const,
        ]),
    ...(flap === undefined
      ? []
      : [
          [
            'padLength',
            'The folded pad does not sit on the arm’s end; a shorter pad or a knee farther from it would do.',
            ({ contour, least }: Body) => ({
              contour: rounded(joinContours(contour, flapContour(flap)), flap.corner, least).contour,
              least,
            }),
          ] as const,
        ]),
    ...(p.fold === 'slots' ? bends : []).flatMap((line) =>
      slotsOn(line, p.slotWidth.mm).map(
        (slot) =>
          [
            line.id === 'bend.pad' ? 'bridge' : 'jogAt',
            `The slots of the ${line.name} run into something; another place, a wider arm or a smaller bridge would do.`,
            ({ contour, least }: Body) => ({ contour: biteContour(contour, slot).contour, least }),
          ] as const,
      ),
    ),
  ];
  const start = attempt(
    () => {
      const { contour, insideCorners } = tangentChain(discs, { flatEnd: p.pad === 'flat' });
      return rounded({ contour, corners: insideCorners }, corner, corner);
    },
    p.profile === 'dog-leg' ? 'kneeAlong' : 'length',
    'The arm does not hold together; a gentler knee, lower heights or smaller inside corners would do.',
  );
  return steps.reduce<OutlineResult>(
    (body, [field, what, step]) => (body.ok ? attempt(() => step(body), field, what) : body),
    start,
  );
}
