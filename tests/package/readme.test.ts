import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { format } from 'prettier';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import english from '../../shared/locales/en.json';
import defaultMethod from '../../shared/methods/default.json';
import { planWeek } from '../../src/core.js';
import { consoleCommands } from '../tools/markdown-blocks.mjs';
import { fillTables, type Manifest } from '../tools/readme-tables.mjs';
import { measureSizes } from '../tools/size.mjs';
import { consumer, installed } from './install.js';
import { pieces, readme, section, shownFiles } from './readme-text.js';
import { cautionIds } from '../../src/training/method/check-rules.js';

test('the tables of what the tag offers are those of the manifest (else: npm run compile)', async () => {
  const manifest = JSON.parse(readFileSync(`${installed}dist/custom-elements.json`, 'utf8')) as Manifest;
  const fresh = await format(fillTables(readme, manifest), { parser: 'markdown', printWidth: 120, singleQuote: true });
  expect(readme).toBe(fresh);
});

describe('the command prints what README.md shows (else: npm run compile)', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'weekwright-'));
    for (const [name, text] of Object.entries(shownFiles)) writeFileSync(join(folder, name), text);
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  const sessions = pieces('console').map((piece) => consoleCommands(piece));

  test.each(sessions.map((commands) => [commands[0]?.command, commands] as const))('%s', (_, commands) => {
    let lastStatus: number | null = null;
    for (const { command, output } of commands) {
      if (command === 'echo $?') {
        expect(`${lastStatus}\n`).toBe(output);
        continue;
      }
      const [name, ...args] = command.split(' ');
      expect(name).toBe('weekwright');
      const done = spawnSync('node', [`${installed}dist/cli.js`, ...args], { cwd: folder, encoding: 'utf8' });
      expect(done.stdout + done.stderr).toBe(output);
      lastStatus = done.status;
    }
  });
});

test.each(['week.mjs', 'what-if.mjs'])('the library does what README.md shows in %s', (file) => {
  const program = shownFiles[file] ?? '';
  writeFileSync(`${consumer}${file}`, program);
  const { stdout, stderr } = spawnSync('node', [file], { cwd: consumer, encoding: 'utf8' });
  const promised = [...program.matchAll(/console\.log\(.*\); \/\/ (.*)/g)].map(([, line]) => line);
  expect(promised.length).toBeGreaterThan(3);
  expect([stdout.trimEnd().split('\n'), stderr]).toEqual([promised, '']);
});

test('the sizes are true to within a twentieth', () => {
  const rows = [...section('Sizes').matchAll(/^\| (.+?) +\| ([\d.]+) +\|$/gm)];
  const said: Readonly<Record<string, number>> = Object.fromEntries(
    rows.map(([, name = '', kilobytes]) => [name, Number(kilobytes)] as const),
  );
  const measured = measureSizes();
  expect(Object.keys(said)).toEqual(measured.map(({ name }) => name));
  for (const { name, bytes } of measured) {
    const ratio = (said[name] ?? 0) / (bytes / 1000);
    expect(ratio, `${name}: ${bytes} bytes`).toBeGreaterThan(0.95);
    expect(ratio, `${name}: ${bytes} bytes`).toBeLessThan(1.05);
  }
});

describe.each(['planner', 'sheet'])('the picture of the %s', (name) => {
  test('is there, in light and dark, as large as README.md says, and not heavy', () => {
    const image = new RegExp(`<img\\s+src="shared/pictures/${name}-light.png"\\s+width="(\\d+)"\\s+height="(\\d+)"`);
    const [, width, height] = image.exec(readme) ?? [];
    expect(readme).toContain(`srcset="shared/pictures/${name}-dark.png"`);
    for (const file of ['light', 'dark'].map((scheme) => `shared/pictures/${name}-${scheme}.png`)) {
      const png = readFileSync(installed + file);
      expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([2 * Number(width), 2 * Number(height)]);
      expect(statSync(installed + file).size).toBeLessThan(150_000);
    }
  });
});

describe('the picture of the planner', () => {
  test('shows what its description says', () => {
    const plan = planWeek({ hours: 7, phase: 'build', level: 'trained', event: 'marathon' });
    if (!plan.ok) throw new Error('the week of the picture has no plan');
    const { rounded, sessions, rules } = plan.value;
    const cap = rules.find(({ id, acted }) => id === 'strength-cap' && acted);
    const description = /alt="(.+?)"/s.exec(readme)?.[1]?.replace(/\s+/g, ' ');
    expect(sessions.strength).toEqual([40, 40, 40]);
    expect(description).toContain(`${rounded.strength} minutes of strength, as 3 times 40`);
    expect(description).toContain(`${Number(cap?.before) - Number(cap?.after)} minutes moved to slow running`);
  });
});

describe('what README.md says of the trade', () => {
  test('the shares are those of the built-in method', () => {
    const said = [...section('What is common practice, and what is assumption').matchAll(/[\d /]+(?= %)/g)];
    const shares = ['in_season', 'off_season'].map((id) => {
      const split = defaultMethod.splits.find((each) => each.id === id);
      return Object.values(split?.shares ?? {}).map((share) => Math.round(share * 100));
    });
    expect(said.map(([text]) => text.split('/').map(Number))).toEqual(shares);
  });

  test('the cautions are those of the planner', () => {
    const texts: Readonly<Record<string, unknown>> = english;
    const usual = cautionIds.map((id) => texts[`usual-caution.${id}`]);
    const said = [...section('Cautions').matchAll(/^- (.+)$/gm)].map(([, line]) => line);
    expect(said).toEqual(usual);
  });
});
