import { describe, expect, test } from 'vitest';
import { seasonNoticeCodes, type SeasonNotice } from '../../../../src/plan/season/document.js';
import { seasonNoticeLine } from '../../../../src/words/season/season-notice-line.js';
import { planner } from '../planned.js';
import { leaksIn, languages, plain } from '../sheet/languages.js';
import { english, german, planned } from './seasons.js';

const { method } = planner;

const notice = (
  code: SeasonNotice['code'],
  values: SeasonNotice['values'] = {},
  others: Partial<SeasonNotice> = {},
): SeasonNotice => ({ code, level: 'note', values, waysOut: [], ...others });

const taper = { weeks: 2, least: 0.41, most: 0.6 } as const;

const cases: readonly (readonly [SeasonNotice, string, string])[] = [
  [
    notice('too-few-weeks', { weeks: 4, missing: 1, asked: 5 }),
    'The phases and the taper ask for 5 weeks; the season has 4. What comes first is cut short.',
    'Die Phasen und das Tapering brauchen 5 Wochen; die Saison hat 4. Was zuerst kommt, wird gekürzt.',
  ],
  [
    notice('spare-weeks', { spare: 1 }),
    'The season has one week more than its phases ask for; the first phase has it.',
    'Die Saison hat eine Woche mehr, als ihre Phasen brauchen; die erste Phase bekommt sie.',
  ],
  [
    notice('spare-weeks', { spare: 6 }),
    'The season has 6 weeks more than its phases ask for; the first phase has them.',
    'Die Saison hat 6 Wochen mehr, als ihre Phasen brauchen; die erste Phase bekommt sie.',
  ],
  [
    notice('start-above-most', { hours: 7, most: 5 }),
    '7 hours a week now is more than the 5 hours that are wanted at most: the season begins at 5 hours.',
    '7 Stunden pro Woche jetzt sind mehr als die 5 Stunden, die höchstens gewünscht sind: Die Saison beginnt bei 5 Stunden.',
  ],
  [
    notice('most-not-reached', { most: 8, reached: 6.5, rise: 0.1 }),
    '8 hours a week is not reached: rising by 10% at most, the season comes to 6 hours 30 minutes.',
    '8 Stunden pro Woche werden nicht erreicht: Mit höchstens 10 % mehr pro Woche kommt die Saison auf 6 Stunden 30 Minuten.',
  ],
  [
    notice('fast-rise', { rise: 0.25, look: 0.2 }),
    'Rising by 25% a week is worth a look: in one study, rises above 20% went with more injuries in the first three weeks. No limit is proven, ten per cent neither.',
    '25 % mehr pro Woche sind einen Blick wert: In einer Studie gingen Steigerungen über 20 % in den ersten drei Wochen mit mehr Verletzungen einher. Keine Grenze ist belegt, auch zehn Prozent nicht.',
  ],
  [
    notice('other-taper', { taperWeeks: 3, taperDrop: 0.35, ...taper }),
    'Reviews found most gain in a taper of 2 weeks that loses 41% to 60%. This one: 3 weeks, 35%.',
    'Übersichten fanden den größten Gewinn bei einem Tapering von 2 Wochen, das 41 % bis 60 % verliert. Hier: 3 Wochen, 35 %.',
  ],
  [
    notice('other-taper', { taperWeeks: 1, taperDrop: 0.5, ...taper }),
    'Reviews found most gain in a taper of 2 weeks that loses 41% to 60%. This one: one week, 50%.',
    'Übersichten fanden den größten Gewinn bei einem Tapering von 2 Wochen, das 41 % bis 60 % verliert. Hier: eine Woche, 50 %.',
  ],
  [
    notice('after-break', { weeks: 1 }),
    'The first week after a break has less. How much less is an assumption. Run slowly first, stop at pain, and see a professional if illness or injury made the break.',
    'Die erste Woche nach einer Pause hat weniger. Wie viel weniger, ist eine Annahme. Erst langsam laufen, bei Schmerz aufhören, und nach Krankheit oder Verletzung fachlichen Rat holen.',
  ],
  [
    notice('after-break', { weeks: 3 }),
    'The first 3 weeks after a break have less. How much less is an assumption. Run slowly first, stop at pain, and see a professional if illness or injury made the break.',
    'Die ersten 3 Wochen nach einer Pause haben weniger. Wie viel weniger, ist eine Annahme. Erst langsam laufen, bei Schmerz aufhören, und nach Krankheit oder Verletzung fachlichen Rat holen.',
  ],
  [
    notice('ill'),
    'After illness, begin again only once all signs are gone; after fever, chest pain or a trouble of the heart, see a doctor first.',
    'Nach einer Krankheit erst wieder beginnen, wenn alle Zeichen weg sind; nach Fieber, Brustschmerz oder Herzbeschwerden zuerst zum Arzt.',
  ],
  [
    notice('steep-week', { hours: 5.25, base: 4.25, rise: 0.235, allowed: 0.1 }),
    '5 hours 15 minutes is 23.5% more than 4 hours 15 minutes, the highest of the four weeks before; the ceiling is 10%.',
    '5 Stunden 15 Minuten sind 23,5 % mehr als 4 Stunden 15 Minuten, das Höchste der vier Wochen davor; die Obergrenze ist 10 %.',
  ],
  [
    notice('steep-week', { hours: 2, base: 0, rise: 0, allowed: 0.1 }),
    '2 hours after weeks without training: there is nothing to rise from.',
    '2 Stunden nach Wochen ohne Training: Da ist nichts, wovon es steigen könnte.',
  ],
  [
    notice('above-most', { hours: 6.25, most: 6 }),
    '6 hours 15 minutes is above the 6 hours a week that are wanted at most.',
    '6 Stunden 15 Minuten liegen über den 6 Stunden pro Woche, die höchstens gewünscht sind.',
  ],
  [
    notice('longer-run', { run: 40, before: 32, limit: 35.2, share: 1.25, most: 0.1 }),
    'The longest run has 40 minutes, 25% more than the 32 minutes of the four weeks before; from 10% on one large study saw more injuries.',
    'Der längste Lauf hat 40 Minuten, 25 % mehr als die 32 Minuten der vier Wochen davor; ab 10 % sah eine große Studie mehr Verletzungen.',
  ],
  [
    notice('shorter-runs', { before: 20, runs: 3 }, { category: 'slow' }),
    'Slow running: cut into shorter runs than usual, so that none is much longer than the 20 minutes of the four weeks before.',
    'Langsames Laufen: in kürzere Läufe geteilt als sonst, damit keiner viel länger ist als die 20 Minuten der vier Wochen davor.',
  ],
  [
    notice('event-outside', { count: 1 }),
    'An event lies outside the season and is left out.',
    'Ein Wettkampf liegt außerhalb der Saison und bleibt weg.',
  ],
  [
    notice('event-outside', { count: 2 }),
    '2 events lie outside the season and are left out.',
    '2 Wettkämpfe liegen außerhalb der Saison und bleiben weg.',
  ],
  [
    notice('by-hand-outside', { count: 1 }),
    'A week set by hand lies outside the season and waits.',
    'Eine von Hand gesetzte Woche liegt außerhalb der Saison und wartet.',
  ],
  [
    notice('by-hand-outside', { count: 3 }),
    '3 weeks set by hand lie outside the season and wait.',
    '3 von Hand gesetzte Wochen liegen außerhalb der Saison und warten.',
  ],
  [
    notice('input-held', {}, { quantity: 'weekly_hours' }),
    'Hours a week is set by hand in the sheet: every week of the season has that value.',
    'Stunden pro Woche: in der Tabelle von Hand gesetzt, jede Woche der Saison hat diesen Wert.',
  ],
  [
    notice('week-failed'),
    'The method gives no minutes for this week.',
    'Die Methode ergibt für diese Woche keine Minuten.',
  ],
  // What the plan of a week says, in its own words.
  [
    notice('every-second-week', { moved: 18, session: 35 }, { category: 'intervals' }),
    'Intervals can also stay, as one session of 35 minutes every second week.',
    'Intervalle: auch möglich als eine Einheit von 35 Minuten jede zweite Woche.',
  ],
];

