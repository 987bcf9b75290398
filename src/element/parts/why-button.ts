import { html, nothing, type TemplateResult } from 'lit';
import type { Asker } from '../view.js';

interface WhyAsker extends Asker {
  /** What a listener is told in place of a text that does not say what it is of; ends with the text. */
  readonly name?: string;
}

/** A number that answers why it is so: pressing it opens its derivation, pressing it again closes it. */
export function whyButton({ words, asked, act, name }: WhyAsker, quantity: string, text: string): TemplateResult {
  const isOpen = asked === quantity;
  return html`<button
    type="button"
    class="why-number"
    data-quantity=${quantity}
    aria-label=${name ?? nothing}
    aria-expanded=${isOpen ? 'true' : 'false'}
    aria-controls="why"
    title=${words.say('planner.why-number')}
    @click=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLElement) act.ask(isOpen ? null : quantity, currentTarget);
    }}
  >
    ${text}
  </button>`;
}
