#!/usr/bin/env node
// The command line: `part`, `parts` and `serve`.
import { run } from './cli/run.js';

// A reader that stops early (`| head`) is no failure.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { code, out, err } = await run(process.argv.slice(2));
if (err !== undefined) process.stderr.write(err);
if (out !== undefined) process.stdout.write(out);
process.exitCode = code;
