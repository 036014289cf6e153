// `fishplate serve`: opens the bench on a loopback port and keeps it open until it is told to stop.
import { homedir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { existsSync } from 'node:fs';
import { serve, type Running } from '../serve.js';
import { StoreProblem } from '../store/index.js';
import { version } from '../version.js';
import { readFlags, type Flag } from './flags.js';
import { badInput, failed, type InputProblem, type Outcome } from './outcome.js';

const PORT = 4173;
/** When the usual port is taken, this many after it are tried. */
const TRIES = 20;

const FLAGS: readonly Flag[] = [
  { name: 'port', takesValue: true },
  { name: 'data', takesValue: true },
  { name: 'host', takesValue: true },
  { name: 'help', takesValue: false },
];

const HELP = `fishplate serve [--port N] [--data DIR] [--host H]

  --port N    Port to listen on; 0 takes any free one. Default ${PORT}, or the next free one.
  --data DIR  Folder of the data file. Default: $XDG_DATA_HOME/fishplate or ~/.local/share/fishplate.
  --host H    A loopback address: 127.0.0.1, ::1 or localhost. Default 127.0.0.1.
`;

const LOOPBACK: ReadonlySet<string> = new Set(['127.0.0.1', '::1', 'localhost']);

const DATA_FILE = 'fishplate.sqlite';

/** Where data is kept when nobody says: the XDG base directory. */
function dataFolder(): string {
  const base = process.env['XDG_DATA_HOME'];
  return join(base === undefined || base === '' ? join(homedir(), '.local', 'share') : base, 'fishplate');
}

/** The built page: in dist/ when run from sources, beside the built server otherwise. Only a built one has assets/. */
function pageFolder(): string | undefined {
  return ['../../dist/client', '../../client']
    .map((place) => fileURLToPath(new URL(place, import.meta.url)))
    .find((folder) => existsSync(join(folder, 'assets')));
}

function readPort(text: string | true | undefined): number | InputProblem {
  if (text === undefined || text === true) return PORT;
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65_535) return port;
  return { field: 'port', flag: '--port', says: `is "${text}"; accepted is a whole number, 0 to 65535.` };
}

/** Runs the command on the arguments behind `serve`; comes back when the bench is closed. */
export async function serveCommand(args: readonly string[]): Promise<Outcome> {
  const { values, positionals, problems } = readFlags(args, FLAGS);
  if (values.has('help')) return { code: 0, out: HELP };
  const port = readPort(values.get('port'));
  const host = String(values.get('host') ?? '127.0.0.1');
  const wrong: readonly InputProblem[] = [
    ...problems,
    ...positionals.map((word) => ({ field: 'arguments', says: `"${word}" is not known here.` })),
    ...(typeof port === 'number' ? [] : [port]),
    ...(LOOPBACK.has(host)
      ? []
      : [
          {
            field: 'host',
            flag: '--host',
            says: `is "${host}"; accepted is a loopback address, ${[...LOOPBACK].join(', ')}: the bench has no passwords.`,
          },
        ]),
  ];
  if (wrong.length > 0 || typeof port !== 'number') return badInput(wrong, false);
  const folder = String(values.get('data') ?? dataFolder());
  const page = pageFolder();
  let running: Running;
  try {
    running = await serve({
      port,
      host,
      file: join(folder, DATA_FILE),
      version: version(),
      tries: values.has('port') ? 0 : TRIES,
      report: (error) =>
        process.stderr.write(
          `fishplate: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
        ),
      ...(page === undefined ? {} : { page }),
    });
  } catch (error) {
    return wordStart(error, port);
  }
  process.stdout.write(`Fishplate is open at ${running.address}\n`);
  if (page === undefined)
    process.stdout.write('The page is not built (npm run build); only the interface answers.\n');
  process.stdout.write(`Data in ${join(folder, DATA_FILE)}. Stop with Ctrl+C.\n`);
  await untilTold();
  await running.stop();
  return { code: 0 };
}

function wordStart(error: unknown, port: number): Outcome {
  if (error instanceof StoreProblem)
    return badInput([{ field: 'data', flag: '--data', says: error.message }], false);
  if (error instanceof Error && 'code' in error) {
    if (error.code === 'EADDRINUSE') {
      return badInput(
        [{ field: 'port', flag: '--port', says: `${port} is taken; choose another, or leave it out.` }],
        false,
      );
    }
    if (error.code === 'EACCES') {
      return badInput(
        [{ field: 'port', flag: '--port', says: `${port} may not be used; choose one above 1023.` }],
        false,
      );
    }
  }
  return failed(error instanceof Error ? error.message : String(error), false);
}

/** Waits for Ctrl+C or for the machine to shut down. */
function untilTold(): Promise<void> {
  return new Promise((resolve) => {
    const end = (): void => {
      process.off('SIGINT', end);
      process.off('SIGTERM', end);
      resolve();
    };
    process.on('SIGINT', end);
    process.on('SIGTERM', end);
  });
}
