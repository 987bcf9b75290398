import { spawn } from 'node:child_process';
import { copyFile, mkdtemp, open, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { csvParseRows } from 'd3-dsv';
import { rollup } from 'rollup';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import packageFile from '../../../package.json';
import configurations from '../../../rollup.config.mjs';
import defaultMethod from '../../../shared/methods/default.json';
import { readByIcalJs, readByNodeIcal } from '../exchange/calendar/readers.js';
import type { Ran } from './fake-io.js';

const root = fileURLToPath(new URL('../../../', import.meta.url));
let folder = '';
let command = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'weekwright-'));
  command = join(folder, 'dist', 'cli.js');
  await bundle(command);
  await copyFile(`${root}package.json`, join(folder, 'package.json'));
  const rules = defaultMethod.rules.map((rule) =>
    rule.id === 'strength-cap' ? { ...rule, when: 'weekly_hours >= 4 and value > 60', value: '60' } : rule,
  );
  await writeFile(join(folder, 'own.json'), JSON.stringify({ ...defaultMethod, rules }));
});

afterAll(() => rm(folder, { recursive: true }));

/** Bundles the command as `npm run build` does, into another place. */
async function bundle(file: string): Promise<void> {
  const configuration = configurations.find(({ input }) => input === 'src/cli.ts');
  if (!configuration) throw new Error('rollup.config.mjs has no entry for src/cli.ts');
  const { output, ...input } = configuration;
  const made = await rollup({ ...input, input: `${root}src/cli.ts` });
  await made.write({ ...output, file });
  await made.close();
}

/** Runs the command as a terminal would. */
function spawned(args: readonly string[], input = ''): Promise<Ran> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [command, ...args], { cwd: folder });
    let [output, errors] = ['', ''];
    child.stdout.on('data', (chunk: Buffer) => (output += chunk.toString()));
    child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()));
    child.on('error', reject);
    child.on('close', (code) => resolve({ code: code ?? -1, output, errors }));
    child.stdin.end(input);
  });
}

/** What a shell leaves in a file: `weekwright … > file`. */
async function redirected(line: string, name: string): Promise<string> {
  const file = await open(join(folder, name), 'w');
  const code = await new Promise((resolve, reject) => {
    const stdio = ['ignore', file.fd, 'inherit'] as const;
    const child = spawn(process.execPath, [command, ...line.split(' ')], { cwd: folder, stdio: [...stdio] });
    child.on('error', reject);
    child.on('close', resolve);
  });
  await file.close();
  expect(code).toBe(0);
  return readFile(join(folder, name), 'utf8');
}

