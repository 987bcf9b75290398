import { describe, expect, test } from 'vitest';
import { runningNoticeCodes, type RunningNotice } from '../../../../src/plan/running/document.js';
import { runningNoticeLine } from '../../../../src/words/running/running-notice-line.js';
import { runningOf } from '../../../reference/running/running-door.js';
import { english, german, languages, leaksIn } from '../sheet/languages.js';

const running = runningOf({});
const inMiles = runningOf({ unit: 'mile' });

const note = (code: RunningNotice['code'], values: RunningNotice['values']): RunningNotice => ({
  code,
  level: 'note',
  values,
});

// Values as in tests/core/plan/running/notices.test.ts.
const cases: readonly (readonly [RunningNotice, string, string])[] = [
  [
    note('old-race', { days: 365, limit: 180 }),
    'The race was 365 days ago: after more than 180 days its paces may fit no longer.',
    'Der Wettkampf ist 365 Tage her: Nach mehr als 180 Tagen passt sein Tempo vielleicht nicht mehr.',
  ],
  [
    note('race-outside', { seconds: 14_400, least: 210, most: 13_800 }),
    'A race of 4:00:00 is outside 3:30 to 3:50:00, for which times over other distances were found: take paces and times with care.',
    'Ein Wettkampf von 4:00:00 liegt außerhalb von 3:30 bis 3:50:00, wofür Zeiten über andere Strecken gefunden wurden: Tempo und Zeiten sind mit Vorsicht zu nehmen.',
  ],
  [
    // 130 metres a minute are 461.5 seconds a kilometre.
    note('slow-pace', { pace: 60_000 / 130 }),
    'Slow running comes out slower than 7:42 a kilometre, where the equation ends and walking begins: go by feel, with walks between.',
    'Langsames Laufen wird langsamer als 7:42 je Kilometer, wo die Gleichung endet und Gehen beginnt: besser nach Gefühl, mit Gehpausen.',
  ],
  [
    note('heart-below-estimate', { beats: 155, estimate: 180 }),
    'A highest heart rate of 155 is far below the 180 estimated from the age: was it really the highest?',
    'Ein höchster Puls von 155 liegt weit unter den 180, die aus dem Alter folgen: War das wirklich der höchste?',
  ],
  [
    { code: 'under-18', level: 'caution', values: { age: 17 } },
    'Caution: under 18, plan with a coach trained for young athletes; these numbers are made for adults.',
    'Vorsicht: Unter 18 gehört eine für junge Sportlerinnen und Sportler ausgebildete Person dazu; diese Zahlen sind für Erwachsene gemacht.',
  ],
];

describe('runningNoticeLine(words, running, notice)', () => {
  test.each(cases)('%j', (given, expected, other) => {
    expect(runningNoticeLine(english, running, given)).toBe(expected);
    expect(runningNoticeLine(german, running, given)).toBe(other);
  });

  test('has a case above for every code', () => {
    const covered = new Set(cases.map(([{ code }]) => code));
    expect(runningNoticeCodes.filter((code) => !covered.has(code))).toEqual([]);
  });

  test('tells a pace in miles where paces are in miles', () => {
    // 461.5 × 1.609344 = 742.8.
    expect(runningNoticeLine(english, inMiles, note('slow-pace', { pace: 60_000 / 130 }))).toContain(
      'than 12:23 a mile,',
    );
  });

  test('leaves no gap in anything that the planner says', () => {
    const race = { metres: 30_000, seconds: 14_400, date: '2026-01-01' };
    const made = runningOf({ race, today: '2027-01-01', age: 10, highestHeart: 100 });
    expect(made.notices.map(({ code }) => code).sort()).toEqual([...runningNoticeCodes].sort());
    for (const notice of made.notices)
      for (const [words, keys] of languages) expect(leaksIn(runningNoticeLine(words, made, notice), keys)).toEqual([]);
  });
});
