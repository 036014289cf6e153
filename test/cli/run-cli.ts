// Runs the command line from its sources, as a person would from a shell.
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Arguments of node that run the command line from its sources. */
export const CLI: readonly string[] = ['--import', import.meta.resolve('tsx'), join(ROOT, 'server/cli.ts')];

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs `fishplate` with these arguments in a folder. */
export function runCli(
  args: readonly string[],
  options: { readonly cwd?: string; readonly input?: string } = {},
): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...CLI, ...args], { cwd: options.cwd ?? ROOT });
    let out = '';
    let err = '';
    child.stdout.setEncoding('utf8').on('data', (text: string) => (out += text));
    child.stderr.setEncoding('utf8').on('data', (text: string) => (err += text));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
    child.stdin.end(options.input ?? '');
  });
}
