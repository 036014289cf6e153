// What stands in a file, before it is DXF or SVG: shapes in their order, each with its operation and its name.
import { isCircle } from '../geometry/index.js';
import type { Contour, Point, Vertex } from '../geometry/index.js';
import type { Operation } from './layers.js';
import type { FileKind } from './types.js';

/** Lengths in the sheet's unit once `inUnit` has been through it, mm before. */
export type Shape =
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number }
  | { readonly kind: 'closed'; readonly vertices: readonly Vertex[] }
  /** Drawn from the first vertex to the last, in that direction. */
  | { readonly kind: 'open'; readonly vertices: readonly Vertex[] }
  | { readonly kind: 'point'; readonly at: Point };

export interface SheetItem {
  /** Unique in the sheet; the feature's id, with its placement in front where several parts lie on a plate. */
  readonly id: string;
  readonly operation: Operation;
  readonly shape: Shape;
}

export interface Sheet {
  readonly kind: FileKind;
  readonly title: string;
  /** Lines in words that stand at the head of the file. */
  readonly heading: readonly string[];
  /** In the order in which they are cut. */
  readonly items: readonly SheetItem[];
}

/** A finished contour as a file holds it: a circle leaves as a circle, anything else as its vertices. */
export function shapeOfContour(contour: Contour): Shape {
  const circle = isCircle(contour);
  return circle === undefined
    ? { kind: 'closed', vertices: contour }
    : { kind: 'circle', centre: circle.centre, radius: circle.radius };
}

export const contoursIn = (sheet: Sheet): number =>
  sheet.items.filter(({ operation }) => operation === 'outline' || operation === 'opening').length;

export const linesIn = (sheet: Sheet): number =>
  sheet.items.filter(({ operation }) => operation === 'score' || operation === 'etch').length;

export const marksIn = (sheet: Sheet): number =>
  sheet.items.filter(({ operation }) => operation === 'mark').length;
