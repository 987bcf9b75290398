import type { LitElement } from 'lit';

/** Knows which derivation is open; one that opens takes the focus, and gives it back to the number it was asked from. */
export class WhyController {
  /** The quantity whose derivation is open. */
  asked: string | null = null;
  readonly #host: LitElement;
  #opener: HTMLElement | null = null;

  constructor(host: LitElement) {
    this.#host = host;
  }

  readonly ask = (quantity: string | null, from?: HTMLElement): void => {
    // From a derivation one goes on to other numbers; on closing, the focus goes back to the one before it.
    if (from && !from.closest('#why')) this.#opener = from;
    this.asked = quantity;
    this.#host.requestUpdate();
    void this.#moveFocus();
  };

  async #moveFocus(): Promise<void> {
    await this.#host.updateComplete;
    const target = this.asked === null ? this.#opener : this.#host.renderRoot.querySelector<HTMLElement>('#why-title');
    target?.focus({ preventScroll: true });
    target?.scrollIntoView({ block: 'nearest' });
  }
}
