// The what-if sheet as a person meets it: scenarios, the grid of quantities, and the questions.
import { aTimeout, fixture, waitUntil } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { PlanChangeEvent, type WeekwrightPlanner } from '../../../src/index.js';
import { PlannerPage } from '../planner-page.js';
import { collapsed } from '../text.js';

/** A cell as the eye has it, and what else is said of it. */
export interface CellText {
  readonly text: string;
  readonly difference: string;
  /** Read out behind the number: "set by hand". */
  readonly said: string;
}

export type MenuItem = 'Compare the others with this' | 'Copy' | 'Move to the front' | 'Move to the back' | 'Remove';

/** An act can wait for the parser, which is fetched when first needed. */
const patience = { timeout: 8000 };

export class SheetPage extends PlannerPage {
  // Scenarios.

  /** What the columns are called, in their order. */
  get scenarios(): string[] {
    return this.texts('.grid thead th').slice(1);
  }

  /** The id of the scenario in a column, counted from 0. */
  id(column: number): string {
    const cells = this.all('.grid td[data-row="strength_rounded"]');
    return cells[column]?.dataset['column'] ?? `no column ${String(column)}`;
  }

  get reference(): number {
    return this.texts('.reference').findIndex((text) => text !== '');
  }

  get onShow(): number {
    return this.all<HTMLInputElement>('input[name="on-show"]').findIndex(({ checked }) => checked);
  }

  tool(name: string): HTMLButtonElement {
    return this.named('.toolbar button', name);
  }

  async add(times = 1): Promise<this> {
    for (let time = 0; time < times; time += 1) await this.click(this.tool('Add a scenario'));
    return this;
  }

  nameField(column: number): HTMLInputElement {
    return this.at('.name .typed', column);
  }

  async rename(column: number, name: string): Promise<this> {
    await this.fill(this.nameField(column), name);
    return this.press('Enter');
  }

  radio(column: number): HTMLInputElement {
    return this.at('input[name="on-show"]', column);
  }

  menu(column: number): HTMLElement {
    return this.at('.menu summary', column);
  }

  /** Chooses from the menu of a column by keyboard. */
  async chooseFromMenu(column: number, item: MenuItem): Promise<this> {
    this.menu(column).focus();
    await this.press('Enter');
    this.named(`.menu[open] button`, item).focus();
    return this.press('Enter');
  }

  /** A slider of a scenario by the label of its row: "hours". */
  input(column: number, label: string): HTMLInputElement {
    return this.find(
      `.inputs-table input[type="range"][aria-labelledby="inputs-${label} scenario-${this.id(column)}"]`,
    );
  }

  /** Moves a slider of a scenario; until it is let go there is no change event. */
  async slide(slider: HTMLInputElement, ...values: readonly number[]): Promise<this> {
    for (const value of values) {
      slider.valueAsNumber = value;
      slider.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
      await this.settled();
    }
    return this;
  }

