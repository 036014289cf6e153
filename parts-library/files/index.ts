// Files: DXF and SVG at finished size and as cut path.
export { fileName, safeBaseName } from './file-name.js';
export { layersOf } from './layers.js';
export type { Layer, Operation } from './layers.js';
export type * from './types.js';
export { writeCutDxf, writeCutSvg, writeFinishedDxf, writeFinishedSvg } from './write.js';
