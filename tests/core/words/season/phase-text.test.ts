import { expect, test } from 'vitest';
import type { SeasonWeek } from '../../../../src/plan/season/document.js';
import { phaseText } from '../../../../src/words/season/phase-text.js';
import { english, german, planned } from './seasons.js';

const week = (number: number, ...season: Parameters<typeof planned>): SeasonWeek => {
  const found = planned(...season).season.weeks[number - 1];
  if (!found) throw new Error('there is no such week');
  return found;
};
const events = [
  { date: '2027-01-16', event: '10k' },
  { date: '2027-01-17', event: '5k' },
] as const;

// Every fourth week is easier; the event is in the 16th.
test.each<[string, SeasonWeek, string, string]>([
  ['of an ordinary week', week(1), 'base', 'Grundlagen\u00ADphase'],
  ['of an easier week', week(8), 'build (easier)', 'Aufbauphase (leichter)'],
  [
    'of an easier week with two events',
    week(4, { events }),
    'base (easier, 10 km, 5 km)',
    'Grundlagen\u00ADphase (leichter, 10 km, 5 km)',
  ],
  ['of the week of the event', week(16), 'taper (half marathon)', 'Tapering (Halbmarathon)'],
  [
    'of the last week of a season without one',
    week(16, {}, 'none'),
    'taper (end of the season)',
    'Tapering (Ende der Saison)',
  ],
  ['of a week after it', week(17), 'recovery', 'Erholung'],
])('phaseText(words, week) %s', (_, given, expected, other) => {
  expect([phaseText(english, given), phaseText(german, given)]).toEqual([expected, other]);
});
