import type { Plan, PlanSeason, SeasonNotice, SeasonWeek } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { categoryIds } from '../training/method/ids.js';
import { categoryTitle } from '../words/category-name.js';
import { headed, joined } from '../words/joined.js';
import { datesOf } from '../words/season/dates.js';
import { hoursReason } from '../words/season/hours-reason.js';
import { waysOutLine } from '../words/season/season-change-line.js';
import { phaseText } from '../words/season/phase-text.js';
import { seasonHeadline } from '../words/season/season-headline.js';
import { seasonNoticeLine } from '../words/season/season-notice-line.js';
import { seasonReasons } from '../words/season/season-reasons.js';
import type { Words } from '../words/words.js';
import { listed, page } from './paragraphs.js';
import { reasonText } from './reason-text.js';
import { textTable } from './text-table.js';

type Carried = Pick<Plan, 'inputs'> & { readonly season: PlanSeason };

/** A season as a page of text: the answer, a table of its weeks, why each has its hours, what to mind, what it rests on. */
export function seasonText(words: Words, method: Method, { inputs, season }: Carried): string {
  return page([
    seasonHeadline(words, inputs, season),
    listed('', season.notices.map(noticeLine(words, { method, season }))),
    weekTable(words, method, season),
    listed(words.say('season.why-hours'), season.weeks.map(whyLine(words, season))),
    listed(words.say('planner.notices'), weekNotices(words, { method, season })),
    ...seasonReasons(words, method).map(reasonText),
    words.say('caution.short'),
  ]);
}

const noticeLine =
  (words: Words, of: { readonly method: Method; readonly season: PlanSeason }) =>
  (notice: SeasonNotice): string => {
    const text = seasonNoticeLine(words, of.method, notice);
    const said = notice.level === 'caution' ? words.say('planner.caution', { text }) : text;
    return [said, waysOutLine(words, of, notice.waysOut)].filter((part) => part !== '').join(' ');
  };

function weekTable(words: Words, method: Method, { weeks }: PlanSeason): string {
  const headings = [
    ...(['week', 'from', 'phase', 'hours'] as const).map((column) => words.say(`season.table.${column}`)),
    ...categoryIds.map((id) => categoryTitle(words, method, id)),
    ...(['load', 'longest-run'] as const).map((column) => words.say(`season.table.${column}`)),
  ];
  const rows = weeks.map((week) => [
    words.number(week.number),
    datesOf(words).short(week.start),
    phaseText(words, week),
    words.hoursShort(week.hours),
    ...categoryIds.map((id) => words.number(week.rounded[id])),
    words.number(week.load),
    words.minutesShort(week.longestRun),
  ]);
  const right = categoryIds.map(() => 'right' as const);
  return textTable([headings, ...rows], ['right', 'right', 'left', 'right', ...right, 'right', 'right']);
}

const whyLine =
  (words: Words, season: PlanSeason) =>
  (week: SeasonWeek): string =>
    headed(
      words,
      joined(words, [words.say('season.week-number', { number: week.number }), words.hoursShort(week.hours)], 'comma'),
      hoursReason(words, season, week),
    );

function weekNotices(words: Words, of: { readonly method: Method; readonly season: PlanSeason }): string[] {
  const line = noticeLine(words, of);
  return of.season.weeks.flatMap(({ number, notices }) =>
    notices.map((notice) => headed(words, words.say('season.week-number', { number }), line(notice))),
  );
}