  async letGo(slider: HTMLInputElement): Promise<this> {
    slider.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  async set(column: number, label: string, value: number): Promise<this> {
    const slider = this.input(column, label);
    await this.slide(slider, value);
    return this.letGo(slider);
  }

  // The grid.

  cell(row: string, column = 0): HTMLElement {
    return this.find(`.grid td[data-row="${row}"][data-column="${this.id(column)}"]`);
  }

  rowHead(row: string): HTMLElement {
    return this.find(`.grid th[data-row="${row}"]`);
  }

  group(id: string): HTMLButtonElement {
    return this.find(`.grid button[data-row="group ${id}"]`);
  }

  async openGroup(id: string): Promise<this> {
    return this.click(this.group(id));
  }

  shown(row: string, column = 0): CellText {
    const cell = this.cell(row, column);
    const part = (selector: string): string => {
      const found = cell.querySelector(selector);
      return found ? collapsed(found) : '';
    };
    const bare = cell.cloneNode(true);
    if (bare instanceof Element) for (const each of bare.querySelectorAll('small, .visually-hidden')) each.remove();
    return { text: collapsed(bare), difference: part('small'), said: part('.visually-hidden') };
  }

  /** What a row shows in every scenario. */
  across(row: string): string[] {
    return this.scenarios.map((_, column) => this.shown(row, column).text);
  }

  /** Where the focus is in the grid: "strength_minutes a". */
  get focus(): string {
    const { activeElement } = this.root;
    if (!(activeElement instanceof HTMLElement)) return 'nowhere';
    const { row, column } = activeElement.dataset;
    return row === undefined ? activeElement.outerHTML.slice(0, 80) : `${row} ${column ?? ''}`;
  }

  /** Everything of the grid that Tab stops at, outside of opened details. */
  get tabStops(): HTMLElement[] {
    return this.all('.grid [tabindex="0"]').filter((each) => !each.closest('.detail'));
  }

  /** What is marked: "strength_minutes a". */
  get marked(): string[] {
    return this.all('.grid [aria-selected="true"]').map(
      ({ dataset: { row, column } }) => `${row ?? ''} ${column ?? ''}`,
    );
  }

  async goTo(target: HTMLElement): Promise<this> {
    target.focus();
    if (!this.hasFocus(target)) throw new Error(`${target.outerHTML} cannot be focused`);
    return this.settled();
  }

  async pressWith(modifiers: readonly string[], ...keys: readonly string[]): Promise<this> {
    for (const down of modifiers) await sendKeys({ down });
    for (const press of keys) await sendKeys({ press });
    for (const up of modifiers) await sendKeys({ up });
    return this.settled();
  }

  // Details.

  get detail(): HTMLElement | null {
    return this.root.querySelector<HTMLElement>('.grid .detail');
  }

  get detailText(): string {
    return collapsed(this.find('.grid .detail'));
  }

  get formula(): HTMLInputElement {
    return this.find('.grid .detail [role="combobox"]');
  }

  /** What is said under the formula over a cell. */
  get note(): string {
    return collapsed(this.find('#formula-here-note'));
  }

  /** Until the formula as it stands is tried and this is said of it. */
  async hears(part: string): Promise<this> {
    await waitUntil(() => this.note.includes(part), `"${part}" is said of the formula`, patience);
    return this.settled();
  }

  detailButton(name: string): HTMLButtonElement {
    return this.named('.grid .detail button', name);
  }

  async open(target: HTMLElement): Promise<this> {
    await this.goTo(target);
    return this.press('Enter');
  }

  /** Types over what a field holds. */
  async fill(field: HTMLInputElement, text: string): Promise<this> {
    field.focus();
    field.select();
    await sendKeys({ press: 'Delete' });
    if (text !== '') await sendKeys({ type: text });
    return this.settled();
  }

  /** Puts a value or a formula over a cell, by keyboard. */
  async override(row: string, column: number, formula: string): Promise<this> {
    await this.open(this.cell(row, column));
    await this.fill(this.formula, formula);
    return this.take();
  }

  /** Enter, and until what was typed is taken. */
  async take(): Promise<this> {
    await this.press('Enter');
    await this.until(() => this.detail === null, 'the details close');
    return this.settled();
  }

  /** The weeks that the page hears of while something is done. */
  async heard(act: () => Promise<unknown>): Promise<PlanChangeEvent[]> {
    const events: PlanChangeEvent[] = [];
    const note = (event: Event): void => {
      if (event instanceof PlanChangeEvent) events.push(event);
    };
    document.addEventListener('plan-change', note);
    await act();
    document.removeEventListener('plan-change', note);
    return events;
  }

  // Questions.

  /** Opens one of the questions by its title; what it needs is fetched then. */
  async askSheet(question: 'sweep' | 'backwards' | 'influence'): Promise<this> {
    const places = { sweep: '#sweep-input', backwards: '#back-wanted', influence: '#influence-quantity' };
    await this.click(this.at('.question > summary', Object.keys(places).indexOf(question)));
    return this.until(() => this.root.querySelector(places[question]) !== null, `${question} opens`);
  }

  /** Waits until the questions have rested, and are answered for what stands there now. */
  async answered(): Promise<this> {
    await aTimeout(400);
    return this.settled();
  }

  async pick(id: string, value: string): Promise<this> {
    const list = this.find<HTMLSelectElement>(`select#${id}`);
    const index = [...list.options].findIndex((option) => option.value === value);
    if (index === -1) throw new Error(`${id} has no ${value}`);
    return this.choose(list, index);
  }

  // The message of the toolbar.

  get message(): string {
    return collapsed(this.find('.message'));
  }

  async until(condition: () => boolean, message: string): Promise<this> {
    await waitUntil(condition, message, patience);
    return this.settled();
  }

  named<T extends HTMLElement = HTMLButtonElement>(selector: string, name: string): T {
    const found = this.all<T>(selector).find((each) => collapsed(each) === name);
    if (!found) throw new Error(`there is no ${selector} called "${name}"`);
    return found;
  }

  at<T extends HTMLElement = HTMLInputElement>(selector: string, place: number): T {
    const found = this.all<T>(selector)[place];
    if (!found) throw new Error(`there is no ${selector} number ${String(place)}`);
    return found;
  }
}

/** A planner with the sheet on an empty page, the sheet being there. */
export async function openSheet(attributes = '', panels = 'split sheet'): Promise<SheetPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new SheetPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
}
