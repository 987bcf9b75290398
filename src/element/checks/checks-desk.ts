import type { ChecksMaker } from '../../plan/checks/checks-maker.js';
import { createChecksMaker } from '../../plan/checks/create-checks-maker.js';
import { readChecks } from '../../plan/checks/read-checks.js';
import type { Pupil } from '../../plan/scenarios/makers.js';
import type { ChecksRequest } from '../../plan/checks/wishes.js';
import { ConcretePanel } from '../concrete/concrete-panel.js';
import type { PageSays } from '../controllers/late-panel-controller.js';

interface Made {
  /** What was told. */
  readonly by: unknown;
  readonly maker: ChecksMaker;
}

/** The checks of a planner, which scenarios are held against too. */
export class ChecksDesk extends ConcretePanel<ChecksRequest> {
  #made: Made | null = null;

  /** What a person has answered outlives whatever a page says next. */
  override hear(page: PageSays): void {
    const { held } = this;
    super.hear(page);
    this.held = held;
  }

  /** Makes the scenarios beside a planner know of checks, by what is told now. */
  instruct(_: unknown, scenarios: Pupil | null): void {
    const by = this.version;
    if (this.#made?.by !== by) this.#made = this.#make(by);
    if (this.#made) scenarios?.teach({ checks: this.#made.maker });
  }

  /** What cannot be read is told; until then all goes on as before. */
  #make(by: unknown): Made | null {
    const read = readChecks(by);
    return read.ok ? { by, maker: createChecksMaker(read.value.wishes) } : this.#made;
  }
}
