import type { PlanWeek } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from '../words/category-name.js';
import { joined } from '../words/joined.js';
import { clashLine } from '../words/week/clash-line.js';
import { dayName } from '../words/week/day-name.js';
import { dayTotalLine } from '../words/week/day-total-line.js';
import { daysWithBoth, orderAdvice } from '../words/week/order-advice.js';
import { wayOutLine } from '../words/week/way-out-line.js';
import { weekVerdict } from '../words/week/week-verdict.js';
import { wishLine } from '../words/week/wish-line.js';
import type { Words } from '../words/words.js';
import { listed, under } from './paragraphs.js';
import { textTable } from './text-table.js';

/** The week day by day, what it costs and why; or what cannot hold together, and what would help. */
export function weekParagraphs(words: Words, method: Method, week: PlanWeek): readonly string[] {
  const verdict = weekVerdict(words, week);
  const { conflict, days } = week;
  if (conflict) return conflictParagraphs(words, method, week);
  return [
    ...(days ? [`${words.say('week.title')}\n${dayTable(words, method, { days, wishes: week.wishes })}`] : []),
    under(verdict, listed('', clashes(words, method, week))),
    ...(daysWithBoth(week).length > 0 ? [orderAdvice(words, method).text] : []),
  ];
}

/** Which wishes for days cannot hold together, and what would help; nothing where the week could be laid. */
export function conflictParagraphs(words: Words, method: Method, week: PlanWeek | null): readonly string[] {
  if (!week?.conflict) return [];
  const wishes = week.conflict.wishes.map((wish) => words.capital(wishLine(words, method, wish)));
  return [listed(weekVerdict(words, week), wishes), waysOut(words, method, week.conflict)];
}

function dayTable(
  words: Words,
  method: Method,
  { days, wishes }: { days: NonNullable<PlanWeek['days']>; wishes: PlanWeek['wishes'] },
): string {
  const rows = days.map((sessions, day) => {
    const names = sessions.map(({ category, minutes }) =>
      words.say('week.session', { kind: categoryName(words, method, category), minutes: words.minutesShort(minutes) }),
    );
    const used = sessions.reduce((sum, { minutes }) => sum + minutes, 0);
    const total = dayTotalLine(words, used, wishes.days[day] ?? 0);
    return [dayName(words, day), words.capital(joined(words, names, 'comma')) || '–', total];
  });
  return textTable(rows, ['left', 'left', 'right']);
}

function clashes(words: Words, method: Method, week: PlanWeek): string[] {
  return week.clashes.map((clash) => {
    const { text, status } = clashLine(words, method, clash);
    const cost = words.say('week.cost', { cost: words.number(clash.cost) });
    return `${text} (${joined(words, [cost, status ?? ''], 'semicolon')})`;
  });
}

function waysOut(words: Words, method: Method, conflict: NonNullable<PlanWeek['conflict']>): string {
  if (conflict.waysOut.length === 0) return words.say('week.ways-out.none');
  const lines = conflict.waysOut.map((way) => {
    const changes = words.capital(wayOutLine(words, method, way));
    const key = way.cost === 0 ? 'week.way-out.free' : 'week.way-out';
    return words.say(key, { changes, cost: words.number(way.cost) });
  });
  return listed(words.say('week.ways-out', { count: lines.length }), lines);
}
