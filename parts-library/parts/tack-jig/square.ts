// The square: a plate for the inside of the corner, two straight edges on the tubes, a round bite for the weld, clamp openings.
import { circleContour, makeContour, roundCorners, type Vertex } from '../../geometry/index.js';
import type { CutFeature, EdgeUse, Feature } from '../../model/index.js';
import { refuseStray } from '../shared/finish-part.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { heldAngle, legsOf, type Leg } from './frame.js';
import type { TackJig } from './parameters.js';

export interface Square {
  /** Openings for the clamps, in the plate, by leg. */
  readonly openings: readonly {
    readonly id: string;
    readonly leg: Leg;
    readonly u: number;
    readonly v: number;
  }[];
  readonly features: readonly Feature[];
}

/** Places of the openings along a leg, as shares of the way from the bite to the end. */
const SHARES: readonly (readonly number[])[] = [[], [0.6], [0.35, 0.8]];

/** The two edges that lie on the tubes. */
function seatsOf(contour: CutFeature['contour'], legs: readonly Leg[]): readonly EdgeUse[] {
  const onEdge = ({ x, y }: Vertex, leg: Leg): boolean => {
    const along = leg.at(1, 0);
    return Math.abs(x * along.y - y * along.x) < 1e-6;
  };
  return contour.flatMap((vertex, segment): readonly EdgeUse[] => {
    const next = contour[(segment + 1) % contour.length];
    const lies = legs.some((leg) => next !== undefined && onEdge(vertex, leg) && onEdge(next, leg));
    return lies && vertex.bulge === 0 ? [{ segment, role: 'mating' }] : [];
  });
}

/** Works the square out; its inner corner is the origin. */
export function squareOf(p: TackJig): Resolved<Square> {
  const [a, b] = legsOf(p);
  const theta = (heldAngle(p) * Math.PI) / 180;
  // The line across the ends must stay outside the bite and on the far side of both tips.
  const least = p.weldRoom.mm + 2 * p.corner.mm + 1;
  const short = [a, b].find(({ length }) => length <= least);
  if (short !== undefined) {
    return refusal(
      short.lengthField,
      `A leg of ${roundText(short.length)} mm is used up by the bite of ${roundText(p.weldRoom.mm)} mm and its corners; more than ${roundText(least)} mm is needed.`,
    );
  }
  const widest = 0.9 * Math.min(a.length, b.length) * Math.tan(theta / 2);
  if (p.tip.mm > widest) {
    return refusal(
      'tip',
      `Ends ${roundText(p.tip.mm)} mm wide cross each other; ${roundText(widest)} mm is the most for these legs.`,
    );
  }
  const most = p.tip.mm / 2.5;
  if (p.corner.mm > most) {
    return refusal(
      'corner',
      `Corners of ${roundText(p.corner.mm)} mm do not fit on ends ${roundText(p.tip.mm)} mm wide; ${roundText(most)} mm is the most.`,
    );
  }
  const bite = p.weldRoom.mm;
  const ends = [a.at(a.length, 0), a.at(a.length, p.tip.mm), b.at(b.length, p.tip.mm), b.at(b.length, 0)];
  const sharp = makeContour(
    [
      { ...a.at(bite, 0), bulge: 0 },
      ...ends.map((end) => ({ ...end, bulge: 0 })),
      ...(bite === 0 ? [] : [{ ...b.at(bite, 0), bulge: -Math.tan(theta / 4) }]),
    ],
    { direction: 'outline' },
  );
  const radii = [0, p.corner.mm, p.corner.mm, p.corner.mm, p.corner.mm, 0];
  const contour = roundCorners(sharp, radii.slice(0, sharp.length));
  const outline: CutFeature = {
    id: 'outline',
    name: 'outline',
    purpose: 'outline',
    contour,
    edges: seatsOf(contour, [a, b]),
  };
  const radius = p.clampOpening.mm / 2;
  const openings = [a, b].flatMap((leg) =>
    (SHARES[p.clamps] ?? []).map((share, index) => ({
      id: `clamp.${leg.id}.${index + 1}`,
      leg,
      u: bite + share * (leg.length - bite),
      v: p.clampLand.mm + radius,
    })),
  );
  const features = openings.map(({ id, leg, u, v }, index): CutFeature => ({
    id,
    name: `clamp opening ${index + 1}`,
    purpose: 'opening',
    contour: circleContour(leg.at(u, v), radius, 'opening'),
    hole: { finish: 'cut', size: p.clampOpening.mm },
  }));
  const stray = refuseStray(contour, features, () => 'clampOpening');
  return stray ?? { ok: true, value: { openings, features: [outline, ...features] } };
}
