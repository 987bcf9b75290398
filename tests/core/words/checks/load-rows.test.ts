import { describe, expect, test } from 'vitest';
import printed from '../../../../shared/checks/load.json';
import { effortsOf } from '../../../../src/training/load/efforts-of.js';
import { loadSpread } from '../../../../src/training/load/load-spread.js';
import type { PlanLoad } from '../../../../src/plan/checks/document.js';
import { loadRows } from '../../../../src/words/checks/load-rows.js';
import { planner } from '../planned.js';
import { english, german } from '../sheet/languages.js';

const noOwn: PlanLoad['own'] = { load: null, monotony: null, strain: null, dayWeeks: 0 };

const loadOf = (days: readonly number[] | null, own = noOwn): PlanLoad => ({
  efforts: effortsOf(planner.method),
  week: days ? days.reduce((sum, load) => sum + load, 0) : 1234,
  days,
  spread: days && loadSpread(days),
  own,
});

const daily = printed.foster.cases.flatMap((each) =>
  'daily' in each.in && each.in.daily ? [{ ...each, days: each.in.daily }] : [],
);
const whole = (value: number | null | undefined, words: 'en' | 'de'): string =>
  Math.round(value ?? NaN).toLocaleString(words);
const tenth = (value: number | null | undefined): string => (Math.round((value ?? NaN) * 10) / 10).toLocaleString('en');

describe('loadRows(words, load)', () => {
  test('has cases to go by', () => {
    expect(daily.length).toBeGreaterThanOrEqual(4);
  });

  // Foster 1998, worked out in shared/checks/load.json; of a week without any spread there is no monotony.
  test.each(daily.filter(({ out }) => out.monotonyPop !== null))('$days', ({ days, out }) => {
    const rows = loadRows(english, loadOf(days));
    expect(rows.map(({ name, value }) => [name, value])).toEqual([
      ['Load of the week', whole(out.weekly, 'en')],
      ['Mean of a day', whole(out.meanDaily, 'en')],
      ['Standard deviation', whole(out.sdPop, 'en')],
      ['Monotony', tenth(out.monotonyPop)],
      ['Strain', whole(out.strainPop, 'en')],
    ]);
    // The sample form stands beside the other.
    expect(rows[2]?.how).toBe(`of the seven days as all there are; as a sample it is ${whole(out.sdSample, 'en')}`);
    expect(rows[3]?.how).toBe(`mean over deviation; as a sample it is ${tenth(out.monotonySample)}`);
    const inGerman = loadRows(german, loadOf(days));
    expect(inGerman[2]?.how).toContain(whole(out.sdSample, 'de'));
    expect(inGerman.map(({ value }) => value)).toEqual(
      rows.map(({ value }) => value.replace(/[.,]/g, (mark) => (mark === ',' ? '.' : ','))),
    );
  });

  test('has no number where all days are alike', () => {
    const rows = loadRows(english, loadOf([250, 250, 250, 250, 250, 250, 250]));
    expect(rows.map(({ value }) => value)).toEqual(['1,750', '250', '0', 'no value', 'no value']);
    expect(rows[3]?.how).toBe('mean over deviation; as a sample it is no value');
  });

  test('has the week alone while it lies on no days', () => {
    expect(loadRows(english, loadOf(null))).toEqual([
      { name: 'Load of the week', value: '1,234', own: '', how: 'effort times minutes of all sessions' },
    ]);
  });

  test('has the own weeks beside it, as far as they were told', () => {
    const days = [300, 0, 420, 240, 0, 600, 360];
    const own = (known: Partial<PlanLoad['own']>): readonly string[] =>
      loadRows(english, loadOf(days, { ...noOwn, ...known })).map((row) => row.own);
    expect(own({})).toEqual(['', '', '', '', '']);
    expect(own({ load: 1100 })).toEqual(['1,100', '', '', '', '']);
    expect(own({ load: 1100, monotony: 1.546, strain: 1650.6 })).toEqual(['1,100', '', '', '1.5', '1,651']);
    expect(loadRows(german, loadOf(null, { ...noOwn, load: 1100 }))[0]?.own).toBe('1.100');
  });
});
