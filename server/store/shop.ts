// The shop as stored: one document and its history, saved only over the revision it was made from.
import { openShop, startingShopDocument, type ShopDocument } from '../../parts-library/job/index.js';
import { StoreProblem, type Database } from './database.js';

export interface ShopStore {
  /** Starting values until something is saved. */
  readonly read: () => Promise<ShopDocument>;
  /** Saves as the next revision, or gives back what stands there now. */
  readonly save: (
    shop: ShopDocument,
    revision: number,
  ) => Promise<
    | { readonly outcome: 'saved'; readonly shop: ShopDocument }
    | { readonly outcome: 'conflict'; readonly current: ShopDocument }
  >;
}

/** @param now the time as ISO 8601 text */
export function createShopStore(database: Database, now: () => string): ShopStore {
  const read = async (from: Database = database): Promise<ShopDocument> => {
    const row = await from.selectFrom('shop').select('document').where('id', '=', 1).executeTakeFirst();
    if (row === undefined) return startingShopDocument;
    const opened = openShop(JSON.parse(row.document));
    if (opened.ok) return opened.shop;
    const [first] = opened.problems;
    throw new StoreProblem(`The stored shop cannot be read: ${first?.path ?? ''} ${first?.says ?? ''}`);
  };

  return {
    read: () => read(),
    save: (shop, revision) =>
      database.transaction().execute(async (transaction) => {
        const current = await read(transaction);
        if (current.revision !== revision) return { outcome: 'conflict', current } as const;
        const saved: ShopDocument = { ...shop, revision: revision + 1 };
        const document = JSON.stringify(saved);
        const at = now();
        await transaction
          .insertInto('shop')
          .values({ id: 1, revision: saved.revision, document, updated_at: at })
          .onConflict((conflict) =>
            conflict.column('id').doUpdateSet({ revision: saved.revision, document, updated_at: at }),
          )
          .execute();
        await transaction
          .insertInto('shop_history')
          .values({ revision: saved.revision, document, made_at: at })
          .execute();
        return { outcome: 'saved', shop: saved } as const;
      }),
  };
}
