// The tables of the data file as the query builder sees them. Documents are JSON text, days are ISO 8601 text.

export interface JobTable {
  readonly id: string;
  readonly revision: number;
  readonly name: string;
  readonly document: string;
  readonly created_at: string;
  readonly updated_at: string;
}

export interface JobChangeTable {
  readonly job_id: string;
  readonly revision: number;
  readonly kind: 'edit' | 'undo' | 'redo';
  readonly change: string;
  readonly inverse: string;
  readonly made_at: string;
}

export interface ShopTable {
  readonly id: number;
  readonly revision: number;
  readonly document: string;
  readonly updated_at: string;
}

export interface ShopHistoryTable {
  readonly revision: number;
  readonly document: string;
  readonly made_at: string;
}

export interface QueueTable {
  readonly id: string;
  readonly kind: string;
  readonly payload: string;
  readonly state: 'queued' | 'running' | 'finished' | 'failed';
  readonly attempts: number;
  readonly most_attempts: number;
  readonly worker: string | null;
  /** Milliseconds since 1970. */
  readonly lease_until: number | null;
  readonly progress: string | null;
  readonly result: string | null;
  readonly error: string | null;
  readonly enqueued_at: number;
}

export interface Tables {
  readonly job: JobTable;
  readonly job_change: JobChangeTable;
  readonly shop: ShopTable;
  readonly shop_history: ShopHistoryTable;
  readonly queue: QueueTable;
}
