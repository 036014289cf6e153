// What the library shows to those who import it: the flow by name, and every room.
import { describe, expect, it } from 'vitest';
import * as fishplate from '../../parts-library/index.js';

describe('the public face', () => {
  it('takes a part from measures to files', () => {
    const { findFamily, partFiles, runPart, startingShop, summarise } = fishplate;
    expect(findFamily('adapter-plate')?.title).toBe('Adapter plate');
    const run = runPart(
      { family: 'adapter-plate', parameters: { bolts: 5, boltCircle: 95, outside: 130 }, unit: 'mm' },
      startingShop,
    );
    expect(summarise(run)?.part.bounds.width).toBe(130);
    expect(partFiles(run).ok).toBe(true);
  });

  it('has every room that holds functions', () => {
    const rooms = [
      'checks',
      'cutting',
      'drawing',
      'files',
      'geometry',
      'handbook',
      'job',
      'model',
      'parts',
      'process',
      'units',
    ];
    expect(Object.keys(fishplate)).toEqual(expect.arrayContaining(rooms));
    // A circle of 100 is π × 100 round.
    expect(
      fishplate.geometry.lengthOf(fishplate.geometry.circleContour({ x: 0, y: 0 }, 50, 'outline')),
    ).toBeCloseTo(314.159265, 6);
  });
});
