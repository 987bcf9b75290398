import type { Words } from '../words/words.js';
import { daysAs, daysIn, withDayName } from './days.js';
import { numberOrText } from './number-or-text.js';
import { requestFields } from './options.js';
import type { Session } from './session.js';

const fieldsByOption = Object.entries(requestFields);

/** The request that the options of a command line make. */
export function requestOf({ options }: Pick<Session, 'options'>): Readonly<Record<string, unknown>> {
  const values: Readonly<Record<string, string | undefined>> = options;
  const given = fieldsByOption.flatMap(([option, field]) => {
    const text = values[option];
    return text === undefined ? [] : [[field, isNumeric(field) ? numberOrText(text) : text] as const];
  });
  const week = options.days === undefined ? {} : { week: daysIn(options.days, ',') };
  return { ...Object.fromEntries(given), ...week };
}

const isNumeric = (field: string): boolean => field === 'hours' || field === 'strengthCap';

/** What a field of the request is called on the command line. */
export function optionOf(words: Words, path: string): string {
  const option = fieldsByOption.find(([, field]) => field === path)?.[0];
  return withDayName(words, option === undefined ? daysAs('--days', path) : `--${option}`);
}
