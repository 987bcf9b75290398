// What every number rests on, as a person meets it.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { SeasonPage } from '../season/season-page.js';
import { collapsed } from '../text.js';

export class BasisPage extends SeasonPage {
  override get lead(): string {
    return collapsed(this.find('.basis-panel .lead'));
  }

  /** The boxes of a section: 0 the differences, 1 the areas. */
  boxes(section: 0 | 1): HTMLDetailsElement[] {
    return [...this.at('.basis-panel > section', section).querySelectorAll('details')];
  }

  titles(section: 0 | 1): string[] {
    return this.boxes(section).map((each) => collapsed(each.querySelector('summary') ?? each));
  }

  async opensAll(): Promise<this> {
    for (const details of this.all<HTMLDetailsElement>('.basis-panel details')) details.open = true;
    return this.settled();
  }
}

/** A planner with what it rests on, on an empty page. */
export async function openBasis(attributes = '', panels = 'split basis'): Promise<BasisPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new BasisPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.root.querySelector('.basis-panel .lead') !== null, 'the panel comes');
}
