// The drawing area at one scale: where the part stands, what is already drawn, and the helpers that labels need.
import { norm } from '../geometry/index.js';
import { cornersOf, growBox, type Box } from './boxes.js';
import type { DisplayItem, PathCommand, Role, SheetPoint, Text } from './display-list.js';
import { boxOfText, textWidth, writable, type Face } from './measure-text.js';
import { costOfBox, costOfRectangle, walk, type Occupancy, type Placing } from './occupancy.js';
import type { Extent, Scene } from './scene.js';
import type { Style } from './style.js';
import { round, roundCorners, roundPath, roundPoint } from './to-sheet.js';

export interface Desk {
  readonly scene: Scene;
  readonly placing: Placing;
  readonly style: Style;
  readonly grid: Occupancy;
  /** Texts and lines stay inside. */
  readonly area: Extent;
}

/** A measured text that waits for its place. */
export interface Words {
  readonly text: string;
  readonly width: number;
  readonly size: number;
  readonly face: Face;
  readonly role: Role;
  readonly dimensionId?: string;
  readonly field?: string;
}

/** Measures a text once, so that every option can use its width. */
export function measureWords(
  text: string,
  size: number,
  role: Role,
  ids: { readonly dimensionId?: string; readonly field?: string } = {},
): Words {
  const face: Face = 'condensed';
  const shown = writable(text);
  return { text: shown, width: textWidth(shown, face, size), size, face, role, ...ids };
}

export const boxOfWords = (words: Words, x: number, y: number, anchor: Text['anchor'], ux = 1, uy = 0): Box =>
  boxOfText(x, y, anchor, words.size, words.width, ux, uy);

/** The display item of a text; its direction is a unit vector. */
export function drawWords(words: Words, x: number, y: number, anchor: Text['anchor'], ux = 1, uy = 0): Text {
  const { text, size, face, role } = words;
  return {
    kind: 'text',
    role,
    at: roundPoint(x, y),
    anchor,
    degrees: round((Math.atan2(uy, ux) * 180) / Math.PI),
    size: round(size),
    face,
    text,
    box: roundCorners(cornersOf(boxOfWords(words, x, y, anchor, ux, uy))),
    ...(words.field === undefined ? {} : { field: words.field }),
    ...(words.dimensionId === undefined ? {} : { dimensionId: words.dimensionId }),
  };
}

/** A filled arrowhead with its point at (x, y), pointing along the unit vector. */
export function arrowPath(
  x: number,
  y: number,
  ux: number,
  uy: number,
  style: Style,
): readonly PathCommand[] {
  const backX = x - ux * style.arrow;
  const backY = y - uy * style.arrow;
  return [
    ['M', x, y],
    ['L', backX - uy * style.arrowHalf, backY + ux * style.arrowHalf],
    ['L', backX + uy * style.arrowHalf, backY - ux * style.arrowHalf],
    ['Z'],
  ];
}

export interface Owner {
  readonly dimensionId?: string;
  readonly ghostId?: string;
}

/** A narrow continuous line of a dimension, an extension or a leader. */
export const drawLine = (role: Role, path: readonly PathCommand[], owner: Owner): DisplayItem => ({
  kind: 'stroke',
  role,
  type: 'continuous',
  weight: 'narrow',
  path: roundPath(path),
  ...owner,
});

/** A filled arrowhead or dot. */
export const drawInk = (role: Role, path: readonly PathCommand[], owner: Owner): DisplayItem => ({
  kind: 'stroke',
  role,
  type: 'continuous',
  weight: 'narrow',
  path: roundPath(path),
  fill: 'ink',
  ...owner,
});

export const toSheet = ({ placing }: Desk, x: number, y: number): SheetPoint => ({
  x: placing.x + x * placing.scale,
  y: placing.y - y * placing.scale,
});

export const pointInArea = ({ area }: Desk, x: number, y: number): boolean =>
  x >= area.minX && y >= area.minY && x <= area.maxX && y <= area.maxY;

/** Space that a text keeps from drawn lines, in font sizes. */
export const TEXT_SPACE = 0.16;

/**
 * What it costs to put a text in this upright rectangle, in font sizes of leader length: Infinity over an outline
 * or outside the area. One font size square of metal costs about one; a ghost line through a text about four.
 */
export function costOfUprightText(
  desk: Desk,
  minX: number,
  minY: number,
  maxX: number,
  maxY: number,
): number {
  const { area, grid, style } = desk;
  if (minX < area.minX || minY < area.minY || maxX > area.maxX || maxY > area.maxY) return Infinity;
  const space = style.size * TEXT_SPACE;
  const weight = costOfRectangle(grid, minX - space, minY - space, maxX + space, maxY + space);
  return (weight * grid.cell * grid.cell) / style.size ** 2;
}

/** The same for a text at any angle. */
export function costOfText(desk: Desk, box: Box): number {
  const { area, grid, style } = desk;
  if (box.minX < area.minX || box.minY < area.minY || box.maxX > area.maxX || box.maxY > area.maxY) {
    return Infinity;
  }
  return (costOfBox(grid, growBox(box, style.size * TEXT_SPACE)) * grid.cell * grid.cell) / style.size ** 2;
}

/** Outlines crossed by a line whose start rests on one. */
export function crossingsFrom(desk: Desk, x1: number, y1: number, x2: number, y2: number): number {
  const length = norm(x2 - x1, y2 - y1);
  const skip = 2.2 * desk.grid.cell;
  if (length <= skip) return 0;
  const t = skip / length;
  return walk(desk.grid, x1 + (x2 - x1) * t, y1 + (y2 - y1) * t, x2, y2).crossings;
}

/** Half the space between two texts, in font sizes. */
const CLEARANCE = 0.2;

/** The box that other labels must keep out of: the text with its clearance. */
export const clearanceOf = (desk: Desk, box: Box): Box => growBox(box, desk.style.size * CLEARANCE);
