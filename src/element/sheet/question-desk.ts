import type { CSSResult, TemplateResult } from 'lit';
import type { QuestionView } from './questions/question-view.js';
import type { QuestionNeeds, Questions } from './questions/questions.js';

export const questionIds = ['sweep', 'backwards', 'influence'] as const;
export type QuestionId = (typeof questionIds)[number];

/** Questions that can be asked, once they are fetched. */
interface Asked {
  readonly questions: Questions;
  readonly boxes: Readonly<Record<QuestionId, (view: QuestionView) => TemplateResult>>;
}

/** Knows which questions are open, and fetches what answers them when the first one is. */
export class QuestionDesk {
  asked: Asked | null = null;
  readonly #open = new Set<QuestionId>();
  readonly #needs: QuestionNeeds;
  readonly #adopt: (styles: readonly CSSResult[]) => void;

  /** Settles when what was asked for last is there. */
  ready: Promise<void> = Promise.resolve();

  constructor(needs: QuestionNeeds, adopt: (styles: readonly CSSResult[]) => void) {
    this.#needs = needs;
    this.#adopt = adopt;
  }

  isOpen(id: QuestionId): boolean {
    return this.#open.has(id);
  }

  toggle(id: QuestionId, isOpen: boolean): void {
    if (isOpen === this.#open.has(id)) return;
    if (isOpen) this.#open.add(id);
    else this.#open.delete(id);
    if (this.asked) this.#needs.update();
    else this.ready = this.#load();
  }

  async #load(): Promise<void> {
    // Where the network is gone the box stays empty, and opening it again tries again.
    const loaded = await import('./questions/question-boxes.js').catch(() => null);
    if (!loaded || this.asked) return;
    const { Questions, boxes, styles } = loaded;
    this.#adopt(styles);
    this.asked = { questions: new Questions(this.#needs), boxes };
    this.#needs.update();
  }
}
