// The handout as a person meets it: what is written on it, the ways to hand it over, and the boxes under them.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { ChecksPage } from '../checks/checks-page.js';
import { collapsed } from '../text.js';
import '../board/workers.js';

export type HandoutBox = (typeof handoutBoxes)[number];
export const handoutBoxes = ['look', 'calendar', 'open', 'content', 'keep'] as const;

export class HandoutPage extends ChecksPage {
  override get lead(): string {
    return collapsed(this.find('.handout .lead'));
  }

  override get title(): string {
    return collapsed(this.find('.handout .panel-title'));
  }

  /** What came of the last act. */
  override get message(): string {
    return collapsed(this.find('.handout .message'));
  }

  override get panelText(): string {
    return collapsed(this.find('.handout'));
  }

  /** What is in the panel, as a person reads it: `textOf('.p-lead')`. */
  textOf(selector: string): string {
    return collapsed(this.find(`.handout ${selector}`));
  }

  // Fields.

  get noteField(): HTMLTextAreaElement {
    return this.find('#handout-note');
  }

  /** Writes over what the note holds, and leaves the field. */
  async writeNote(text: string): Promise<this> {
    const { noteField } = this;
    noteField.focus();
    noteField.value = text;
    noteField.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    noteField.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  /** Pastes over what a field holds, and leaves the field: long texts are not typed letter by letter. */
  async paste(id: string, text: string): Promise<this> {
    const field = this.typedIn(id);
    field.focus();
    field.value = text;
    field.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    field.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  // Acts.

  handTool(name: string): HTMLButtonElement {
    return this.named('.handout .toolbar button', name);
  }

  async acts(name: string): Promise<this> {
    return this.click(this.handTool(name));
  }

  /** Presses a button of the panel by its text, wherever in it. */
  async pressesIn(name: string): Promise<this> {
    return this.click(this.named('.handout button', name));
  }

  /** Until something is said of the last act. */
  async hearsBack(part: string | RegExp): Promise<this> {
    const isSaid = (): boolean => (typeof part === 'string' ? this.message.includes(part) : part.test(this.message));
    return this.until(isSaid, `"${String(part)}" is said`);
  }

  // Boxes.

  async opensBox(name: HandoutBox): Promise<this> {
    const box = this.find<HTMLDetailsElement>(`.handout-${name}`);
    if (!box.open) await this.click(this.find(`.handout-${name} > summary`));
    return this.until(() => this.has(`.handout-${name}[open] > :nth-child(2)`), `the box ${name} opens`);
  }

  async opensEveryBox(): Promise<this> {
    for (const name of handoutBoxes) await this.opensBox(name);
    return this.until(() => !this.panelText.includes('Looking what is kept'), 'it is known what is kept');
  }

  tick(place = 0): HTMLInputElement {
    return this.at('.handout .tick-line input', place);
  }

  /** The only tick of a box. */
  tickOf(name: HandoutBox): HTMLInputElement {
    return this.find(`.handout-${name} .tick-line input`);
  }

  /** What a saved plan takes along, a line each. */
  get content(): string[] {
    return this.texts('.handout-content .plain-list li');
  }
}

/** Four hours in build of a developing runner. */
export const scene = 'hours="4" phase="build" level="developing"';
/** Seven days that the week finds room on. */
export const days = 'days="60,45,60,60,45,90,120"';

/** A planner with its handout on an empty page. */
export async function openHandout(attributes = scene, panels = 'split handout'): Promise<HandoutPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new HandoutPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.has('.handout .panel-title'), 'the panel comes');
}

/** The same with its sessions laid on days. */
export async function openWithDays(attributes = scene, panels = 'week handout'): Promise<HandoutPage> {
  const page = await openHandout(`${attributes} ${days}`, panels);
  return page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
}