describe('seasonNoticeLine(words, method, notice)', () => {
  test.each(cases)('%j', (given, expected, other) => {
    expect(seasonNoticeLine(english, method, given)).toBe(expected);
    expect(plain(seasonNoticeLine(german, method, given))).toBe(other);
  });

  test('has a case above for every code', () => {
    const covered = new Set(cases.map(([{ code }]) => code));
    expect(seasonNoticeCodes.filter((code) => !covered.has(code))).toEqual([]);
  });

  test('leaves no gap in anything that is said of crowded seasons', () => {
    const said = [
      planned({ weeks: 4, rise: 0.3, taperWeeks: 3, weeksOff: 5, longestRun: 20, mostHours: 14 }),
      planned({ events: [{ date: '2026-01-01', event: '5k' }], byHand: [{ start: '2026-01-01', hours: 3 }] }),
      planned({ hours: 1, mostHours: 12, byHand: [{ start: '2027-01-20', hours: 15, reason: 'ill' }] }),
      planned({
        byHand: [
          { start: '2027-01-20', hours: 0 },
          { start: '2027-02-03', hours: 2 },
        ],
      }),
    ].flatMap(({ season }) => [...season.notices, ...season.weeks.flatMap(({ notices }) => notices)]);
    expect(new Set(said.map(({ code }) => code)).size).toBeGreaterThan(10);
    for (const [words, keys] of languages)
      for (const each of said) expect(leaksIn(seasonNoticeLine(words, method, each), keys)).toEqual([]);
  });
});
