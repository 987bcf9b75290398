import type { Plan } from '../../src/plan/document.js';
import { categoryIds } from '../../src/training/method/ids.js';
import type { CategoryId } from '../../src/training/method/ids.js';
import { optionsByEvenLists } from './even-session-reference.js';
import { sessionLimits } from './session-limits.js';
import type { Lists } from './session-reference.js';
import type { ReferenceMethod, WeekAnswer } from './week-reference.js';

/** Every way in which a plan is not the reference's answer, one line each; none where they agree. */
export function differences(plan: Plan, answer: WeekAnswer, limits = sessionLimits): readonly string[] {
  return [
    ...differ('split', plan.split.id, answer.split),
    ...differ('total', plan.total.rounded, answer.totalRounded),
    ...categoryIds.flatMap((category) => differencesIn(category, plan, { ...answer, limits })),
    ...differ('rules', actedOf(plan), answer.moves.map(({ rule }) => rule).join(' ')),
    ...differ('says', noticeRulesOf(plan), answer.notices.join(' ')),
    ...differ('notices', spokenOf(plan), answer.notices.join(' ')),
    ...differ('every second week', everySecondWeekOf(plan), expectedEverySecondWeek({ ...answer, limits })),
    ...movesIn(plan, answer),
  ];
}

/** An answer with the session limits of the method that it is for. */
type LimitedAnswer = WeekAnswer & Pick<ReferenceMethod, 'limits'>;

function differencesIn(category: CategoryId, plan: Plan, answer: LimitedAnswer): readonly string[] {
  return [
    ...differAbout(`minutes of ${category}`, plan.minutes[category], answer.parts[category] / answer.partsPerMinute),
    ...differ(`rounded ${category}`, plan.rounded[category], answer.rounded[category]),
    ...differ(`options of ${category}`, written(plan.options[category]), expectedOptions(category, answer)),
  ];
}

/** Options are worked out once for each amount: whole enumerations ask for the same ones over and over. */
const knownOptions = new Map<string, string>();

function expectedOptions(category: CategoryId, answer: LimitedAnswer): string {
  const { partsPerMinute } = answer;
  const parts = answer.parts[category];
  const rounded = answer.rounded[category];
  const { shortest, typical, longest } = answer.limits[category];
  const key = [parts / partsPerMinute, rounded, shortest, typical, longest].join(' ');
  const known = knownOptions.get(key);
  if (known !== undefined) return known;
  const options = written(optionsByEvenLists({ parts, partsPerMinute, rounded, shortest, typical, longest }));
  knownOptions.set(key, options);
  return options;
}

/** What each acting rule found and left: minutes of the category it acts on. */
function movesIn(plan: Plan, answer: WeekAnswer): readonly string[] {
  return answer.moves.flatMap(({ rule, on, to, before, after }) => {
    const outcome = plan.rules.find(({ id }) => id === rule);
    return [
      ...differ(`${rule} on`, outcome?.on, `${on}_minutes`),
      ...differ(`${rule} to`, outcome?.to, `${to}_minutes`),
      ...differAbout(`${rule} before`, outcome?.before ?? NaN, before / answer.partsPerMinute),
      ...differAbout(`${rule} after`, outcome?.after ?? NaN, after / answer.partsPerMinute),
    ];
  });
}

function differ(what: string, found: string | number | null | undefined, expected: string | number): readonly string[] {
  return found === expected ? [] : [`${what}: ${String(found)}, not ${String(expected)}`];
}

/** The engine counts in binary fractions, the reference in whole numbers: equal to 1 in 10⁹ is equal. */
function differAbout(what: string, found: number, expected: number): readonly string[] {
  const isEqual = Math.abs(found - expected) <= 1e-9 * Math.max(1, expected);
  return isEqual ? [] : [`${what}: ${String(found)}, not ${String(expected)}`];
}

const written = (options: Lists): string => options.map((list) => list.join('+')).join(' ');

const isActing = ({ acted }: { readonly acted: boolean }): boolean => acted;

function actedOf({ rules }: Plan): string {
  return rules
    .filter(({ kind }) => kind === 'change')
    .filter(isActing)
    .map(({ id }) => id)
    .join(' ');
}

function noticeRulesOf({ rules }: Plan): string {
  return rules
    .filter(({ kind }) => kind === 'notice')
    .filter(isActing)
    .map(({ id }) => id)
    .join(' ');
}

/** The notices that come from a notice rule, as the reader of the plan gets them. */
function spokenOf({ notices, rules }: Plan): string {
  const speakers = new Set(rules.filter(({ kind }) => kind === 'notice').map(({ id }) => id));
  return notices
    .filter(({ code }) => code === 'rule')
    .flatMap(({ rule }) => (rule !== undefined && speakers.has(rule) ? [rule] : []))
    .join(' ');
}

/** Offers of a session every second week, such as `cross 40`. */
function everySecondWeekOf({ notices }: Plan): string {
  return notices
    .filter(({ code }) => code === 'every-second-week')
    .map(({ category, values }) => `${category ?? 'no category'} ${String(values['session'])}`)
    .join(' ');
}

/** A session every second week has the minutes of two weeks, to the nearest 5, and at least those of the shortest. */
function expectedEverySecondWeek({ moves, everySecondWeek, partsPerMinute, limits }: LimitedAnswer): string {
  const offers = moves.filter(({ on }) => everySecondWeek.includes(on));
  return offers
    .map(({ on, before }) => {
      const twoWeeks = 5 * Math.floor((4 * before + 5 * partsPerMinute) / (10 * partsPerMinute));
      return `${on} ${String(Math.max(twoWeeks, limits[on].shortest))}`;
    })
    .join(' ');
}
