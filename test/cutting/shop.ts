// Parts and settings that the tests cut: the orchard cart's ring plate and a few plain shapes.
import { circleContour, makeContour, polygonContour } from '../../parts-library/geometry/index.js';
import type { Contour, Vertex } from '../../parts-library/geometry/index.js';
import type { CutSettings, PlacedPart } from '../../parts-library/cutting/index.js';
import type { CutFeature, Feature, Part } from '../../parts-library/model/index.js';
import type { Placement } from '../../parts-library/plate/index.js';

/** 6 mm mild steel at 45 A: kerf 1.6, 1450 mm/min, 0.5 s to pierce (starting chart row). */
export const settings: CutSettings = {
  kerf: 1.6,
  kerfPlusMinus: 0.3,
  holeKerf: 1.6,
  speed: 1450,
  pierceSeconds: 0.5,
  thickness: 6,
  squareSide: 'right',
};

export const partOf = (name: string, features: readonly Feature[]): Part => ({
  family: 'test-piece',
  name,
  features,
  material: 'S275',
  thickness: 6,
  quantity: 1,
});

export const outline = (contour: Contour, edges?: CutFeature['edges']): CutFeature => ({
  id: 'outline',
  name: 'outline',
  purpose: 'outline',
  contour,
  ...(edges === undefined ? {} : { edges }),
});

export const opening = (id: string, contour: Contour, edges?: CutFeature['edges']): CutFeature => ({
  id,
  name: id,
  purpose: 'opening',
  contour,
  ...(edges === undefined ? {} : { edges }),
});

export const hole = (id: string, x: number, y: number, diameter: number): CutFeature =>
  opening(id, circleContour({ x, y }, diameter / 2, 'opening'));

export const rectangle = (
  width: number,
  height: number,
  direction: 'outline' | 'opening' = 'outline',
  x = 0,
  y = 0,
): Contour =>
  polygonContour(
    [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    { direction },
  );

/** A slot along x with round ends, its middle at x, y. */
export const slot = (length: number, width: number, x = 0, y = 0): Contour => {
  const [r, half] = [width / 2, (length - width) / 2];
  const vertices: Vertex[] = [
    { x: x - half, y: y - r, bulge: 0 },
    { x: x + half, y: y - r, bulge: 1 },
    { x: x + half, y: y + r, bulge: 0 },
    { x: x - half, y: y + r, bulge: 1 },
  ];
  return makeContour(vertices, { direction: 'opening' });
};

/** Ring of 150 with a bore of 57.35 for a 57.15 hub that slips in with 0.2. */
export const ring: Part = partOf('ring plate', [
  outline(circleContour({ x: 0, y: 0 }, 75, 'outline')),
  hole('bore', 0, 0, 57.35),
]);

/** The same with six holes of 11 on a circle of 110, two centre marks, a label line and a slot. */
export const adapter: Part = partOf('adapter plate', [
  outline(circleContour({ x: 0, y: 0 }, 75, 'outline')),
  hole('bore', 0, 0, 57.35),
  ...[0, 1, 2, 3, 4, 5].map((index) => {
    const angle = (index * Math.PI) / 3;
    return hole(`pattern1.hole.${index + 1}`, 55 * Math.cos(angle), 55 * Math.sin(angle), 11);
  }),
  { id: 'mark.1', name: 'centre mark 1', purpose: 'mark', at: { x: 0, y: 45 } },
  { id: 'mark.2', name: 'centre mark 2', purpose: 'mark', at: { x: 0, y: -45 } },
  {
    id: 'label',
    name: 'label',
    purpose: 'etch',
    path: {
      vertices: [
        { x: -10, y: 66, bulge: 0 },
        { x: 10, y: 66, bulge: 0 },
      ],
    },
  },
]);

export const place = (part: Part, at: Partial<Placement> = {}): PlacedPart => ({
  part,
  placement: {
    id: 'p1',
    rowId: 'row1',
    copy: 0,
    at: { x: 0, y: 0 },
    turnDegrees: 0,
    mirrored: false,
    locked: false,
    ...at,
  },
});
