import { describe, expect, test } from 'vitest';
import germanTexts from '../../../../shared/locales/de.json';
import englishTexts from '../../../../shared/locales/en.json';
import defaultMethod from '../../../../shared/methods/default.json';
import { makeChecks } from '../../../../src/plan/checks/make-checks.js';
import type { ChecksWishes } from '../../../../src/plan/checks/wishes.js';
import type { Plan, PlanRequest } from '../../../../src/plan/document.js';
import { levelIds, phaseIds } from '../../../../src/training/method/ids.js';
import type { CheckLevel } from '../../../../src/training/checks/check-levels.js';
import type { Message } from '../../../../src/words/phrases.js';
import { checkLines } from '../../../../src/words/checks/check-lines.js';
import { checksHeadline } from '../../../../src/words/checks/checks-headline.js';
import { loadRows } from '../../../../src/words/checks/load-rows.js';
import { planned, planner } from '../planned.js';
import { languages, leaksIn } from '../sheet/languages.js';

const { method } = planner;
const days = [60, 0, 45, 60, 0, 90, 120];
const untold: ChecksWishes = { age: null, hoursBefore: null, longestRun: null, weeks: [], efforts: {} };
const told: ChecksWishes = {
  ...untold,
  hoursBefore: 3.25,
  longestRun: 35,
  weeks: [[300, 0, 300, 0, 200, 0, 500], [900]],
};
const equal: ChecksWishes = { ...told, weeks: [[100, 100, 100, 100, 100, 100, 100]] };
const ages = [null, 5, 17, 18, 64, 65, 110];

const requests: readonly PlanRequest[] = [
  {},
  { hours: 0.5 },
  { hours: 4, week: { days } },
  { hours: 20, strengthCap: 90 },
  { hours: 6, season: { weeks: 12, date: '2027-04-11', mostHours: 9, rise: 0.3 } },
];

/** Every number of a text, written as English writes it in either language. */
function numbersIn(text: string, language: string): readonly string[] {
  const [thousands, decimal] = language === 'en' ? [',', '.'] : ['.', ','];
  const pattern = new RegExp(`\\d{1,3}(?:\\${thousands}\\d{3})+(?:\\${decimal}\\d+)?|\\d+(?:\\${decimal}\\d+)?`, 'g');
  const found = text.match(pattern) ?? [];
  return found.map((each) => each.replaceAll(thousands, '').replace(decimal, '.')).sort();
}

interface Seen {
  readonly id: string;
  readonly level: CheckLevel | null;
}

const alreadyRead = new Set<string>();

/** The same text need not be read twice. */
function expectNoLeaks(texts: readonly string[], keys: ReadonlySet<string>): void {
  for (const text of texts) {
    if (alreadyRead.has(text)) continue;
    alreadyRead.add(text);
    expect([text, leaksIn(text, keys)]).toEqual([text, []]);
  }
}

/** All texts of all checks of a plan must be whole, and their numbers the same in both languages. */
function expectWhole(plan: Plan, wishes: ChecksWishes): readonly Seen[] {
  const { checks, load } = makeChecks(plan, wishes, method);
  for (const check of checks) {
    const numbers = languages.map(([words, keys]) => {
      const { reason, change, name, level, says, range, notSaid } = checkLines(words, { method, load }, check);
      const worked = [says, range, ...(change === null ? [] : [change])];
      expectNoLeaks([name, level, notSaid, reason.text, reason.status, ...worked], keys);
      return worked.map((text) => numbersIn(text, words.language));
    });
    expect([check.id, numbers[1]]).toEqual([check.id, numbers[0]]);
  }
  for (const [words, keys] of languages) {
    const rows = load ? loadRows(words, load).flatMap(({ name, value, how }) => [name, value, how]) : [];
    expectNoLeaks([checksHeadline(words, method, checks), ...rows], keys);
  }
  return checks.map(({ id, level }) => ({ id, level }));
}

describe('texts of checks', () => {
  const seen: Seen[] = [];

  test.each(levelIds.flatMap((level) => phaseIds.map((phase) => [level, phase] as const)))(
    'have no gap for a %s runner in %s, at every age, in both languages',
    (level, phase) => {
      for (const request of requests) {
        const { plan } = planned({ ...request, level, phase });
        for (const age of ages)
          for (const wishes of [untold, told, equal]) seen.push(...expectWhole(plan, { ...wishes, age }));
      }
    },
  );

  test('were those of every check, known and not known', () => {
    const ids = defaultMethod.checks.list.map(({ id }) => id);
    expect([...new Set(seen.flatMap(({ id, level }) => (level === null ? [] : [id])))].sort()).toEqual([...ids].sort());
    for (const wanted of ['in-line', 'look', 'caution', null] as const)
      expect([wanted, seen.some(({ level }) => level === wanted)]).toEqual([wanted, true]);
  });
});

describe('numbers in the texts of checks', () => {
  const begins = /^(?:check|advice|screening|differs|basis)[-.\w]*\./;
  const texts = (message: Message | undefined): string =>
    typeof message === 'string' ? message : Object.values(message ?? {}).join(' ');
  const inGerman: Readonly<Record<string, Message>> = germanTexts;
  const keys = Object.entries<Message>(englishTexts).filter(([key]) => begins.test(key));

  test('are many', () => {
    expect(keys.filter(([, message]) => numbersIn(texts(message), 'en').length > 0).length).toBeGreaterThan(30);
  });

  // One language may name a number twice where the other says "above": none may be lost, and none added.
  test.each(keys)('of %s are the same in German', (key, message) => {
    const [inEnglish, german] = [numbersIn(texts(message), 'en'), numbersIn(texts(inGerman[key]), 'de')];
    expect([...new Set(german)]).toEqual([...new Set(inEnglish)]);
  });
});
