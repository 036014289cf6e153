// The outside of a bearing flange plate: a rectangle, or a belt with a straight foot; and the foot that is welded.
import {
  boundsOf,
  hullContour,
  rectangleContour,
  type Contour,
  type Disc,
  type Point,
} from '../../geometry/index.js';
import type { EdgeUse } from '../../model/index.js';
import { refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import { shaftOf, USUAL_WEB, type Holes } from './holes.js';
import type { BearingFlange } from './parameters.js';

/** Edge distance when none is given, in bolt diameters. */
const USUAL_EDGE = 2;

/** Edge distance of a belt, mm. */
export const edgeOf = (p: BearingFlange, sets: readonly Holes[]): number =>
  p.edge?.mm ??
  Math.max(
    USUAL_WEB * p.thickness.mm,
    ...sets.map(({ size }) =>
      Math.max(USUAL_EDGE * size.thread.diameter, USUAL_WEB * p.thickness.mm + size.diameter / 2),
    ),
  );

function hullOutside(p: BearingFlange, sets: readonly Holes[], middle: number, edge: number): Contour {
  const bolts = sets.flatMap(({ holes }) => holes.map(({ at }): Disc => ({ centre: at, radius: edge })));
  const opening: Disc = { centre: shaftOf(p), radius: middle };
  const foot: readonly Disc[] =
    p.mount === 'welded'
      ? [-1, 1].map((side) => ({
          centre: { x: (side * p.width.mm) / 2, y: -p.height.mm / 2 },
          radius: 0,
        }))
      : [];
  return hullContour([...bolts, opening, ...foot], 'outline');
}

/** The outer edge: rectangle, or belt that keeps `middle` mm round the shaft. */
export function outsideOf(
  p: BearingFlange,
  sets: readonly Holes[],
  middle: number,
  edge: number,
): Resolved<Contour> {
  if (p.shape === 'hull') return { ok: true, value: hullOutside(p, sets, middle, edge) };
  const most = Math.min(p.width.mm, p.height.mm) / 2;
  return p.corner.mm > most
    ? refusal(
        'corner',
        `Corners of ${roundText(p.corner.mm)} mm do not fit on ${roundText(p.width.mm)} × ${roundText(p.height.mm)} mm; ${roundText(most)} mm is the most.`,
      )
    : {
        ok: true,
        value: rectangleContour(
          { centre: { x: 0, y: 0 }, width: p.width.mm, height: p.height.mm, corner: p.corner.mm },
          'outline',
        ),
      };
}

/** The straight edge at the foot's height, where the plate stands on the frame; none where something hangs lower. */
export function footOf(
  contour: Contour,
  height: number,
): { readonly edges: readonly EdgeUse[]; readonly length: number } {
  if (boundsOf(contour).minY < height - 1e-6) return { edges: [], length: 0 };
  const isLow = ({ y }: Point): boolean => Math.abs(y - height) < 1e-6;
  const found = contour.flatMap((vertex, segment) => {
    const next = contour[(segment + 1) % contour.length];
    if (next === undefined || vertex.bulge !== 0 || !isLow(vertex) || !isLow(next)) return [];
    return [{ segment, length: Math.abs(next.x - vertex.x) }];
  });
  return {
    edges: found.map(({ segment }): EdgeUse => ({ segment, role: 'weld' })),
    length: found.reduce((sum, { length }) => sum + length, 0),
  };
}
