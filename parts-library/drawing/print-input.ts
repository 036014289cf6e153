// What a print is drawn from: the part, what its family asks to show, what the checks found, and the sheet.
import type { Dimension, Finding, Ghost, Level, Part } from '../model/index.js';

/** Words for the title block, already formatted with their units. */
export interface TitleBlock {
  readonly part: string;
  readonly job: string;
  readonly material: string;
  readonly thickness: string;
  readonly quantity: string;
  readonly mass: string;
  readonly cutLength: string;
  readonly pierces: string;
  readonly marks: string;
  readonly time: string;
  /** The scale wanted on paper, for example `1:2`. A sheet states the scale it was really drawn to. */
  readonly scale?: string;
  readonly date?: string;
  readonly revision?: string;
}

/** A numbered note, in the words of its finding. */
export interface SheetNote {
  readonly number: number;
  readonly level: Level;
  readonly title: string;
  readonly says: string;
  readonly source: string;
}

export interface PrintInput {
  readonly part: Part;
  readonly dimensions: readonly Dimension[];
  readonly ghosts: readonly Ghost[];
  /** Worst first. All but passes are numbered from 1 in this order; those with an anchor get a balloon. */
  readonly findings: readonly Finding[];
  /** The whole list: CSS pixels for a drawing, mm for a sheet. */
  readonly size: { readonly width: number; readonly height: number };
  /** `drawing`: the drawing alone, for a page with notes of its own. `sheet`: paper with border, notes and title block. */
  readonly frame: 'drawing' | 'sheet';
  /** The job's unit of length, for the scale bar. */
  readonly unit: 'mm' | 'in';
  readonly title?: TitleBlock;
  readonly notes?: readonly SheetNote[];
  /** Dotted path of the field that has focus; its dimension is drawn with wide lines and last. */
  readonly focus?: string;
}
