// Addresses: a copied link names the job and the part.
import { describe, expect, it } from 'vitest';
import { readRoute, writeRoute } from '../../client/state/route.js';

describe('addresses of sheets', () => {
  it('names the job and the part', () => {
    expect(writeRoute('orchard-cart', 'adapter')).toBe('#/orchard-cart/adapter');
    expect(readRoute('#/orchard-cart/adapter')).toEqual({ jobId: 'orchard-cart', rowId: 'adapter' });
  });

  it('survives names with a slash or a percent sign', () => {
    expect(readRoute(writeRoute('a/b', '50%'))).toEqual({ jobId: 'a/b', rowId: '50%' });
  });

  it('names nothing when it is empty or broken', () => {
    expect(readRoute('')).toEqual({ jobId: undefined, rowId: undefined });
    expect(readRoute('#/%E0%A4%A')).toEqual({ jobId: undefined, rowId: undefined });
  });
});
