import { describe, expect, test } from 'vitest';
import { byCategory } from '../../../../src/training/method/ids.js';
import { builtInMethod } from '../../../../src/training/method/built-in.js';
import { matchSessions } from '../../../../src/training/record/match-sessions.js';
import { tallyWeek } from '../../../../src/training/record/week-tally.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { recordHeadline } from '../../../../src/words/record/record-headline.js';

const start = '2026-11-23';
const planned = [
  { category: 'slow', minutes: 45, date: null },
  { category: 'slow', minutes: 60, date: null },
  { category: 'strength', minutes: 30, date: null },
] as const;
const did = (category: 'slow' | 'strength' | 'cross', minutes: number) =>
  ({ date: start, category, minutes, effort: null }) as const;

describe('where a week stands', () => {
  test.each([
    [
      'en',
      [did('slow', 40)],
      'Nov 23 – 29, 2026: 1 of 3 sessions done, 40 of 135 minutes. Left: 60 minutes of slow running and 30 minutes of strength.',
    ],
    [
      'en',
      [did('slow', 40), did('slow', 70), did('strength', 30), did('cross', 20)],
      'Nov 23 – 29, 2026: 3 of 3 sessions done, 160 of 135 minutes. Nothing is left.',
    ],
    [
      'de',
      [did('slow', 60)],
      '23.–29. Nov. 2026: 1 von 3 Einheiten erledigt, 60 von 135 Minuten. Noch offen: 45 Minuten langsames Laufen und 30 Minuten Krafttraining.',
    ],
  ] as const)('%s, %#', async (language, done, sentence) => {
    const words = await loadWords(language);
    const tally = tallyWeek(matchSessions(planned, done));
    const told = recordHeadline(words, builtInMethod, { start, tally });
    expect(told.replaceAll(/[\u2009\u202F\u00A0]/g, ' ').replaceAll('\u00AD', '')).toBe(sentence);
  });

  test('with nothing planned', async () => {
    const none = { planned: 0, done: 0, left: 0, sessions: { planned: 0, done: 0, left: 0 } };
    const told = recordHeadline(await loadWords('en'), builtInMethod, { start, tally: byCategory(() => none) });
    expect(told).toMatch(/: 0 of 0 sessions done, 0 of 0 minutes\. Nothing is left\.$/);
  });
});
