// The record as a person meets it: the sessions of a week to tick off, what is left, and tables that come and go.
import { fixture } from '@open-wc/testing';
import type { CategoryId } from '../../../src/core.js';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { BoardPage } from '../board/board-page.js';
import { collapsed } from '../text.js';
import '../board/workers.js';
import { onDay } from './on-day.js';

export type RecordBox = 'weeks' | 'in' | 'out';
export type DoneField = 'day' | 'minutes' | 'effort';

export class RecordPage extends BoardPage {
  get lead(): string {
    return collapsed(this.find('.record .lead'));
  }

  override get told(): string {
    return collapsed(this.find('.record > [role="status"]'));
  }

  get panelText(): string {
    return collapsed(this.find('.record'));
  }

  has(selector: string): boolean {
    return this.root.querySelector(selector) !== null;
  }

  /** The button by its text. */
  button(name: string): HTMLButtonElement {
    return this.named('.record button', name);
  }

  async presses(name: string): Promise<this> {
    return this.click(this.button(name));
  }

  // The sessions of the week.

  /** Every session of the list: "Slow running Wednesday, 20 min". */
  get sessions(): string[] {
    return this.texts('.record-sessions > li > .record-what');
  }

  item(place: number): HTMLLIElement {
    return this.at<HTMLLIElement>('.record-sessions > li', place);
  }

  /** The box of a planned session, by its place in the list. */
  box(place: number): HTMLInputElement {
    return this.at('.record-what input[type="checkbox"]', place);
  }

  get ticked(): boolean[] {
    return this.all<HTMLInputElement>('.record-what input').map(({ checked }) => checked);
  }

  /** Ticks or unticks by the mouse. */
  async ticks(...places: readonly number[]): Promise<this> {
    for (const place of places) await this.click(this.box(place));
    return this.settled();
  }

  /** A field of what was done: of a planned session, or of one beyond the plan. */
  field(place: number, name: DoneField, list: 'planned' | 'extra' = 'planned'): HTMLInputElement {
    return this.find(`#record-${list}-${place}-${name}`);
  }

  dayField(place: number, list: 'planned' | 'extra' = 'planned'): HTMLSelectElement {
    return this.find(`select#record-${list}-${place}-day`);
  }

  noteOf(place: number, name: DoneField, list: 'planned' | 'extra' = 'planned'): string {
    return collapsed(this.find(`#record-${list}-${place}-${name}-hint`));
  }

  /** Day, minutes and effort of what was done, as they are shown. */
  doneOf(place: number, list: 'planned' | 'extra' = 'planned'): string[] {
    const day = this.dayField(place, list).selectedOptions[0]?.text.trim() ?? '';
    return [day, this.field(place, 'minutes', list).value, this.field(place, 'effort', list).value];
  }

  async typesIn(field: HTMLInputElement, text: string): Promise<this> {
    await this.fill(field, text);
    return this.press('Enter');
  }

  /** Chooses from a list by its text. */
  async picks(list: HTMLSelectElement, text: string): Promise<this> {
    const texts = [...list.options].map((option) => option.text.trim());
    if (!texts.includes(text)) throw new Error(`there is no "${text}" among ${texts.join()}`);
    return this.choose(list, texts.indexOf(text));
  }

  // A session that is added.

  get newMinutes(): HTMLInputElement {
    return this.find('.record-add input[name="minutes"]');
  }

  newList(name: 'day' | 'kind'): HTMLSelectElement {
    return this.find(`.record-add select[name="${name}"]`);
  }

  get newNote(): string {
    return collapsed(this.find('.record-add .hint'));
  }

  /** Adds a session by the keyboard: Enter in the minutes. */
  async adds(kind: string, minutes: string, day?: string): Promise<this> {
    await this.picks(this.newList('kind'), kind);
    if (day !== undefined) await this.picks(this.newList('day'), day);
    await this.fill(this.newMinutes, minutes);
    return this.press('Enter');
  }

  // Tables.

  /** A row of planned, done and left as numbers of minutes. */
  kind(category: CategoryId): number[] {
    const row = this.find<HTMLTableRowElement>(`.record-kinds tr[data-category="${category}"]`);
    return [...row.cells].slice(1).map((cell) => Number.parseInt(collapsed(cell), 10));
  }

  /** A table as it reads: rows of cells. */
  rows(selector: string): string[][] {
    return this.all<HTMLTableRowElement>(`${selector} tr`).map((row) => [...row.cells].map(collapsed));
  }

  // Boxes.

  async opens(name: RecordBox): Promise<this> {
    await this.click(this.find(`.record-${name} > summary`));
    return this.until(() => this.has(`.record-${name}[open] > :nth-child(2)`), `the box ${name} opens`);
  }

  async opensAll(): Promise<this> {
    for (const name of ['weeks', 'in', 'out'] as const) await this.opens(name);
    return this;
  }

  /** Why the rest of the week cannot be laid, or what that does. */
  get layHint(): string {
    return collapsed(this.find('#record-rest-hint'));
  }

  get layButton(): HTMLButtonElement {
    return this.button('Lay the rest of the week again');
  }
}

/** Monday of the week that the tests are in; all of it in the same year and month but for the first day. */
export const monday = '2026-11-30';
export const wednesday = '2026-12-02';
export const sunday = '2026-12-06';

/** Four hours: 20 and 50 slow, 35 tempo, 25 intervals, 35 cross, 25 and 50 strength; 240 minutes in seven sessions. */
export const scene = 'hours="4" phase="base" days="60,0,45,60,0,90,120"';

/** A planner with its record on an empty page, on a day. */
export async function openRecord(
  attributes = scene,
  panels = 'split week record',
  today = wednesday,
): Promise<RecordPage> {
  onDay(today);
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new RecordPage(await fixture<WeekwrightPlanner>(tag));
  await page.until(() => page.has('.record .panel-title'), 'the record comes');
  if (!panels.split(' ').includes('week')) return page;
  await page.until(() => page.has('.board .day'), 'the board comes');
  return page.laid();
}
