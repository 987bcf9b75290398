import type { Founded } from '../../training/method/founded.js';
import type { Method } from '../../training/method/document.js';
import type { Status, Text } from '../../training/method/ids.js';
import { checkRules } from '../checks/checks-ground.js';
import { runningRules } from '../running/running-ground.js';
import { seasonRules } from '../season/season-ground.js';
import { strengthGround } from '../strength/strength-ground.js';
import { weekRules } from '../week/week-problem-of.js';

/** What a number or a rule of a method rests on. */
export interface Foundation extends Founded {
  /** Null where the reason says what it is about. */
  readonly name: Text | null;
  /** Hours that the reason names. */
  readonly hours?: number;
}

/** The parts of a method, in the order in which a plan is made. */
export const areaIds = ['division', 'rules', 'sessions', 'week', 'season', 'running', 'strength', 'checks'] as const;
export type AreaId = (typeof areaIds)[number];

/** What every default of a method rests on, by what it is about. */
export const foundations = (
  method: Method,
): readonly { readonly area: AreaId; readonly list: readonly Foundation[] }[] =>
  areaIds.map((area) => ({ area, list: ofArea[area](method) }));

/** How many of them are published, common practice, assumptions. */
export function tally(method: Method): Readonly<Record<Status, number>> {
  const all = foundations(method).flatMap(({ list }) => list);
  const count = (wanted: Status): number => all.filter(({ status }) => status === wanted).length;
  return {
    published: count('published'),
    'common practice': count('common practice'),
    assumption: count('assumption'),
  };
}

const named = (parts: readonly (Founded & { readonly name: Text })[]): readonly Foundation[] =>
  parts.map(({ name, status, sources, reason }) => ({ name, status, sources, reason }));

const unnamed = (parts: readonly Founded[]): readonly Foundation[] =>
  parts.map(({ status, sources, reason }) => ({ name: null, status, sources, reason }));

const rounding: Founded = { status: 'published', sources: ['sainte-lague'], reason: { key: 'reason.rounding' } };

const ofArea: Readonly<Record<AreaId, (method: Method) => readonly Foundation[]>> = {
  division: ({ splits }) => named(splits),
  rules: ({ rules }) => named(rules),
  sessions: ({ categories }) => [
    ...named(categories.map(({ name, status }) => ({ name, status, reason: { key: 'basis.session' } }))),
    ...unnamed([rounding]),
  ],
  week: (method) => {
    const { clashes, order_reason: reason, order_sources: sources, hours_between: hours } = weekRules(method);
    return [{ name: null, status: 'published', sources, reason, hours }, ...named(clashes)];
  },
  season: (method) => {
    const { rise, easier, taper, upkeep, recovery, way_back, single_run } = seasonRules(method);
    return unnamed([rise, easier, taper, upkeep, recovery, way_back, single_run]);
  },
  running: (method) => {
    const { kinds, equal_times, threshold, heart, energy } = runningRules(method);
    return unnamed([...kinds, equal_times, threshold, heart, energy]);
  },
  strength: (method) => {
    const { stages, time, spared, maximum, progress, dose } = strengthGround(method).rules;
    return [...named(stages), ...unnamed([dose, time, spared, maximum, progress])];
  },
  checks: (method) => {
    const { list, activity, screening } = checkRules(method);
    return [
      ...list.flatMap(({ name, limits }) =>
        limits.map(({ status, sources, reason }) => ({ name, status, sources, reason })),
      ),
      ...unnamed([activity, screening]),
    ];
  },
};
