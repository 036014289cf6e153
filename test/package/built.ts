// The built package: library and server compiled as a release would have them.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a program to its end; a failure carries what it said. */
export function runProgram(
  program: string,
  args: readonly string[],
  cwd: string,
): { readonly out: string; readonly err: string } {
  const ran = spawnSync(program, [...args], { cwd, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
  if (ran.error !== undefined) throw ran.error;
  if (ran.status !== 0)
    throw new Error(`${program} ${args.join(' ')} exited ${ran.status}\n${ran.stdout}\n${ran.stderr}`);
  return { out: ran.stdout, err: ran.stderr };
}

/** Compiles what has changed since the last time. */
export function buildLibraryAndServer(): void {
  runProgram(process.execPath, ['node_modules/typescript/bin/tsc', '-b', 'parts-library', 'server'], ROOT);
}
