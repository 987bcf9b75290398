// Before `npm start` and `npm test`: installs when node_modules is missing or older than the lock file. Node built-ins only.
import { spawnSync } from 'node:child_process';
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const changed = (path) => statSync(root + path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

if (changed('node_modules/.package-lock.json') < changed('package-lock.json')) {
  console.log('Installing packages (once) ...');
  const { status } = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  process.exit(status ?? 1);
}
