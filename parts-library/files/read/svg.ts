// An SVG file as strokes: groups, uses and transforms worked out, y turned to point up, in user units.
import { after, movePoint, shift, stretch, type Affine } from './affine.js';
import { READ_LIMITS } from './limits.js';
import { movePiece, type Stroke } from './pieces.js';
import { DrawingProblem } from './problem.js';
import type { DrawnPoint, Sketch } from './sketch.js';
import { shapeOfElement } from './svg-shapes.js';
import { lengthOf, numbersIn, styleOf, transformIn, UNITS, userLength } from './svg-values.js';
import { readXml, type XmlElement } from './xml.js';

/** Elements that hold others and are drawn with them. */
const GROUPS: ReadonlySet<string> = new Set(['g', 'a', 'svg', 'switch']);

/** Elements that say something of the file, or are drawn only where another one asks for them. */
const SILENT: ReadonlySet<string> = new Set([
  'title',
  'desc',
  'metadata',
  'defs',
  'symbol',
  'namedview',
  'style',
]);

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function viewBoxOf(element: XmlElement): Box | undefined {
  const text = element.attributes.get('viewBox');
  if (text === undefined) return undefined;
  const [x = 0, y = 0, width = 0, height = 0, ...rest] = numbersIn(text, 'The viewBox');
  if (rest.length > 0 || !(width > 0 && height > 0))
    throw new DrawingProblem(
      `The viewBox is "${text.slice(0, 60)}"; accepted are four numbers, the last two above 0.`,
    );
  return { x, y, width, height };
}

const isStretched = (element: XmlElement): boolean =>
  (element.attributes.get('preserveAspectRatio') ?? '').trim().startsWith('none');

/** How much larger the view box is shown than it is, across and down; even unless the file asks for stretching. */
function zoomOf(element: XmlElement, box: Box, width: number | undefined, height: number | undefined) {
  const across = width === undefined ? undefined : width / box.width;
  const down = height === undefined ? undefined : height / box.height;
  if (isStretched(element) && across !== undefined && down !== undefined) return { across, down };
  const even = Math.min(across ?? Infinity, down ?? Infinity);
  return { across: even, down: even };
}

interface Page {
  readonly unit: Sketch['unit'];
  /** How much taller than wide one unit is shown; 1 but for a stretched page. */
  readonly tall: number;
}

/** A page length in mm where it names a length unit. */
function pageLength(
  text: string | undefined,
): { readonly unit: string; readonly millimetres: number } | undefined {
  const length = lengthOf(text);
  const unit = length === undefined ? undefined : UNITS.get(length.unit);
  return length === undefined || unit === undefined || !(length.amount > 0)
    ? undefined
    : { unit: length.unit, millimetres: length.amount * unit };
}

/** What one user unit of the page is. A page whose size names no unit does not say. */
function pageOf(root: XmlElement): Page {
  const box = viewBoxOf(root);
  const width = pageLength(root.attributes.get('width'));
  const height = pageLength(root.attributes.get('height'));
  const named = width ?? height;
  if (named === undefined) return { unit: undefined, tall: 1 };
  // Without a view box a user unit is a pixel, whatever the page is measured in.
  if (box === undefined) return { unit: { name: 'px', millimetres: UNITS.get('px') ?? 1 }, tall: 1 };
  const { across, down } = zoomOf(root, box, width?.millimetres, height?.millimetres);
  return { unit: { name: named.unit, millimetres: across }, tall: down / across };
}

interface Pen {
  readonly move: Affine;
  readonly layer: string | undefined;
  readonly stroke: string | undefined;
  readonly id: string | undefined;
}

interface Lists {
  readonly strokes: Stroke[];
  readonly points: DrawnPoint[];
  readonly passedOver: Map<string, number>;
  readonly byId: ReadonlyMap<string, XmlElement>;
  pieces: number;
  copies: number;
}

const countIn = (lists: Lists, what: string): void => {
  lists.passedOver.set(what, (lists.passedOver.get(what) ?? 0) + 1);
};

/** Moves, label and colour that an element adds to those it stands in. */
function penFor(element: XmlElement, pen: Pen): Pen {
  const { attributes } = element;
  const style = styleOf(attributes.get('style'));
  const stroke = style.get('stroke') ?? attributes.get('stroke');
  const label = attributes.get('class')?.trim().split(/\s+/)[0] ?? attributes.get('label');
  if (style.has('transform'))
    throw new DrawingProblem(
      'A style moves a shape (transform in style); save the file with transforms as attributes.',
    );
  return {
    move: after(pen.move, transformIn(attributes.get('transform'))),
    layer: label === undefined || label === '' ? pen.layer : label,
    stroke: stroke === undefined || stroke === 'none' ? pen.stroke : stroke,
    id: GROUPS.has(element.name) ? (attributes.get('id') ?? pen.id) : pen.id,
  };
}

