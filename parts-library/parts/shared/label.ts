// Where the etched label goes: the first of a few places where the lettering lies on clear metal.
import { clearMetal } from '../../checks/index.js';
import { boundsOf, type Point } from '../../geometry/index.js';
import { isCut, type Feature, type Finding } from '../../model/index.js';
import { letterText } from '../lettering/strokes.js';

/** Room round the lettering, mm. */
const CLEAR = 2;
/** Distance of the sampled points on the lettering's box, mm: with room round each nothing slips between. */
const SAMPLE = 3;

/** Points on the border and the middle line of a box round the origin, corners first: they are the likeliest to be in the way. */
function boxPoints(width: number, height: number): readonly Point[] {
  const along = (length: number): readonly number[] => {
    const steps = Math.max(1, Math.ceil(length / SAMPLE));
    return Array.from({ length: steps + 1 }, (_, step) => -length / 2 + (length * step) / steps);
  };
  const corners = [-width / 2, width / 2].flatMap((x) => [-height / 2, height / 2].map((y) => ({ x, y })));
  const rows = along(width).flatMap((x) => [-height / 2, 0, height / 2].map((y) => ({ x, y })));
  return [...corners, ...rows];
}

/** Places in rows and columns of how far across and up the plate's upright box they lie; the middle comes first. */
const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9];

/** Places all over a plate's upright box, for families that know of none better. */
export function placesOver(features: readonly Feature[]): readonly Point[] {
  const outline = features.filter(isCut).find(({ purpose }) => purpose === 'outline');
  if (outline === undefined) return [];
  const { minX, minY, maxX, maxY } = boundsOf(outline.contour);
  return SHARES.flatMap((up) =>
    SHARES.map((across) => ({ x: minX + across * (maxX - minX), y: minY + up * (maxY - minY) })),
  );
}

/**
 * A label's strokes as etch features, one line of text along x.
 *
 * @param plain outline, openings and marks of the part
 * @param places centres to try, best first
 * @param mayStand what else a point of the label's box has to satisfy, for example to lie outside a weld
 * @returns nothing without a label; undefined when no place keeps it 2 mm clear of edges and holes
 */
export function etchLabel(
  label: string | undefined,
  height: number,
  plain: readonly Feature[],
  places: readonly Point[],
  mayStand: (point: Point) => boolean = () => true,
): readonly Feature[] | undefined {
  if (label === undefined || label === '') return [];
  const { width } = letterText(label, { x: 0, y: 0 }, height);
  const isClear = clearMetal(plain, CLEAR);
  const box = boxPoints(width, height);
  const centre = places.find((place) =>
    box.every(({ x, y }) => {
      const point = { x: place.x + x, y: place.y + y };
      return mayStand(point) && isClear(point);
    }),
  );
  // A mark struck off the metal fires the torch into air: better no label than one that runs over an edge.
  if (centre === undefined) return undefined;
  return letterText(label, centre, height).strokes.map((path, index) => ({
    id: `label.${index + 1}`,
    name: 'label',
    purpose: 'etch',
    path,
  }));
}

/** Said in the draw stage when the label was left out. */
export const noRoomForLabel = (label: string): Finding => ({
  code: 'label-room',
  level: 'caution',
  stage: 'draw',
  subject: {},
  field: 'label',
  title: `No room for the label “${label}”`,
  says: 'It was left out: no place keeps it 2 mm clear of edges, holes and weld. A shorter label or a smaller height would do.',
  source: {
    title: 'Marked lettering',
    where: 'stays on clear metal, outside the weld',
    certainty: 'common practice',
  },
});
