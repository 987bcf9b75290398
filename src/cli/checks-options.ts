import type { Problem } from '../problem.js';
import { answerIds, type AnswerId } from '../training/checks/screening.js';
import { duplicate, repeated } from '../training/method/duplicates.js';
import { categoryIds } from '../training/method/ids.js';
import { dayName } from '../words/week/day-name.js';
import { numberOrText } from './number-or-text.js';
import { asOption, asText, fieldsOf, list, partsOf, type OptionFields } from './option-fields.js';
import type { Asked } from './plan-answer.js';
import type { Session } from './session.js';

/** `slow=3`: how hard a kind of session feels. */
const effortsIn = (text: string): readonly (readonly [kind: string, effort: number | string])[] =>
  text.split(',').map((entry) => {
    const [kind = '', effort = ''] = partsOf(entry.trim(), '=', 2);
    return [kind.trim(), numberOrText(effort.trim())];
  });

/** `1200;300,0,450,0,300,0,600`: weeks between semicolons. */
const weeksIn = (text: string): readonly (readonly unknown[])[] =>
  text.split(';').map((week) => week.split(',').map((load) => numberOrText(load.trim())));

const checksFields: OptionFields = {
  age: { field: 'age', read: numberOrText },
  'hours-before': { field: 'hoursBefore', read: numberOrText },
  'longest-run': { field: 'longestRun', read: numberOrText },
  loads: { field: 'weeks', read: weeksIn },
  effort: { field: 'efforts', read: (text) => Object.fromEntries(effortsIn(text)) },
  answers: { field: 'answers', read: list(asText) },
};

/** What the options of a command line tell for checks. */
export const checksAsked = (session: Pick<Session, 'options' | 'speech'>): Asked => ({
  request: { checks: fieldsOf(session, checksFields) },
  problems: doubleEfforts(session),
  asOption: (problem) => named(problem, session),
});

/** What is told of a runner, and concerns no check. */
export interface OfRunner {
  /** In years; null where it is not told. */
  readonly age: number | null;
  readonly answers: readonly AnswerId[];
}

/** What a command line tells of the runner, once its request was accepted. */
export function ofRunner({ options }: Pick<Session, 'options'>): OfRunner {
  const age = numberOrText(options.age ?? '');
  const given = options.answers?.split(',').map((each) => each.trim()) ?? [];
  return { age: typeof age === 'number' ? age : null, answers: answerIds.filter((id) => given.includes(id)) };
}

/** An object of kinds would keep the last of two without a word. */
function doubleEfforts({ options: { effort } }: Pick<Session, 'options'>): Problem[] {
  const kinds = effort === undefined ? [] : effortsIn(effort).map(([kind]) => kind);
  return repeated(kinds).map((index) => duplicate('--effort', kinds[index]));
}

function named(problem: Problem, session: Pick<Session, 'options' | 'speech'>): Problem {
  const { path, code } = problem;
  const [, kind] = /^checks\.efforts\.(.*)$/s.exec(path) ?? [];
  if (kind !== undefined && code === 'unknown-field')
    return { path: '--effort', value: kind, code: 'not-one-of', allowed: { choices: categoryIds } };
  if (kind !== undefined) return { ...problem, path: `--effort (${kind})` };
  const [, week, load] = /^checks\.weeks\[(\d+)\](?:\[(\d+)\])?$/.exec(path) ?? [];
  if (week !== undefined) return { ...problem, path: `--loads (${placeOf(session, Number(week), load)})` };
  return asOption(problem, 'checks', checksFields);
}

/** Which week, and which day of it where it was told day by day; nobody counts them from 0. */
function placeOf(
  { options, speech: { words, texts } }: Pick<Session, 'options' | 'speech'>,
  index: number,
  load: string | undefined,
): string {
  const isByDay = weeksIn(options.loads ?? '')[index]?.length !== 1;
  const week = index + 1;
  if (load === undefined || !isByDay) return texts.say('part.week', { week });
  return texts.say('part.day', { week, day: dayName(words, Number(load)) });
}
