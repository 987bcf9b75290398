import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  test: {
    // A processor less is the default, which is one on many a machine of a CI service.
    maxWorkers: '100%',
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // A failure of a machine far away is told by its first line: what was expected has to be in it.
    chaiConfig: { truncateThreshold: 300 },
    coverage: { include: ['src/**/*.ts'], exclude: ['src/element/**'], reportsDirectory: 'coverage' },
    projects: [
      { extends: true, test: { name: 'core', include: ['tests/{core,reference,architecture}/**/*.test.ts'] } },
      {
        extends: true,
        test: { name: 'package', include: ['tests/package/**/*.test.ts'], globalSetup: 'tests/package/install.ts' },
      },
      // One page at a time: some tests measure how long things take.
      { extends: true, test: { name: 'pages', include: ['tests/pages/**/*.test.ts'], fileParallelism: false } },
    ],
  },
});
