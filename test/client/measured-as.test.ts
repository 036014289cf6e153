// The same circle measured another way: what the caliper would read.
import { describe, expect, it } from 'vitest';
import { measuredAs, wayOf, waysFor } from '../../client/list/measured-as.js';

describe('a pattern measured another way', () => {
  it('five holes on a 114.3 circle are 67.184 apart, and 54.484 between near edges of 12.7 holes', () => {
    // Wheel bolt pattern 5 x 4.5 in: adjacent centres 2.645 in by s = D sin(180/5), arithmetic by hand.
    const of = { holeCount: 5, hole: 12.7, unit: 'mm' } as const;
    expect(measuredAs('circle 114.3 mm', 'adjacent', of)).toBe('adjacent 67.184 mm');
    expect(measuredAs('circle 114.3 mm', 'near-edges', of)).toBe('near-edges 54.484 mm hole 12.7 mm');
    expect(measuredAs('circle 114.3 mm', 'far-edges', of)).toBe('far-edges 79.884 mm hole 12.7 mm');
  });

  it('opposite holes of six are the circle itself', () => {
    expect(measuredAs('circle 110 mm', 'across', { holeCount: 6, hole: 11, unit: 'mm' })).toBe(
      'across 110 mm',
    );
  });

  it('is written in the unit of the job', () => {
    expect(measuredAs('circle 114.3 mm', 'circle', { holeCount: 5, hole: 12.7, unit: 'in' })).toBe(
      'circle 4.5 in',
    );
  });

  it('offers opposite holes only where there are any, and every second hole only where it is another pair', () => {
    const tags = (count: number): readonly string[] => waysFor(count).map(({ tag }) => tag);
    expect(tags(5)).toContain('every-2nd');
    expect(tags(5)).not.toContain('across');
    expect(tags(4)).toContain('across');
    expect(tags(4)).not.toContain('every-2nd');
  });

  it('knows the way of one reading, and none of several', () => {
    expect(wayOf('adjacent 55.84 mm')).toBe('adjacent');
    expect(wayOf('near-edges 47 mm; far-edges 64 mm')).toBeUndefined();
  });
});
