import type { CSSResult } from 'lit';
import type { BoxId, SeasonBoxes } from './season-view.js';

/** Knows which boxes are open, and fetches what is in them when the first one is. */
export class BoxDesk implements SeasonBoxes {
  boxes: SeasonBoxes['boxes'] = null;
  /** Settles when what was asked for last is there. */
  ready: Promise<void> = Promise.resolve();
  readonly #open = new Set<BoxId>();
  readonly #update: () => void;
  readonly #adopt: (styles: readonly CSSResult[]) => void;

  /** @param adopt adds the styles that come with the boxes. */
  constructor(update: () => void, adopt: (styles: readonly CSSResult[]) => void) {
    this.#update = update;
    this.#adopt = adopt;
  }

  isOpen(id: BoxId): boolean {
    return this.#open.has(id);
  }

  toggle(id: BoxId, isOpen: boolean): void {
    if (isOpen === this.#open.has(id)) return;
    if (isOpen) this.#open.add(id);
    else this.#open.delete(id);
    if (this.boxes) this.#update();
    else this.ready = this.#load();
  }

  async #load(): Promise<void> {
    // Where the network is gone the box stays empty, and opening it again tries again.
    const loaded = await import('./boxes.js').catch(() => null);
    if (loaded) this.#adopt(loaded.styles);
    this.boxes ??= loaded?.boxes ?? null;
    this.#update();
  }
}
