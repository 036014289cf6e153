// The guard's outline: the belt round the sprockets with a tab let into its straight edges.
import {
  makeContour,
  roundCorners,
  vertexAt,
  type Contour,
  type Line,
  type Vertex,
} from '../../geometry/index.js';
import type { CutFeature } from '../../model/index.js';
import type { Drive } from './drive.js';
import type { ChainGuard } from './parameters.js';
import { tabCorner, type Tab } from './tabs.js';

interface Corner extends Vertex {
  /** Radius that it is rounded by, mm. */
  readonly round: number;
}

/** A tab's four corners on its way round: down one side, across its end, back up the other. */
function tabCorners(p: ChainGuard, tab: Tab): readonly Corner[] {
  const half = p.tabWidth.mm / 2;
  const at = (u: number, v: number, round: number): Corner => ({
    x: tab.root.x + u * tab.along.x + v * tab.away.x,
    y: tab.root.y + u * tab.along.y + v * tab.away.y,
    bulge: 0,
    round,
  });
  const corner = tabCorner(p, tab.length);
  return [
    at(-half, 0, p.root.mm),
    at(-half, tab.length, corner),
    at(half, tab.length, corner),
    at(half, 0, p.root.mm),
  ];
}

const isFrom = ({ x, y }: Vertex, line: Line): boolean =>
  Math.abs(x - line.from.x) < 1e-9 && Math.abs(y - line.from.y) < 1e-9;

/** The belt with its tabs, corners rounded. */
export function guardOutline(p: ChainGuard, drive: Drive, tabs: readonly Tab[]): CutFeature {
  const corners = drive.belt.flatMap((vertex, index): readonly Corner[] => {
    const edge =
      vertex.bulge !== 0
        ? undefined
        : isFrom(vertex, drive.above)
          ? 'above'
          : isFrom(vertex, drive.below)
            ? 'below'
            : undefined;
    const plain: Corner = { ...vertexAt(drive.belt, index), round: 0 };
    return [plain, ...tabs.filter((tab) => tab.edge === edge).flatMap((tab) => tabCorners(p, tab))];
  });
  const sharp: Contour = makeContour(corners, { direction: 'outline' });
  // Long arcs of the belt are split already, so that corners and vertices run side by side.
  const contour = roundCorners(
    sharp,
    corners.map(({ round }) => round),
  );
  return { id: 'outline', name: 'outline', purpose: 'outline', contour };
}
