import type { CSSResult, TemplateResult } from 'lit';
import type { Plan, PlanInputs } from '../plan.js';
import type { Problem } from '../problem.js';
import type { Method } from '../training/method/document.js';
import type { CategoryId } from '../training/method/ids.js';
import type { DerivationLines } from '../words/derivation-lines.js';
import type { Words } from '../words/words.js';

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
  /** Opens the derivation of a quantity, or closes it; `from` is the number that was pressed. */
  ask(quantity: string | null, from?: HTMLElement): void;
  /** Fetches what is shown when somebody asks. */
  more(): void;
}

/** A part of the planner that a page can show. */
export interface Panel {
  readonly render: (view: View) => TemplateResult;
}

/** What a number needs that answers why. */
export interface Asker {
  readonly words: Words;
  readonly asked: string | null;
  readonly act: Pick<Actions, 'ask'>;
}

/** What shows derivations and problems: `details.ts`, fetched when first needed. */
export interface Details {
  readonly styles: CSSResult;
  why(view: View): TemplateResult;
  /** Which rules acted and what is worth knowing, a sentence each. */
  noteLines(view: View): TemplateResult;
  derivation(asker: Asker, lines: DerivationLines): TemplateResult;
  problemBox(words: Words, heading: 'faulty-inputs' | 'faulty-method', problems: readonly Problem[]): unknown;
  sayProblem(words: Words, problem: Problem): string;
  /** The usual cautions, a line each. */
  cautionLines(words: Words, method: Method): TemplateResult;
  oncePerCause(problems: readonly Problem[]): readonly Problem[];
}

/** All that a panel needs to render: it computes nothing of the trade. */
export interface View {
  /** The names of all panels on show. */
  readonly panels: readonly string[];
  readonly words: Words;
  readonly method: Method;
  readonly plan: Plan;
  readonly drafts: Readonly<Partial<Record<NumberField, Draft>>>;
  /** The quantity whose derivation is open. */
  readonly asked: string | null;
  /** Null until it is needed and there. */
  readonly details: Details | null;
  readonly act: Actions;
}
