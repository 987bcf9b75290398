import type { SheetModel } from '../../sheet/model.js';
import { byCategory } from '../../training/method/ids.js';
import { dayQuantities, weekCost } from '../../training/method/week-names.js';
import { lay } from '../../training/week/lay.js';
import type { Plan } from '../document.js';
import { sessionNeed } from '../session-need.js';
import { planWeek } from './plan-week.js';
import { readWishes } from './read-wishes.js';
import { dayInputs, weekBlock } from './week-block.js';
import type { WeekMaker } from './week-maker.js';
import { weekProblemOf } from './week-problem-of.js';
import { remembering, solveWeek, type WeekSolver } from './week-solver.js';

/** What lays sessions on days for planners; `solve` may leave a week that takes long for later. */
export function createWeekMaker(solve: WeekSolver = remembering(solveWeek)): WeekMaker {
  const layKnown = remembering(lay);
  return {
    read: readWishes,
    lay: (method, plan, { picks, week }) => {
      if (!week) return plan;
      const needs = byCategory((id) => sessionNeed(method, plan.derivations, id));
      const wishes = { ...week, days: week.days.map((minutes, day) => dayMinutes(plan, day) ?? minutes) };
      const problem = weekProblemOf(method, { needs, picks, wishes });
      const laid = planWeek(problem, { wishes, picks }, solve(problem));
      return { ...plan, week: laid, sessions: laid.state === 'laid' ? laid.sessions : plan.sessions };
    },
    extend: (method, model, { picks, week, reading }) => {
      const read = week && readWishes(week, method);
      if (!read?.ok) return model;
      const { value: wishes } = read;
      const days = { ...model, inputs: [...model.inputs, ...dayInputs(wishes.days)] };
      return { ...days, blocks: [...days.blocks, weekBlock(method, days, { picks, wishes, lay: layKnown, reading })] };
    },
    inputValues: (model, week) => (week && hasDays(model) ? dayValues(week.days) : {}),
  };
}

const hasDays = ({ blocks }: SheetModel): boolean => blocks.some(({ writes }) => writes.includes(weekCost));

function dayValues(days: readonly number[]): Readonly<Record<string, number>> {
  return Object.fromEntries(dayQuantities.map((id, day) => [id, days[day] ?? 0]));
}

/** In a sheet a person may have put other minutes over those of a day. */
function dayMinutes({ derivations }: Plan, day: number): number | null {
  const value = derivations[dayQuantities[day] ?? '']?.value ?? null;
  return value === null ? null : Math.max(0, Math.floor(value));
}
