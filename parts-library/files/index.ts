// Files: DXF and SVG at finished size and as cut path.
export { fileName, safeBaseName } from './file-name.js';
export { layersOf } from './layers.js';
export type { Layer, Operation } from './layers.js';
export type * from './types.js';
export { writeCutDxf, writeCutSvg, writeFinishedDxf, writeFinishedSvg } from './write.js';
export { readDrawing, type ReadDrawing } from './read/read-drawing.js';
export { DRAWING_UNITS, type DrawingOptions } from './read/options.js';
export { LAYER_OPERATIONS, type LayerOperation, type ReadLayer } from './read/operations.js';
export type { ReadPart } from './read/assemble.js';
