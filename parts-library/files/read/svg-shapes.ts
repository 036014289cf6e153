// The plain shapes of SVG as pieces of line: rectangles with round corners, circles, ellipses, lines, polygons.
import type { Point } from '../../geometry/index.js';
import type { Piece } from './pieces.js';
import { readPath, type PathRead } from './svg-path.js';
import { numbersIn, userLength } from './svg-values.js';
import type { XmlElement } from './xml.js';

const NOTHING: PathRead = { runs: [], dots: [] };

const one = (pieces: readonly Piece[], closed: boolean): PathRead =>
  pieces.length === 0 ? NOTHING : { runs: [{ pieces, closed }], dots: [] };

const line = (from: Point, to: Point): Piece => ({ kind: 'segment', from, to, bulge: 0 });

function oval(centre: Point, rx: number, ry: number, start: number, sweep: number): Piece {
  return { kind: 'round', centre, u: { x: rx, y: 0 }, v: { x: 0, y: ry }, start, sweep };
}

/** Lines between points, without those of no length. */
function alongPoints(points: readonly Point[], closed: boolean): readonly Piece[] {
  const ring = closed && points[0] !== undefined ? [...points, points[0]] : points;
  return ring.slice(1).flatMap((to, i): readonly Piece[] => {
    const from = ring[i] ?? to;
    return from.x === to.x && from.y === to.y ? [] : [line(from, to)];
  });
}

function rectangle(element: XmlElement): PathRead {
  const get = (name: string): number => userLength(element.attributes.get(name), `${name} of a rect`);
  const [x, y, width, height] = [get('x'), get('y'), get('width'), get('height')];
  if (!(width > 0 && height > 0)) return NOTHING;
  const given = (name: string): boolean => element.attributes.has(name);
  const rx = Math.min(given('rx') ? get('rx') : get('ry'), width / 2);
  const ry = Math.min(given('ry') ? get('ry') : get('rx'), height / 2);
  const [right, bottom] = [x + width, y + height];
  if (!(rx > 0 && ry > 0)) {
    return one(
      alongPoints(
        [
          { x, y },
          { x: right, y },
          { x: right, y: bottom },
          { x, y: bottom },
        ],
        true,
      ),
      true,
    );
  }
  const quarter = Math.PI / 2;
  const corners = [
    { at: { x: right - rx, y: y + ry }, start: -quarter },
    { at: { x: right - rx, y: bottom - ry }, start: 0 },
    { at: { x: x + rx, y: bottom - ry }, start: quarter },
    { at: { x: x + rx, y: y + ry }, start: 2 * quarter },
  ];
  const place = (at: Point, angle: number): Point => ({
    x: at.x + rx * Math.cos(angle),
    y: at.y + ry * Math.sin(angle),
  });
  const pieces = corners.flatMap(({ at, start }, i): readonly Piece[] => {
    const next = corners[(i + 1) % corners.length] ?? { at, start };
    const [from, to] = [place(at, start + quarter), place(next.at, next.start)];
    const apart = Math.hypot(to.x - from.x, to.y - from.y) > 1e-9 * (width + height);
    return [oval(at, rx, ry, start, quarter), ...(apart ? [line(from, to)] : [])];
  });
  return one(pieces, true);
}

function round(element: XmlElement): PathRead {
  const { name, attributes } = element;
  const get = (of: string): number => userLength(attributes.get(of), `${of} of a ${name}`);
  const [rx, ry] = name === 'circle' ? [get('r'), get('r')] : [get('rx'), get('ry')];
  if (!(rx > 0 && ry > 0)) return NOTHING;
  return one([oval({ x: get('cx'), y: get('cy') }, rx, ry, 0, 2 * Math.PI)], true);
}

function polygon(element: XmlElement): PathRead {
  const values = numbersIn(element.attributes.get('points') ?? '', `points of a ${element.name}`);
  const points = Array.from({ length: Math.floor(values.length / 2) }, (_, i) => ({
    x: values[2 * i] ?? 0,
    y: values[2 * i + 1] ?? 0,
  }));
  const closed = element.name === 'polygon';
  return one(alongPoints(points, closed), closed);
}

/** The line of a shape in its own coordinates; undefined for an element that is none. */
export function shapeOfElement(element: XmlElement): PathRead | undefined {
  const { name, attributes } = element;
  switch (name) {
    case 'path':
      return readPath(attributes.get('d') ?? '');
    case 'rect':
      return rectangle(element);
    case 'circle':
    case 'ellipse':
      return round(element);
    case 'polyline':
    case 'polygon':
      return polygon(element);
    case 'line': {
      const get = (of: string): number => userLength(attributes.get(of), `${of} of a line`);
      return one(
        alongPoints(
          [
            { x: get('x1'), y: get('y1') },
            { x: get('x2'), y: get('y2') },
          ],
          false,
        ),
        false,
      );
    }
    default:
      return undefined;
  }
}
