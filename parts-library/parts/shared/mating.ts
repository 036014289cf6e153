// Ghosts of what stands round a plate's edge: the tube under the edge, the bead, boxes and lines.
import { polygonContour, type Point } from '../../geometry/index.js';
import type { Ghost, GhostKind } from '../../model/index.js';
import type { CopedEdge } from './coped-edge.js';

/** An upright box as a ghost. */
export function boxGhost(
  id: string,
  kind: GhostKind,
  box: { readonly x: readonly [number, number]; readonly y: readonly [number, number] },
  label?: string,
): Ghost {
  const [[left, right], [low, high]] = [box.x, box.y];
  return {
    id,
    kind,
    ...(label === undefined ? {} : { label }),
    shape: {
      contour: polygonContour(
        [
          { x: left, y: low },
          { x: right, y: low },
          { x: right, y: high },
          { x: left, y: high },
        ],
        { direction: 'outline' },
      ),
    },
  };
}

/** A straight ghost line. */
export const lineGhost = (id: string, kind: GhostKind, from: Point, to: Point, label?: string): Ghost => ({
  id,
  kind,
  ...(label === undefined ? {} : { label }),
  shape: {
    path: {
      vertices: [
        { ...from, bulge: 0 },
        { ...to, bulge: 0 },
      ],
    },
  },
});

/** How much of a tube that runs along the edge is shown beyond it, as a share of the edge. */
const TUBE_BEYOND = 0.25;

/**
 * The tube under an edge whose crest is the origin: a circle where the edge is coped, else its side along the edge.
 */
export function tubeGhost(coped: boolean, tube: number, base: number, label: string): Ghost {
  if (coped) {
    return {
      id: 'tube',
      kind: 'mating-part',
      label,
      shape: { circle: { centre: { x: 0, y: -tube / 2 }, radius: tube / 2 } },
    };
  }
  const half = base * (0.5 + TUBE_BEYOND);
  return boxGhost('tube', 'mating-part', { x: [-half, half], y: [-tube, 0] }, label);
}

/** The bead on the plate's face along an edge whose crest is the origin, one leg up from it. */
export function beadGhost(edge: CopedEdge, base: number, leg: number): Ghost {
  // On a tube the bead's upper line lies on a circle one leg larger.
  const grown = edge.bulge === 0 ? 1 : 1 + leg / (edge.length / ((edge.halfDegrees * Math.PI) / 90));
  const drop = edge.bulge === 0 ? -leg : edge.drop * grown - leg;
  return {
    id: 'weld',
    kind: 'weld',
    shape: {
      path: {
        vertices: [
          { x: (-base / 2) * grown, y: -drop, bulge: edge.bulge },
          { x: (base / 2) * grown, y: -drop, bulge: 0 },
        ],
      },
    },
  };
}
