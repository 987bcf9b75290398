import type { Block } from '../../sheet/model.js';
import { activityFacts } from '../../training/checks/activity-facts.js';
import { activityFactIds, minuteFactIds, sheetFactIds, type FactId, type Facts } from '../../training/checks/facts.js';
import { checkLevels } from '../../training/checks/check-levels.js';
import { judge } from '../../training/checks/judge.js';
import { measured, measures } from '../../training/checks/measures.js';
import type { CheckRule } from '../../training/method/check-rules.js';
import type { Method } from '../../training/method/document.js';
import { byCategory, levelIds, phaseIds, type ByCategory } from '../../training/method/ids.js';
import { checkQuantity, factQuantity, notKnown } from './check-quantities.js';
import { checkRules } from './checks-ground.js';
import { ownWeeks } from './own-weeks.js';
import type { ChecksWishes } from './wishes.js';

const shares = ['hard_minutes_share', 'hard_sessions_share'] as const;
const choices = ['athlete_level', 'season_phase'] as const;

/**
 * The rows of a sheet that hold checks: a level each, and the shares that they measure. Checks that need what a sheet does
 * not have are not among them.
 *
 * @param known facts that other blocks of the sheet have.
 */
export function checksBlock(method: Method, known: readonly FactId[], wishes: ChecksWishes): Block {
  const { list, activity } = checkRules(method);
  const told = toldFacts(wishes);
  const has = (id: FactId): boolean => isOfSheet(id) || known.includes(id) || typeof told[id] === 'number';
  const made = list.filter(({ enabled, measure }) => enabled !== false && measures[measure].reads.every(has));
  const facts = known.map(factQuantity);
  return {
    id: 'checks',
    reads: [...choices, ...sheetFactIds, ...minuteFactIds, ...facts],
    writes: [...made.map(({ id }) => checkQuantity(id)), factQuantity('activity_minutes'), ...shares.map(factQuantity)],
    compute: ([level = 0, phase = 0, ...reads]) => {
      const ofSheet = named([...sheetFactIds, ...minuteFactIds, ...known], reads);
      const all: Facts = { ...ofSheet, ...activityFacts(minutesIn(ofSheet), activity), ...told };
      const runner = { level: levelIds[level] ?? 'new', phase: phaseIds[phase] ?? 'base', age: wishes.age };
      const levelOf = (rule: CheckRule): number => {
        const judged = judge(rule, all, runner)?.level ?? null;
        return judged === null ? notKnown : checkLevels.indexOf(judged);
      };
      return [
        ...made.map(levelOf),
        all.activity_minutes ?? notKnown,
        ...shares.map((id) => measured(measures[id], all).value ?? notKnown),
      ];
    },
  };
}

const isOfSheet = (id: FactId): boolean =>
  [...sheetFactIds, ...minuteFactIds, ...activityFactIds].some((each) => each === id);

const toldFacts = ({ hoursBefore, longestRun, weeks }: ChecksWishes): Facts => {
  const { load, monotony, strain } = ownWeeks(weeks);
  return {
    hours_before: hoursBefore,
    longest_run_before: longestRun,
    own_load: load,
    own_monotony: monotony,
    own_strain: strain,
  };
};

/** Facts of a sheet by their names; negative ones are not known. */
const named = (ids: readonly FactId[], values: readonly number[]): Facts =>
  Object.fromEntries(
    ids.map((id, place) => {
      const value = values[place] ?? notKnown;
      return [id, value < 0 ? null : value];
    }),
  );

const minutesIn = (facts: Facts): ByCategory<number> => byCategory((id) => facts[`${id}_minutes`] ?? 0);
