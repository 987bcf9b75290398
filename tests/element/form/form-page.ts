// A planner that is a field of a form, as the page and a person meet it.
import { expect, fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { HandoutPage } from '../handout/handout-page.js';
import { shownPlan } from '../planner-page.js';

export class FormPage extends HandoutPage {
  get form(): HTMLFormElement {
    const { form } = this.element;
    if (!form) throw new Error('the planner has no form');
    return form;
  }

  /** What the form would send under the name of the planner. */
  get entry(): FormDataEntryValue | null {
    return new FormData(this.form).get('plan');
  }

  /** The plan on show as a form sends it. */
  get planText(): string {
    return JSON.stringify(shownPlan(this));
  }

  /** That the form would send the plan on show. */
  expectEntry(): void {
    expect(this.entry).to.equal(this.planText);
  }

  async resets(): Promise<this> {
    this.form.reset();
    return this.settled();
  }

  async sets(value: string): Promise<this> {
    this.element.value = value;
    return this.settled();
  }
}

export const allPanels = 'split week running strength checks season record handout sheet basis';

/** Everything that a page can say with attributes; the days hold the sessions without a search worth the name. */
export const whole = [
  'hours="4" phase="base" level="developing" event="half-marathon" strength-cap="100"',
  'days="60,45,60,60,45,90,120" event-date="2027-04-11" race="10k 48:00" equipment="band"',
].join(' ');

/** A form with a planner called "plan" in it. */
export async function openForm(attributes = '', { name = 'name="plan"', around = '' } = {}): Promise<FormPage> {
  const form = await fixture<HTMLFormElement>(
    `<form>${around}<weekwright-planner ${name} ${attributes}></weekwright-planner></form>`,
  );
  return pageIn(form);
}

/** The planner in a place, once it is settled and every panel of it has come. */
export async function pageIn(place: ParentNode, selector = 'weekwright-planner'): Promise<FormPage> {
  const element = place.querySelector<WeekwrightPlanner>(selector);
  if (!element) throw new Error(`there is no ${selector}`);
  const page = new FormPage(element);
  await page.settled();
  return page.until(
    () => page.all('[data-loading]').every(({ childElementCount }) => childElementCount > 0),
    'panels come',
  );
}

/** The same with all ten panels, the sheet with its scenario. */
export async function openWholeForm(attributes = whole): Promise<FormPage> {
  const page = await openForm(`panels="${allPanels}" ${attributes}`);
  await page.until(() => page.has('.grid') && page.has('.board .card'), 'the sheet and the board are there');
  return page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
}
