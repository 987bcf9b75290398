import type { PlanSeason } from '../../plan/season/document.js';
import type { Method } from '../../training/method/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { categoryTitle } from '../category-name.js';
import { phaseText } from '../season/phase-text.js';
import { dayName } from '../week/day-name.js';
import type { Words } from '../words.js';
import { plainText } from './plain-text.js';
import type { WeekText } from './week-text.js';

/** A table in words: a title for every column, that of the row heads first. */
interface Table {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly { readonly head: string; readonly cells: readonly (string | number | null)[] }[];
}

/** The sessions of a week as a table; those for any day have no date. */
export function weekTable(words: Words, start: string, { when, sessions }: WeekText): Table {
  const column = (name: string): string => words.say(`handout.table.${name}`);
  return {
    caption: words.say('handout.week-of', { when }),
    head: ['date', 'day', 'what', 'minutes', 'effort', 'how'].map(column),
    rows: sessions.map(({ day, title, minutes, effort, how, sets }) => ({
      head: day === null ? '' : isoDate(knownDay(start) + day),
      cells: [
        day === null ? null : dayName(words, day),
        plainText(title),
        minutes,
        effort,
        plainText(sets.length > 0 ? sets.join('. ') : how),
      ],
    })),
  };
}

/** The weeks of a season as a table, minutes by kind. */
export function seasonTable(words: Words, method: Method, season: PlanSeason): Table {
  const column = (name: string): string => words.say(`season.table.${name}`);
  return {
    caption: words.say('season.title'),
    head: [
      ...['week', 'from', 'phase', 'hours'].map(column),
      ...categoryIds.map((id) => plainText(categoryTitle(words, method, id))),
      column('longest-run'),
    ],
    rows: season.weeks.map((week) => ({
      head: String(week.number),
      cells: [
        week.start,
        plainText(phaseText(words, week)),
        Math.round(week.hours * 100) / 100,
        ...categoryIds.map((id) => week.rounded[id]),
        week.longestRun,
      ],
    })),
  };
}
