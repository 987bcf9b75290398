import { fileURLToPath } from 'node:url';
import { esbuildPlugin } from '@web/dev-server-esbuild';
import { defaultReporter } from '@web/test-runner';
import { chromeLauncher } from '@web/test-runner-chrome';
import { a11ySnapshotPlugin } from '@web/test-runner-commands/plugins';
import { chromiumLaunchOptions } from './tools/browsers.mjs';
import { countReporter, moreCommands, prebundle } from './tools/wtr-plugins.mjs';

const rootDir = fileURLToPath(new URL('..', import.meta.url));

export default {
  rootDir,
  files: 'tests/element/**/*.test.ts',
  nodeResolve: { exportConditions: ['development'] },
  plugins: [
    prebundle('mathjs/number'),
    esbuildPlugin({ ts: true, json: true, target: 'es2022', tsconfig: `${rootDir}tsconfig.json` }),
    a11ySnapshotPlugin(),
    moreCommands(),
  ],
  browsers: [
    // More than one page at a time, and tests time out now and then.
    chromeLauncher({ launchOptions: await chromiumLaunchOptions(), concurrency: 1 }),
  ],
  // For busy machines: what takes this long is broken.
  testFramework: { config: { timeout: 20_000 } },
  testsFinishTimeout: 600_000,
  reporters: [defaultReporter(), countReporter(`${rootDir}reports/element.json`)],
  filterBrowserLogs: ({ args }) => !String(args[0]).startsWith('Lit is in dev mode'),
};
