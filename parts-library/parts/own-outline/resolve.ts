// The drawing as a part's features: moved, scaled, mirrored, each shape as what is done along it.
import {
  areaOf,
  boundsOf,
  isCircle,
  reverseContour,
  segmentsOf,
  transformContour,
  transformPath,
  transformPoint,
  type Bounds,
  type Contour,
  type OpenPath,
  type Transform,
} from '../../geometry/index.js';
import type { Drawing, DrawnShape, Feature } from '../../model/index.js';
import { contourOfShape } from '../fields/index.js';
import { lastKnown } from '../shared/last-known.js';
import { refusal, rememberResolved, type Refusal, type Resolved } from '../shared/resolved.js';
import { roundText } from '../shared/words.js';
import type { OwnOutline } from './parameters.js';

export interface OutlineNow {
  readonly features: readonly Feature[];
  /** Shapes that are kept to be seen. */
  readonly seen: readonly OpenPath[];
  readonly bounds: Bounds;
  /** How much larger than drawn. */
  readonly scale: number;
}

/** Width and height that are both given may ask for scales this far apart, as a share. */
const SAME_SCALE = 0.002;

const outlinesIn = ({ shapes }: Drawing): readonly DrawnShape[] =>
  shapes.filter(({ operation }) => operation === 'outline');

/** A shape as an open line: a closed one comes back to its start. */
function pathOf({ closed, vertices }: DrawnShape): OpenPath {
  const [first] = vertices;
  return { vertices: closed && first !== undefined ? [...vertices, { ...first, bulge: 0 }] : vertices };
}

const facing = (contour: Contour, purpose: 'outline' | 'opening'): Contour =>
  areaOf(contour) > 0 === (purpose === 'outline') ? contour : reverseContour(contour);

/** Numbers things of one kind as they come: `hole 3`. */
function counter(): (kind: string) => string {
  const counts = new Map<string, number>();
  return (kind) => {
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    return `${kind} ${number}`;
  };
}

function featureOf(
  shape: DrawnShape,
  move: Transform,
  markUpTo: number,
  named: (kind: string) => string,
): Feature | Refusal | undefined {
  const { id, operation, closed, vertices } = shape;
  if (operation === 'ignore') return undefined;
  if (operation === 'score' || operation === 'etch') {
    return vertices.length < 2
      ? refusal('drawing', `${id} is a point, which is no line to ${operation}; it can be a mark or ignored.`)
      : {
          id,
          name: named(`${operation} line`),
          purpose: operation,
          path: transformPath(pathOf(shape), move),
        };
  }
  const contour = closed ? contourOfShape(shape) : undefined;
  const circle = contour === undefined ? undefined : isCircle(contour);
  const diameter = (circle?.radius ?? 0) * 2 * (move.scale ?? 1);
  const [first] = vertices;
  if (operation === 'mark') {
    const at = circle?.centre ?? (vertices.length === 1 ? first : undefined);
    if (at === undefined)
      return refusal('drawing', `${id} is neither a circle nor a point; only those can be centre marks.`);
    const hole = circle === undefined ? {} : { hole: { finish: 'drill' as const, size: diameter } };
    return { id, name: named('mark'), purpose: 'mark', at: transformPoint(at, move), ...hole };
  }
  if (contour === undefined)
    return refusal(
      'drawing',
      `${id} is not closed, so it can be no ${operation}; it can be a line or ignored.`,
    );
  if (operation === 'opening' && circle !== undefined && diameter <= markUpTo + 1e-6) {
    return {
      id,
      name: named('mark'),
      purpose: 'mark',
      at: transformPoint(circle.centre, move),
      hole: { finish: 'drill', size: diameter },
    };
  }
  return {
    id,
    name: operation === 'outline' ? 'outline' : named(circle === undefined ? 'opening' : 'hole'),
    purpose: operation,
    contour: transformContour(facing(contour, operation), move),
    ...(circle === undefined ? {} : { hole: { finish: 'cut' as const, size: diameter } }),
  };
}

const isRefusal = (made: Feature | Refusal): made is Refusal => 'ok' in made;

