// The drawing of one part out of all shapes of a file: its outline, what lies in it, and what is done along each.
import {
  areaOf,
  isCircle,
  transformPath,
  type Bounds,
  type Contour,
  type Point,
  type Vertex,
} from '../../geometry/index.js';
import { DRAWING_LIMITS, type DrawnOperation, type DrawnShape, type Finding } from '../../model/index.js';
import { layersOf as layersOfFile } from '../layers.js';
import { islandFindings, looseFindings, partsFindings } from './assemble-words.js';
import { liesOn, nestContours, type Nested } from './nest.js';
import { operationOfLayer, type LayerOperation, type ReadLayer } from './operations.js';
import type { ReadOptions } from './options.js';
import { DrawingProblem } from './problem.js';
import { reversed } from './runs.js';
import type { Shapes } from './shapes.js';
import type { DrawnPoint } from './sketch.js';
import { heard, short, some } from './words.js';

/** One of the parts that a file draws. */
export interface ReadPart {
  /** 1 for the largest. */
  readonly number: number;
  readonly width: number;
  readonly height: number;
  readonly openings: number;
}

export interface Assembled {
  readonly shapes: readonly DrawnShape[];
  readonly layers: readonly ReadLayer[];
  readonly parts: readonly ReadPart[];
  readonly findings: readonly Finding[];
  /** Sentences that stay with the drawing: contours that could not be used. */
  readonly faults: readonly string[];
}

/** Most contours that are nested: a sheet of small parts has hundreds. */
const MOST_CONTOURS = 4000;

interface Item {
  readonly layer: string;
  readonly operation: LayerOperation;
}

const CUT_PATH_LAYERS: ReadonlySet<string> = new Set(layersOfFile('cut').map(({ name }) => name));

/** Layers that this house writes paths with the kerf on. */
export const isCutPath = (layer: string): boolean => CUT_PATH_LAYERS.has(layer);

/** Layer names are kept as the file has them, without what would break a line, and no longer than a line. */
export const tidy = (name: string): string =>
  name
    .replaceAll(/\p{Cc}+/gu, ' ')
    .trim()
    .slice(0, DRAWING_LIMITS.name) || '0';

function layersOf(
  shapes: Shapes,
  points: readonly DrawnPoint[],
  options: ReadOptions,
  hidden: ReadonlySet<string>,
): readonly ReadLayer[] {
  const counts = new Map<string, number>();
  for (const { layer } of [...shapes.closed, ...shapes.open, ...shapes.broken, ...points])
    counts.set(layer, (counts.get(layer) ?? 0) + 1);
  for (const name of options.layers.keys()) {
    if (!counts.has(name))
      throw new DrawingProblem(
        `There is no layer "${name.slice(0, 60)}"; there are ${[...counts.keys()].map(tidy).slice(0, 20).join(', ')}.`,
        'layers',
      );
  }
  return [...counts].map(([name, count]) => ({
    name,
    count,
    ...operationOfLayer(name, options.layers, hidden),
  }));
}

/** What a closed shape is called. */
const kindOf = (contour: Contour): string => (isCircle(contour) === undefined ? 'contour' : 'circle');

interface Kept {
  readonly kind: string;
  readonly layer: string;
  readonly operation: DrawnOperation;
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
}

function findOutline(
  nested: readonly Nested[],
  part: number,
): { readonly index: number; readonly parts: readonly number[] } {
  const parts = nested
    .flatMap(({ depth }, index) => (depth === 0 ? [index] : []))
    .toSorted((a, b) => (nested[b]?.area ?? 0) - (nested[a]?.area ?? 0) || a - b);
  const index = parts[part - 1];
  if (index === undefined)
    throw new DrawingProblem(
      `There is no part ${part}; the drawing has ${some(parts.length, 'outline')}.`,
      'part',
    );
  return { index, parts };
}

/** The narrowest gap left on layers that are cut, mm. */
function nextGapOf({ told }: Shapes, layers: readonly ReadLayer[]): number | undefined {
  const gaps = layers.flatMap(({ name, operation }) =>
    operation === 'cut' ? (told.nextGaps.get(name) ?? []) : [],
  );
  return gaps.length === 0 ? undefined : Math.min(...gaps);
}

/** Says why there is no outline, with what would make one. */
function noOutline(shapes: Shapes, layers: readonly ReadLayer[], options: ReadOptions): DrawingProblem {
  const [broken] = shapes.broken;
  if (broken !== undefined) return new DrawingProblem(`No contour of the drawing is sound. ${broken.says}`);
  if (!layers.some(({ operation }) => operation === 'cut'))
    return new DrawingProblem(
      `No layer is cut: ${layers
        .map(({ name, operation }) => `${tidy(name)} is ${operation}`)
        .slice(0, 12)
        .join(', ')}. Say of one that it is cut.`,
      'layers',
    );
  if (layers.some(({ name }) => isCutPath(name)))
    return new DrawingProblem(
      'This is a cut path: its contours begin and end with lead-ins, and the kerf is in it. Bring in the file of finished sizes.',
    );
  const nextGap = nextGapOf(shapes, layers);
  const hint =
    nextGap === undefined
      ? 'Its lines close nothing.'
      : `Its lines close nothing; the narrowest gap left between ends is ${short(nextGap)} mm, and the gap tolerance is ${options.gap} mm.`;
  return new DrawingProblem(`The drawing has no closed outline. ${hint}`, 'gap');
}

