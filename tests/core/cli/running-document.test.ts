import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import type { PlanRunning } from '../../../src/plan.js';
import { uptakeByPrint } from '../../reference/running/race-reference.js';
import { paceAt } from './by-print.js';
import { ran } from './fake-io.js';
import { cellsOf, jsonOf, pageOf, paragraph } from './pages.js';

const tenKilometres = 'running --race 10k=45:00';

describe("weekwright running by a coach's method", () => {
  it('has the shares, the effort and the words of a section of its own', async () => {
    const { running } = defaultMethod;
    const kinds = running.kinds.map((kind) =>
      kind.id === 'slow'
        ? { ...kind, uptake: { least: 0.5, most: 0.6 }, effort: { least: 1, most: 2 }, reason: 'As the club has it.' }
        : kind,
    );
    const own = { ...defaultMethod, id: 'own', running: { ...running, kinds } };
    const world = { files: { 'own.json': JSON.stringify(own) } };
    const output = await pageOf(`${tenKilometres} --method own.json`, world);
    const uptake = uptakeByPrint(10_000, 2700);
    expect(cellsOf(paragraph(output, /^How each/)[2]).slice(0, 3)).toEqual([
      'Slow running',
      `${paceAt(uptake, 0.6)}–${paceAt(uptake, 0.5)}`,
      '1 to 2',
    ]);
    expect(output).toContain('\nAs the club has it. (assumption, adjustable)\n');
    const document = (await jsonOf(`${tenKilometres} --method own.json`, world)) as { method: { id: string } };
    expect(document.method.id).toBe('own');
  });
});

describe('weekwright running --json', () => {
  it('is a document of its own kind, the same in every language', async () => {
    const document = (await jsonOf(tenKilometres)) as PlanRunning & { readonly inputs: object };
    expect(document).toMatchObject({
      format: 'weekwright-running',
      version: 1,
      method: { id: 'weekwright' },
      inputs: { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 },
      basis: { from: 'race', metres: 10_000, seconds: 2700 },
    });
    expect(document.basis?.uptake).toBeCloseTo(uptakeByPrint(10_000, 2700), 9);
    expect(await ran([...tenKilometres.split(' '), '--json', '--lang', 'de'])).toEqual(
      await ran([...tenKilometres.split(' '), '--json']),
    );
  });
});

describe('weekwright running --help', () => {
  it('lists every option with what is allowed', async () => {
    const output = await pageOf('running --help');
    for (const [synopsis, says] of [
      ['--hours HOURS', 'hours a week, 0\\.5 to 20; 4 where left out'],
      ['--phase PHASE', 'off-season, base'],
      ['--days MINUTES,…', 'minutes available'],
      ['--race DISTANCE=TIME', '.*10k=45:00, half-marathon=1:39:17, 1500m=5:10'],
      ['--race-date DATE', 'the day of the race'],
      ['--threshold-pace TIME', '.*; 2:30 to 12:00 a kilometre'],
      ['--unit UNIT', 'km, mile; km where left out'],
      ['--age YEARS', 'in years, 5 to 110'],
      ['--highest-heart BEATS', '.*100 to 240 beats'],
      ['--resting-heart BEATS', '.*25 to 120 beats'],
      ['--weight KILOGRAMS', 'in kilograms, 20 to 300'],
      ['--method FILE', ''],
      ['--json', ''],
      ['--lang LANGUAGE', ''],
      ['--help', ''],
      ['--version', ''],
    ] as const)
      expect(output).toMatch(new RegExp(`^ {2}${synopsis} +${says}`, 'm'));
    expect(output).not.toMatch(/--(?:roster|equipment|weeks|lifted)\b/);
    expect(output).not.toMatch(/option\.|[{}]/);
  });

  it('is there in German', async () => {
    const output = await pageOf('running --help --lang de');
    expect(output).toMatch(/^ {2}--race-date DATE +der Tag des Wettkampfs$/m);
    expect(output).toMatch(/^ {2}--weight KILOGRAMS +in Kilogramm, 20 bis 300/m);
    expect(output).not.toMatch(/option\.|[{}]/);
  });
});