/** The scale that width or height ask for. */
function scaleOf({ width, height, scale }: OwnOutline, drawn: Bounds): number | Refusal {
  const across = width === undefined ? undefined : width.mm / (drawn.maxX - drawn.minX);
  const up = height === undefined ? undefined : height.mm / (drawn.maxY - drawn.minY);
  if (across !== undefined && up !== undefined && Math.abs(across / up - 1) > SAME_SCALE)
    return refusal(
      'height',
      `At ${roundText(width?.mm ?? 0)} mm wide the drawing is ${roundText((drawn.maxY - drawn.minY) * across)} mm high, not ${roundText(height?.mm ?? 0)}; it is scaled evenly, so one of the two would do.`,
    );
  const wanted = across ?? up ?? scale.value;
  return wanted >= 0.01 && wanted <= 100
    ? wanted
    : refusal(
        width === undefined ? 'height' : 'width',
        `That would be ${roundText(wanted)} times as large as drawn; accepted is 0.01 to 100.`,
      );
}

/** Largest part that is made, mm: any plate is smaller. */
const LARGEST = 6000;

/** The one outline of a drawing, or what is wrong with it. */
function outlineShape(drawing: Drawing): DrawnShape | Refusal {
  const [outline, other] = outlinesIn(drawing);
  if (outline === undefined)
    return refusal('drawing', 'No shape of the drawing is the outline; name a closed one.');
  if (other !== undefined)
    return refusal(
      'drawing',
      `${outlinesIn(drawing).length} shapes are called the outline (${outline.id}, ${other.id}); a part has one, the others can be openings or ignored.`,
    );
  return outline.closed
    ? outline
    : refusal('drawing', `${outline.id} is not closed, so it can be no outline.`);
}

/** The features of a drawing where they lie. Known again while nothing about their place changes: a drawing is large. */
const placed = lastKnown(
  (
    drawing: Drawing,
    mirror: boolean,
    rotateDegrees: number,
    scale: number,
    markUpTo: number,
  ): Resolved<Omit<OutlineNow, 'scale'>> => {
    const outline = outlineShape(drawing);
    if ('ok' in outline) return outline;
    const lie: Transform = { mirror, rotateDegrees, scale };
    const { minX, minY, maxX, maxY } = boundsOf(transformContour(contourOfShape(outline), lie));
    const move: Transform = { ...lie, dx: -minX, dy: -minY };
    const named = counter();
    const features: Feature[] = [];
    for (const shape of drawing.shapes) {
      const made = featureOf(shape, move, markUpTo, named);
      if (made === undefined) continue;
      if (isRefusal(made)) return made;
      features.push(made);
    }
    const seen = drawing.shapes
      .filter(({ operation, vertices }) => operation === 'ignore' && vertices.length > 1)
      .map((shape) => transformPath(pathOf(shape), move));
    const bounds = { minX: 0, minY: 0, maxX: maxX - minX, maxY: maxY - minY };
    return { ok: true, value: { features, seen, bounds } };
  },
);

function resolveAnew(p: OwnOutline): Resolved<OutlineNow> {
  const { drawing } = p;
  const outline = outlineShape(drawing);
  if ('ok' in outline) return outline;
  const [mirror, turn] = [p.mirrored === 'yes', p.turn.value];
  const drawn = boundsOf(transformContour(contourOfShape(outline), { mirror, rotateDegrees: turn }));
  const scale = scaleOf(p, drawn);
  if (typeof scale !== 'number') return scale;
  const size = Math.max(drawn.maxX - drawn.minX, drawn.maxY - drawn.minY) * scale;
  if (size > LARGEST || size < 1)
    return refusal(
      'scale',
      `The part would be ${roundText(size)} mm long; accepted is 1 to ${LARGEST}. Is the drawing’s unit right?`,
    );
  const answer = placed(drawing, mirror, turn, scale, p.markUpTo?.mm ?? 0);
  return answer.ok ? { ok: true, value: { ...answer.value, scale } } : answer;
}

/** The features of a drawing under its parameters, or what does not go together. */
export const resolveOutline = rememberResolved(resolveAnew, 'drawing');

/** Shortest straight or round stretches of the cut edges, under `length` mm. */
export function shortEdges(features: readonly Feature[], length: number): number {
  return features.reduce((sum, feature) => {
    if (!('contour' in feature)) return sum;
    return (
      sum +
      segmentsOf(feature.contour).filter(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) < length)
        .length
    );
  }, 0);
}
