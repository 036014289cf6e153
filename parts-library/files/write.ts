// The four files: finished size and cut path, each as DXF and as SVG.
import type { CutPlan } from '../cutting/index.js';
import type { Part } from '../model/index.js';
import { cutSheet } from './cut-sheet.js';
import { dxfR12 } from './dxf-r12.js';
import { dxfR2000 } from './dxf-r2000.js';
import { fileName } from './file-name.js';
import { finishedSheet } from './finished-sheet.js';
import { contoursIn, linesIn, marksIn } from './sheet.js';
import type { Sheet } from './sheet.js';
import { svgOf } from './svg.js';
import type { CutFileInfo, DxfOptions, FileOptions, WrittenFile } from './types.js';

/**
 * A part at finished size as DXF, for a program that adds kerf itself. Circles are CIRCLE entities, other contours
 * closed polylines with bulge, outline counter-clockwise and openings clockwise.
 *
 * @param part lengths in mm, whatever the file's unit
 * @throws RangeError when a coordinate is not a number or a shape is smaller than 1e-6 mm
 * @example writeFinishedDxf(part, { baseName: 'adapter-plate' }).name // 'adapter-plate.finished.dxf'
 */
export const writeFinishedDxf = (part: Part, options: DxfOptions): WrittenFile =>
  asDxf(finishedSheet(part, options.unit ?? 'mm'), options);

/**
 * A cut plan as DXF: kerf, lead-ins, order, direction and start points are in it; nothing is left to add. Every
 * contour is one open polyline that starts at its pierce.
 *
 * @throws RangeError as `writeFinishedDxf`
 * @example writeCutDxf(plan, info, { baseName: 'adapter-plate' }).name // 'adapter-plate.cut.dxf'
 */
export const writeCutDxf = (plan: CutPlan, info: CutFileInfo, options: DxfOptions): WrittenFile =>
  asDxf(cutSheet(plan, info, options.unit ?? 'mm'), options);

/** A part at finished size as SVG, one user unit a millimetre, one path per contour with the feature's id. */
export const writeFinishedSvg = (part: Part, options: FileOptions): WrittenFile =>
  asSvg(finishedSheet(part, 'mm'), options);

/** A cut plan as SVG, one user unit a millimetre, one open path per contour, pierce first. */
export const writeCutSvg = (plan: CutPlan, info: CutFileInfo, options: FileOptions): WrittenFile =>
  asSvg(cutSheet(plan, info, 'mm'), options);

const asDxf = (sheet: Sheet, options: DxfOptions): WrittenFile => {
  const { baseName, version = 'R12', unit = 'mm' } = options;
  const warned = withWarnings(sheet, options);
  return written(sheet, baseName, 'dxf', version === 'R12' ? dxfR12(warned, unit) : dxfR2000(warned, unit));
};

const asSvg = (sheet: Sheet, options: FileOptions): WrittenFile =>
  written(sheet, options.baseName, 'svg', svgOf(withWarnings(sheet, options)));

const withWarnings = (sheet: Sheet, { warnings = [] }: FileOptions): Sheet => ({
  ...sheet,
  heading: [...warnings, ...sheet.heading],
});

const written = (sheet: Sheet, baseName: string, format: 'dxf' | 'svg', text: string): WrittenFile => ({
  name: fileName(baseName, sheet.kind, format),
  kind: sheet.kind,
  format,
  text,
  contours: contoursIn(sheet),
  lines: linesIn(sheet),
  marks: marksIn(sheet),
});
