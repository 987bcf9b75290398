import { influenceOnWeek, inputOf, sweepWeek, workWeekBackwards } from '../../../plan/scenarios/questions.js';
import type { PlanInputs } from '../../../plan/document.js';
import type { RowGroup } from '../../../plan/scenarios/rows.js';
import type { Method } from '../../../training/method/document.js';
import type { PlannedScenario } from '../../../plan/scenarios/scenario-planner.js';
import type { InputQuantity } from '../../../sheet/model.js';
import type { Influence } from '../../../sheet/explore/influence.js';
import type { WorkedBack } from '../../../sheet/explore/work-backwards.js';
import { categoryIds } from '../../../training/method/ids.js';
import { categoryQuantity } from '../../../training/method/names.js';
import { amountIn, wantedAmount } from '../../../words/sheet/formula-text.js';
import type { Unit } from '../../../words/quantity-value.js';
import type { SheetStore } from '../sheet-store.js';
import { Settled } from './settled.js';

/** What a sweep can draw: something of every kind of training, or one quantity. */
export const drawings = ['rounded', 'minutes', 'share', 'one'] as const;
export type Drawing = (typeof drawings)[number];

export type Swept = ReturnType<typeof sweepWeek>;

/** What somebody wants a quantity to be, worked backwards; the text as it was typed where it is no amount. */
export type Backwards =
  { readonly text: string } | { readonly target: number; readonly input: InputQuantity; readonly result: WorkedBack };

/** What questions need of the bench. */
export interface QuestionNeeds {
  readonly store: SheetStore;
  readonly method: Method;
  readonly groups: readonly RowGroup[];
  unitOf(quantity: string): Unit;
  set(scenario: string, inputs: Partial<PlanInputs>): void;
  update(): void;
}

/** What a person asks of the scenario on show, and the answers. */
export class Questions {
  input = 'weekly_hours';
  quantity = 'strength_minutes';
  drawing: Drawing = 'minutes';
  wanted = '90';
  /** Where the chart is read, as a place among the values of the sweep; null at the scenario's own value. */
  reading: number | null = null;
  /** True once somebody has opened the table under the chart. */
  isTableOpen = false;
  readonly #needs: QuestionNeeds;
  readonly #swept: Settled<Swept>;
  readonly #backwards: Settled<Backwards>;
  readonly #influences: Settled<readonly Influence[]>;

  constructor(needs: QuestionNeeds) {
    this.#needs = needs;
    const update = (): void => {
      needs.update();
    };
    this.#swept = new Settled(update);
    this.#backwards = new Settled(update);
    this.#influences = new Settled(update);
  }

  /** Changes the question. */
  ask(change: Partial<Pick<Questions, 'input' | 'quantity' | 'drawing' | 'wanted' | 'reading' | 'isTableOpen'>>): void {
    if (change.input !== undefined && change.input !== this.input) this.reading = null;
    Object.assign(this, change);
    this.#needs.update();
  }

  get swept(): Swept | null {
    const { input, drawing, quantity } = this;
    return this.#answer(this.#swept, [input, drawing, quantity], ({ planner }) =>
      sweepWeek(planner, { input, quantities: this.drawn }),
    );
  }

  get backwards(): Backwards | null {
    const { input, quantity, wanted } = this;
    return this.#answer(this.#backwards, [input, quantity, wanted], ({ planner }): Backwards => {
      const amount = wantedAmount(wanted);
      if (amount === null) return { text: wanted };
      const target = amountIn(this.#needs.unitOf(quantity), amount);
      const result = workWeekBackwards(planner, input, { quantity, value: target });
      return { target, input: inputOf(planner, input), result };
    });
  }

  get influences(): readonly Influence[] | null {
    const { quantity } = this;
    return this.#answer(this.#influences, [quantity], ({ planner }) => influenceOnWeek(planner, quantity));
  }

  /** The quantities that the sweep draws. */
  get drawn(): readonly string[] {
    const { drawing } = this;
    return drawing === 'one' ? [this.quantity] : categoryIds.map((id) => categoryQuantity(id, drawing));
  }

  #answer<T>(settled: Settled<T>, about: readonly unknown[], work: (shown: PlannedScenario) => T): T | null {
    const { shown } = this.#needs.store;
    return shown ? settled.get([shown, ...about], () => work(shown)) : null;
  }
}
