// Strength sessions as a person meets them.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { SeasonPage } from '../season/season-page.js';
import { collapsed } from '../text.js';

export type StrengthBox = 'lifted' | 'basis';

export class StrengthPage extends SeasonPage {
  /** The strength of the plan on show. */
  get strength() {
    const { strength } = shownPlan(this);
    if (!strength) throw new Error('the plan has no strength');
    return strength;
  }

  override get lead(): string {
    return collapsed(this.find('.strength .lead'));
  }

  override get notes(): string[] {
    return this.texts('.strength > .concrete-notes > li');
  }

  override get told(): string {
    return collapsed(this.find('.strength > [role="status"]'));
  }

  get panelText(): string {
    return collapsed(this.find('.strength'));
  }

  has(selector: string): boolean {
    return this.root.querySelector(selector) !== null;
  }

  get sessions(): HTMLElement[] {
    return this.all('.strength-session');
  }

  /** The movements of a session by name, in their order. */
  movements(session = 0): string[] {
    return this.summaries(session).map((summary) => collapsed(summary.querySelector('b') ?? summary));
  }

  /** What stands beside a movement: "3 × 10 on each side effort 6 of 10". */
  lineOf(movement: string, session = 0): string {
    return collapsed(this.summaryOf(movement, session)).slice(movement.length).trim();
  }

  summaryOf(movement: string, session = 0): HTMLElement {
    const found = this.summaries(session).find(
      (summary) => collapsed(summary.querySelector('b') ?? summary) === movement,
    );
    if (!found) throw new Error(`session ${String(session)} has no ${movement}`);
    return found;
  }

  /** The opened movement with all that is said of it. */
  detailsOf(movement: string, session = 0): HTMLDetailsElement {
    const details = this.summaryOf(movement, session).closest('details');
    if (!details) throw new Error(`${movement} cannot be opened`);
    return details;
  }

  async opensMovement(movement: string, session = 0): Promise<this> {
    await this.click(this.summaryOf(movement, session));
    return this.until(() => this.detailsOf(movement, session).querySelector('select') !== null, `${movement} opens`);
  }

  /** The list of forms of an opened movement. */
  formsOf(movement: string, session = 0): HTMLSelectElement {
    const list = this.detailsOf(movement, session).querySelector('select');
    if (!list) throw new Error(`${movement} is not open`);
    return list;
  }

  equipment(label: string): HTMLInputElement {
    const found = this.all<HTMLLabelElement>('.equipment label').find((each) => collapsed(each) === label);
    const box = found?.querySelector('input');
    if (!box) throw new Error(`there is no ${label}`);
    return box;
  }

  /** Ticks or unticks by the mouse. */
  async ticks(label: string): Promise<this> {
    return this.click(this.equipment(label));
  }

  async opens(name: StrengthBox): Promise<this> {
    await this.click(this.find(`.strength-${name} > summary`));
    return this.until(() => this.has(`.strength-${name} > :nth-child(2)`), `the box ${name} opens`);
  }

  async opensAll(): Promise<this> {
    for (const name of ['lifted', 'basis'] as const) await this.opens(name);
    for (const summary of this.all('.exercise > summary')) await this.click(summary);
    return this.until(() => this.all('.exercise:not(:has(select))').length === 0, 'every movement opens');
  }

  /** What is told of the heaviest single of a movement in the box of weights; '' where nothing is. */
  maximumOf(movement: string): string {
    const item = this.all('.lifted > li').find((each) => collapsed(each.querySelector('legend') ?? each) === movement);
    if (!item) throw new Error(`there is no field for ${movement}`);
    return [...item.querySelectorAll('p.quiet')].map(collapsed).join();
  }

  private summaries(session: number): HTMLElement[] {
    return [...(this.sessions[session]?.querySelectorAll<HTMLElement>('.exercise > summary') ?? [])];
  }
}

/** Four hours in build of a developing runner: two sessions of 35 and 40 minutes (tests/element/accessible-names.test.ts). */
export const scene = 'hours="4" phase="build" level="developing" equipment="band dumbbells"';

/** A planner with its strength on an empty page. */
export async function openStrength(attributes = scene, panels = 'split strength'): Promise<StrengthPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new StrengthPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.has('.strength .lead'), 'the panel comes');
}
