import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { createPlanner } from '../../../src/plan.js';
import { derivationLines } from '../../../src/words/derivation-lines.js';
import { formulaWords } from '../../../src/words/formula-words.js';
import { loadWords } from '../../../src/words/load-words.js';
import { german, planned, planner } from './planned.js';

const words = await loadWords('en');

const { method } = planner;

describe('formulaWords(words, context, formula)', () => {
  it.each([
    ['weekly_minutes * strength_share', 'minutes a week × share of strength'],
    ['running_minutes / weekly_minutes - 0.25', 'minutes of running ÷ minutes a week − 0.25'],
    ['weekly_hours >= 6 and value != 0', 'hours a week ≥ 6 and the value so far ≠ 0'],
    ['min(strength_cap, value+1e3)', 'the least of (strength cap, the value so far + 1,000)'],
    ['season_phase == phase_off_season', 'season phase = off season'],
    ['weekly_hours>6 ? 1 : 2', 'hours a week > 6: then 1, otherwise 2'],
    ['not (a_b > .5)', 'not (a_b > 0.5)'],
    ['round( value )', 'rounded (the value so far)'],
    ['-weekly_hours*-2-1', '−hours a week × −2 − 1'],
    ['', ''],
  ])('%s is "%s"', (formula, expected) => {
    expect(formulaWords(words, { method }, formula)).toBe(expected);
  });

  it('names what `value` and `other` stand for, where they stand for quantities', () => {
    const context = { method, value: 'strength_minutes', other: 'slow_minutes' };
    expect(formulaWords(words, context, 'value + other')).toBe('minutes of strength + minutes of slow running');
  });

  it('loses nothing that it does not understand', () => {
    expect(formulaWords(words, { method }, 'a & b → "c"')).toBe('a & b → "c"');
  });
});

describe('derivationLines(words, planned, quantity)', () => {
  const eightHours = planned({ hours: 8, phase: 'build', level: 'developing' });

  it('asks the question that the derivation answers', () => {
    const title = (quantity: string): string | undefined => derivationLines(words, eightHours, quantity)?.title;
    expect(title('tempo_minutes')).toBe('Why 72 minutes of tempo running?');
    expect(title('slow_rounded')).toBe('Why 170 minutes of slow running, in whole steps?');
    expect(title('strength_share')).toBe('Why 30% for strength?');
    expect(title('running_share')).toBe('Share of running: why 60%?');
    expect(title('season_phase')).toBe('Season phase: why build?');
    expect(derivationLines(german, eightHours, 'tempo_minutes')?.title).toBe('Warum 72 Minuten Tempolauf?');
  });

  it('shows the formula and what it reads, each with its standing', () => {
    const lines = derivationLines(words, eightHours, 'strength_minutes');
    expect(lines?.formula).toBe('minutes a week × share of strength');
    expect(lines?.readings).toEqual([
      { quantity: 'weekly_minutes', name: 'minutes a week', value: '480 minutes', status: null, reason: null },
      {
        quantity: 'strength_share',
        name: 'share of strength',
        value: '30%',
        status: 'common practice, no published source',
        reason: 'In season, slow running and strength commonly get the same share, and intervals the smallest.',
      },
    ]);
    expect(lines?.status).toBe('follows from the values it is worked out with');
  });

  it('shows each rule with before and after, and whether it acted', () => {
    const rules = derivationLines(words, eightHours, 'strength_minutes')?.rules ?? [];
    expect(rules.map(({ rule, acted, text }) => [rule, acted, text])).toEqual([
      ['strength-cap', true, 'Strength cap: 144 minutes → 120 minutes'],
      ['strength-upkeep', false, 'Strength kept up: did not act'],
      ['strength-too-small', false, 'Strength too short: did not act'],
    ]);
    expect(rules[0]?.when).toBe('If hours a week > 6 and the value so far > strength cap');
    expect(rules[0]?.formula).toBe('New value of minutes of strength: strength cap');
    expect(rules[0]?.status).toBe('common practice, no published source');
    expect(rules[0]?.reason).toMatch(/^90 to 120 minutes of strength/);
  });

  it('tells a rule from the side of what it gives to', () => {
    const [first] = derivationLines(words, eightHours, 'slow_minutes')?.rules ?? [];
    expect(first?.text).toBe('Strength cap: 144 minutes → 168 minutes');
    expect(first?.when).toBe('If hours a week > 6 and minutes of strength > strength cap');
  });

  it('tells a switched-off rule', async () => {
    const rules = defaultMethod.rules.map((rule) => (rule.id === 'strength-cap' ? { ...rule, enabled: false } : rule));
    const own = await createPlanner({ ...defaultMethod, rules });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    const lines = derivationLines(words, planned({ hours: 8 }, own.value), 'strength_minutes');
    expect(lines?.rules[0]?.text).toBe('Strength cap: switched off');
  });

  it('says where a number comes from that no formula gives', () => {
    const origin = (quantity: string): string | null | undefined =>
      derivationLines(words, eightHours, quantity)?.origin;
    expect(origin('weekly_hours')).toBe('Set by hand, from 30 minutes to 20 hours.');
    expect(origin('athlete_level')).toBe('Chosen by hand.');
    expect(origin('slow_shortest')).toBe('A number of the method.');
    expect(origin('slow_rounded')).toMatch(/^All kinds are rounded together to steps of 5 minutes/);
    expect(origin('slow_minutes')).toBeNull();
  });

  it('names status and sources', () => {
    const taper = planned({ hours: 4, phase: 'taper' });
    const lines = derivationLines(words, taper, 'slow_share');
    expect(lines?.status).toBe('assumption, adjustable');
    expect(lines?.sources).toEqual(['C11', 'C13', 'A25']);
    expect(derivationLines(words, taper, 'slow_rounded')?.status).toBe('published');
    expect(derivationLines(words, taper, 'weekly_hours')?.status).toBeNull();
  });

  it('says why there is no value', async () => {
    const quantities = [
      { id: 'first', name: 'First', formula: 'sqrt(-weekly_hours)', status: 'assumption' },
      { id: 'second', name: 'Second', formula: 'first + 1', status: 'assumption' },
    ];
    const own = await createPlanner({ ...defaultMethod, quantities });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    const lines = derivationLines(words, planned({ hours: 4 }, own.value), 'second');
    expect(lines?.title).toBe('Second: why no value?');
    expect(lines?.failure).toBe('It needs First, and there “sqrt” has no result for these values.');
    expect(lines?.readings[0]?.value).toBe('no value');
  });

  it('is null for a quantity that the plan does not have', () => {
    expect(derivationLines(words, eightHours, 'nothing')).toBeNull();
    expect(derivationLines(words, eightHours, 'constructor')).toBeNull();
  });

  it('has no gap in any derivation of any language', () => {
    for (const each of [words, german])
      for (const request of [{ hours: 8 }, { hours: 1, phase: 'taper' }] as const) {
        const subject = planned(request);
        const lines = Object.keys(subject.plan.derivations).map((id) => derivationLines(each, subject, id));
        expect(JSON.stringify(lines)).not.toMatch(/\{\w+\}|NaN|undefined|"(reason|status|derivation)\.[a-z]/);
      }
  });
});
