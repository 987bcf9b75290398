import { spawn } from 'node:child_process';
import { copyFile, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { rollup } from 'rollup';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import packageFile from '../../../package.json';
import configurations from '../../../rollup.config.mjs';
import defaultMethod from '../../../shared/methods/default.json';
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