/**
 * Puts the wanted part together.
 * @throws DrawingProblem when there is no outline, or more than can be held
 */
export function assemble(
  shapes: Shapes,
  points: readonly DrawnPoint[],
  options: ReadOptions,
  hidden: ReadonlySet<string>,
): Assembled {
  const layers = layersOf(shapes, points, options, hidden);
  const operations = new Map(layers.map(({ name, operation }) => [name, operation]));
  const itemOf = (layer: string): Item => ({ layer, operation: operations.get(layer) ?? 'cut' });
  const cut = shapes.closed.filter(({ layer }) => itemOf(layer).operation === 'cut');
  if (cut.length === 0) throw noOutline(shapes, layers, options);
  if (cut.length > MOST_CONTOURS)
    throw new DrawingProblem(
      `The drawing has ${cut.length} contours; accepted are up to ${MOST_CONTOURS}. Bring in one part by itself.`,
    );
  const nested = nestContours(cut.map(({ contour }) => contour));
  const { index, parts } = findOutline(nested, options.part);
  const outline = nested[index];
  if (outline === undefined) throw noOutline(shapes, layers, options);
  const openings = nested.flatMap(({ parent }, at) => (parent === index ? [at] : []));
  const islands = nested.filter(({ parent }) => parent !== undefined && openings.includes(parent));
  const kept: Kept[] = [];
  const keep = (
    kind: string,
    layer: string,
    operation: DrawnOperation,
    closed: boolean,
    vertices: readonly Vertex[],
  ) => kept.push({ kind, layer: tidy(layer), operation, closed, vertices });
  for (const at of [index, ...openings]) {
    const one = cut[at];
    if (one === undefined) continue;
    const isOutline = at === index;
    const wanted = areaOf(one.contour) > 0 === isOutline;
    const vertices = wanted ? one.contour : turnedRound(one.contour);
    keep(kindOf(one.contour), one.layer, isOutline ? 'outline' : 'opening', true, vertices);
  }
  let outside = 0;
  const onPart = (places: readonly Point[]): boolean => {
    const isOn = liesOn(outline.contour, places);
    if (!isOn) outside += 1;
    return isOn;
  };
  for (const { layer, contour } of shapes.closed) {
    const { operation } = itemOf(layer);
    if (operation === 'cut' || !onPart(contour)) continue;
    const isMark = operation === 'mark' && isCircle(contour) !== undefined;
    const made = operation === 'mark' && !isMark ? 'ignore' : operation;
    keep(kindOf(contour), layer, made, true, contour);
  }
  let loose = 0;
  for (const { layer, vertices } of shapes.open) {
    const { operation } = itemOf(layer);
    if (!onPart(vertices)) continue;
    if (operation === 'cut') loose += 1;
    const made = operation === 'cut' ? options.lines : operation === 'mark' ? 'ignore' : operation;
    keep('line', layer, made, false, vertices);
  }
  for (const { layer, at } of points) {
    const { operation } = itemOf(layer);
    if (!onPart([at])) continue;
    keep('point', layer, operation === 'ignore' ? 'ignore' : 'mark', false, [{ ...at, bulge: 0 }]);
  }
  const broken = shapes.broken.filter(({ layer }) => itemOf(layer).operation === 'cut');
  return {
    shapes: numbered(kept, outline.bounds),
    layers,
    parts: parts.map((at, order) => partAt(nested, at, order + 1)),
    findings: [
      ...partsFindings(nested, parts, options.part),
      ...islandFindings(islands),
      ...looseFindings(loose, options, nextGapOf(shapes, layers)),
      ...(outside === 0
        ? []
        : [
            heard(
              'outside-part',
              'note',
              `${some(outside, 'shape')} outside the part left out`,
              'Frames, notes and other parts stay in the file.',
            ),
          ]),
    ],
    faults: broken.map(
      ({ says, layer }) =>
        `On layer ${tidy(layer)} a contour cannot be used and was left out: ${says.replace(/^Contour /, '')}`,
    ),
  };
}

/** The contour the other way round. */
function turnedRound(contour: Contour): readonly Vertex[] {
  const [first] = contour;
  if (first === undefined) return contour;
  return reversed([...contour, { ...first, bulge: 0 }]).slice(0, -1);
}

/** Ids by what a shape is, and all moved so that the outline's lower left corner is the origin. */
function numbered(kept: readonly Kept[], { minX, minY }: Bounds): readonly DrawnShape[] {
  const counts = new Map<string, number>();
  const move = { dx: -minX, dy: -minY };
  return kept.map(({ kind, layer, operation, closed, vertices }) => {
    const number = (counts.get(kind) ?? 0) + 1;
    counts.set(kind, number);
    return {
      id: `${kind}.${number}`,
      layer,
      operation,
      closed,
      vertices: transformPath({ vertices }, move).vertices,
    };
  });
}

function partAt(nested: readonly Nested[], at: number, number: number): ReadPart {
  const { minX, minY, maxX, maxY } = nested[at]?.bounds ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  const openings = nested.filter(({ parent }) => parent === at).length;
  return { number, width: maxX - minX, height: maxY - minY, openings };
}
