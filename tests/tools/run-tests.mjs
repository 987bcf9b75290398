// `npm test`: builds, runs every suite, and closes with the line that counts. BROWSERS=chromium,firefox,webkit adds engines.
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.env.BROWSERS ??= 'chromium';

const root = fileURLToPath(new URL('../..', import.meta.url));

function npmRun(script, ...options) {
  console.log(`\n== ${script}`);
  const shell = process.platform === 'win32';
  return (
    spawnSync('npm', ['run', '--silent', script, '--', ...options], { cwd: root, stdio: 'inherit', shell }).status === 0
  );
}

/** A suite that breaks without naming a failed test counts as one. */
function count(script, options, file = `reports/${script.replace('test:', '')}.json`) {
  rmSync(root + file, { force: true });
  const isFine = npmRun(script, ...options(file));
  try {
    const { numPassedTests: passed, numFailedTests: failed } = JSON.parse(readFileSync(root + file, 'utf8'));
    return { passed, failed: isFine ? failed : Math.max(1, failed) };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

const vitestOptions = (file) => ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];

const counts = npmRun('build')
  ? [
      count('test:core', vitestOptions),
      count('test:package', vitestOptions),
      count('test:browsers', () => [], 'reports/element.json'),
      count('test:pages', vitestOptions),
    ]
  : [{ passed: 0, failed: 1 }];

const sum = (key) => counts.reduce((total, each) => total + each[key], 0);
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') > 0 || sum('passed') === 0 ? 1 : 0;
