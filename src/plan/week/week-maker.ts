import type { Outcome } from '../../problem.js';
import type { SheetModel } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import type { ByCategory } from '../../training/method/ids.js';
import type { Plan } from '../document.js';
import type { PlanWeek } from './document.js';
import type { WeekRequest, WeekWishes } from './wishes.js';

/** What was asked of a week. */
export interface WeekAsked {
  readonly picks: Partial<ByCategory<readonly number[]>>;
  /** Null where no days are given. */
  readonly week: WeekWishes | null;
}

/** What else is to be told of the days of a laid week, as quantities of a sheet. */
export interface DayReading {
  readonly writes: readonly string[];
  /** One number for each of `writes`; `days` is null where nothing fits. */
  readonly of: (days: PlanWeek['days']) => readonly number[];
}

/** Lays sessions on days for a planner; fetched where a page asks for it. */
export interface WeekMaker {
  /** Checks what a request says of the week, and fills in the method's usual numbers. */
  readonly read: (given: unknown, method: Method) => Outcome<WeekWishes>;
  /** The plan with its week. */
  readonly lay: (method: Method, plan: Plan, asked: WeekAsked) => Plan;
  /** The model of a sheet with the minutes of the days as inputs, and the week's cost. */
  readonly extend: (
    method: Method,
    model: SheetModel,
    asked: Pick<WeekAsked, 'picks'> & { readonly week: WeekRequest | null; readonly reading?: DayReading | undefined },
  ) => SheetModel;
  /** The inputs that `extend` brings. */
  readonly inputValues: (model: SheetModel, wishes: WeekWishes | null) => Readonly<Record<string, number>>;
}
