// Builds dist/ after an install in a clone, because the command line and the server run from dist/.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const missing = ['typescript', 'vite'].filter((name) => {
  try {
    require.resolve(`${name}/package.json`);
    return false;
  } catch {
    return true;
  }
});

if (missing.length > 0) {
  process.stderr.write(
    `fishplate: cannot build dist/, because ${missing.join(' and ')} was not installed. ` +
      'Development packages were left out (NODE_ENV=production or --omit=dev). ' +
      'Install with "npm ci --include=dev", then prune with "npm prune --omit=dev".\n',
  );
  process.exit(1);
}

const built = spawnSync('npm', ['run', '--silent', 'build'], {
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
process.exit(built.status ?? 1);
