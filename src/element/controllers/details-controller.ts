import type { CSSResult, LitElement } from 'lit';
import type { Problem } from '../../problem.js';
import type { Words } from '../../words/words.js';
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
  readonly want = (): void => {
    if (this.#isWanted) return;
    this.#isWanted = true;
    this.ready = this.#load();
  };

  get words(): Words | null {
    return this.#language.words;
  }

  /** A problem as a sentence; nothing while the words for it are not there. */
  say(problem: Problem): string {
    return (this.words && this.details?.sayProblem(this.words, problem)) ?? '';
  }

  /** Adds styles that came with a chunk. */
  adopt(styles: readonly CSSResult[]): void {
    const root = this.#host.renderRoot;
    const sheets = styles.flatMap(({ styleSheet }) => styleSheet ?? []);
    if (root instanceof ShadowRoot) root.adoptedStyleSheets = [...new Set([...root.adoptedStyleSheets, ...sheets])];
  }

  async #load(): Promise<void> {
    try {
      this.#language.complete();
      const [details] = await Promise.all([import('../details.js'), this.#language.ready]);
      this.details = details;
      this.adopt([details.styles]);
      this.#host.requestUpdate();
    } catch {
      // The network is gone: the planner works on, and the next question tries again.
      this.#isWanted = false;
    }
  }
}
