// What two labels cost each other: texts on texts, lines through texts, lines across lines.
import { boxesOverlap, segmentHitsBox, segmentsCross, type Box } from './boxes.js';
import type { Option } from './labels.js';
import type { Extent } from './scene.js';

/** Cost of two texts on each other, of a line through a text: never accepted while anything else is possible. */
const TEXT_ON_TEXT = 4000;
const LINE_THROUGH_TEXT = 2500;
/** Costs of crossing lines, in font sizes of leader length. */
const LINE_ACROSS_LINE = 40;
const STRIP_ON_STRIP = 30;
const EXTENSION_ACROSS_LINE = 10;
const EXTENSION_ACROSS_EXTENSION = 3;

/** At or above this a pair of labels collides. */
export const COLLISION = LINE_THROUGH_TEXT;

/** An option that is being weighed or has been taken. */
export interface Chosen {
  readonly option: Option;
  readonly reach: Extent;
}

/** The upright box round all of an option: text, lines, extensions. */
export function reachOf(option: Option): Extent {
  let { minX, minY, maxX, maxY } = option.strip ?? option.box;
  for (const lines of [option.lines, option.extensions]) {
    for (let i = 0; i < lines.length; i += 2) {
      const x = lines[i] ?? 0;
      const y = lines[i + 1] ?? 0;
      if (x < minX) minX = x;
      if (x > maxX) maxX = x;
      if (y < minY) minY = y;
      if (y > maxY) maxY = y;
    }
  }
  const { box } = option;
  return {
    minX: Math.min(minX, box.minX),
    minY: Math.min(minY, box.minY),
    maxX: Math.max(maxX, box.maxX),
    maxY: Math.max(maxY, box.maxY),
  };
}

function countHits(lines: readonly number[], box: Box): number {
  let hits = 0;
  for (let i = 0; i < lines.length; i += 4) {
    if (segmentHitsBox(box, lines[i] ?? 0, lines[i + 1] ?? 0, lines[i + 2] ?? 0, lines[i + 3] ?? 0)) hits++;
  }
  return hits;
}

function countCrossed(a: readonly number[], b: readonly number[]): number {
  let crossed = 0;
  for (let i = 0; i < a.length; i += 4) {
    const ax = a[i] ?? 0;
    const ay = a[i + 1] ?? 0;
    const bx = a[i + 2] ?? 0;
    const by = a[i + 3] ?? 0;
    for (let j = 0; j < b.length; j += 4) {
      if (segmentsCross(ax, ay, bx, by, b[j] ?? 0, b[j + 1] ?? 0, b[j + 2] ?? 0, b[j + 3] ?? 0)) crossed++;
    }
  }
  return crossed;
}

/** What two choices cost each other; at least `enough` as soon as that is certain. */
export function pairCost(a: Chosen, b: Chosen, enough = Infinity): number {
  if (a.reach.maxX <= b.reach.minX || b.reach.maxX <= a.reach.minX) return 0;
  if (a.reach.maxY <= b.reach.minY || b.reach.maxY <= a.reach.minY) return 0;
  const one = a.option;
  const two = b.option;
  let cost = boxesOverlap(one.box, two.box) ? TEXT_ON_TEXT : 0;
  if (cost >= enough) return cost;
  const through =
    countHits(one.lines, two.box) +
    countHits(two.lines, one.box) +
    countHits(one.extensions, two.box) +
    countHits(two.extensions, one.box);
  cost += through * LINE_THROUGH_TEXT;
  if (cost >= enough) return cost;
  if (one.strip !== null && two.strip !== null && boxesOverlap(one.strip, two.strip)) cost += STRIP_ON_STRIP;
  cost += countCrossed(one.lines, two.lines) * LINE_ACROSS_LINE;
  if (cost >= enough) return cost;
  cost +=
    (countCrossed(one.lines, two.extensions) + countCrossed(one.extensions, two.lines)) *
    EXTENSION_ACROSS_LINE;
  return cost + countCrossed(one.extensions, two.extensions) * EXTENSION_ACROSS_EXTENSION;
}
