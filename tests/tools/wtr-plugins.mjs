import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Serves a package as one ES file, for packages that lean on CommonJS ones or come in hundreds of files. */
export function prebundle(...specifiers) {
  const served = new Map();
  return {
    name: 'prebundle',
    async serverStart() {
      for (const specifier of specifiers) {
        const outfile = `${root}node_modules/.cache/prebundle/${specifier.replaceAll('/', '-')}.js`;
        await build({
          stdin: { contents: `export * from ${JSON.stringify(specifier)};`, resolveDir: root },
          outfile,
          bundle: true,
          format: 'esm',
          target: 'es2022',
          mainFields: ['module', 'main'],
          logLevel: 'error',
        });
        served.set(specifier, `/${relative(root, outfile)}`);
      }
    },
    resolveImport: ({ source }) => served.get(source),
  };
}

/** Leaves what came of a run in a file, in as much as is used of the form of vitest's own JSON reporter. */
export function jsonReporter(path) {
  return {
    onTestRunFinished({ sessions }) {
      const testResults = sessions.map((session) => ({
        name: session.testFile,
        assertionResults: assertionsOf(session),
      }));
      const counted = (wanted) =>
        testResults.flatMap((file) => file.assertionResults).filter(({ status }) => status === wanted);
      const [numPassedTests, numFailedTests] = [counted('passed').length, counted('failed').length];
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, JSON.stringify({ numPassedTests, numFailedTests, testResults }));
    },
  };
}

/** Every test of a file by its whole name; a file that breaks outside of its tests has failed once more. */
function assertionsOf({ testResults, errors, passed }) {
  const all = (suite, names = []) => [
    ...suite.tests.map((test) => assertion([...names, test.name], test.passed, test.error)),
    ...suite.suites.flatMap((inner) => all(inner, [...names, inner.name])),
  ];
  const told = testResults ? all(testResults) : [];
  const isTold = passed || told.some(({ status }) => status === 'failed');
  return isTold ? told : [...told, assertion(['the file as a whole'], false, errors?.[0])];
}

const assertion = (names, passed, error) => ({
  fullName: names.join(' > '),
  status: passed ? 'passed' : 'failed',
  failureMessages: error?.message ? [error.message] : [],
});
