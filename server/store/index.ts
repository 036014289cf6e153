// The store: jobs, shop and queue in one data file.
import { openDatabase } from './database.js';
import { createJobStore, type JobStore } from './jobs.js';
import { createQueue, type Queue } from './queue.js';
import { createShopStore, type ShopStore } from './shop.js';

export { adapt, IN_MEMORY, openDatabase, StoreProblem, type Database } from './database.js';
export type { JobHead, JobStore, StepResult } from './jobs.js';
export { MIGRATIONS, SCHEMA_VERSION } from './migrations.js';
export type { Queue, Task } from './queue.js';
export type { ShopStore } from './shop.js';

export interface Store {
  readonly jobs: JobStore;
  readonly shop: ShopStore;
  readonly queue: Queue;
  readonly close: () => Promise<void>;
}

/**
 * Opens the store.
 * @param file path of the data file, or `:memory:`
 * @param clock milliseconds since 1970; the machine's when absent
 * @throws StoreProblem when the file cannot be used
 */
export function openStore(file: string, clock: () => number = Date.now): Store {
  const { database, close } = openDatabase(file);
  const now = (): string => new Date(clock()).toISOString();
  return {
    jobs: createJobStore(database, now),
    shop: createShopStore(database, now),
    queue: createQueue(database, clock),
    close,
  };
}
