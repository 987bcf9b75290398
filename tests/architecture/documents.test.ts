import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import packageJson from '../../package.json';

const root = fileURLToPath(new URL('../..', import.meta.url));
const npmOwn = ['pack', 'install'];

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (document) => {
  const text = readFileSync(root + document, 'utf8');
  const matches = (pattern: RegExp): string[] => [...text.matchAll(pattern)].map(([, found = '']) => found);

  test('links to nothing of ours that is missing', () => {
    const links = [...matches(/\]\((?!https?:)([^)#]+)\)/g), ...matches(/src(?:set)?="(?!\/)([^"]+)"/g)];
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !existsSync(root + link))).toEqual([]);
  });

  test('names no command of npm that there is not', () => {
    const named = [...matches(/npm run ([\w:]+)/g), ...matches(/npm (?!run\b)([a-z]+)/g)];
    const known = [...Object.keys(packageJson.scripts), ...npmOwn];
    expect(named).toContain('test');
    expect(named.filter((name) => !known.includes(name))).toEqual([]);
  });

  test('names no file or folder of ours that there is not', () => {
    const paths = matches(/`((?:src|shared|demo|tests|\.ci)(?:\/[\w.-]+)*)`/g);
    expect(paths.filter((path) => !existsSync(root + path))).toEqual([]);
  });

  test('is calm', () => {
    expect(text.match(/!(?=\s|$)/gm)).toBeNull();
  });
});

test('DEVELOPERS.md names every command of package.json that people run', () => {
  const text = readFileSync(`${root}DEVELOPERS.md`, 'utf8');
  const hooks = /^(pre|post)\w+|^clean$/;
  const commands = Object.keys(packageJson.scripts).filter((name) => !hooks.test(name));
  const named = (name: string): boolean => text.includes(`npm run ${name}\``) || text.includes(`npm ${name}\``);
  expect(commands.filter((name) => !named(name))).toEqual([]);
});
