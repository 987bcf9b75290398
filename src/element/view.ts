import type { Plan, PlanInputs } from '../plan.js';
import type { Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import type { CategoryId } from '../training/method/ids.js';
import type { Words } from '../words/words.js';
import type { Details } from './controllers/details-controller.js';

/** An input with a number that can be typed. */
export type NumberField = 'hours' | 'strengthCap';

/** What a person typed into a number field that is no value of it: kept as it is, with what is wrong. */
export interface Draft {
  readonly text: string;
  readonly problem: Problem;
}

/** Everything a person can do on the planner. */
export interface Actions {
  change(inputs: Partial<PlanInputs>): void;
  type(field: NumberField, text: string): void;
  /** Picks a way to cut a category's minutes; null goes back to the best. */
  pick(category: CategoryId, sessions: readonly number[] | null): void;
  /** Opens the derivation of a quantity, or closes it. */
  ask(quantity: string | null): void;
}

/** All that a panel needs to render: it computes nothing of the trade. */
export interface View {
  readonly words: Words;
  readonly method: Method;
  readonly plan: Plan;
  readonly drafts: Readonly<Partial<Record<NumberField, Draft>>>;
  /** The quantity whose derivation is open. */
  readonly asked: string | null;
  /** What shows derivations and problems; null until it is needed and there. */
  readonly details: Details | null;
  readonly act: Actions;
}
