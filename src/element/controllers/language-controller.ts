import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { firstWords, loadWords, matchLanguage } from '../../words/load-words.js';
import type { Words } from '../../words/words.js';

/** Keeps the words of the language in which the planner stands: its own `lang`, else that of the nearest ancestor. */
export class LanguageController implements ReactiveController {
  words: Words | null = null;
  /** Settles when the words last asked for are there. */
  ready: Promise<void> = Promise.resolve();
  readonly #host: ReactiveControllerHost & Element;
  #wanted: string | null = null;
  #isComplete = false;
  readonly #around = new MutationObserver(() => {
    this.refresh();
  });

  constructor(host: ReactiveControllerHost & Element) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    const options = { attributeFilter: ['lang'], subtree: true };
    this.#around.observe(document, options);
    // In a shadow root the document does not see it.
    this.#around.observe(this.#host, options);
    this.refresh();
  }

  hostDisconnected(): void {
    this.#around.disconnect();
  }

  /** Looks at `lang` again. */
  refresh(): void {
    const tag = languageAround(this.#host);
    if (tag === this.#wanted) return;
    this.#wanted = tag;
    if (matchLanguage(tag) === 'en' && !this.#isComplete) this.#use(firstWords);
    else this.ready = this.#load(tag);
  }

  /** Fetches all words of the language, those of derivations and problems too, and from now on of every other. */
  complete(): void {
    this.#isComplete = true;
    this.ready = this.#load(this.#wanted ?? '');
  }

  async #load(tag: string): Promise<void> {
    // A file of texts that cannot be fetched leaves the planner with the English it has: it still works.
    const words = await loadWords(tag).catch(() => this.words ?? firstWords);
    if (tag === this.#wanted && words !== this.words) this.#use(words);
  }

  #use(words: Words): void {
    this.words = words;
    this.#host.requestUpdate();
  }
}

/** The `lang` of the element or of its nearest ancestor that has one, through shadow roots. */
function languageAround(element: Element): string {
  const holder = element.closest('[lang]');
  if (holder) return holder.getAttribute('lang') ?? '';
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? languageAround(root.host) : '';
}
