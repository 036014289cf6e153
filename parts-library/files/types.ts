// What the files room takes and gives: the two kinds of file, their options, and a written file.

/**
 * `finished`: finished sizes without kerf, for a program that adds kerf itself. `cut`: the torch's path, kerf
 * already in. A file is one or the other and says so in its name, its layers and its heading.
 */
export type FileKind = 'finished' | 'cut';

export interface FileOptions {
  /** Start of the file's name, for example `adapter-plate`; made safe for every file system. */
  readonly baseName: string;
  /** Sentences that stand in the file before everything else, for example stop findings it was written despite. */
  readonly warnings?: readonly string[];
}

export interface DxfOptions extends FileOptions {
  /** R12 (AC1009) is read by everything; R2000 (AC1015) has light polylines and line weights. R12 when absent. */
  readonly version?: 'R12' | 'R2000';
  /** Unit of the coordinates in the file. Millimetres when absent. */
  readonly unit?: 'mm' | 'in';
}

/** What the heading of a cut file says beside the plan's own figures. */
export interface CutFileInfo {
  /** What a person calls it: the part or the plate. */
  readonly name: string;
  readonly material: string;
  /** How many are wanted in all; the heading says how many this file cuts. */
  readonly quantity: number;
}

export interface WrittenFile {
  /** File name without folder, for example `adapter-plate.cut.dxf`. */
  readonly name: string;
  readonly kind: FileKind;
  readonly format: 'dxf' | 'svg';
  /** Plain ASCII for DXF (CRLF lines), UTF-8 for SVG. */
  readonly text: string;
  /** Outlines and openings in the file. */
  readonly contours: number;
  /** Score and etch lines in the file. */
  readonly lines: number;
  /** Centre marks in the file. */
  readonly marks: number;
}