const isHidden = ({ attributes }: XmlElement): boolean => {
  const style = styleOf(attributes.get('style'));
  const says = (name: string): string => (style.get(name) ?? attributes.get(name) ?? '').trim();
  return says('display') === 'none' || says('visibility') === 'hidden';
};

/** The view of a group that has a view box of its own: its place, and its box made to fit. */
function viewOf(element: XmlElement): Affine {
  const { attributes } = element;
  const at = (name: string): number => userLength(attributes.get(name), `${name} of an inner svg`);
  const place = shift(at('x'), at('y'));
  const box = viewBoxOf(element);
  if (box === undefined) return place;
  const size = (name: string): number | undefined =>
    attributes.has(name) ? userLength(attributes.get(name), `${name} of an inner svg`) : undefined;
  const { across, down } = zoomOf(element, box, size('width') ?? box.width, size('height') ?? box.height);
  return after(place, after(stretch(across, down), shift(-box.x, -box.y)));
}

function drawElement(element: XmlElement, outer: Pen, inside: readonly XmlElement[], lists: Lists): void {
  if (isHidden(element)) {
    countIn(lists, 'hidden');
    return;
  }
  const pen = penFor(element, outer);
  if (element.name === 'use') {
    drawUse(element, pen, inside, lists);
    return;
  }
  if (GROUPS.has(element.name)) {
    const view = element.name === 'svg' ? { ...pen, move: after(pen.move, viewOf(element)) } : pen;
    for (const child of element.children) drawElement(child, view, inside, lists);
    return;
  }
  const shape = shapeOfElement(element);
  if (shape === undefined) {
    if (!SILENT.has(element.name)) countIn(lists, element.name);
    return;
  }
  const layer = pen.layer ?? pen.stroke ?? pen.id ?? 'drawing';
  for (const { pieces, closed } of shape.runs) {
    lists.pieces += pieces.length;
    if (lists.pieces > READ_LIMITS.pieces)
      throw new DrawingProblem(
        `The drawing has more than ${READ_LIMITS.pieces} lines and curves; bring in what is to be cut by itself.`,
      );
    lists.strokes.push({ layer, pieces: pieces.map((piece) => movePiece(pen.move, piece)), closed });
  }
  for (const at of shape.dots) lists.points.push({ layer, at: movePoint(pen.move, at) });
}

/** A copy of another element of the same file; one that holds itself is refused. */
function drawUse(element: XmlElement, pen: Pen, inside: readonly XmlElement[], lists: Lists): void {
  const target = element.attributes.get('href') ?? '';
  const found = target.startsWith('#') ? lists.byId.get(target.slice(1)) : undefined;
  if (found === undefined) {
    countIn(lists, 'use of something that is not in the file');
    return;
  }
  if (inside.includes(found) || inside.length >= READ_LIMITS.depth)
    throw new DrawingProblem(
      `"${target.slice(0, 60)}" is used within itself or too deep; it cannot be laid out.`,
    );
  lists.copies += 1;
  if (lists.copies > READ_LIMITS.copies)
    throw new DrawingProblem(
      `Uses come to more than ${READ_LIMITS.copies} copies laid out; bring in what is to be cut by itself.`,
    );
  const at = (name: string): number => userLength(element.attributes.get(name), `${name} of a use`);
  const placed = { ...pen, move: after(pen.move, shift(at('x'), at('y'))) };
  if (found.name !== 'symbol') {
    drawElement(found, placed, [...inside, found], lists);
    return;
  }
  if (viewBoxOf(found) !== undefined)
    throw new DrawingProblem(
      `Symbol "${target.slice(0, 60)}" has a view of its own; turn its copies into plain shapes before saving.`,
    );
  for (const child of found.children) drawElement(child, penFor(found, placed), [...inside, found], lists);
}

function listById(element: XmlElement, byId: Map<string, XmlElement>): void {
  const id = element.attributes.get('id');
  if (id !== undefined && !byId.has(id)) byId.set(id, element);
  for (const child of element.children) listById(child, byId);
}

/** @throws DrawingProblem */
export function readSvg(text: string): Sketch {
  const root = readXml(text);
  if (root.name !== 'svg')
    throw new DrawingProblem(`The file is XML of <${root.name.slice(0, 40)}>, not of <svg>.`);
  const { unit, tall } = pageOf(root);
  const byId = new Map<string, XmlElement>();
  listById(root, byId);
  const lists: Lists = { strokes: [], points: [], passedOver: new Map(), byId, pieces: 0, copies: 0 };
  const pen = { move: stretch(1, -tall), layer: undefined, stroke: undefined, id: undefined };
  const { name, children } = root;
  if (isHidden(root)) countIn(lists, name);
  else for (const child of children) drawElement(child, penFor(root, pen), [], lists);
  return {
    strokes: lists.strokes,
    points: lists.points,
    unit,
    hiddenLayers: new Set(),
    passedOver: lists.passedOver,
    notes: [],
  };
}
