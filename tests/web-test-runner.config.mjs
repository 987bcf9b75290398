import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { builtPages } from './tools/built-pages.mjs';
import { launcherOf } from './tools/launchers.mjs';
import { moreCommands } from './tools/wtr-commands.mjs';
import { jsonReporter, prebundle } from './tools/wtr-plugins.mjs';

// BROWSERS=chromium,firefox,webkit; Chromium alone is what every machine can get by itself.
const wantedBrowsers = (process.env.BROWSERS ?? 'chromium').split(',');
const rootDir = fileURLToPath(new URL('..', import.meta.url));

export default {
  rootDir,
  files: 'tests/element/**/*.test.ts',
  nodeResolve: { exportConditions: ['development'] },
  middleware: [builtPages()],
  plugins: [
    prebundle('mathjs/number'),
    esbuildPlugin({ ts: true, json: true, target: 'es2022', tsconfig: `${rootDir}tsconfig.json` }),
    moreCommands(),
  ],
  browsers: await Promise.all(wantedBrowsers.map(launcherOf)),
  concurrentBrowsers: 2,
  // For busy machines: what takes this long is broken.
  testFramework: { config: { timeout: 20_000 } },
  testsFinishTimeout: 600_000,
  reporters: [defaultReporter(), jsonReporter(`${rootDir}reports/element.json`)],
  filterBrowserLogs: ({ args }) => !String(args[0]).startsWith('Lit is in dev mode'),
};
