import type { Plan } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { headline, headlineText } from '../words/headline.js';
import { kindRows } from '../words/kind-rows.js';
import { noticesWithCauses } from '../words/notices-with-causes.js';
import { ruleLines, type PlanLine } from '../words/plan-lines.js';
import type { Words } from '../words/words.js';
import { listed, page } from './paragraphs.js';
import { textTable } from './text-table.js';
import { weekParagraphs } from './week-text.js';

/** A plan as a page of text: the answer, what it answers, the table of the week, rules, notices, the days, cautions. */
export function planText(words: Words, method: Method, plan: Plan): string {
  return page([
    headlineText(headline(words, method, plan)),
    inputLines(words, plan),
    splitLine(words, method, plan),
    weekTable(words, method, plan),
    section(words.say('planner.rules'), ruleLines(words, method, plan)) || words.say('planner.no-rules'),
    section(words.say('planner.notices'), noticesWithCauses(words, method, plan).map(cautioned(words))),
    ...(plan.week ? weekParagraphs(words, method, plan.week) : []),
    words.say('caution.short'),
  ]);
}

function inputLines(words: Words, { inputs }: Plan): string {
  const { hours, phase, level, event, strengthCap } = inputs;
  const rows = [
    [words.say('input.hours'), words.hours(hours)],
    [words.say('input.phase'), words.say(`phase.${phase}`)],
    [words.say('input.level'), words.say(`level.${level}`)],
    [words.say('input.event'), words.say(`event.${event}`)],
    [words.say('input.strength-cap'), words.minutes(strengthCap)],
  ];
  return textTable(rows, ['left', 'left']);
}

function splitLine(words: Words, { splits }: Method, plan: Plan): string {
  const split = splits.find(({ id }) => id === plan.split.id);
  const name = split ? words.text(split.name) : plan.split.id;
  return `${words.say('planner.split', { name })} (${words.say(`status.${plan.split.status}`)})`;
}

function weekTable(words: Words, method: Method, plan: Plan): string {
  const headings = ['kind', 'share', 'exact', 'planned', 'sessions'].map((column) => words.say(`table.${column}`));
  const kinds = kindRows(words, method, plan).map(({ name, share, exact, planned, sessions }) => [
    name,
    share,
    exact,
    planned,
    sessions,
  ]);
  const { exact, rounded } = plan.total;
  const total = [words.say('table.total'), words.share(1), words.minutesShort(exact), words.minutesShort(rounded), ''];
  return textTable([headings, ...kinds, total], ['left', 'right', 'right', 'right', 'left']);
}

const section = (heading: string, lines: readonly PlanLine[]): string =>
  listed(
    heading,
    lines.map(({ text, status }) => (status === null ? text : `${text} (${status})`)),
  );

const cautioned =
  (words: Words) =>
  (line: PlanLine): PlanLine =>
    line.level === 'caution' ? { ...line, text: words.say('planner.caution', { text: line.text }) } : line;
