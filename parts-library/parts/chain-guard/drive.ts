// The chain drive behind the guard: pitch circles, what the chain sweeps, the belt that covers it.
import {
  hullContour,
  segmentsOf,
  type Contour,
  type Disc,
  type Line,
  type Point,
} from '../../geometry/index.js';
import { findChain, outsideDiameter, pitchDiameter, type Chain } from '../../handbook/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { ChainGuard } from './parameters.js';

export interface Drive {
  readonly chain: Chain;
  /** Height of the link plates as counted, mm. */
  readonly height: number;
  readonly pitchSmall: number;
  readonly pitchLarge: number;
  /** Straight edges of the guard, above and below the line of shafts, in its direction of travel. */
  readonly above: Line;
  readonly below: Line;
  readonly belt: Contour;
}

/** Link plates of ANSI chain are at most 0.95 of the pitch high; taken where a chain's own figure is not known. */
const PLATE_SHARE = 0.95;

/** Pitch circles with `more` added to their radii, the small sprocket at both ends of its take-up. */
export function discsRound(p: ChainGuard, pitches: readonly [number, number], more: number): readonly Disc[] {
  const half = p.takeUp.mm / 2;
  const at = (x: number, diameter: number): Disc => ({
    centre: { x, y: 0 },
    radius: diameter / 2 + more,
  });
  return [at(-half, pitches[0]), at(half, pitches[0]), at(p.centres.mm, pitches[1])];
}

/** The belt's straight edges that run from one sprocket to the other. */
function edgesOf(belt: Contour): { readonly above?: Line; readonly below?: Line } {
  // With a take-up the small sprocket may have a short straight of its own; the long ones are asked for.
  const lines = segmentsOf(belt)
    .filter((segment): segment is Line => segment.kind === 'line')
    .toSorted((a, b) => Math.abs(b.to.x - b.from.x) - Math.abs(a.to.x - a.from.x));
  const above = lines.find(({ from, to }) => from.x > to.x);
  const below = lines.find(({ from, to }) => from.x < to.x);
  return { ...(above === undefined ? {} : { above }), ...(below === undefined ? {} : { below }) };
}

/** Works the drive out, and the belt round it. */
export function driveOf(p: ChainGuard): Resolved<Drive> {
  const found = findChain(p.chain);
  if (!found.found) return refusal('chain', found.says);
  const chain = found.row;
  const height = chain.plateHeight ?? PLATE_SHARE * chain.pitch;
  const pitchSmall = pitchDiameter(chain.pitch, p.small);
  const pitchLarge = pitchDiameter(chain.pitch, p.large);
  const least =
    (outsideDiameter(chain.pitch, p.small) + outsideDiameter(chain.pitch, p.large)) / 2 + p.takeUp.mm / 2;
  const belt = hullContour(discsRound(p, [pitchSmall, pitchLarge], height / 2 + p.room.mm), 'outline');
  const { above, below } = edgesOf(belt);
  if (p.centres.mm <= least || above === undefined || below === undefined) {
    return refusal(
      'centres',
      `Sprockets of ${p.small} and ${p.large} teeth run into each other at ${roundText(p.centres.mm)} mm; more than ${roundText(least)} mm is needed.`,
    );
  }
  return { ok: true, value: { chain, height, pitchSmall, pitchLarge, above, below, belt } };
}

/** Height of a strand's pitch line over the line of shafts, `share` of the way along; the lower one is its mirror image. */
export function strandHeight({ pitchSmall, pitchLarge }: Drive, p: ChainGuard, share: number): number {
  const lean = Math.asin((pitchLarge - pitchSmall) / 2 / p.centres.mm);
  const along = share * p.centres.mm;
  // On the tangent line y cos a − x sin a is the small radius.
  return (pitchSmall / 2 + along * Math.sin(lean)) / Math.cos(lean);
}

/** Unit vector along a line. */
export function directionOf({ from, to }: Line): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
