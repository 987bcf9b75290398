// Tables that are brought into a record: pasted, opened or dropped, and how they are read.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { collapsed } from '../text.js';
import { onDay } from './on-day.js';
import { RecordPage, wednesday } from './record-page.js';

export class TablePage extends RecordPage {
  get paste(): HTMLTextAreaElement {
    return this.find('#record-paste');
  }

  /** Puts a table in place of what the field holds, as pasting does, and leaves the field. */
  async pastes(text: string): Promise<this> {
    this.paste.focus();
    this.paste.select();
    document.execCommand('insertText', false, text);
    return this.press('Tab');
  }

  /** The same for tables that take long to type: the events alone. */
  async enters(text: string): Promise<this> {
    this.paste.focus();
    this.paste.value = text;
    this.paste.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    this.paste.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  /** Chooses a file as the browser's own dialogue does. */
  async opensFile(file: File): Promise<this> {
    const input = this.find<HTMLInputElement>('.record-in input[type="file"]');
    const transfer = new DataTransfer();
    transfer.items.add(file);
    input.files = transfer.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  /** Drags over the planner with a file, or lets it fall. */
  dragFile(type: 'dragenter' | 'dragover' | 'dragleave' | 'drop', file: File): DragEvent {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(file);
    const event = new DragEvent(type, { dataTransfer, bubbles: true, composed: true, cancelable: true });
    this.find('.record .panel-title').dispatchEvent(event);
    return event;
  }

  /** Until the table is read, or it is known that it cannot be. */
  async readTable(): Promise<this> {
    return this.until(() => this.has('.import-mapping') || this.faults.length > 0, 'the table is read');
  }

  /** What is wrong with the table as a whole. */
  get faults(): string[] {
    return this.texts('.record-in div[role="status"] > .wrong');
  }

  // How it is read.

  /** The list of a field, of the dates, of the lengths or of a kind, by its label. */
  override list(label: string): HTMLSelectElement {
    const found = this.all('.import-select').find((each) => labelOf(each) === label);
    const list = found?.querySelector('select');
    if (!list) throw new Error(`there is no list called "${label}"`);
    return list;
  }

  chosen(label: string): string {
    return this.list(label).selectedOptions[0]?.text.trim() ?? '';
  }

  /** What each list says: "Date: Day". */
  get mapping(): string[] {
    return this.all('.import-select').map(
      (each) => `${labelOf(each)}: ${each.querySelector('select')?.selectedOptions[0]?.text.trim() ?? ''}`,
    );
  }

  async maps(label: string, text: string): Promise<this> {
    return this.picks(this.list(label), text);
  }

  // What it says.

  /** How many lines are understood, and what is not used. */
  get result(): string {
    return collapsed(this.find('.record-in > p[role="status"]'));
  }

  /** The lines that are understood. */
  get understood(): string[][] {
    return this.rows('.import-read').slice(1);
  }

  /** The lines that are not, and why. */
  get unread(): string[] {
    return this.texts('.import-unread > li');
  }

  get takeButton(): HTMLButtonElement {
    return this.find('.record-in > p:last-child button.act');
  }

  /** What stands beside the button: what is known, what is too much. */
  get takeNotes(): string[] {
    return this.texts('.record-in > p:last-child span');
  }

  async takesOver(): Promise<this> {
    return this.click(this.takeButton);
  }
}

/** The text of a label without that of the list in it. */
const labelOf = (label: HTMLElement): string =>
  [...label.childNodes]
    .filter((node) => node instanceof Text)
    .map(collapsed)
    .join('');

/** A planner whose box for tables is open. */
export async function openTables(
  attributes = 'hours="4" phase="base"',
  panels = 'record',
  today = wednesday,
): Promise<TablePage> {
  onDay(today);
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new TablePage(await fixture<WeekwrightPlanner>(tag));
  await page.until(() => page.has('.record .panel-title'), 'the record comes');
  await page.opens('in');
  return page;
}

export const tableFile = (text: string, name = 'sessions.csv'): File => new File([text], name, { type: 'text/csv' });
