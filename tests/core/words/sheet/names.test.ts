import { describe, expect, it } from 'vitest';
import { rowGroups } from '../../../../src/plan/scenarios/rows.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { eventIds, levelIds, phaseIds } from '../../../../src/training/method/ids.js';
import { splitQuantity } from '../../../../src/training/method/names.js';
import { rowName } from '../../../../src/words/sheet/row-name.js';
import { plainName, scenarioName } from '../../../../src/words/sheet/scenario-name.js';
import { switchName } from '../../../../src/words/sheet/switch-name.js';
import { english, german, languages, leaksIn } from './languages.js';

const inputs = { hours: 4, phase: 'build', level: 'developing', event: 'half-marathon', strengthCap: 120 } as const;
const own = { id: 'own', name: 'hard minutes', formula: '1', status: 'assumption' } as const;
const method = { ...builtInMethod, quantities: [own] };

describe('scenarioName(words, scenario)', () => {
  it.each([
    ['', inputs, '4 h, build', '4 h, Aufbauphase'],
    [
      '',
      { ...inputs, hours: 4.5, phase: 'off-season' as const },
      '4 h 30 min, off season',
      '4 h 30 min, Zwischensaison',
    ],
    ['After the holidays', inputs, 'After the holidays', 'After the holidays'],
    ['{hours}', inputs, '{hours}', '{hours}'],
  ])('"%s": "%s" and "%s"', (name, set, inEnglish, inGerman) => {
    expect(scenarioName(english, { name, inputs: set })).toBe(inEnglish);
    expect(scenarioName(german, { name, inputs: set })).toBe(inGerman);
  });

  it('has words for every phase', () => {
    for (const [words, keys] of languages)
      for (const phase of phaseIds) expect(leaksIn(plainName(words, { ...inputs, phase }), keys)).toEqual([]);
    expect([levelIds.length, eventIds.length]).toEqual([4, 6]);
  });
});

describe('rowName(words, method, row)', () => {
  const rows = rowGroups(method).flatMap((group) => group.rows);
  const names = (words: typeof english, ids: readonly string[]): readonly string[] =>
    rows.filter(({ id }) => ids.includes(id)).map((row) => rowName(words, method, row));

  it('says the kind of training alone where the group says the rest', () => {
    const ids = ['slow_rounded', 'total_rounded', 'sessions slow', 'slow_minutes', 'running_minutes', 'slow_share'];
    expect(names(english, ids)).toEqual([
      'Slow running',
      'All together',
      'Slow running',
      'Slow running',
      'Running',
      'Slow running',
    ]);
    expect(names(german, ids)[0]).toBe('Langsames Laufen');
  });

  it('says what else a row is', () => {
    expect(names(english, ['rule strength-cap', 'own', 'weekly_hours', 'slow_shortest'])).toEqual([
      'Hard minutes',
      'Strength cap',
      'Hours a week',
      'Shortest session of slow running',
    ]);
  });

  it('has words for every row in both languages, and tells the rows of a group apart', () => {
    expect(rows.length).toBeGreaterThan(80);
    for (const [words, keys] of languages)
      for (const group of rowGroups(method)) {
        const said = group.rows.map((row) => rowName(words, method, row));
        expect(said.flatMap((text) => leaksIn(text, keys))).toEqual([]);
        expect(said.filter((text) => /_|^[a-zäöü]/.test(text))).toEqual([]);
        expect(new Set(said).size).toBe(said.length);
      }
  });

  it('shows what the method does not know as it is', () => {
    expect(rowName(english, method, { kind: 'rule', id: 'rule gone', rule: 'gone' })).toBe('gone');
  });
});

describe('switchName(words, method, id)', () => {
  it.each([
    ['strength-cap', '“Strength cap”', '„Obergrenze Kraft“'],
    ['few-hours', '“Few hours”', '„Wenige Stunden“'],
    ['split_taper', 'split “taper”', 'Aufteilung „Tapering“'],
    ['gone', 'gone', 'gone'],
  ])('%s is "%s" and "%s"', (id, inEnglish, inGerman) => {
    expect([switchName(english, method, id), switchName(german, method, id)]).toEqual([inEnglish, inGerman]);
  });

  it('has words for every rule and split', () => {
    const ids = [...method.rules.map(({ id }) => id), ...method.splits.map(({ id }) => splitQuantity(id))];
    for (const [words, keys] of languages) {
      const said = ids.map((id) => switchName(words, method, id));
      expect(said.flatMap((text) => leaksIn(text, keys))).toEqual([]);
      expect(said.filter((text) => ids.includes(text))).toEqual([]);
    }
  });
});
