import { describe, expect, test } from 'vitest';
import { sourceOf, weakestSource } from '../../parts-library/handbook/index.js';
import type { Source } from '../../parts-library/handbook/index.js';

const published: Source = { title: 'a standard', where: 'Table 1', certainty: 'published' };
const practice: Source = { title: 'a shop rule', where: 'anywhere', certainty: 'common practice' };
const recalled: Source = { title: 'a figure', where: 'not opened', certainty: 'from memory' };

describe('citations', () => {
  test('a result is as certain as its least certain input', () => {
    expect(weakestSource(published, practice, recalled)).toBe(recalled);
    expect(weakestSource(recalled, published)).toBe(recalled);
    expect(weakestSource(published, practice)).toBe(practice);
    expect(weakestSource(published)).toBe(published);
  });

  test('a field has its own citation or the row’s', () => {
    const cited = { source: published, exceptions: { height: recalled } };
    expect(sourceOf<'height' | 'width'>(cited, 'height')).toBe(recalled);
    expect(sourceOf<'height' | 'width'>(cited, 'width')).toBe(published);
  });
});
