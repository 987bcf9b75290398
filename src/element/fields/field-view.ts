import type { Problem } from '../../problem.js';
import type { Words } from '../../words/words.js';
import type { Details, Draft } from '../view.js';

/** A field that a person types into: its id, what it is called, and what was typed. */
export interface TypedField {
  readonly id: string;
  readonly label: string;
  readonly text: string;
  /** What of the text is wrong, where it has several entries. */
  readonly entry?: string;
}

/** Whoever a field gives its value to, as a request. */
export interface FieldDesk<R> {
  /** What was typed into a field and is no value of it. */
  readonly drafts: ReadonlyMap<string, Draft>;
  /**
   * Makes a request the planner's, if it can be; else the field shows what is wrong.
   *
   * @param field where it was set, and as which text.
   */
  act(request: R, field?: TypedField): void;
  /** Shows what is wrong with what was typed, and leaves all as it is. */
  refuse(problem: Problem, field?: TypedField): void;
}

/** What a field needs to render. */
export interface FieldView<R> {
  readonly words: Words;
  readonly details: Pick<Details, 'sayProblem'>;
  readonly desk: FieldDesk<R>;
}
