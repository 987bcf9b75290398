import type { CSSResult, LitElement, ReactiveController } from 'lit';
import type { Plan, PlanInputs } from '../../plan/document.js';
import type { Planner } from '../../plan/planner.js';
import type { Pupil } from '../../plan/scenarios/makers.js';
import type { Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { Details, View } from '../view.js';
import type { DetailsController } from './details-controller.js';

/** A view whose derivations and problems are at hand. */
export interface FullView extends View {
  readonly details: Details;
}

/** What a page may say to the panels that are fetched. */
export interface PageSays extends Readonly<
  Record<keyof PlanInputs | 'season' | 'running' | 'strength' | 'checks', unknown>
> {
  readonly days: string | null | undefined;
  readonly eventDate: string | null | undefined;
  readonly mostHours: number | null | undefined;
  readonly race: string | null | undefined;
  readonly equipment: string | null | undefined;
  readonly contact: string | null | undefined;
  readonly storage: string | null | undefined;
}

/** A panel that is fetched where a page shows it, and rendered after the other panels. */
export interface LatePanel {
  /** What is wrong with what the page says to it. */
  readonly problems?: readonly Problem[];
  /** What was typed on it and is no value. */
  readonly drafted?: readonly Problem[];
  /** Another whenever a plan made before is stale. */
  readonly version?: unknown;
  /** Takes over what the page says, where that is something new. */
  hear?(page: PageSays): void;
  /** Makes a planner, and the scenarios beside it, know of its part of a plan. */
  instruct?(planner: Planner, scenarios: Pupil | null): void;
  /** The plan with its part. */
  complete?(plan: Plan, method: Method): Plan;
  /** What a person has set on it is as the page says it again. */
  reset?(): void;
  /** Something has changed: what is rendered from now on shows it. */
  outdate(): void;
  /** Renders as much as fits into a task; true where more is to come. */
  render(container: HTMLElement, view: FullView): boolean;
}

/** What a late panel is made of. */
export interface LateParts<P extends LatePanel> {
  /** Where it stands: `.sheet`. */
  readonly place: string;
  readonly load: () => Promise<() => { readonly panel: P; readonly styles: readonly CSSResult[] }>;
  /** What there is to render; null while nothing is. */
  readonly view: () => View | null;
}

/** Fetches a panel where a page shows it, and renders it in a task of its own after the others. */
export class LatePanelController<P extends LatePanel> implements ReactiveController {
  /** Settles when the panel shows what the planner shows. */
  ready: Promise<void> = Promise.resolve();
  panel: P | null = null;
  readonly #host: LitElement;
  readonly #more: DetailsController;
  readonly #parts: LateParts<P>;
  #isWanted = false;
  #isBusy = false;

  constructor(host: LitElement, more: DetailsController, parts: LateParts<P>) {
    this.#host = host;
    this.#more = more;
    this.#parts = parts;
    host.addController(this);
  }

  /** Fetches the panel, and what it shows derivations with, once. */
  want(): void {
    if (this.#isWanted) return;
    this.#isWanted = true;
    this.#more.want();
    this.ready = this.#load();
  }

  hostUpdated(): void {
    this.panel?.outdate();
    if (!this.panel || this.#isBusy) return;
    this.#isBusy = true;
    this.ready = this.#catchUp();
  }

  get #place(): HTMLElement | null {
    return this.#host.renderRoot.querySelector<HTMLElement>(this.#parts.place);
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

  /** True where more is to be rendered. */
  #render(): boolean {
    const container = this.#place;
    const view = this.#parts.view();
    const { details } = this.#more;
    return container && view && details && this.panel ? this.panel.render(container, { ...view, details }) : false;
  }

  async #load(): Promise<void> {
    try {
      const [make] = await Promise.all([this.#parts.load(), this.#more.ready]);
      // Not before all is there: what is put on show meanwhile would find no panel.
      const { panel, styles } = make();
      this.#more.adopt(styles);
      this.panel = panel;
      this.#host.requestUpdate();
    } catch {
      // The network is gone: the other panels work on, and the next change tries again.
      this.#isWanted = false;
      const place = this.#place;
      if (place && this.#more.words) place.dataset['loading'] = this.#more.words.say('planner.not-loaded');
    }
  }
}
