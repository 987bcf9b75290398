// The checks as a person meets them.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { SeasonPage } from '../season/season-page.js';
import { collapsed } from '../text.js';

export type ChecksBox = 'start' | 'load' | 'own';
export type Question = (typeof questions)[number];

/** The questions before the start, in the order in which they stand; shared/evidence E01, E02, E03, E05. */
export const questions = [
  ...['symptoms', 'bone-pain', 'known-disease', 'not-active', 'easy-only'],
  ...['pain', 'pregnant', 'recent-birth', 'low-energy'],
] as const;

export class ChecksPage extends SeasonPage {
  /** What the plan on show says of what was told, and of the load. */
  get load() {
    const { load } = shownPlan(this);
    if (!load) throw new Error('the plan has no load');
    return load;
  }

  override get lead(): string {
    return collapsed(this.find('.checks .lead'));
  }

  get title(): string {
    return collapsed(this.find('.checks .panel-title'));
  }

  override get told(): string {
    return collapsed(this.find('.checks > [role="status"]'));
  }

  get panelText(): string {
    return collapsed(this.find('.checks'));
  }

  has(selector: string): boolean {
    return this.root.querySelector(selector) !== null;
  }

  /** The checks on show by their ids. */
  get ids(): string[] {
    return this.all('.check').map(({ dataset }) => dataset['check'] ?? '');
  }

  check(id: string): HTMLDetailsElement {
    return this.find(`.check[data-check="${id}"]`);
  }

  summaryOf(id: string): HTMLElement {
    return this.find(`.check[data-check="${id}"] > summary`);
  }

  /** A part of a check as it reads: `says`, `range`, `change`. */
  partOf(id: string, part: string): string {
    return collapsed(this.find(`.check[data-check="${id}"] .check-${part}`));
  }

  /** What would have to be told, with the checks that wait for it. */
  get unknown(): string[] {
    return this.texts('.unknown > li');
  }

  // Boxes.

  async opens(name: ChecksBox): Promise<this> {
    await this.click(this.find(`.checks-${name} > summary`));
    return this.until(() => this.has(`.checks-${name}[open] > :nth-child(2)`), `the box ${name} opens`);
  }

  async opensAll(): Promise<this> {
    for (const name of ['start', 'load', 'own'] as const) await this.opens(name);
    await this.click(this.find('.checks-start details > summary'));
    for (const details of this.all<HTMLDetailsElement>('.check')) details.open = true;
    return this.settled();
  }

  // What is told.

  get weeks(): HTMLTextAreaElement {
    return this.find('#checks-weeks');
  }

  /** Writes over what the weeks hold, and leaves the field. */
  async tellWeeks(text: string): Promise<this> {
    const { weeks } = this;
    weeks.focus();
    weeks.value = text;
    weeks.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    weeks.dispatchEvent(new Event('change', { bubbles: true }));
    return this.settled();
  }

  // Before the start.

  question(id: Question): HTMLInputElement {
    return this.at('.answers input[type="checkbox"]', questions.indexOf(id));
  }

  get answers(): Question[] {
    return questions.filter((id) => this.question(id).checked);
  }

  /** Ticks or unticks by the mouse. */
  async ticks(...ids: readonly Question[]): Promise<this> {
    for (const id of ids) await this.click(this.question(id));
    return this.settled();
  }

  /** What is said of the answers; empty where nothing is. */
  get advice(): string[] {
    return this.texts('.advice > p');
  }

  get forgetButton(): HTMLButtonElement {
    return this.named('.checks-start button.act', 'Forget the answers');
  }
}

/** Four hours in build of a developing runner. */
export const scene = 'hours="4" phase="build" level="developing"';

/** A planner with its checks on an empty page. */
export async function openChecks(attributes = scene, panels = 'split checks'): Promise<ChecksPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new ChecksPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.has('.checks .panel-title'), 'the panel comes');
}
