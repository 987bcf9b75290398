import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import packageJson from '../../package.json';
import { consumer, installed } from './install.js';
import { fileKinds } from './file-kinds.js';

describe('installed by npm into an empty folder', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'weekwright-'));
    const [archive] = readdirSync(consumer).filter((file) => file.endsWith('.tgz'));
    const options = ['--prefer-offline', '--no-audit', '--no-fund', '--omit=dev'];
    execFileSync('npm', ['install', consumer + String(archive), ...options], { cwd: folder, stdio: 'pipe' });
  }, 240_000);
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  const run = (command: string, ...args: readonly string[]) =>
    spawnSync(command, args, { cwd: folder, encoding: 'utf8' });

  test('brings no framework along', () => {
    const brought = readdirSync(join(folder, 'node_modules'));
    expect(brought).toEqual(expect.arrayContaining(['lit', 'weekwright']));
    expect(brought.filter((name) => ['react', 'svelte', 'vue'].includes(name))).toEqual([]);
  });

  const entries = Object.keys(packageJson.exports).map((entry) => entry.replace(/^\./, 'weekwright'));
  const files = { 'weekwright/schema/*': 'plan.schema.json', 'weekwright/methods/*': 'default.json' };
  const named = entries.map((entry) =>
    entry.replace('*', Object.entries(files).find(([key]) => key === entry)?.[1] ?? '*'),
  );

  // What is to embed needs a page; pages of tests/pages have it.
  test.each(named.filter((entry) => !entry.startsWith('weekwright/embed/')))(
    '%s is found without a window',
    (entry) => {
      const found = entry.endsWith('.json')
        ? `JSON.parse(fs.readFileSync(new URL(import.meta.resolve('${entry}')), 'utf8'))`
        : `await import('${entry}')`;
      const script = `import fs from 'node:fs'; if ('window' in globalThis) throw new Error('window'); ${found}`;
      const { stderr, status } = run('node', '--input-type=module', '-e', script);
      expect([stderr, status]).toEqual(['', 0]);
    },
  );

  test('finds what is to embed', () => {
    const script = `console.log(import.meta.resolve('weekwright/embed/weekwright.js'))`;
    const { stdout } = run('node', '--input-type=module', '-e', script);
    expect(existsSync(new URL(stdout.trim()))).toBe(true);
  });

  test('has the command', () => {
    const { stdout, stderr } = run('npx', '--no', 'weekwright', 'plan', '--hours', '4', '--json');
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toMatchObject({ inputs: { hours: 4 }, total: { rounded: 240 } });
  });
});

test('the package has files of these kinds and no others', () => {
  const all = readdirSync(installed, { recursive: true, encoding: 'utf8' });
  const files = all.filter((file) => statSync(installed + file).isFile()).map((file) => file.replaceAll('\\', '/'));
  const kindsOf = (file: string) => fileKinds.filter(({ pattern }) => pattern.test(file));
  expect(files.filter((file) => kindsOf(file).length !== 1)).toEqual([]);
  expect(fileKinds.filter(({ pattern }) => !files.some((file) => pattern.test(file)))).toEqual([]);

  const [archive] = readdirSync(consumer).filter((file) => file.endsWith('.tgz'));
  console.log(`packed: ${Math.round(statSync(consumer + String(archive)).size / 1000)} kB, ${files.length} files`);
  for (const { kind, pattern } of fileKinds) {
    const sizes = files.filter((file) => pattern.test(file)).map((file) => readFileSync(installed + file).length);
    const total = sizes.reduce((sum, size) => sum + size, 0);
    console.log(`${kind}: ${sizes.length} files, ${Math.round(total / 1000)} kB`);
  }
});
