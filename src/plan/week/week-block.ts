import type { Block, InputQuantity, SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import { byCategory, categoryIds } from '../../training/method/ids.js';
import { categoryQuantity } from '../../training/method/names.js';
import { dayQuantities, weekCost } from '../../training/method/week-names.js';
import { clashesOf } from '../../training/week/clashes.js';
import type { Laid, WeekProblem } from '../../training/week/week-problem.js';
import { isRoundedByHand, needFacts, needFrom } from '../session-need.js';
import { daysOf } from './plan-week.js';
import type { DayReading } from './week-maker.js';
import { weekProblemOf, type WeekNeeds } from './week-problem-of.js';

/** A quarter of an hour: what one step of a day's slider adds. */
const dayStep = 15;
const mostOfADay = 360;

/** The minutes of the days, as inputs of a sheet. */
export function dayInputs(days: readonly number[]): InputQuantity[] {
  return dayQuantities.map((id, day) => {
    const start = days[day] ?? 0;
    return { id, least: 0, most: Math.max(mostOfADay, start), step: dayStep, start, isChoice: false };
  });
}

interface WeekLaying extends Pick<WeekNeeds, 'picks' | 'wishes'> {
  readonly lay: (problem: WeekProblem) => Laid | null;
  /** What else is to be told of the days. */
  readonly reading?: DayReading | undefined;
}

/**
 * The row of a sheet that holds what the week costs: its days and needs are read from the sheet, all other wishes are
 * fixed. It has no number where nothing fits.
 */
export function weekBlock(method: Method, model: SheetModel, { picks, wishes, lay, reading }: WeekLaying): Block {
  const isByHand = isRoundedByHand(model);
  return {
    id: 'week',
    reads: [...dayQuantities, ...categoryIds.flatMap((id) => needFacts.map((fact) => categoryQuantity(id, fact)))],
    writes: [weekCost, ...(reading?.writes ?? [])],
    compute: (reads) => {
      const needs = byCategory((id) => needFrom(method.rounding, reads.slice(placeOf(id)), isByHand));
      const days = reads.slice(0, dayQuantities.length).map((minutes) => Math.max(0, Math.floor(minutes)));
      const problem = weekProblemOf(method, { needs, picks, wishes: { ...wishes, days, before: null } });
      const laid = lay(problem);
      const cost = laid ? clashesOf(problem, laid).reduce((sum, each) => sum + each.cost, 0) : Number.NaN;
      return [cost, ...(reading?.of(laid && daysOf(problem, laid)) ?? [])];
    },
  };
}

const placeOf = (id: (typeof categoryIds)[number]): number =>
  dayQuantities.length + categoryIds.indexOf(id) * needFacts.length;
