// Opens the data file: SQLite behind a strict adapter, its settings, and its schema brought up to date.
import { existsSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import SQLite from 'better-sqlite3';
import { Kysely, SqliteDialect, type SqliteDatabase, type SqliteStatement } from 'kysely';
import { makeFolder } from '../make-folder.js';
import { APPLICATION_ID, MIGRATIONS, SCHEMA_VERSION } from './migrations.js';
import type { Tables } from './tables.js';

/** The data file cannot be used; the message says why and what would do. */
export class StoreProblem extends Error {
  override readonly name = 'StoreProblem';
}

export type Database = Kysely<Tables>;

export interface OpenedDatabase {
  readonly database: Database;
  readonly close: () => Promise<void>;
}

/** Keeps data in memory only, for tests. */
export const IN_MEMORY = ':memory:';

/** How long a writer waits for another program to finish its transaction. */
const BUSY_MILLISECONDS = 5000;

/**
 * Opens the data file, making folder and file where they are missing.
 * @param file a path, or `:memory:`
 * @throws StoreProblem when it was made by a newer program, is no data file of ours, or cannot be opened; then it has
 * not been written to
 */
export function openDatabase(file: string): OpenedDatabase {
  try {
    if (file !== IN_MEMORY) {
      makeFolder(dirname(resolve(file)));
      inspect(file);
    }
    const raw = new SQLite(file);
    try {
      configure(raw);
      migrate(raw);
    } catch (error) {
      raw.close();
      throw error;
    }
    const database = new Kysely<Tables>({ dialect: new SqliteDialect({ database: adapt(raw) }) });
    const close = async (): Promise<void> => {
      await database.destroy();
      // The query builder closes only what it has used.
      raw.close();
    };
    return { database, close };
  } catch (error) {
    if (error instanceof StoreProblem) throw error;
    const reason = error instanceof Error ? error.message : String(error);
    throw new StoreProblem(`The data file "${file}" cannot be opened: ${reason}.`);
  }
}

const numberOf = (raw: SQLite.Database, pragma: string): number =>
  Number(raw.pragma(pragma, { simple: true }));

/** Looks at a file that is there without writing to it. */
function inspect(file: string): void {
  if (!existsSync(file)) return;
  const raw = new SQLite(file, { readonly: true });
  try {
    const version = numberOf(raw, 'user_version');
    const application = numberOf(raw, 'application_id');
    const empty = numberOf(raw, 'schema_version') === 0;
    if (!empty && application !== APPLICATION_ID) {
      throw new StoreProblem(
        `"${file}" is a database of another program; choose another folder with --data.`,
      );
    }
    if (version > SCHEMA_VERSION) {
      throw new StoreProblem(
        `"${file}" was written by a newer program (schema ${version}, this one knows ${SCHEMA_VERSION}). ` +
          'Nothing was changed. Use the newer program, or another folder with --data.',
      );
    }
  } finally {
    raw.close();
  }
}

/** A committed change survives a crash of the program and of the machine. */
function configure(raw: SQLite.Database): void {
  raw.pragma('journal_mode = WAL');
  raw.pragma('synchronous = FULL');
  raw.pragma('foreign_keys = ON');
  raw.pragma(`busy_timeout = ${BUSY_MILLISECONDS}`);
}

/** Runs the migrations that are missing, each in a transaction of its own. */
function migrate(raw: SQLite.Database): void {
  for (const { version, statements } of MIGRATIONS) {
    raw
      .transaction(() => {
        // Read inside the transaction: another program may have been quicker.
        if (numberOf(raw, 'user_version') >= version) return;
        for (const statement of statements) raw.exec(statement);
        raw.pragma(`application_id = ${APPLICATION_ID}`);
        raw.pragma(`user_version = ${version}`);
      })
      .immediate();
  }
}

type Bound = string | number | bigint | null | Uint8Array;

/** Only what SQLite stores as it is may be bound; anything else would be lost or changed in silence. */
function bound(parameters: readonly unknown[]): readonly Bound[] {
  return parameters.map((value) => {
    if (
      value === null ||
      typeof value === 'string' ||
      typeof value === 'number' ||
      typeof value === 'bigint'
    ) {
      return value;
    }
    if (value instanceof Uint8Array) return value;
    throw new TypeError(
      `A value of type ${typeof value} cannot be stored; it must be text, number, bytes or null.`,
    );
  });
}

/** What the query builder needs of a database, and no more. */
export function adapt(raw: SQLite.Database): SqliteDatabase {
  return {
    close: () => raw.close(),
    prepare: (sql): SqliteStatement => {
      // A transaction that reads and then writes must hold the write lock from its start, or it may fail in between.
      const statement = raw.prepare(sql === 'begin' ? 'begin immediate' : sql);
      return {
        reader: statement.reader,
        all: (parameters) => statement.all(...bound(parameters)),
        run: (parameters) => statement.run(...bound(parameters)),
        iterate: (parameters) => statement.iterate(...bound(parameters)),
      };
    },
  };
}
