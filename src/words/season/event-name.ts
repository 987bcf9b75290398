import type { EventId } from '../../training/method/ids.js';
import type { Words } from '../words.js';

/** What there is on the day of an event; a season may lead to a day without a race. */
export const eventName = (words: Words, event: EventId): string =>
  words.say(event === 'none' ? 'season.end' : `event.${event}`);
