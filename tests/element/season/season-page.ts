// The season as a person meets it: its inputs, the picture, the week that is read, and the boxes under it.
import { expect, fixture } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import type { PlanChangeEvent, WeekwrightPlanner } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { SheetPage } from '../sheet/sheet-page.js';
import { collapsed } from '../text.js';

export type BoxName = 'hand' | 'table' | 'shape' | 'reach' | 'later' | 'compare' | 'basis';

export class SeasonPage extends SheetPage {
  /** The season of the plan on show. */
  get season() {
    const { season } = shownPlan(this);
    if (!season) throw new Error('the plan has no season');
    return season;
  }

  get hours(): number[] {
    return this.season.weeks.map(({ hours }) => hours);
  }

  // What there is to see.

  get lead(): string {
    return collapsed(this.find('.season-panel .lead'));
  }

  /** What is said of the season as a whole. */
  get notes(): string[] {
    return this.texts('.season-panel > .season-notes > li > span');
  }

  /** What is said of the week that is read. */
  get weekNotes(): string[] {
    return this.texts('.season-week .season-notes > li > span');
  }

  /** What is said to a listener. */
  get told(): string {
    return collapsed(this.find('.season-panel > [role="status"]'));
  }

  // The week that is read.

  get weekTitle(): string {
    return collapsed(this.find('#season-week-title'));
  }

  /** Its hours, its phase and why. */
  get weekText(): string {
    return collapsed(this.find('#season-week-title + p'));
  }

  /** Its kinds of training: "Slow running 70 min 35 + 35". */
  get weekKinds(): string[] {
    return this.texts('.season-kinds li');
  }

  get reading(): HTMLInputElement {
    return this.find('#season-reading');
  }

  get showButton(): HTMLButtonElement {
    return this.find('.season-week > button.act');
  }

  /** Reads a week, counted from 1, with the slider. */
  async readWeek(number: number): Promise<this> {
    return this.slide(this.reading, number - 1);
  }

  // Inputs.

  typedIn(id: string): HTMLInputElement {
    return this.find(`#${id}.typed`);
  }

  sliderOf(id: string): HTMLInputElement {
    return this.find(`input[type="range"][aria-labelledby="${id}-label"]`);
  }

  hintOf(id: string): string {
    return collapsed(this.find(`#${id}-hint`));
  }

  selectOf(id: string): HTMLSelectElement {
    return this.find(`select#${id}`);
  }

  optionOf(id: string): string {
    return this.selectOf(id).selectedOptions[0]?.text.trim() ?? '';
  }

  /** Drags a slider to a value, and lets it go. */
  async dragTo(id: string, ...values: readonly number[]): Promise<this> {
    await this.slide(this.sliderOf(id), ...values);
    return this.letGo(this.sliderOf(id));
  }

  async typeIn(id: string, text: string): Promise<this> {
    await this.fill(this.typedIn(id), text);
    return this.press('Enter');
  }

  /** Sets a date as the browser's own field for dates does. */
  async setDate(id: string, date: string): Promise<this> {
    const field = this.typedIn(id);
    field.value = date;
    field.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  /** Chooses from a list by its text. */
  async chooseText(list: HTMLSelectElement, text: string): Promise<this> {
    const index = [...list.options].findIndex((option) => option.text.trim() === text);
    if (index === -1)
      throw new Error(`there is no "${text}" among ${[...list.options].map((each) => each.text).join()}`);
    return this.choose(list, index);
  }

  // Boxes.

  box(name: BoxName): HTMLDetailsElement {
    return this.find(`.season-${name}`);
  }

  async openBox(name: BoxName): Promise<this> {
    if (this.box(name).open) return this;
    await this.click(this.find(`.season-${name} > summary`));
    return this.until(() => this.box(name).children.length > 1, `the box ${name} opens`);
  }

  async openAll(): Promise<this> {
    for (const name of ['hand', 'table', 'shape', 'reach', 'later', 'basis'] as const) await this.openBox(name);
    return this;
  }

  /** Presses a button of the season by its text. */
  async presses(selector: string, name: string): Promise<this> {
    return this.click(this.named(`.season-panel ${selector}`, name));
  }

  /** Presses a button of the season by its name for a listener. */
  async pressesNamed(name: string, place = 0): Promise<this> {
    return this.click(this.at(`.season-panel [aria-label="${name}"]`, place));
  }

  /** A table in a box, as it reads: rows of cells. */
  table(name: BoxName): string[][] {
    return this.all<HTMLTableRowElement>(`.season-${name} tr`).map((row) => [...row.cells].map(collapsed));
  }

  // The picture.

  get plot(): HTMLElement {
    return this.find('.season-chart .sweep-plot');
  }

  /** The pointer at a share of the width of the picture; pressed or not. */
  async point(at: number, isPressed: boolean): Promise<this> {
    await resetMouse();
    this.plot.scrollIntoView({ block: 'center' });
    const { left, top, width, height } = this.plot.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(left + at * width), Math.round(top + height / 2)] });
    if (isPressed) await sendMouse({ type: 'down' });
    if (isPressed) await sendMouse({ type: 'up' });
    return this.settled();
  }

  /** The one plan that the page hears of while something is done. */
  async heardOnce(act: () => Promise<unknown>): Promise<PlanChangeEvent['detail']> {
    const events = await this.heard(act);
    const [event] = events;
    expect(events, 'plan-change').to.have.length(1);
    if (!event) throw new Error('the page hears nothing');
    return event.detail;
  }
}

/** Sixteen weeks from four hours: worked out by hand in tests/reference/season/worked-season.test.ts. */
export const scene = 'hours="4" phase="build" level="developing" event="half-marathon" event-date="2027-04-11"';

/** A planner with its season on an empty page. */
export async function openSeason(attributes = scene, panels = 'split season', content = ''): Promise<SeasonPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}>${content}</weekwright-planner>`;
  const page = new SeasonPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.root.querySelector('#season-week-title') !== null, 'the season comes');
}

/** The same with the what-if sheet. */
export async function openWithSheet(attributes = scene, panels = 'split season sheet'): Promise<SeasonPage> {
  const page = await openSeason(attributes, panels);
  return page.until(() => page.root.querySelector('.grid') !== null, 'the sheet comes');
}
