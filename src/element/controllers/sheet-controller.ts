import type { CSSResult, LitElement, ReactiveController } from 'lit';
import type { Outcome } from '../../problem.js';
import type { Plan } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import type { RawRequest } from '../../plan/read-request.js';
import type { Seat } from '../sheet/seat.js';
import type { Sheet } from '../sheet/sheet.js';
import type { DetailsController } from './details-controller.js';

/** Fetches the what-if sheet where a page shows it, and renders it in a task of its own after the other panels. */
export class SheetController implements ReactiveController {
  /** Settles when the sheet shows what the planner shows. */
  ready: Promise<void> = Promise.resolve();
  readonly #host: LitElement;
  readonly #more: DetailsController;
  readonly #show: Seat['show'];
  #sheet: Sheet | null = null;
  #isWanted = false;
  #isBusy = false;

  constructor(host: LitElement, more: DetailsController, show: Seat['show']) {
    this.#host = host;
    this.#more = more;
    this.#show = show;
    host.addController(this);
  }

  /** Fetches the sheet, and what it shows derivations with, once. */
  want(): void {
    if (this.#isWanted) return;
    this.#isWanted = true;
    this.#more.want();
    this.ready = this.#load();
  }

  /** The planner of the scenario on show; null where there is no sheet. */
  get planner(): Planner | null {
    return this.#sheet?.planner ?? null;
  }

  /** Another with every act on the sheet; null where there is no sheet. */
  get version(): unknown {
    return this.#sheet?.version ?? null;
  }

  plan(planner: Planner, request: RawRequest): Outcome<Plan> {
    return this.#sheet?.plan(planner.method, request) ?? planner.plan(request);
  }

  hostConnected(): void {
    addEventListener('hashchange', this.#openLink);
  }

  hostDisconnected(): void {
    removeEventListener('hashchange', this.#openLink);
  }

  hostUpdated(): void {
    if (!this.#sheet) return;
    this.#sheet.outdate();
    if (this.#isBusy) return;
    this.#isBusy = true;
    this.ready = this.#catchUp();
  }

  /** In tasks of its own: the slider that moves is served in between. */
  async #catchUp(): Promise<void> {
    try {
      do await new Promise((resolve) => setTimeout(resolve));
      while (this.#render());
    } finally {
      this.#isBusy = false;
    }
  }

  readonly #openLink = (): void => void this.#sheet?.openLink();

  /** True where more is to be rendered. */
  #render(): boolean {
    const { details, words } = this.#more;
    const container = this.#host.renderRoot.querySelector<HTMLElement>('.sheet');
    return container && details && words && this.#sheet ? this.#sheet.render(container, { words, details }) : false;
  }

  async #load(): Promise<void> {
    try {
      const [{ Sheet, styles }] = await Promise.all([import('../sheet/sheet.js'), this.#more.ready]);
      const adopt = (adopted: readonly CSSResult[]): void => {
        this.#more.adopt(adopted);
      };
      adopt(styles);
      this.#sheet = new Sheet({ host: this.#host, show: this.#show, adopt });
      const settle = (): void => this.#sheet?.settle();
      this.#host.renderRoot.addEventListener('change', settle);
      this.#host.requestUpdate();
    } catch {
      // The network is gone: the other panels work on, and the next change tries again.
      this.#isWanted = false;
      const place = this.#host.renderRoot.querySelector<HTMLElement>('.sheet');
      if (place && this.#more.words) place.dataset['loading'] = this.#more.words.say('planner.not-loaded');
    }
  }
}
