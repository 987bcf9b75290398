import { describe, expect, test } from 'vitest';
import type { CheckResult } from '../../../../src/plan/checks/document.js';
import type { CheckLevel } from '../../../../src/training/checks/check-levels.js';
import { checksHeadline } from '../../../../src/words/checks/checks-headline.js';
import { checkedPlan } from '../../../reference/checks/checks-door.js';
import { planner } from '../planned.js';
import { english, german } from '../sheet/languages.js';

const { method } = planner;
const [any] = checkedPlan({ hours: 4 }).checks;
if (!any) throw new Error('no check was made');

const checks = (levels: Readonly<Record<string, CheckLevel | null>>): CheckResult[] =>
  Object.entries(levels).map(([id, level]) => ({ ...any, id, level }));

describe('checksHeadline(words, method, checks)', () => {
  test.each<[string, Readonly<Record<string, CheckLevel | null>>, string, string]>([
    [
      'what calls for caution comes first, then what is worth a look',
      { 'hard-minutes': 'look', activity: 'in-line', 'youth-hours': 'caution', 'rest-days': 'caution' },
      'Caution: “Hours under 18” and “Days of rest”. Worth a look: “Hard share of running minutes”. In line: 1 of 4 checks.',
      'Vorsicht: „Stunden unter 18“ und „Ruhetage“. Einen Blick wert: „Harter Anteil der Laufminuten“. Im Rahmen: 1 von 4 Prüfungen.',
    ],
    [
      'what is not known does not count',
      { activity: 'in-line', load: null, monotony: null },
      'In line: 1 of 1 check.',
      'Im Rahmen: 1 von 1 Prüfung.',
    ],
    [
      'all in line',
      { activity: 'in-line', load: 'in-line' },
      'In line: 2 of 2 checks.',
      'Im Rahmen: 2 von 2 Prüfungen.',
    ],
    ['nothing known', { load: null }, 'In line: 0 of 0 checks.', 'Im Rahmen: 0 von 0 Prüfungen.'],
    ['a check of another method', { other: 'look' }, 'Worth a look: “other”. In line: 0 of 1 check.', ''],
  ])('%s', (_, levels, inEnglish, inGerman) => {
    expect(checksHeadline(english, method, checks(levels))).toBe(inEnglish);
    if (inGerman !== '') expect(checksHeadline(german, method, checks(levels))).toBe(inGerman);
  });
});
