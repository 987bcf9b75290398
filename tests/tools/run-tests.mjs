// `npm test`: builds, runs every suite, names what failed, and closes with the line that counts.
// `npm test -- firefox webkit`: the element and built pages in these engines too. With a DEADLINE, in seconds since 1970,
// what there would be no time for in an engine is left out, and named.
import { spawnSync } from 'node:child_process';
import { readFileSync, rmSync } from 'node:fs';
import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

// In another engine, what differs most from engine to engine comes first. What goes through every state of every panel
// (tests/element/everywhere) takes ten minutes an engine, and is left to the first one here; `npm run test:browsers` has it
// in all. How long each takes at most, as a share of what the first engine took with everything:
const inOtherEngines = [
  {
    part: 'the element, forms and the built pages',
    share: 0.35,
    files: ['tests/element/*.test.ts', 'tests/element/form/**/*.test.ts', 'tests/browsers/**/*.test.ts'],
  },
  {
    part: 'the week, the season, checks and the sheet',
    share: 0.6,
    files: ['tests/element/@(board|season|checks|sheet)/**/*.test.ts'],
  },
  {
    part: 'the other panels',
    share: 0.6,
    files: ['tests/element/!(everywhere|form|board|season|checks|sheet)/**/*.test.ts'],
  },
];

const firstBrowsers = process.env.BROWSERS ?? 'chromium';

function npmRun(script, options = [], browsers = firstBrowsers) {
  console.log(`\n== ${script} ${options.join(' ')}`);
  const shell = process.platform === 'win32';
  const env = { ...process.env, BROWSERS: browsers };
  return (
    spawnSync('npm', ['run', '--silent', script, '--', ...options], { cwd: root, stdio: 'inherit', shell, env })
      .status === 0
  );
}

/** A suite that breaks without a report of what failed counts as one failure. */
function count(title, report, run) {
  rmSync(root + report, { force: true });
  const isFine = run();
  try {
    const { numPassedTests: passed, testResults } = JSON.parse(readFileSync(root + report, 'utf8'));
    const failures = testResults.flatMap(failuresOf).map((failure) => `${title}: ${failure}`);
    return { passed, failures: isFine || failures.length > 0 ? failures : [`${title}: broke`] };
  } catch {
    return { passed: 0, failures: [`${title}: left no report`] };
  }
}

/** What failed in a file, each with how its reason begins; vitest tells of a file that broke outside of its tests apart. */
function failuresOf({ name, status, message, assertionResults }) {
  const failed = assertionResults.filter((each) => each.status === 'failed');
  const broken = status === 'failed' && failed.length === 0;
  const told = broken ? [{ fullName: 'the file as a whole', failureMessages: [message] }] : failed;
  return told.map(({ fullName, failureMessages: [why = ''] }) =>
    [`${relative(root, name)}: ${fullName}`, ...beginning(why)].join('\n    '),
  );
}

/** The second line of a random test's tells how to repeat it, the third what it fell over. */
const beginning = (why) =>
  why
    .split('\n')
    .slice(0, why.includes('{ seed: ') ? 3 : 1)
    .map((line) => line.slice(0, 400));

function inNode(suite) {
  const report = `reports/${suite}.json`;
  const options = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  return count(suite, report, () => npmRun(`test:${suite}`, options));
}

/** In `reports/element.json`, whatever the engine: see web-test-runner.config.mjs. */
const inBrowser = (browsers, ...options) =>
  count(browsers, 'reports/element.json', () => npmRun('test:browsers', options, browsers));

const leftOut = [];

function everything() {
  const before = [inNode('core'), inNode('package')];
  const begin = Date.now();
  const first = inBrowser(firstBrowsers);
  const duration = Date.now() - begin;
  const counts = [...before, first, inNode('pages')];
  for (const { part, share, files } of inOtherEngines)
    for (const engine of process.argv.slice(2))
      if (Date.now() + share * duration > Number(process.env.DEADLINE ?? Infinity) * 1000)
        leftOut.push(`${engine}: ${part}`);
      else counts.push(inBrowser(engine, '--files', ...files));
  return counts;
}

const counts = npmRun('build') ? everything() : [{ passed: 0, failures: ['build'] }];
const passed = counts.reduce((sum, each) => sum + each.passed, 0);
const failures = counts.flatMap((each) => each.failures);
if (leftOut.length > 0) console.log(`\n== not run, for want of time\n${leftOut.join('\n')}`);
if (failures.length > 0) console.log(`\n== failed\n${failures.join('\n')}`);
console.log(`\n${passed} passed, ${failures.length} failed`);
process.exitCode = failures.length > 0 || passed === 0 ? 1 : 0;
