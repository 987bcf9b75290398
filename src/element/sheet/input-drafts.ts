import type { PlanInputs } from '../../plan/document.js';
import type { Problem } from '../../problem.js';
import { readRequest } from '../../plan/read-request.js';
import { readNumber } from '../../words/read-number.js';
import { notANumber } from '../inputs/not-a-number.js';
import type { Draft, NumberField } from '../view.js';
import type { SheetStore } from './sheet-store.js';

/** What drafts need of the bench. */
export interface InputDesk {
  readonly store: SheetStore;
  set(scenario: string, inputs: Partial<PlanInputs>): void;
  update(): void;
}

/** What people typed into the number fields of scenarios that is no value of them, by scenario and field. */
export class InputDrafts {
  readonly #desk: InputDesk;
  readonly #drafts = new Map<string, Draft>();

  constructor(desk: InputDesk) {
    this.#desk = desk;
  }

  of(scenario: string, field: NumberField): Draft | undefined {
    return this.#drafts.get(`${scenario} ${field}`);
  }

  /** Takes what was typed: a value of the input, or a draft that says what is wrong. */
  type(scenario: string, field: NumberField, text: string): void {
    const value = readNumber(text);
    const problem = this.#problemWith(field, { text, value });
    if (problem) this.#drafts.set(`${scenario} ${field}`, { text, problem });
    else this.#drafts.delete(`${scenario} ${field}`);
    if (problem || value === null) this.#desk.update();
    else this.#desk.set(scenario, { [field]: value });
  }

  /** A slider that moves overrules what was typed. */
  forget(scenario: string, field: NumberField): void {
    this.#drafts.delete(`${scenario} ${field}`);
  }

  #problemWith(path: NumberField, { text, value }: { text: string; value: number | null }): Problem | null {
    if (value === null) return notANumber(path, text);
    const read = readRequest({ [path]: value }, this.#desk.store.sheet.method);
    return read.ok ? null : (read.problems[0] ?? null);
  }
}
