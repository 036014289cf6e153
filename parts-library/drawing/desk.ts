// The drawing area at one scale: where the part stands, what is already drawn, and the helpers that labels need.
import { growBox, makeBox, type Box } from './boxes.js';
import type { DisplayItem, PathCommand, Role, SheetPoint, Text } from './display-list.js';
import { boxOfText, textWidth, writable, type Face } from './measure-text.js';
import { costOfBox, countCrossings, type Occupancy, type Placing } from './occupancy.js';
import type { Extent, Scene } from './scene.js';
import type { Style } from './style.js';
import { cornersOf } from './boxes.js';
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

const inArea = ({ area }: Desk, box: Extent): boolean =>
  box.minX >= area.minX && box.minY >= area.minY && box.maxX <= area.maxX && box.maxY <= area.maxY;

export const pointInArea = ({ area }: Desk, x: number, y: number): boolean =>
  x >= area.minX && y >= area.minY && x <= area.maxX && y <= area.maxY;

/**
 * What it costs to put a text in this box, in font sizes of leader length: Infinity over an outline or outside
 * the area. One font size square of metal costs about one; a ghost line through a text about eight.
 */
export function costOfText(desk: Desk, box: Box): number {
  if (!inArea(desk, box)) return Infinity;
  const { cell } = desk.grid;
  return (costOfBox(desk.grid, growBox(box, desk.style.size * 0.16)) * cell * cell) / desk.style.size ** 2;
}

/** Outlines crossed by a line whose start rests on one. */
export function crossingsFrom(desk: Desk, x1: number, y1: number, x2: number, y2: number): number {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const skip = 2.2 * desk.grid.cell;
  if (length <= skip) return 0;
  const t = skip / length;
  return countCrossings(desk.grid, x1 + (x2 - x1) * t, y1 + (y2 - y1) * t, x2, y2);
}

/** The box that other labels must keep out of: the text with its clearance. */
export const clearanceOf = (desk: Desk, box: Box): Box => growBox(box, desk.style.size * 0.11);

/** A square that stands for a balloon. */
export const balloonBox = (x: number, y: number, radius: number): Box => makeBox(x, y, radius, radius);
