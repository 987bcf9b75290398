import type { Text } from '../training/method/ids.js';
import { createFormats, type Formats } from './formats.js';
import { createPhrases, type Messages, type Phrases, type Values } from './phrases.js';

/** All that is needed to say something in one language. */
export interface Words extends Formats, Phrases {
  /** BCP 47 tag, fit for a `lang` attribute. */
  readonly language: string;
  /** A coach's own words as they are (values filled in where given), or the text of the locales for a key. */
  readonly text: (text: Text, values?: Values) => string;
  /** "72 min" */
  readonly minutesShort: (value: number) => string;
  /** Hours and minutes in full: "4 hours", "4 hours 15 minutes", "30 minutes". */
  readonly hours: (value: number) => string;
  /** "4 h", "4 h 15 min", "30 min" */
  readonly hoursShort: (value: number) => string;
  /** Durations in minutes as a sum: "30 + 45"; equal ones together: "3 × 25". */
  readonly sessions: (minutes: readonly number[]) => string;
}

/**
 * Words of one language.
 *
 * @param language BCP 47 tag.
 * @param messages texts of that language; `fallback` stands in for what is missing there. A key that neither has is
 *   shown as it is, so that a gap is seen and nothing breaks.
 * @example createWords('en', english).minutes(72) // '72 minutes'
 */
export function createWords(language: string, messages: Messages, fallback: Messages = {}): Words {
  const { hoursLong, ...formats } = createFormats(language);
  const phrases = createPhrases({ language, messages: [messages, fallback], number: (value) => number(value) });
  // NaN and infinities have no place on a screen.
  const finite =
    (format: Format): Format =>
    (value) =>
      Number.isFinite(value) ? format(value) : phrases.say('value.none');
  const number: Words['number'] = (value, digits) => finite((known) => formats.number(known, digits))(value);
  const minutes = finite(formats.minutes);
  const minutesShort = finite((value) => phrases.say('unit.minutes-short', { count: formats.number(value, 1) }));
  const hoursAlone = (value: number): string => phrases.say('unit.hours-short', { count: value });
  return {
    ...formats,
    ...phrases,
    language,
    number,
    minutes,
    minutesShort,
    share: finite(formats.share),
    hours: finite((value) => joinHours(value, hoursLong, minutes)),
    hoursShort: finite((value) => joinHours(value, hoursAlone, minutesShort)),
    sessions: (durations) => sumOfSessions(durations, number),
    text: (text, values) => {
      if (typeof text !== 'string') return phrases.say(text.key, values);
      return values ? phrases.fill(text, values) : text;
    },
  };
}

type Format = (value: number) => string;

/** Works in tenths of a minute, so that 59.97 minutes become the next hour and not "60 minutes". */
function joinHours(value: number, hours: Format, minutes: Format): string {
  const tenths = Math.round(value * 600);
  const whole = Math.trunc(tenths / 600);
  const rest = (tenths - whole * 600) / 10;
  if (whole === 0) return minutes(rest);
  return rest === 0 ? hours(whole) : `${hours(whole)} ${minutes(rest)}`;
}

function sumOfSessions(durations: readonly number[], number: Format): string {
  const groups: { duration: number; count: number }[] = [];
  for (const duration of durations) {
    const last = groups.at(-1);
    if (last?.duration === duration) last.count += 1;
    else groups.push({ duration, count: 1 });
  }
  const group = (count: number, duration: number): string =>
    count === 1 ? number(duration) : `${number(count)} × ${number(duration)}`;
  return groups.map(({ count, duration }) => group(count, duration)).join(' + ');
}
