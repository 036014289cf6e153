// Which command the arguments name. Server and store are loaded only to serve.
import { listFamilies } from '../../parts-library/parts/index.js';
import { listKits } from '../../parts-library/kits/index.js';
import { version } from '../version.js';
import { driveCommand } from './drive-command.js';
import { nearestOf } from './flags.js';
import { familiesText, HELP, kitsText } from './help.js';
import { importCommand } from './import-command.js';
import { kitCommand } from './kit-command.js';
import { asJson, badInput, failed, type Outcome } from './outcome.js';
import { partCommand } from './part-command.js';

const COMMANDS = ['part', 'parts', 'import', 'kit', 'kits', 'drive', 'serve'];

/** What is wrong with arguments of a command that only takes --json; undefined when nothing is. */
function strayArguments(args: readonly string[]): Outcome | undefined {
  const stray = args.filter((arg) => arg !== '--json');
  return stray.length === 0
    ? undefined
    : badInput(
        stray.map((arg) => ({ field: arg, says: 'is not known here; accepted is --json.' })),
        args.includes('--json'),
      );
}

function partsCommand(args: readonly string[]): Outcome {
  const stray = strayArguments(args);
  if (stray !== undefined) return stray;
  const families = listFamilies();
  if (!args.includes('--json')) return { code: 0, out: familiesText(families) };
  const listed = families.map(({ id, title, summary, fields }) => ({ id, title, summary, fields }));
  return { code: 0, out: asJson({ parts: listed }) };
}

function kitsCommand(args: readonly string[]): Outcome {
  const stray = strayArguments(args);
  if (stray !== undefined) return stray;
  const kits = listKits();
  if (!args.includes('--json')) return { code: 0, out: kitsText(kits) };
  const listed = kits.map(({ id, title, summary, fields }) => ({ id, title, summary, fields }));
  return { code: 0, out: asJson({ kits: listed }) };
}

async function dispatch(command: string | undefined, args: readonly string[]): Promise<Outcome> {
  if (command === undefined || command === '--help' || command === 'help') return { code: 0, out: HELP };
  if (command === '--version') return { code: 0, out: `fishplate ${version()}\n` };
  if (command === 'part') return partCommand(args);
  if (command === 'parts') return partsCommand(args);
  if (command === 'import') return importCommand(args);
  if (command === 'kit') return kitCommand(args);
  if (command === 'kits') return kitsCommand(args);
  if (command === 'drive') return driveCommand(args);
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
