// The schema of the data file, one numbered step after another. A step that has been released is never edited.

/** Marks a SQLite file as ours: the letters FPLT. */
export const APPLICATION_ID = 0x46504c54;

export interface Migration {
  readonly version: number;
  readonly statements: readonly string[];
}

export const MIGRATIONS: readonly Migration[] = [
  {
    version: 1,
    statements: [
      `CREATE TABLE job (
        id TEXT PRIMARY KEY,
        revision INTEGER NOT NULL,
        name TEXT NOT NULL,
        document TEXT NOT NULL,
        created_at TEXT NOT NULL,
        updated_at TEXT NOT NULL
      ) STRICT`,
      `CREATE TABLE job_change (
        job_id TEXT NOT NULL REFERENCES job (id) ON DELETE CASCADE,
        revision INTEGER NOT NULL,
        kind TEXT NOT NULL CHECK (kind IN ('edit', 'undo', 'redo')),
        change TEXT NOT NULL,
        inverse TEXT NOT NULL,
        made_at TEXT NOT NULL,
        PRIMARY KEY (job_id, revision)
      ) STRICT`,
      `CREATE TABLE shop (
        id INTEGER PRIMARY KEY CHECK (id = 1),
        revision INTEGER NOT NULL,
        document TEXT NOT NULL,
        updated_at TEXT NOT NULL
      ) STRICT`,
      `CREATE TABLE shop_history (
        revision INTEGER PRIMARY KEY,
        document TEXT NOT NULL,
        made_at TEXT NOT NULL
      ) STRICT`,
      `CREATE TABLE queue (
        id TEXT PRIMARY KEY,
        kind TEXT NOT NULL,
        payload TEXT NOT NULL,
        state TEXT NOT NULL CHECK (state IN ('queued', 'running', 'finished', 'failed')),
        attempts INTEGER NOT NULL,
        most_attempts INTEGER NOT NULL,
        worker TEXT,
        lease_until INTEGER,
        progress TEXT,
        result TEXT,
        error TEXT,
        enqueued_at INTEGER NOT NULL
      ) STRICT`,
      'CREATE INDEX queue_by_state ON queue (state, kind, enqueued_at)',
    ],
  },
];

export const SCHEMA_VERSION = Math.max(...MIGRATIONS.map(({ version }) => version));
