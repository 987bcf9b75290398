import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { nodeResolve } from '@rollup/plugin-node-resolve';
import * as esbuild from 'esbuild';
import { rollup } from 'rollup';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { consumer, installed } from './install.js';

const runNode = (args: readonly string[], cwd: string) => spawnSync('node', args, { cwd, encoding: 'utf8' });

describe('in Node.js, without a window', () => {
  test.each(['weekwright', 'weekwright/core', 'weekwright/define.js'])('%s can be imported', (entry) => {
    const script = `if ('window' in globalThis) throw new Error('window'); await import('${entry}')`;
    const { stderr, status } = runNode(['--input-type=module', '-e', script], consumer);
    expect([stderr, status]).toEqual(['', 0]);
  });
});

describe('with a bundler', () => {
  const defining = /customElements\.define\(/;

  test('rollup keeps the definition of the tag', async () => {
    const bundle = await rollup({
      input: 'page',
      external: /^(lit|mathjs|valibot)/,
      plugins: [
        nodeResolve({ rootDir: consumer }),
        {
          name: 'page',
          resolveId: (id) => (id === 'page' ? `${consumer}page.js` : null),
          load: (id) => (id === `${consumer}page.js` ? "import 'weekwright/define.js'" : null),
        },
      ],
    });
    const { output } = await bundle.generate({});
    expect(output.map((file) => ('code' in file ? file.code : '')).join()).toMatch(defining);
  });

  test('esbuild keeps the definition of the tag', async () => {
    const { outputFiles } = await esbuild.build({
      entryPoints: [`${consumer}page.ts`],
      bundle: true,
      format: 'esm',
      write: false,
      logLevel: 'error',
    });
    expect(outputFiles[0]?.text).toMatch(defining);
  });

  test('the class alone defines nothing', async () => {
    const { outputFiles } = await esbuild.build({
      stdin: {
        contents: "import { WeekwrightPlanner } from 'weekwright'; console.log(WeekwrightPlanner)",
        resolveDir: consumer,
      },
      bundle: true,
      format: 'esm',
      write: false,
      logLevel: 'error',
    });
    expect(outputFiles[0]?.text).not.toMatch(defining);
  });

  test('TypeScript knows the types', () => {
    const { stdout } = spawnSync('npx', ['tsc', '-p', consumer], { encoding: 'utf8' });
    expect(stdout).toBe('');
  });
});

describe('the command, copied to a machine without packages', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'weekwright-'));
    cpSync(`${installed}dist/cli.js`, join(folder, 'cli.mjs'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  test('plans a week', () => {
    const plan = execFileSync('node', ['cli.mjs', 'plan', '--hours', '4', '--json'], { cwd: folder, encoding: 'utf8' });
    expect(JSON.parse(plan)).toMatchObject({ inputs: { hours: 4 }, total: { rounded: 240 } });
  });

  test("plans a week by a coach's method, for which it needs the parser", () => {
    const method = readFileSync(`${installed}shared/methods/default.json`, 'utf8');
    const other = method.replace('weekly_hours > 6 and value', 'weekly_hours > 4 + 1 and value');
    expect(other).not.toBe(method);
    writeFileSync(join(folder, 'method.json'), other);
    const options = ['plan', '--hours', '6', '--method', 'method.json', '--json', '--strength-cap', '90'];
    const { stdout, stderr } = runNode(['cli.mjs', ...options], folder);
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toMatchObject({ minutes: { strength: 90 } });
  });
});
