// The same engine for the page, fetched after the first drawing.
import type ClipperLib from 'clipper-lib';

let engine: typeof ClipperLib | undefined;

export const polygonEngine = (): typeof ClipperLib | undefined => engine;

export async function loadPolygonEngine(): Promise<void> {
  engine ??= (await import('clipper-lib')).default;
}
