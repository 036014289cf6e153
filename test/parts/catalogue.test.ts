// The two catalogues: all at hand, and fetched when first needed. Both know the same families under the same words.
import { describe, expect, test } from 'vitest';
import * as kitsOnDemand from '../../parts-library/kits/catalogue-on-demand.js';
import { findKit, listKitAbouts, listKits } from '../../parts-library/kits/index.js';
import * as onDemand from '../../parts-library/parts/catalogue-on-demand.js';
import { findFamily, listAbouts, listFamilies } from '../../parts-library/parts/index.js';

const ids = listAbouts().map(({ id }) => id);

describe('the catalogue of families', () => {
  test('lists every family once, in one order, and says of each what the family says of itself', () => {
    expect(new Set(ids).size).toBe(ids.length);
    expect(listFamilies().map(({ id, title, summary }) => ({ id, title, summary }))).toEqual(listAbouts());
  });

  test('on demand nothing is there until it is asked for; then it is the very same family', async () => {
    expect(onDemand.listFamilies()).toEqual([]);
    expect(onDemand.findFamily('adapter-plate')).toBeUndefined();
    await onDemand.loadFamilies(['adapter-plate', 'toString', 'no such part']);
    expect(onDemand.listFamilies()).toEqual([findFamily('adapter-plate')]);
    await onDemand.loadFamilies(ids);
    expect(onDemand.listFamilies()).toEqual(listFamilies());
  });
});

describe('the catalogue of kits', () => {
  test('is the same at hand and on demand', async () => {
    expect(listKits().map(({ id, title, summary }) => ({ id, title, summary }))).toEqual(listKitAbouts());
    expect(kitsOnDemand.listKits()).toEqual([]);
    await kitsOnDemand.loadKits([...listKitAbouts().map(({ id }) => id), 'no such kit']);
    expect(kitsOnDemand.listKits()).toEqual(listKits());
    expect(kitsOnDemand.findKit('sprocket-carrier')).toBe(findKit('sprocket-carrier'));
  });
});
