import type { ScenarioSheet } from '../../plan/scenarios/document.js';
import type { ScenarioPlanner, Trial } from '../../plan/scenarios/scenario-planner.js';
import { formulaText } from '../../words/sheet/formula-text.js';
import { FormulaField } from '../formula-field/formula-field.js';
import type { Seat } from './seat.js';

/** Where a formula is to stand: the sheet that it makes, and the quantity whose value is watched. */
export interface FormulaPlace {
  readonly scenario: string;
  readonly quantity: string;
  readonly sheetWith: (formula: string) => ScenarioSheet;
}

/** A formula that is being typed, with what it is worth so far. */
export class FormulaDraft {
  readonly field: FormulaField;
  text = '';
  /** Null while nothing is typed, and until the first answer is there. */
  trial: Trial | null = null;
  readonly #host: Seat['host'];
  readonly #planner: ScenarioPlanner;
  #answer: Promise<void> = Promise.resolve();

  constructor(host: Seat['host'], planner: ScenarioPlanner) {
    this.#host = host;
    this.#planner = planner;
    this.field = new FormulaField(host);
  }

  begin(text: string): void {
    this.text = text;
    this.trial = null;
    this.#host.requestUpdate();
  }

  type(text: string, place: FormulaPlace): void {
    this.text = text;
    // One after the other: fetched parts do not come in the order in which they were asked for.
    this.#answer = Promise.allSettled([this.#answer]).then(() => this.#tryOut(text, place));
    this.#host.requestUpdate();
  }

  /** The formula once its worth is known; null where it cannot be used, or is empty. */
  async accepted(place: FormulaPlace): Promise<string | null> {
    if (this.trial === null) this.type(this.text, place);
    await this.#answer;
    const formula = formulaText(this.text);
    return formula !== '' && this.trial && isUsable(this.trial) ? formula : null;
  }

  async #tryOut(text: string, { scenario, quantity, sheetWith }: FormulaPlace): Promise<void> {
    if (text !== this.text) return;
    const formula = formulaText(text);
    const trial =
      formula === ''
        ? null
        : await this.#planner.tryOut(sheetWith(formula), { scenario, quantity, formula }).catch(() => null);
    if (text !== this.text) return;
    this.trial = trial;
    this.#host.requestUpdate();
  }
}

/** What fails with these inputs may work with others; a circle never does. */
function isUsable(trial: Trial): boolean {
  return trial.ok || ('failure' in trial && trial.failure.code !== 'circle');
}
