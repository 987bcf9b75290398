import { html, nothing, type TemplateResult } from 'lit';
import { derivationLines } from '../../words/derivation-lines.js';
import { derivation } from '../parts/derivation.js';
import type { View } from '../view.js';

/** Why a number is what it is: formula, the values it reads (each of which can be asked in turn), rules, status, sources. */
export function why(view: View): TemplateResult {
  const { words, method, plan, asked, act } = view;
  const lines = asked === null ? null : derivationLines(words, { method, plan }, asked);
  const close = (): void => {
    act.ask(null);
  };
  return html`<section
    id="why"
    class="why"
    part="why"
    aria-labelledby="why-title"
    ?hidden=${lines === null}
    @keydown=${(event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      // The key has done its work: a dialog around the planner stays open.
      event.preventDefault();
      event.stopPropagation();
      close();
    }}
  >
    <header>
      <h3 id="why-title" tabindex="-1">${lines?.title ?? words.say('derivation.why')}</h3>
      <button type="button" class="plain" @click=${close}>${words.say('derivation.close')}</button>
    </header>
    ${lines === null ? nothing : derivation(view, lines)}
  </section>`;
}
