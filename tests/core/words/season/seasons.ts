import type { SeasonRequest } from '../../../../src/plan/season/wishes.js';
import type { EventId } from '../../../../src/training/method/ids.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { planWithSeason } from '../../../reference/season/season-door.js';

export const english = await loadWords('en');
export const german = await loadWords('de');

/** The season of tests/reference/season/worked-season.test.ts, which is worked out by hand: sixteen weeks from four hours. */
export const usual: SeasonRequest = { date: '2027-04-11', weeks: 16 };

/** The plan of a season from four hours to a half marathon, or to something else. */
export const planned = (season: SeasonRequest = {}, event: EventId = 'half-marathon') =>
  planWithSeason({
    ...{ hours: 4, phase: 'build', level: 'developing', event },
    season: { ...usual, ...season },
  });
