// The polygon engine, at hand, as the server, the command line and tests use it. The page takes `engine-on-demand.ts` in
// its place: a drawing needs no kerf, and the first sheet should not wait for it.
import ClipperLib from 'clipper-lib';

/** The engine, or undefined while it is not loaded. */
export const polygonEngine = (): typeof ClipperLib | undefined => ClipperLib;

/** Loads the engine where it is not at hand. Offsets need it. */
export const loadPolygonEngine = async (): Promise<void> => {};
