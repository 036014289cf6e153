// makerjs model to contours: closed chains become one outline and its openings, arcs kept as arcs.
import makerjs from 'makerjs';
import {
  GeometryError,
  areaOf,
  circleContour,
  containsContour,
  makeContour,
  reverseContour,
  type Contour,
  type Vertex,
} from '../../geometry/index.js';

export interface DrawnContours {
  readonly outline: Contour;
  /** Largest first, clockwise. */
  readonly openings: readonly Contour[];
}

const RADIANS = Math.PI / 180;

const isArc = (path: MakerJs.IPath): path is MakerJs.IPathArc => makerjs.isPathArc(path);
const isRound = (path: MakerJs.IPath): path is MakerJs.IPathCircle => makerjs.isPathCircle(path);

const UNCLOSED = 'The model holds a line that does not close; a part needs closed chains only.';

/** One link of a chain as a vertex: where it starts, and the bulge of its arc in the direction of travel. */
function vertexOf(link: MakerJs.IChainLink): Vertex {
  const { pathContext: path, offset } = link.walkedPath;
  const [start, end] = makerjs.point.fromPathEnds(path) ?? [];
  const from = link.reversed ? end : start;
  if (from === undefined) throw new GeometryError('A path of the model has no ends; a circle stands alone.');
  const x = (from[0] ?? 0) + (offset[0] ?? 0);
  const y = (from[1] ?? 0) + (offset[1] ?? 0);
  if (!isArc(path)) return { x, y, bulge: 0 };
  // makerjs arcs run counter-clockwise from startAngle to endAngle.
  const sweep = makerjs.angle.ofArcSpan(path) * RADIANS;
  return { x, y, bulge: Math.tan(sweep / 4) * (link.reversed ? -1 : 1) };
}

function contourOf(chain: MakerJs.IChain): Contour {
  const [first] = chain.links;
  if (first === undefined || !chain.endless) {
    throw new GeometryError(UNCLOSED);
  }
  const { pathContext: path, offset } = first.walkedPath;
  if (chain.links.length === 1 && isRound(path)) {
    const centre = {
      x: (path.origin[0] ?? 0) + (offset[0] ?? 0),
      y: (path.origin[1] ?? 0) + (offset[1] ?? 0),
    };
    return circleContour(centre, path.radius, 'outline');
  }
  return makeContour(chain.links.map(vertexOf), { direction: 'outline' });
}

/**
 * The outline and openings of a makerjs model in millimetres.
 *
 * @throws GeometryError when a chain does not close, crosses itself, or lies outside the largest one
 * @example contoursFromModel(new makerjs.models.Ring(75, 28.675)) // outline ⌀150, one opening ⌀57.35
 */
export function contoursFromModel(model: MakerJs.IModel): DrawnContours {
  const chains: MakerJs.IChain[] = [];
  makerjs.model.findChains(model, (found, loose) => {
    if (loose.length > 0) throw new GeometryError(UNCLOSED);
    chains.push(...found);
  });
  const contours = chains.map(contourOf).sort((a, b) => Math.abs(areaOf(b)) - Math.abs(areaOf(a)));
  const [outline, ...inner] = contours;
  if (outline === undefined) throw new GeometryError('The model is empty; a part needs one closed outline.');
  for (const contour of inner) {
    if (!containsContour(outline, contour)) {
      throw new GeometryError('The model holds a second outline; a part is one piece of metal.');
    }
  }
  return { outline, openings: inner.map(reverseContour) };
}
