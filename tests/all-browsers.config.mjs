// The element, and built pages with it, in every engine that BROWSERS names; by default in all.
process.env.BROWSERS ??= 'chromium,firefox,webkit';
const { default: config } = await import('./web-test-runner.config.mjs');

export default { ...config, files: ['tests/element/**/*.test.ts', 'tests/browsers/**/*.test.ts'] };
