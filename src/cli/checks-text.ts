import type { CheckResult, PlanLoad, PlanWeek } from '../plan.js';
import { screen } from '../training/checks/screening.js';
import { checkGroupIds } from '../training/method/check-rules.js';
import type { Method } from '../training/method/document.js';
import { checkLines, unknownLines, type CheckLines } from '../words/checks/check-lines.js';
import { checksHeadline } from '../words/checks/checks-headline.js';
import { loadRows } from '../words/checks/load-rows.js';
import { screeningLines } from '../words/checks/screening-text.js';
import { headed } from '../words/joined.js';
import { dayName } from '../words/week/day-name.js';
import { cautionsOfAge } from '../words/usual-cautions.js';
import type { Words } from '../words/words.js';
import type { OfRunner } from './checks-options.js';
import { listed, page, under } from './paragraphs.js';
import { reasonText } from './reason-text.js';
import { textTable } from './text-table.js';
import { conflictParagraphs } from './week-text.js';

interface Made extends OfRunner {
  readonly week: PlanWeek | null;
  readonly load: PlanLoad;
  readonly checks: readonly CheckResult[];
}

/** Checks as a page of text: the answer, every check, how hard the week is, what each check rests on, the advice. */
export function checksText(words: Words, method: Method, made: Made): string {
  const { week, load, checks } = made;
  const known = checks.filter(({ level }) => level !== null);
  const lines = (list: readonly CheckResult[]): readonly CheckLines[] =>
    list.map((check) => checkLines(words, { method, load }, check));
  return page([
    checksHeadline(words, method, checks),
    ...cautionsOfAge(words, method, made.age).map((text) => words.say('planner.caution', { text })),
    ...conflictParagraphs(words, method, week),
    ...checkGroupIds.map((group) =>
      listed(words.say(`check-group.${group}`), lines(known.filter((each) => each.group === group)).map(found(words))),
    ),
    unknown(words, method, made),
    under(words.say('checks.box.load'), [loadTable(words, load), words.say('season-reason.load')].join('\n')),
    dayTable(words, load),
    words.say('basis.title'),
    ...lines(known).map(basisOf(words)),
    advice(words, method, made),
    words.say('caution.short'),
  ]);
}

/** How a check came out, where it would be in line, and what would bring it there. */
const found =
  (words: Words) =>
  ({ name, level, says, range, change }: CheckLines): string =>
    [
      headed(words, name, `${level}. ${says}`),
      `${words.capital(range)}.`,
      ...(change === null ? [] : [words.say('checks.change', { change })]),
    ].join('\n');

/** What would have to be told, and which checks would follow from it. */
function unknown(words: Words, method: Method, { load, checks }: Made): string {
  const waiting = checks.filter(({ level }) => level === null);
  const items = unknownLines(words, { method, load }, waiting).map(
    ({ says, names }) => `${says} (${words.list(names)})`,
  );
  return listed(words.say('checks.unknown'), items);
}

function loadTable(words: Words, load: PlanLoad): string {
  const heading = (key: string): string => words.say(`checks.load.${key}`);
  const hasOwn = load.own.load !== null;
  const ofOwn = (text: string): readonly string[] => (hasOwn ? [text] : []);
  const rows = loadRows(words, load).map(({ name, value, own, how }) => [name, value, ...ofOwn(own), how]);
  const headings = [heading('number'), heading('this'), ...ofOwn(heading('own')), heading('about')];
  return textTable([headings, ...rows], ['left', 'right', ...(hasOwn ? ['right' as const] : []), 'left']);
}

function dayTable(words: Words, { days }: PlanLoad): string {
  if (days === null) return '';
  const rows = days.map((load, day) => [dayName(words, day), words.number(load)]);
  return under(words.say('checks.load.days'), textTable(rows, ['left', 'right']));
}

/** What a check rests on, and what that does not say. */
const basisOf =
  (words: Words) =>
  ({ name, reason, notSaid }: CheckLines): string =>
    [
      reasonText({ ...reason, text: headed(words, name, reason.text) }),
      headed(words, words.say('checks.not'), notSaid),
    ].join('\n');

/** What the answers lead to, where there are any. */
function advice(words: Words, method: Method, { answers }: OfRunner): string {
  if (answers.length === 0) return '';
  return listed(words.say('screening.title'), screeningLines(words, method, screen(answers)));
}
