// Which command the arguments name. Server and store are loaded only to serve.
import { listFamilies } from '../../parts-library/parts/index.js';
import { version } from '../version.js';
import { nearestOf } from './flags.js';
import { familiesText, HELP } from './help.js';
import { asJson, badInput, failed, type Outcome } from './outcome.js';
import { partCommand } from './part-command.js';

const COMMANDS = ['part', 'parts', 'serve'];

function partsCommand(args: readonly string[]): Outcome {
  const json = args.includes('--json');
  const stray = args.filter((arg) => arg !== '--json');
  if (stray.length > 0) {
    return badInput(
      stray.map((arg) => ({ field: arg, says: 'is not known here; accepted is --json.' })),
      json,
    );
  }
  const families = listFamilies();
  if (!json) return { code: 0, out: familiesText(families) };
  const listed = families.map(({ id, title, summary, fields }) => ({ id, title, summary, fields }));
  return { code: 0, out: asJson({ parts: listed }) };
}

async function dispatch(command: string | undefined, args: readonly string[]): Promise<Outcome> {
  if (command === undefined || command === '--help' || command === 'help') return { code: 0, out: HELP };
  if (command === '--version') return { code: 0, out: `fishplate ${version()}\n` };
  if (command === 'part') return partCommand(args);
  if (command === 'parts') return partsCommand(args);
  if (command === 'serve') {
    const { serveCommand } = await import('./serve-command.js');
    return serveCommand(args);
  }
  const nearest = nearestOf(command, COMMANDS);
  const hint = nearest === undefined ? '' : ` Did you mean ${nearest}?`;
  const says = `There is no command "${command}"; there are ${COMMANDS.join(', ')}.${hint}`;
  return badInput([{ field: 'command', says }], args.includes('--json'));
}

/** Runs the command line on its arguments (without node and script). Never throws. */
export async function run(args: readonly string[]): Promise<Outcome> {
  try {
    const [command, ...rest] = args;
    return await dispatch(command, rest);
  } catch (error) {
    return failed(error instanceof Error ? error.message : String(error), args.includes('--json'));
  }
}
