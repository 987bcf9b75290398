// The planner as a person meets it, so that tests read as what somebody does and sees.
import { expect, fixture } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../src/define.js';
import type { WeekwrightPlanner } from '../../src/index.js';
import type { CategoryId } from '../../src/training/method/ids.js';
import './page-focus.js';
import { clickOn } from './sure-click.js';
import { collapsed } from './text.js';

export type NumberFieldName = 'hours' | 'strengthCap';
export type FieldName = NumberFieldName | 'phase' | 'level' | 'event';

/** One line of the table of the week, as it reads. */
export interface Row {
  readonly kind: string;
  readonly share: string;
  readonly exact: string;
  readonly planned: string;
  readonly sessions: string;
}

export class PlannerPage {
  readonly element: WeekwrightPlanner;

  constructor(element: WeekwrightPlanner) {
    this.element = element;
  }

  get root(): ShadowRoot {
    const { shadowRoot } = this.element;
    if (!shadowRoot) throw new Error('the planner has no shadow root');
    return shadowRoot;
  }

  /** The one that there has to be. */
  find<T extends Element = HTMLElement>(selector: string): T {
    const found = this.root.querySelector<T>(selector);
    if (!found) throw new Error(`there is no ${selector}`);
    return found;
  }

  all<T extends Element = HTMLElement>(selector: string): T[] {
    return [...this.root.querySelectorAll<T>(selector)];
  }

  texts(selector: string): string[] {
    return this.all(selector).map(collapsed);
  }

  /** Until the planner shows what it was last told. */
  async settled(): Promise<this> {
    await this.element.updateComplete;
    return this;
  }

  // What there is to see.

  get headline(): string {
    return collapsed(this.find('.answer'));
  }

  get text(): string {
    return collapsed(this.root);
  }

  row(category: CategoryId): Row {
    return this.rowAt(this.find<HTMLTableRowElement>(`tr:has(.swatch[data-category="${category}"])`));
  }

  get totals(): Row {
    return this.rowAt(this.find<HTMLTableRowElement>('tfoot tr'));
  }

  private rowAt(row: HTMLTableRowElement): Row {
    const [kind = '', share = '', exact = '', planned = '', sessions = ''] = [...row.cells].map((cell) => {
      const list = cell.querySelector('select');
      return list ? (list.selectedOptions[0]?.text ?? '') : collapsed(cell);
    });
    return { kind, share, exact, planned, sessions };
  }

  get rules(): string[] {
    return this.texts('section[aria-labelledby="rules-title"] li');
  }

  get notices(): string[] {
    return this.texts('section[aria-labelledby="notices-title"] li');
  }

  get problems(): string[] {
    return this.texts('.problems li');
  }

  get status(): HTMLElement {
    return this.find('[role="status"]');
  }

  // Inputs.

  slider(field: FieldName): HTMLInputElement {
    return this.find(`input[type="range"][aria-labelledby="${field}-label"]`);
  }

  typed(field: NumberFieldName): HTMLInputElement {
    return this.find(`#${field}.typed`);
  }

  list(field: 'phase' | 'level' | 'event'): HTMLSelectElement {
    return this.find(`select#${field}`);
  }

  hint(field: NumberFieldName): string {
    return collapsed(this.find(`#${field}-hint`));
  }

  stepButton(field: NumberFieldName, direction: 'less' | 'more'): HTMLButtonElement {
    const [less, more] = this.all<HTMLButtonElement>(`.field:has(#${field}) .step`);
    const button = direction === 'less' ? less : more;
    if (!button) throw new Error(`${field} has no button for ${direction}`);
    return button;
  }

  sessionList(category: CategoryId): HTMLSelectElement {
    return this.find(`tr:has(.swatch[data-category="${category}"]) select`);
  }

  /** Moves a slider as dragging it to a value does. */
  async drag(field: FieldName, value: number): Promise<this> {
    const slider = this.slider(field);
    slider.valueAsNumber = value;
    slider.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    return this.settled();
  }

  /** Chooses from a list as a person does. */
  async choose(list: HTMLSelectElement, index: number): Promise<this> {
    list.selectedIndex = index;
    list.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    list.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  /** Writes over what a field holds, and leaves it by Enter. */
  async type(field: NumberFieldName, text: string): Promise<this> {
    const entry = this.typed(field);
    entry.focus();
    entry.select();
    await sendKeys({ press: 'Delete' });
    if (text !== '') await sendKeys({ type: text });
    return this.press('Enter');
  }

  async press(...keys: string[]): Promise<this> {
    for (const press of keys) await sendKeys({ press });
    return this.settled();
  }

  /** Presses with the mouse in the middle of what is there. */
  async click(target: Element): Promise<this> {
    await clickOn(target);
    return this.settled();
  }

  // Questions.

  /** The number of the table that answers why it is so. */
  number(quantity: string): HTMLButtonElement {
    return this.find(`.week [data-quantity="${quantity}"]`);
  }

  async ask(quantity: string): Promise<this> {
    // In sight, as for a person: what is not laid out yet counts as too narrow for this number, and takes no focus.
    this.number(quantity).scrollIntoView({ block: 'center' });
    this.number(quantity).focus();
    if (!this.hasFocus(this.number(quantity))) throw new Error(`${quantity} cannot be focused`);
    return this.press('Enter');
  }

  get why(): HTMLElement {
    return this.find('#why');
  }

  hasFocus(element: Element | undefined): boolean {
    return this.root.activeElement === element;
  }
}

/** A planner on an empty page; `content` is what stands between its tags. */
export async function openPlanner(attributes = '', content = ''): Promise<PlannerPage> {
  const element = await fixture<WeekwrightPlanner>(`<weekwright-planner ${attributes}>${content}</weekwright-planner>`);
  return new PlannerPage(element).settled();
}

/** The plan on show. */
export function shownPlan({ element }: PlannerPage) {
  const { plan } = element;
  expect(plan, 'the plan on show').to.not.equal(null);
  if (plan === null) throw new Error('there is no plan');
  return plan;
}
