// The drawing room: prints as display lists, their SVG, and the test that nothing on them collides.
export type * from './display-list.js';
export type { PrintInput, SheetNote, TitleBlock } from './print-input.js';
export { drawPrint } from './draw-print.js';
export { checkFitness, type Collision, type CollisionKind } from './fitness.js';
export { dashesOf, pathData, writeDisplaySvg, type SvgOptions } from './svg.js';
export { breakLines, textWidth, writable, type Face } from './measure-text.js';
export { drawTemplate, TEMPLATE_PAPERS, type TemplatePaper } from './template.js';
