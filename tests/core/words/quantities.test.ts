import { describe, expect, it } from 'vitest';
import { loadWords } from '../../../src/words/load-words.js';
import { choiceNames } from '../../../src/training/method/names.js';
import { quantityName, shortQuantityName } from '../../../src/words/quantity-names.js';
import { quantityUnit, quantityValue } from '../../../src/words/quantity-value.js';
import { german, planned, planner } from './planned.js';

const words = await loadWords('en');

const { method } = planner;

describe('quantityName(words, method, id)', () => {
  it.each([
    ['strength_minutes', 'minutes of strength', 'Minuten Krafttraining'],
    ['slow_share', 'share of slow running', 'Anteil langsames Laufen'],
    ['total_rounded', 'rounded minutes a week', 'gerundete Minuten pro Woche'],
    ['tempo_shortest', 'shortest session of tempo running', 'kürzeste Einheit Tempolauf'],
    [
      'off_season_slow_share',
      'share of slow running in the split “off season or new runner”',
      'Anteil langsames Laufen in der Aufteilung „Zwischensaison oder neu dabei“',
    ],
    ['split_taper', 'the split “taper” is used', 'die Aufteilung „Tapering“ gilt'],
    ['notice_few_hours', 'the rule “Few hours” has something to say', 'die Regel „Wenige Stunden“ hat etwas zu sagen'],
    ['event_half_marathon', 'half marathon', 'Halbmarathon'],
    [
      'upkeep_minutes',
      'minutes to which strength is held while it is only kept up',
      'Minuten, bei denen Kraft bleibt, solange sie nur erhalten wird',
    ],
    ['no_such_quantity', 'no_such_quantity', 'no_such_quantity'],
    ['constructor', 'constructor', 'constructor'],
  ])('%s is "%s" and "%s"', (id, english, other) => {
    expect(quantityName(words, method, id)).toBe(english);
    expect(quantityName(german, method, id)).toBe(other);
  });

  it('has words for every quantity of the built-in method and every choice, in both languages', () => {
    const { plan } = planned({});
    const ids = [...Object.keys(plan.derivations), ...Object.keys(choiceNames)];
    expect(ids.length).toBeGreaterThan(70);
    for (const each of [words, german]) {
      const names = ids.map((id) => quantityName(each, method, id));
      expect(names.filter((name, index) => name === ids[index] || /[{}_]/.test(name))).toEqual([]);
    }
  });

  it('tells all quantities apart', () => {
    const { plan } = planned({});
    for (const each of [words, german]) {
      const names = Object.keys(plan.derivations).map((id) => quantityName(each, method, id));
      expect(names.filter((name, index) => names.indexOf(name) < index)).toEqual([]);
    }
  });

  it("uses a coach's own quantity's name", () => {
    const quantities = [{ id: 'tempo_minutes_twice', name: 'Both', formula: '1', status: 'assumption' }] as const;
    expect(quantityName(words, { ...method, quantities }, 'tempo_minutes_twice')).toBe('Both');
  });
});

describe('shortQuantityName(words, method, id)', () => {
  it.each([
    ['strength_minutes', 'strength'],
    ['strength_share', 'share of strength'],
    ['weekly_minutes', 'minutes a week'],
  ])('%s is "%s"', (id, expected) => {
    expect(shortQuantityName(words, method, id)).toBe(expected);
  });
});

describe('quantityValue(words, method, { id, value })', () => {
  it.each([
    ['weekly_hours', 4.25, '4 hours 15 minutes'],
    ['strength_minutes', 72, '72 minutes'],
    ['strength_share', 0.3, '30%'],
    ['taper_slow_share', 0.45, '45%'],
    ['season_phase', 2, 'build'],
    ['athlete_level', 0, 'new'],
    ['target_event', 3, 'half marathon'],
    ['target_event', 2.5, '2.5'],
    ['split_taper', 0, 'no'],
    ['notice_few_hours', 1, 'yes'],
    ['slow_rounded', 70, '70 minutes'],
    ['upkeep_minutes', 70, '70 minutes'],
    ['strength_minutes', null, 'no value'],
  ])('%s, %s is "%s"', (id, value, expected) => {
    expect(quantityValue(words, method, { id, value })).toBe(expected);
  });

  it('knows the unit of every quantity of the built-in method', () => {
    const { plan } = planned({});
    const plainNumbers = Object.keys(plan.derivations).filter((id) => quantityUnit(method, id) === 'number');
    expect(plainNumbers).toEqual([]);
  });
});
