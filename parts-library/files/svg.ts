// SVG at true scale: one user unit is one millimetre, y turned to point down, a path per contour, arcs as arcs.
import { decimals, MM_PLACES, rounded } from './decimals.js';
import { extentsOf } from './extents.js';
import { drawnItems } from './rounding.js';
import type { Shape, Sheet } from './sheet.js';
import type { Point, Vertex } from '../geometry/index.js';

/** White round the drawing so that line widths and marks are not cut off, mm. */
const MARGIN = 5;

/** Diameter of the dot that shows a centre mark, mm. */
const DOT = 1;

const number = (value: number): string => decimals(value, MM_PLACES);

/** SVG's y points down, the plate's up: (x, y) stands at (x, -y), so coordinates can still be read off the file. */
const at = ({ x, y }: Point): string => `${number(x)} ${number(-y)}`;

/** A sheet as SVG text, always in millimetres. Ids are those of the features. Same sheet, same bytes. */
export function svgOf(sheet: Sheet): string {
  const items = drawnItems(sheet, 'mm');
  const { minX, minY, maxX, maxY } = extentsOf(items.map(({ shape }) => shape));
  const width = number(maxX - minX + 2 * MARGIN);
  const height = number(maxY - minY + 2 * MARGIN);
  const paths = items.map(
    ({ id, layer: { name, stroke, weight }, shape }) =>
      `    <path id="${escaped(id)}" class="${name}" stroke="${stroke}" stroke-width="${number(shape.kind === 'point' ? DOT : weight / 100)}" d="${pathOf(shape)}"/>`,
  );
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" ` +
      `viewBox="${number(minX - MARGIN)} ${number(-maxY - MARGIN)} ${width} ${height}">`,
    `  <title>${escaped(sheet.title)}</title>`,
    `  <desc>${sheet.heading.map(escaped).join('\n')}</desc>`,
    `  <g class="${sheet.kind === 'cut' ? 'cutpath' : 'finished'}" fill="none" stroke-linecap="round" stroke-linejoin="round">`,
    ...paths,
    '  </g>',
    '</svg>',
    '',
  ].join('\n');
}

function pathOf(shape: Shape): string {
  // No length, a round cap: seen as a dot, with no line that a machine could cut.
  if (shape.kind === 'point') return `M${at(shape.at)}h0`;
  if (shape.kind === 'open') return run(shape.vertices);
  if (shape.kind === 'closed') return `${run([...shape.vertices, ...shape.vertices.slice(0, 1)])}Z`;
  const { centre, radius } = shape;
  const east = { x: centre.x + radius, y: centre.y };
  const west = { x: centre.x - radius, y: centre.y };
  // Two half circles: a single arc that ends where it starts draws nothing (SVG 1.1, F.6.2).
  return `M${at(east)}${arc(radius, 1, west)}${arc(radius, 1, east)}Z`;
}

function run(vertices: readonly Vertex[]): string {
  let from: Vertex | undefined;
  let d = '';
  for (const to of vertices) {
    if (from === undefined) d += `M${at(to)}`;
    else if (from.bulge === 0) d += `L${at(to)}`;
    else d += arcs(from, to);
    from = to;
  }
  return d;
}

/** Bulge of a quarter circle, tan(22.5 degrees). */
const QUARTER = Math.SQRT2 - 1;

/**
 * The arc from a vertex to the next. One that sweeps more than a quarter is written as its two halves: near a half
 * circle a radius rounded in its sixth decimal would move the crown by hundredths of a millimetre.
 */
function arcs(from: Vertex, to: Point): string {
  const { bulge } = from;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  if (Math.abs(bulge) <= QUARTER) {
    return arc((Math.hypot(dx, dy) * (1 + bulge ** 2)) / (4 * Math.abs(bulge)), bulge, to);
  }
  const half = Math.tan(Math.atan(bulge) / 2);
  const crown = {
    x: rounded((from.x + to.x + bulge * dy) / 2, MM_PLACES),
    y: rounded((from.y + to.y - bulge * dx) / 2, MM_PLACES),
    bulge: half,
  };
  return arcs({ x: from.x, y: from.y, bulge: half }, crown) + arcs(crown, to);
}

/** An arc of at most half a circle. A left turn (bulge > 0) is sweep flag 0, since the y axis is turned round. */
const arc = (radius: number, bulge: number, to: Point): string =>
  `A${number(radius)} ${number(radius)} 0 0 ${bulge > 0 ? 0 : 1} ${at(to)}`;

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text that XML takes: markup escaped, characters that XML 1.0 forbids left out. */
const escaped = (text: string): string =>
  text
    .replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>"]/g, (character) => ENTITIES[character] ?? '');
