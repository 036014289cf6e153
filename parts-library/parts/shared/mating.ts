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

/** An edge of a plate on a member: where it begins and ends, and which way the metal lies. */
export interface EdgeOnMember {
  readonly near: Point;
  readonly far: Point;
  readonly along: Point;
  readonly inward: Point;
  readonly edge: CopedEdge;
  readonly tube: number | undefined;
  readonly middle: Point;
}

/** The member under an edge: a tube seen from its end where the edge is coped, else its side. */
export function memberGhost(id: string, side: EdgeOnMember, size: number, label: string): Ghost {
  const { along, inward, middle } = side;
  const at = (distance: number, below: number): Point => ({
    x: middle.x + distance * along.x - below * inward.x,
    y: middle.y + distance * along.y - below * inward.y,
  });
  if (side.tube !== undefined) {
    return {
      id: `member.${id}`,
      kind: 'mating-part',
      label,
      shape: { circle: { centre: at(0, side.tube / 2), radius: side.tube / 2 } },
    };
  }
  const half = (0.5 + TUBE_BEYOND) * side.edge.length;
  return {
    id: `member.${id}`,
    kind: 'mating-part',
    label,
    shape: {
      contour: polygonContour([at(-half, 0), at(half, 0), at(half, size), at(-half, size)], {
        direction: 'outline',
      }),
    },
  };
}

/** The bead on the plate's face along an edge, one leg up from it; along a cope its ends are one leg up too. */
export function beadAlong(id: string, side: EdgeOnMember, leg: number): Ghost {
  // The edge runs with the metal on its left where `inward` is to the left of `along`.
  const turn = side.along.x * side.inward.y - side.along.y * side.inward.x;
  const up = ({ x, y }: Point): Point => ({ x: x + leg * side.inward.x, y: y + leg * side.inward.y });
  return {
    id,
    kind: 'weld',
    shape: {
      path: {
        vertices: [
          { ...up(side.near), bulge: turn > 0 ? side.edge.bulge : -side.edge.bulge },
          { ...up(side.far), bulge: 0 },
        ],
      },
    },
  };
}
