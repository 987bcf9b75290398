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

/** Leaves the counts of a run in a file, as vitest's own JSON reporter does. */
export function countReporter(path) {
  return {
    onTestRunFinished({ sessions }) {
      const all = (suite) => [...suite.tests, ...suite.suites.flatMap(all)];
      const tests = sessions.flatMap(({ testResults }) => (testResults ? all(testResults) : []));
      const numPassedTests = tests.filter(({ passed }) => passed).length;
      mkdirSync(dirname(path), { recursive: true });
      writeFileSync(path, JSON.stringify({ numPassedTests, numFailedTests: tests.length - numPassedTests }));
    },
  };
}
