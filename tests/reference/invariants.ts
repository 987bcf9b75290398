import { noticeCodes } from '../../src/plan/document.js';
import type { Plan } from '../../src/plan/document.js';
import { categoryIds } from '../../src/training/method/ids.js';
import type { ByCategory } from '../../src/training/method/ids.js';
import { sessionLimits } from './session-limits.js';

/** What must hold of every plan by the built-in method; each sentence with its check. */
export const invariants: readonly (readonly [string, (plan: Plan) => boolean])[] = [
  ['the total is the hours asked for', ({ inputs, total }) => isAbout(total.exact, 60 * inputs.hours)],
  ['exact minutes add up to the week', ({ minutes, total }) => isAbout(sumOf(listOf(minutes)), total.exact)],
  ['rounded minutes add up to the rounded week', ({ rounded, total }) => sumOf(listOf(rounded)) === total.rounded],
  ['the week is rounded to the nearest five', ({ total }) => Math.abs(total.rounded - total.exact) <= 2.5 + 1e-9],
  ['no minutes are negative', ({ minutes }) => listOf(minutes).every((exact) => exact >= 0)],
  ['rounded minutes are whole fives', ({ rounded }) => listOf(rounded).every((part) => part >= 0 && part % 5 === 0)],
  ['no share is negative', ({ split }) => listOf(split.shares).every((share) => share >= 0)],
  ['shares add up to 1', ({ split }) => isAbout(sumOf(listOf(split.shares)), 1)],
  ['strength keeps to its cap above six hours', ({ inputs, minutes }) => !isLess(capFor(inputs), minutes.strength)],
  ['no category is too small for a session, but slow running', hasRoomForSessions],
  ['slow running too small for a session has a notice', hasSlowNotice],
  ['sessions are whole fives within the limits, shortest first', hasSoundSessions],
  ['options are near the exact minutes', hasNearOptions],
  ['options are at most twelve, none twice, and some where there are minutes', hasSomeOptions],
  [
    'the best option is in use',
    ({ options, sessions }) =>
      isSame(
        categoryIds.map((id) => options[id][0] ?? []),
        listOf(sessions),
      ),
  ],
  ['notices have known codes and levels', hasKnownNotices],
  ['notices name rules that acted and categories that were folded away', hasTrueNotices],
  ['a rounded week says so', saysRounding],
  [
    'every number is finite',
    (plan) => leavesOf(plan).every((leaf) => typeof leaf !== 'number' || Number.isFinite(leaf)),
  ],
  ['derivations have no errors', ({ derivations }) => Object.values(derivations).every(({ error }) => error === null)],
  ['derivations have the very numbers that are shown', hasTrueDerivations],
];

/** The sentences that do not hold of a plan. */
export function violationsOf(plan: Plan): readonly string[] {
  return invariants.filter(([, holds]) => !holds(plan)).map(([sentence]) => sentence);
}

type Lists = readonly (readonly number[])[];

const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, number) => sum + number, 0);
const listOf = <T>(byCategory: ByCategory<T>): readonly T[] => categoryIds.map((category) => byCategory[category]);
const isSame = (one: Lists, other: Lists): boolean => one.join(';') === other.join(';');

/** Equal to 1 in 10⁹. */
const isAbout = (found: number, expected: number): boolean => Math.abs(found - expected) <= 1e-9 * expected;

/** Less by more than 1 in 10⁹: what is nearer counts as equal, as it does in formulas. */
const isLess = (one: number, other: number): boolean => one < other && !isAbout(one, other);

const capFor = ({ hours, strengthCap }: Plan['inputs']): number => (isLess(6, hours) ? strengthCap : Infinity);

function hasRoomForSessions({ minutes }: Plan): boolean {
  return categoryIds
    .filter((category) => category !== 'slow')
    .every((category) => minutes[category] === 0 || !isLess(minutes[category], sessionLimits[category].shortest));
}

function hasSlowNotice({ minutes, notices }: Plan): boolean {
  const { shortest } = sessionLimits.slow;
  const isTooSmall = minutes.slow > 0 && minutes.slow < shortest;
  return notices.some(({ rule }) => rule === 'slow-too-small') === isTooSmall || isAbout(minutes.slow, shortest);
}

function hasSoundSessions({ options }: Plan): boolean {
  return categoryIds.every((category) => {
    const { shortest, longest } = sessionLimits[category];
    const isSound = (minutes: number) => minutes % 5 === 0 && minutes >= shortest && minutes <= longest;
    const isAscending = (list: readonly number[]) => list.every((minutes, index) => minutes >= (list[index - 1] ?? 0));
    return options[category].every((option) => option.every(isSound) && isAscending(option));
  });
}

function hasNearOptions({ options, minutes }: Plan): boolean {
  return categoryIds.every((category) => {
    const tolerance = Math.max(10, minutes[category] / 10) + 1e-9;
    return options[category].every((option) => Math.abs(sumOf(option) - minutes[category]) <= tolerance);
  });
}

function hasSomeOptions({ options, minutes }: Plan): boolean {
  return categoryIds.every((category) => {
    const written = options[category].map(String);
    const isSome = written.length > 0 === minutes[category] > 0;
    return isSome && written.length <= 12 && new Set(written).size === written.length;
  });
}

function hasKnownNotices({ notices }: Plan): boolean {
  return notices.every(({ code, level }) => noticeCodes.includes(code) && ['note', 'caution'].includes(level));
}

function hasTrueNotices({ notices, rules, minutes }: Plan): boolean {
  const acted = new Set(rules.filter((rule) => rule.acted).map(({ id }) => id));
  return notices.every(({ code, rule, category }) => {
    if (code === 'rule') return rule !== undefined && acted.has(rule);
    if (code === 'every-second-week') return category !== undefined && minutes[category] === 0;
    return code === 'total-rounded';
  });
}

function saysRounding({ notices, total }: Plan): boolean {
  const isSaid = notices.some(({ code }) => code === 'total-rounded');
  return isSaid ? total.exact !== total.rounded : isAbout(total.exact, total.rounded);
}

function hasTrueDerivations({ derivations, inputs, total, minutes, rounded }: Plan): boolean {
  const shown: readonly (readonly [string, number])[] = [
    ['weekly_hours', inputs.hours],
    ['strength_cap', inputs.strengthCap],
    ['total_rounded', total.rounded],
    ...categoryIds.flatMap((category): (readonly [string, number])[] => [
      [`${category}_minutes`, minutes[category]],
      [`${category}_rounded`, rounded[category]],
    ]),
  ];
  return shown.every(([quantity, value]) => derivations[quantity]?.value === value);
}

/** Everything in a document that is not a list or an object. */
function leavesOf(value: unknown): readonly unknown[] {
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(leavesOf) : [value];
}
