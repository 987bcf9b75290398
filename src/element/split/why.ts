import { html, nothing, type TemplateResult } from 'lit';
import { derivationLines, type DerivationLines, type ReadingLine } from '../../words/derivation-lines.js';
import type { RuleStepLine } from '../../words/rule-step-line.js';
import { citations } from '../../words/sources.js';
import { whyButton } from '../parts/why-button.js';
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
    ${lines === null ? nothing : details(view, lines)}
  </section>`;
}

function details(view: View, lines: DerivationLines): TemplateResult {
  const { words } = view;
  const row = (key: string, content: unknown): TemplateResult =>
    html`<div>
      <dt>${words.say(`derivation.${key}`)}</dt>
      <dd>${content}</dd>
    </div>`;
  const sources = citations([
    ...new Set([...lines.sources, ...lines.rules.filter(({ acted }) => acted).flatMap((rule) => rule.sources)]),
  ]);
  return html`${lines.failure === null ? nothing : html`<p class="wrong">${lines.failure}</p>`}
    ${lines.origin === null ? nothing : html`<p>${lines.origin}</p>`}
    <dl>
      ${lines.formula === null ? nothing : row('formula', lines.formula)}
      ${lines.readings.length === 0 ? nothing : row('readings', readings(view, lines.readings))}
      ${lines.rules.length === 0 ? nothing : row('rules', rules(lines.rules))}
      ${lines.byHand === null ? nothing : row('by-hand', lines.byHand)}
      ${lines.status === null ? nothing : row('status', lines.status)}
      ${lines.reason === null ? nothing : row('reason', lines.reason)}
      ${
        sources.length === 0
          ? nothing
          : row(
              'sources',
              html`<ul>
                ${sources.map(({ cite, doi }) => html`<li>${cite}${doi === null ? '' : `. doi:${doi}`}</li>`)}
              </ul>`,
            )
      }
    </dl>`;
}

function readings(view: View, lines: readonly ReadingLine[]): TemplateResult {
  return html`<ul>
    ${lines.map(
      ({ quantity, name, value, status }) =>
        html`<li>
          ${name}: ${whyButton(view, quantity, value)}
          ${status === null ? nothing : html`<small class="status">${status}</small>`}
        </li>`,
    )}
  </ul>`;
}

/** A rule that acted is told in full; one that did not, in a line. */
function rules(lines: readonly RuleStepLine[]): TemplateResult {
  return html`<ul>
    ${lines.map(({ acted, text, when, formula, status, reason }) =>
      acted
        ? html`<li class="acted">
            ${text}
            <small>${when}</small>
            <small>${formula}</small>
            ${reason === null ? nothing : html`<small>${reason}</small>`}
            ${status === null ? nothing : html`<small class="status">${status}</small>`}
          </li>`
        : html`<li class="quiet">${text}</li>`,
    )}
  </ul>`;
}
