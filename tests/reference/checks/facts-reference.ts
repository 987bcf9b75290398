import type { CheckedPlan } from './checks-door.js';

/*
 * What the checks measure, once more and plainly: nothing of src/training is used. Numbers are those of the built-in
 * method: efforts 3, 6, 8, 3 and 5; runs are vigorous, cross-training is moderate, a vigorous minute counts for two.
 */

interface Told {
  readonly efforts: Readonly<Record<string, number>>;
  readonly hoursBefore: number | null;
  readonly longestRun: number | null;
  readonly weeks: readonly (readonly number[])[];
}

/** Facts by name; null for what is not known. */
export type Expected = Readonly<Record<string, number | null>>;

const effort: Readonly<Record<string, number>> = { slow: 3, tempo: 6, intervals: 8, cross: 3, strength: 5 };
const isHard = (category: string): boolean => category === 'tempo' || category === 'intervals';
const total = (values: readonly number[]): number => {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
};

/** The mean over the population's deviation, and the load times it; null where all loads are alike. */
export function spreadOf(loads: readonly number[]): { readonly monotony: number; readonly strain: number } | null {
  if (loads.every((load) => load === loads[0])) return null;
  const mean = total(loads) / 7;
  const deviation = Math.sqrt(total(loads.map((load) => load * load)) / 7 - mean * mean);
  return { monotony: mean / deviation, strain: (total(loads) * mean) / deviation };
}

/** Steps forward, day by day, until a day has what is wanted. */
function stepsTo(wanted: (day: number) => boolean, from: number, first: number): number {
  for (let steps = first; steps < 7; steps += 1) if (wanted((from + steps) % 7)) return steps;
  return 7;
}

/** What lies on days: the week as a circle. */
function byDays(days: NonNullable<CheckedPlan['week']>['days'], efforts: Readonly<Record<string, number>>): Expected {
  if (!days) return {};
  let [rest, hardGap, strengthGap] = [0, 7, 7];
  const hasHard = (day: number): boolean => (days[day] ?? []).some(({ category }) => isHard(category));
  days.forEach((sessions, day) => {
    if (sessions.length === 0) rest += 1;
    if (hasHard(day)) hardGap = Math.min(hardGap, stepsTo(hasHard, day, 1));
    if (sessions.filter(({ category }) => isHard(category)).length > 1) hardGap = 0;
    const lifted = sessions.findIndex(({ category }) => category === 'strength');
    if (lifted < 0) return;
    const isAfter = sessions.some(({ category }, place) => isHard(category) && place > lifted);
    strengthGap = Math.min(strengthGap, isAfter ? 0 : stepsTo(hasHard, day, 1));
  });
  const loads = days.map((sessions) =>
    Math.round(total(sessions.map(({ category, minutes }) => minutes * (efforts[category] ?? NaN)))),
  );
  const spread = spreadOf(loads);
  return {
    // With nothing to follow there is nothing to measure.
    hard_gap: days.some((_, day) => hasHard(day)) ? hardGap : null,
    strength_gap:
      days.some((_, day) => hasHard(day)) && days.some((each) => each.some(({ category }) => category === 'strength'))
        ? strengthGap
        : null,
    rest_days: rest,
    week_load: total(loads),
    ...{ load_monotony: spread?.monotony ?? null, week_strain: spread?.strain ?? null },
  };
}

/** The highest of what own weeks have; null where none has any. */
const highest = (values: readonly number[]): number | null => (values.length > 0 ? Math.max(...values) : null);

/** Everything that checks of a plan measure from. */
export function expectedFacts({ inputs, minutes, sessions, week }: CheckedPlan, told: Told): Expected {
  const efforts = { ...effort, ...told.efforts };
  const runs = [...sessions.slow, ...sessions.tempo, ...sessions.intervals];
  const loads = Object.entries(sessions).map(([id, lengths]) => total(lengths) * (efforts[id] ?? NaN));
  const spreads = told.weeks.flatMap((days) => (days.length === 7 ? (spreadOf(days) ?? []) : []));
  const running = minutes.slow + minutes.tempo + minutes.intervals;
  return {
    ...{ weekly_hours: inputs.hours, strength_cap: inputs.strengthCap, running_minutes: running },
    ...Object.fromEntries(Object.entries(minutes).map(([id, each]) => [`${id}_minutes`, each])),
    running_sessions: runs.length,
    hard_sessions: sessions.tempo.length + sessions.intervals.length,
    strength_sessions: sessions.strength.length,
    longest_run: highest(runs) ?? 0,
    week_load: Math.round(total(loads)),
    moderate_minutes: minutes.cross,
    vigorous_minutes: running,
    activity_minutes: minutes.cross + 2 * running,
    ...byDays(week?.days ?? null, efforts),
    hours_before: told.hoursBefore,
    longest_run_before: told.longestRun,
    own_load: told.weeks.length > 0 ? Math.round(total(told.weeks.map(total)) / told.weeks.length) : null,
    own_monotony: highest(spreads.map(({ monotony }) => monotony)),
    own_strain: highest(spreads.map(({ strain }) => strain)),
  };
}

const rise = (now: number | null | undefined, before: number | null | undefined): number | null =>
  now == null || before == null || before === 0 ? null : (now - before) / before;
const share = (part: number, whole: number | null | undefined): number | null => (whole ? part / whole : null);

/** What a check has measured, by its id. */
export function expectedValue(id: string, facts: Expected): number | null {
  const fact = (name: string): number | null => facts[name] ?? null;
  const known = (name: string): number => facts[name] ?? NaN;
  const measures: Readonly<Record<string, () => number | null>> = {
    activity: () => fact('activity_minutes'),
    'strength-days': () => fact('strength_sessions'),
    'balance-days': () => fact('strength_sessions'),
    'youth-hours': () => fact('weekly_hours'),
    'hard-minutes': () => share(known('tempo_minutes') + known('intervals_minutes'), facts['running_minutes']),
    'hard-sessions': () => share(known('hard_sessions'), facts['running_sessions']),
    'strength-sessions': () => fact('strength_sessions'),
    'strength-cap': () => fact('strength_minutes'),
    load: () => rise(facts['week_load'], facts['own_load']),
    monotony: () => rise(facts['load_monotony'], facts['own_monotony']),
    strain: () => rise(facts['week_strain'], facts['own_strain']),
    'hours-rise': () => rise(facts['weekly_hours'], facts['hours_before']),
    'longest-run': () => rise(facts['longest_run'], facts['longest_run_before']),
    'season-rise': () => null,
    'season-longest-run': () => null,
    'rest-days': () => fact('rest_days'),
    'hard-gap': () => fact('hard_gap'),
    'strength-gap': () => fact('strength_gap'),
  };
  const measure = measures[id];
  if (!measure) throw new Error(`no measure for ${id}`);
  return measure();
}
