// Draws a print: chooses the scale, puts the part and its ghosts on the sheet, and finds a place for every label.
import type { Dimension } from '../model/index.js';
import type { DisplayItem, DisplayList } from './display-list.js';
import { TEXT_SPACE, type Desk } from './desk.js';
import { drawPart, makeDesk, placeScene } from './draw-part.js';
import { interruptLines } from './interrupt.js';
import { arrange, type Arrangement } from './labels.js';
import { numberFindings } from './place-balloon.js';
import type { PrintInput } from './print-input.js';
import { makeLabels, widenLabels, type LabelRequest } from './print-labels.js';
import { fullScale, paperScales, readScale, screenScales, type Margin, type Scale } from './scales.js';
import { makeScene, type Extent, type Scene } from './scene.js';
import { drawSheet, drawingAreaOf } from './sheet-frame.js';
import { styleOf, type Style } from './style.js';

/** Lettering is made smaller only when no scale gives room, down to this share. */
const SHRINKS = [1, 0.85, 0.7];

/** An arrangement this good is taken at once: font sizes of leader length for each label. */
const GOOD_ENOUGH = 13;

/** What a drawing loses by being smaller, in the same coin, for halving it. */
const COST_OF_HALVING = 30;

interface Attempt {
  readonly desk: Desk;
  readonly scale: Scale;
  readonly arrangement: Arrangement;
  readonly clear: boolean;
  readonly perLabel: number;
  /** Lower is better among attempts that are clear, or among those that are not. */
  readonly cost: number;
}

function attempt(
  scene: Scene,
  scale: Scale,
  full: number,
  style: Style,
  area: Extent,
  input: PrintInput,
  request: LabelRequest,
): Attempt {
  const desk = makeDesk(scene, placeScene(scene, area, scale.scale), style, area, input.size);
  const labels = makeLabels(desk, request);
  let arrangement = arrange(labels);
  if (arrangement.colliding.length > 0) {
    arrangement = arrange(widenLabels(desk, request, labels, arrangement.colliding));
  }
  return {
    desk,
    scale,
    arrangement,
    clear: arrangement.colliding.length === 0,
    perLabel: arrangement.cost / Math.max(1, labels.length),
    cost: arrangement.cost + COST_OF_HALVING * Math.log2(Math.max(1, full / scale.scale)),
  };
}

function isBetter(a: Attempt, b: Attempt | null): boolean {
  if (b === null) return true;
  const colliding = a.arrangement.colliding.length - b.arrangement.colliding.length;
  return colliding === 0 ? a.cost < b.cost : colliding < 0;
}

/** Room for rows of level and upright dimension lines on both sides of the part. */
function marginFor(dimensions: readonly Dimension[], style: Style): Margin {
  const rows = (along: 'x' | 'y'): number => {
    const count = dimensions.filter((one) => one.kind === 'linear' && one.along === along).length;
    return count === 0 ? style.centrePast * 1.5 : style.first + Math.ceil(count / 2) * style.row;
  };
  return { x: rows('y'), y: rows('x') };
}

/** The largest scale at which every label finds a clear place, unless a smaller one reads much better. */
function settle(input: PrintInput, area: Extent): Attempt {
  const scene = makeScene(input.part, input.ghosts, input.dimensions);
  const request: LabelRequest = { ...input, numbered: numberFindings(input.findings) };
  let best: Attempt | null = null;
  for (const shrink of SHRINKS) {
    const style = styleOf(input, shrink);
    const { edge, centrePast } = style;
    const inner: Extent = {
      minX: area.minX + edge,
      minY: area.minY + edge,
      maxX: area.maxX - edge,
      maxY: area.maxY - edge,
    };
    const full = Math.min(
      fullScale(scene.whole, inner, { x: centrePast * 1.5, y: centrePast * 1.5 }),
      fullScale(scene.part, inner, marginFor(input.dimensions, style)),
    );
    const scales =
      input.frame === 'sheet' ? paperScales(full, readScale(input.title?.scale ?? '')) : screenScales(full);
    // Smaller lettering is tried at every other scale: by then it is the room that is short, not the fit.
    for (const scale of shrink === 1 ? scales : scales.filter((_, i) => i % 2 === 0)) {
      const tried = attempt(scene, scale, full, style, inner, input, request);
      const improved = isBetter(tried, best);
      if (improved) best = tried;
      if (best?.clear === true && (!improved || tried.perLabel < GOOD_ENOUGH)) return best;
    }
    if (best?.clear === true) return best;
  }
  if (best === null) throw new Error('A print needs at least one scale to try.');
  return best;
}

/** Fields in the order in which a person measures, each once. */
function tabOrderOf(dimensions: readonly Dimension[]): readonly string[] {
  const fields = dimensions
    .toSorted((a, b) => a.order - b.order)
    .flatMap(({ field }) => (field === undefined ? [] : [field]));
  return [...new Set(fields)];
}

/** The dimension that has focus is painted last, its lines wide. */
function emphasise(items: readonly DisplayItem[], ids: ReadonlySet<string>): readonly DisplayItem[] {
  const focused = (item: DisplayItem): boolean =>
    item.kind !== 'balloon' && item.dimensionId !== undefined && ids.has(item.dimensionId);
  return [
    ...items.filter((item) => !focused(item)),
    ...items
      .filter(focused)
      .map((item): DisplayItem => (item.kind === 'stroke' ? { ...item, weight: 'wide' } : item)),
  ];
}

/**
 * Draws a part with its dimensions, ghosts and findings as a display list.
 *
 * A drawing is in CSS pixels and uses the largest scale at which the labels stand clear; a sheet is in mm and
 * states a scale of ISO 5455. The same input gives the same list, number for number.
 */
export function drawPrint(input: PrintInput): DisplayList {
  const area = drawingAreaOf(input);
  const { desk, scale, arrangement } = settle(input, area);
  const ids = new Set(
    input.dimensions.filter(({ field }) => field !== undefined && field === input.focus).map(({ id }) => id),
  );
  const labels = arrangement.chosen.flatMap((option) => option?.draw() ?? []);
  const lines = labels.filter(({ kind }) => kind === 'stroke');
  const words = labels.filter(({ kind }) => kind !== 'stroke');
  return {
    width: input.size.width,
    height: input.size.height,
    scale: scale.scale,
    items: [
      ...drawSheet(input, scale.stated),
      ...interruptLines(drawPart(desk), words, desk.style.size * TEXT_SPACE),
      ...emphasise([...lines, ...words], ids),
    ],
    tabOrder: tabOrderOf(input.dimensions),
  };
}