describe('weekwright as a process', () => {
  it('plans a week', async () => {
    const line = 'plan --hours 4 --phase build --level developing --event half-marathon';
    const { code, output, errors } = await spawned(line.split(' '));
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(/^Four hours in build: 75 minutes of strength, as /);
  });

  it('lays the week on days', async () => {
    const { code, output, errors } = await spawned(['plan', '--days', '60,0,45,60,0,90,120']);
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(/^Tuesday {4}– +day off$/m);
    expect(output).toContain('\nThis week costs 2; no week costs less.\n');
  });

  it('makes running concrete, and knows what day it is', async () => {
    const line = 'running --race 10k=45:00 --race-date 2020-02-29';
    const { code, output, errors } = await spawned(line.split(' '));
    expect([code, errors]).toEqual([0, '']);
    const days = Number(/^- The race was ([\d,]+) days ago/m.exec(output)?.[1]?.replace(',', ''));
    const since = (Date.now() - Date.UTC(2020, 1, 29)) / 86_400_000;
    // Where it runs it may be tomorrow already, or yesterday still.
    expect(Math.abs(days - since)).toBeLessThan(1.6);
    // 2700 × 2.10975^1.06: Riegel 1981.
    expect(output).toMatch(/^half marathon .* 1:39:17 /m);
  });

  it('fills strength sessions', async () => {
    const { code, output, errors } = await spawned('strength --equipment none --lang de'.split(' '));
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(/^Schwerer: Einheiten von \d+ Minuten und \d+ Minuten\.$/m);
  });

  it('holds the week against what is known, and has no plan where the answers say stop', async () => {
    const made = await spawned('checks --hours 4 --hours-before 3 --answers easy-only'.split(' '));
    expect([made.code, made.errors]).toEqual([0, '']);
    expect(made.output).toContain(
      '\n- Hours against the weeks before: worth a look. 4 h after 3 h a week: 33.3% more.\n',
    );
    const stopped = await spawned('checks --answers symptoms'.split(' '));
    expect([stopped.code, stopped.output]).toEqual([2, '']);
    expect(stopped.errors).toMatch(/^No plan: Do not train now\. [^\n]*\n$/);
  });

  it('writes a calendar into a file, stamped with the moment, that other programs read', async () => {
    const before = Math.floor(Date.now() / 1000);
    const line = 'calendar --hours 4 --days 60,0,45,60,0,90,120 --week-of 2027-01-13 --at 18:00 --lang de';
    const text = await redirected(line, 'week.ics');
    const events = readByIcalJs(text);
    expect(events.map(({ start }) => start.slice(0, 10))).toContain('2027-01-11');
    expect(events).toEqual(readByNodeIcal(text));
    const stamp = /^DTSTAMP:(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\r$/m.exec(text)?.slice(1).map(Number) ?? [];
    const [year = 0, month = 0, day, ...time] = stamp;
    const seconds = Date.UTC(year, month - 1, day, ...time) / 1000;
    expect(seconds).toBeGreaterThanOrEqual(before);
    expect(seconds).toBeLessThanOrEqual(Date.now() / 1000);
  });

  it('writes a table into a file', async () => {
    const text = await redirected('table --hours 4 --date 2027-04-11 --weeks 8', 'season.csv');
    const [head, ...rows] = csvParseRows(text);
    expect(head?.slice(0, 2)).toEqual(['Week', 'From']);
    expect(rows.map((row) => row[1])).toContain('2027-04-05');
  });

  it('leaves nothing on standard output where no file can be made', async () => {
    const { code, output, errors } = await spawned(['calendar', '--week-of', '2027-02-30', '--lang', 'de']);
    expect([code, output]).toEqual([2, '']);
    expect(errors).toMatch(/^--week-of ist "2027-02-30"; erlaubt: ein Tag des Kalenders [^\n]*\n$/);
  });

  it('says what everything rests on', async () => {
    const { code, output, errors } = await spawned(['basis', '--method', 'own.json']);
    expect([code, errors]).toEqual([0, '']);
    expect(output).toMatch(/^Numbers and rules of this method: \d+ published, /);
  });

  it('ends with 2 and a message on the error stream where an option is wrong', async () => {
    const { code, output, errors } = await spawned(['plan', '--hours', '25']);
    expect({ code, output, errors }).toEqual({ code: 2, output: '', errors: '--hours is 25; allowed: 0.5 to 20.\n' });
  });

  it("reads a coach's method with formulas of its own", async () => {
    const { code, output } = await spawned(['plan', '--method', 'own.json']);
    expect(code).toBe(0);
    expect(output).toContain('Strength is held at 60 minutes: 12 minutes moved to slow running.');
  });

  it('reads a roster from standard input and keeps sound and faulty lines apart', async () => {
    const { code, output, errors } = await spawned(['plan', '--roster', '-', '--json'], 'name,hours\na,4\nb,0\n');
    expect(code).toBe(1);
    expect(JSON.parse(output)).toMatchObject({ name: 'a', rounded: { strength: 75 } });
    expect(errors).toBe('Line 3 (b): hours is 0; allowed: 0.5 to 20.\n');
  });

  it('tells a missing file and a folder', async () => {
    expect((await spawned(['plan', '--method', 'none.json'])).errors).toMatch(/\(there is no such file\)\.\n$/);
    expect((await spawned(['plan', '--roster', '.'])).errors).toMatch(/\(it is a folder\)\.\n$/);
  });

  it('gives the version of the package', async () => {
    expect((await spawned(['--version'])).output).toBe(`${packageFile.version}\n`);
  });

  it('survives a reader that has seen enough', async () => {
    const roster = `name,hours\n${'a,4\n'.repeat(2000)}`;
    const ended = new Promise<{ code: number | null; errors: string }>((resolve) => {
      const child = spawn(process.execPath, [command, 'plan', '--roster', '-'], { cwd: folder });
      let errors = '';
      child.stderr.on('data', (chunk: Buffer) => (errors += chunk.toString()));
      child.stdout.once('data', () => child.stdout.destroy());
      child.on('close', (code) => resolve({ code, errors }));
      child.stdin.end(roster);
    });
    expect(await ended).toEqual({ code: 0, errors: '' });
  });
});
