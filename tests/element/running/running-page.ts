// Paces and runs as a person meets them.
import { fixture } from '@open-wc/testing';
import type { WeekwrightPlanner } from '../../../src/index.js';
import { shownPlan } from '../planner-page.js';
import { SeasonPage } from '../season/season-page.js';
import { collapsed } from '../text.js';

export type RunningBox = 'heart' | 'equal' | 'basis';

export class RunningPage extends SeasonPage {
  /** The running of the plan on show. */
  get running() {
    const { running } = shownPlan(this);
    if (!running) throw new Error('the plan has no running');
    return running;
  }

  override get lead(): string {
    return collapsed(this.find('.running .lead'));
  }

  override get notes(): string[] {
    return this.texts('.running > .concrete-notes > li');
  }

  override get told(): string {
    return collapsed(this.find('.running > [role="status"]'));
  }

  /** What all of it says. */
  get panelText(): string {
    return collapsed(this.find('.running'));
  }

  /** The paces of a kind: "4:40–5:35 a kilometre"; '' while none is known. */
  paceOf(kind: 'slow' | 'tempo' | 'intervals'): string {
    return this.texts(`.guides [data-category="${kind}"] .pace`).join();
  }

  /** All that is said of how a kind is run. */
  guideOf(kind: 'slow' | 'tempo' | 'intervals'): string {
    return collapsed(this.find(`.guides [data-category="${kind}"]`));
  }

  /** What stands over each run: "Slow running 70 min 10.4 to 12.4 km". */
  get runHeads(): string[] {
    return this.texts('.runs .run-head');
  }

  /** What each run is made of. */
  get runLines(): string[] {
    return this.texts('.runs li > p:last-child');
  }

  has(selector: string): boolean {
    return this.root.querySelector(selector) !== null;
  }

  /** Chooses a distance of the list by its name. */
  async chooseDistance(name: string): Promise<this> {
    return this.chooseText(this.selectOf('running-distance'), name);
  }

  /** Opens a box with the mouse. */
  async opens(name: RunningBox): Promise<this> {
    await this.click(this.find(`.running-${name} > summary`));
    return this.until(() => this.has(`.running-${name} > :nth-child(2)`), `the box ${name} opens`);
  }

  async opensAll(): Promise<this> {
    for (const name of ['heart', 'equal', 'basis'] as const) if (this.has(`.running-${name}`)) await this.opens(name);
    return this;
  }

  /** The table of equal times: rows of cells. */
  get equalTimes(): string[][] {
    return this.all<HTMLTableRowElement>('.equal-times tr').map((row) => [...row.cells].map(collapsed));
  }
}

export const scene = 'hours="4" phase="build" level="developing"';

/** A planner with paces and runs on an empty page. */
export async function openRunning(attributes = scene, panels = 'split running'): Promise<RunningPage> {
  const tag = `<weekwright-planner panels="${panels}" ${attributes}></weekwright-planner>`;
  const page = new RunningPage(await fixture<WeekwrightPlanner>(tag));
  return page.until(() => page.has('.running .lead'), 'the panel comes');
}
