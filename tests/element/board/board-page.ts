// The board as a person meets it: days with their minutes, sessions as cards, and what can be done with both.
import { expect } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import type { CategoryId } from '../../../src/core.js';
import type { PlanChangeEvent } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { SheetPage } from '../sheet/sheet-page.js';
import { collapsed } from '../text.js';

/** A session as its card has it. */
export interface ShownCard {
  readonly category: string;
  readonly minutes: number;
}

export class BoardPage extends SheetPage {
  /** The week of the plan on show. */
  get week() {
    const { week } = shownPlan(this);
    if (!week) throw new Error('the plan has no week');
    return week;
  }

  // Days and cards.

  day(day: number): HTMLElement {
    return this.find(`.day[data-day="${day}"]`);
  }

  dayName(day: number): HTMLButtonElement {
    return this.find(`#day-${day}-name`);
  }

  typedMinutes(day: number): HTMLInputElement {
    return this.find(`#day-${day}`);
  }

  minutesSlider(day: number): HTMLInputElement {
    return this.find(`.day[data-day="${day}"] input[type="range"]`);
  }

  minutesNote(day: number): string {
    return collapsed(this.find(`#day-${day}-note`));
  }

  /** What a day holds of its minutes, in words. */
  dayTotal(day: number): string {
    const total = collapsed(this.find(`.day[data-day="${day}"] .total`));
    return total.replace(this.dayClashes(day), '').trim();
  }

  /** How many clashes a day is in, in words; '' where it is in none. */
  dayClashes(day: number): string {
    return this.texts(`.day[data-day="${day}"] .total b`).join();
  }

  card(category: CategoryId, day: number): HTMLButtonElement {
    return this.find(`.card[data-key="${category} ${day}"]`);
  }

  hasCard(category: CategoryId, day: number): boolean {
    return this.root.querySelector(`.card[data-key="${category} ${day}"]`) !== null;
  }

  /** What lies on each day, as the eye has it. */
  get shownDays(): ShownCard[][] {
    return this.all('.day').map((day) =>
      [...day.querySelectorAll<HTMLElement>('.card')].map((card) => ({
        category: card.dataset['category'] ?? '',
        minutes: Number.parseInt(collapsed(card), 10),
      })),
    );
  }

  get verdict(): string {
    return collapsed(this.find('.board .verdict'));
  }

  /** What is said to a listener. */
  get told(): string {
    return collapsed(this.find('.board [role="status"]'));
  }

  /** What stands over the day that a card is carried over; '' where none is. */
  get carried(): string {
    return this.texts('.day[data-over="true"] .carried').join();
  }

  get dayCarriedOver(): number | null {
    const [over] = this.all('.day[data-over="true"]');
    return over ? Number(over.dataset['day']) : null;
  }

  /** The line of a kind under the days: minutes on days, against plan, sessions. */
  kindLine(category: CategoryId): string[] {
    const row = this.find<HTMLTableRowElement>(`.kinds tr:has([data-category="${category}"])`);
    return [...row.cells].slice(1, 4).map(collapsed);
  }

  kindButton(category: CategoryId, name: string): HTMLButtonElement {
    return this.named(`.kinds tr:has([data-category="${category}"]) button`, name);
  }

  // Tools and boxes.

  get tools(): HTMLElement {
    return this.find('#board-tools');
  }

  toolsButton(name: string): HTMLButtonElement {
    return this.named('#board-tools button', name);
  }

  get lengthSlider(): HTMLInputElement {
    return this.find('#board-tools input[type="range"]');
  }

  moveButton(day: number): HTMLButtonElement {
    return this.at<HTMLButtonElement>('#board-tools .moves button', day);
  }

  get proposal(): HTMLElement | null {
    return this.root.querySelector<HTMLElement>('.proposal');
  }

  proposalButton(name: string): HTMLButtonElement {
    return this.named('.proposal button', name);
  }

  wishList(id: 'template' | 'long-run' | 'rest-days' | 'sessions-a-day'): HTMLSelectElement {
    return this.find(`select#board-${id}`);
  }

  // Acts.

  async openCard(category: CategoryId, day: number): Promise<this> {
    return this.click(this.card(category, day));
  }

  async openDay(day: number): Promise<this> {
    return this.click(this.dayName(day));
  }

  /** Presses a button of the tools of a card. */
  async does(category: CategoryId, day: number, name: string): Promise<this> {
    if (this.tools.hidden) await this.openCard(category, day);
    await this.click(this.toolsButton(name));
    return this.laid();
  }

  async typeMinutes(day: number, text: string): Promise<this> {
    await this.fill(this.typedMinutes(day), text);
    return this.press('Enter');
  }

  async pickUp(category: CategoryId, day: number): Promise<this> {
    await this.goTo(this.card(category, day));
    return this.press(' ');
  }

  /** Takes something up with the mouse, and moves it over the middle of other things. */
  async dragCard(from: Element, ...over: readonly Element[]): Promise<this> {
    await resetMouse();
    this.find('.days').scrollIntoView({ block: 'center' });
    await sendMouse({ type: 'move', position: middle(from) });
    await sendMouse({ type: 'down' });
    return this.dragOn(...over);
  }

  async dragOn(...over: readonly Element[]): Promise<this> {
    for (const each of over) await sendMouse({ type: 'move', position: middle(each) });
    return this.settled();
  }

  async drop(): Promise<this> {
    await sendMouse({ type: 'up' });
    return this.laid();
  }

  /** Until the week is found, or it is known that there is none and why. */
  async laid(): Promise<this> {
    await this.settled();
    return this.until(
      () => this.week.state === 'laid' || this.week.conflict !== null,
      'the week is laid, or known not to fit',
    );
  }

  /** The one week that the page hears of while something is done. */
  async heardOnce(act: () => Promise<unknown>): Promise<PlanChangeEvent['detail']> {
    const events = await this.heard(act);
    const [event] = events;
    expect(events, 'plan-change').to.have.length(1);
    if (!event) throw new Error('the page hears nothing');
    return event.detail;
  }
}

function middle(target: Element): [number, number] {
  const { left, top, width, height } = target.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + height / 2)];
}
