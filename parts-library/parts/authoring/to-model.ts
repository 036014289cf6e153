// Contour to makerjs model, so that a family may trim or combine one with makerjs.
import makerjs from 'makerjs';
import { isCircle, segmentsOf, type Contour, type Segment } from '../../geometry/index.js';

const DEGREES = 180 / Math.PI;

function pathOf(segment: Segment): MakerJs.IPath {
  if (segment.kind === 'line') {
    return new makerjs.paths.Line([segment.from.x, segment.from.y], [segment.to.x, segment.to.y]);
  }
  const { centre, radius, start, sweep } = segment;
  // makerjs arcs run counter-clockwise: a clockwise one is given from its end.
  const [from, to] = sweep > 0 ? [start, start + sweep] : [start + sweep, start];
  return new makerjs.paths.Arc([centre.x, centre.y], radius, from * DEGREES, to * DEGREES);
}

/** A model of one contour; a circle becomes a circle. Direction of travel is not kept, since makerjs has none. */
export function modelFromContour(contour: Contour): MakerJs.IModel {
  const circle = isCircle(contour);
  if (circle !== undefined) {
    return { paths: { circle: new makerjs.paths.Circle([circle.centre.x, circle.centre.y], circle.radius) } };
  }
  return {
    paths: Object.fromEntries(
      segmentsOf(contour).map((segment, index) => [`segment${index}`, pathOf(segment)]),
    ),
  };
}
