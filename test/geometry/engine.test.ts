// The polygon engine of the kerf: at hand everywhere but on the page, which fetches it after the first drawing.
import ClipperLib from 'clipper-lib';
import { describe, expect, test } from 'vitest';
import { loadPolygonEngine } from '../../parts-library/geometry/index.js';
import * as atHand from '../../parts-library/geometry/offset/engine.js';
import * as onDemand from '../../parts-library/geometry/offset/engine-on-demand.js';

describe('the polygon engine', () => {
  test('is at hand, and loading it changes nothing', async () => {
    expect(atHand.polygonEngine()).toBe(ClipperLib);
    await loadPolygonEngine();
    expect(atHand.polygonEngine()).toBe(ClipperLib);
  });

  test('on demand is not there until it is loaded; then it is the very same', async () => {
    expect(onDemand.polygonEngine()).toBeUndefined();
    await onDemand.loadPolygonEngine();
    expect(onDemand.polygonEngine()).toBe(ClipperLib);
  });
});
