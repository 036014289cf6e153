// Parameters by path: groups are made when needed and nothing else is touched.
import { describe, expect, it } from 'vitest';
import { groupOf, valueAt, withValue } from '../../client/state/values.js';

describe('parameters by dotted path', () => {
  it('reaches into a group, and finds nothing where there is none', () => {
    expect(valueAt({ pattern2: { bolts: 4 } }, 'pattern2.bolts')).toBe(4);
    expect(valueAt({}, 'pattern2.bolts')).toBeUndefined();
  });

  it('makes a group that is missing, and takes a value away without its neighbours', () => {
    expect(withValue({ hub: '57' }, 'pattern2.bolts', 4)).toEqual({ hub: '57', pattern2: { bolts: 4 } });
    expect(withValue({ hub: '57', bore: '40' }, 'bore', undefined)).toEqual({ hub: '57' });
  });

  it('does not change the parameters that it is given', () => {
    const before = { pattern2: { bolts: 4 } };
    withValue(before, 'pattern2.bolts', 6);
    expect(before).toEqual({ pattern2: { bolts: 4 } });
  });

  it('knows the group of a path', () => {
    expect(groupOf('pattern2.bolts')).toBe('pattern2');
    expect(groupOf('bolts')).toBe('');
  });
});
