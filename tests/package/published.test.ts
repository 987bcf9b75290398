import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { publint } from 'publint';
import { formatMessage } from 'publint/utils';
import { describe, expect, test } from 'vitest';
import { consumer, installed } from './install.js';

const files = readdirSync(installed, { recursive: true, encoding: 'utf8' });
const read = (file: string): string => readFileSync(installed + file, 'utf8');
const scripts = files.filter((file) => file.endsWith('.js') && file !== 'dist/cli.js');

describe('npm pack', () => {
  test.each([
    'README.md',
    'dist/index.js',
    'dist/index.d.ts',
    'dist/define.js',
    'dist/core.js',
    'dist/cli.js',
    'dist/custom-elements.json',
    'dist/embed/weekwright.js',
    'dist/embed/weekwright.single.js',
    'shared/methods/default.json',
    'shared/schema/method.schema.json',
  ])('holds %s', (file) => {
    expect(files).toContain(file);
  });

  test('holds nothing but the built files, what they share, and what npm adds', () => {
    const top = new Set(files.map((file) => file.split('/')[0]));
    expect([...top].sort()).toEqual(['README.md', 'dist', 'package.json', 'shared']);
    expect(files.filter((file) => /\.tsbuildinfo$|\.test\./.test(file))).toEqual([]);
  });

  test('publint has nothing to say', async () => {
    const { messages, pkg } = await publint({ pkgDir: installed, level: 'suggestion', strict: true });
    expect(messages.map((message) => formatMessage(message, pkg, { color: false }))).toEqual([]);
  });

  test('the types of every entry resolve (are the types wrong?)', () => {
    const [archive] = readdirSync(consumer).filter((file) => file.endsWith('.tgz'));
    const attw = ['attw', consumer + String(archive), '--profile', 'esm-only', '--no-color', '--no-emoji'];
    const { status, stdout } = spawnSync('npx', attw, { encoding: 'utf8' });
    expect(status, stdout).toBe(0);
  });
});

test('no file for a page makes code from text, which a strict content policy refuses', () => {
  const maker = /\beval\s*\(|\bnew\s+Function\b|[^.\w]Function\s*\(/;
  expect(scripts.filter((file) => maker.test(read(file)))).toEqual([]);
});

describe('custom elements manifest', () => {
  interface Declaration {
    readonly name: string;
    readonly tagName?: string;
    readonly attributes?: readonly { readonly name: string }[];
  }
  interface Module {
    readonly path: string;
    readonly declarations: readonly Declaration[];
  }
  const { modules } = JSON.parse(read('dist/custom-elements.json')) as { readonly modules: readonly Module[] };
  const planner = modules.flatMap(({ declarations }) => declarations).find(({ tagName }) => tagName !== undefined);

  test('names only files that are published', () => {
    expect(modules.map(({ path }) => path)).toEqual(['dist/index.js', 'dist/define.js']);
    expect(read('dist/custom-elements.json')).not.toContain('src/');
    expect(modules.filter(({ path }) => !existsSync(installed + path))).toEqual([]);
  });

  test('describes the tag with the attributes that its class observes, and the language, which it hears of otherwise', async () => {
    const built = (await import(`${installed}dist/index.js`)) as Record<string, { observedAttributes?: string[] }>;
    expect(planner?.tagName).toBe('weekwright-planner');
    expect(planner?.attributes?.map(({ name }) => name).sort()).toEqual(
      ['lang', ...(built[String(planner?.name)]?.observedAttributes ?? [])].sort(),
    );
  });
});
