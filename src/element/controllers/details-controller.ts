import type { LitElement } from 'lit';
import type { Details } from '../view.js';
import type { LanguageController } from './language-controller.js';

/** Fetches, when first needed, what shows derivations and problems, with the words for them. */
export class DetailsController {
  details: Details | null = null;
  /** Settles when the details last asked for are there. */
  ready: Promise<void> = Promise.resolve();
  readonly #host: LitElement;
  readonly #language: LanguageController;
  #isWanted = false;

  constructor(host: LitElement, language: LanguageController) {
    this.#host = host;
    this.#language = language;
  }

  /** Fetches the details, once. */
  want(): void {
    if (this.#isWanted) return;
    this.#isWanted = true;
    this.ready = this.#load();
  }

  #adopt({ styleSheet }: Details['styles']): void {
    const root = this.#host.renderRoot;
    if (styleSheet && root instanceof ShadowRoot) root.adoptedStyleSheets.push(styleSheet);
  }

  async #load(): Promise<void> {
    try {
      this.#language.complete();
      const [details] = await Promise.all([import('../details.js'), this.#language.ready]);
      this.details = details;
      this.#adopt(details.styles);
      this.#host.requestUpdate();
    } catch {
      // The network is gone: the planner works on, and the next question tries again.
      this.#isWanted = false;
    }
  }
}
