import { html, nothing, type TemplateResult } from 'lit';
import type { DerivationLines, ReadingLine } from '../../words/derivation-lines.js';
import { headed } from '../../words/joined.js';
import type { RuleStepLine } from '../../words/rule-step-line.js';
import { citations } from '../../words/sources.js';
import type { Asker } from '../view.js';
import { whyButton } from './why-button.js';
import { citationText } from './citation-text.js';

/** A derivation line by line; the values that a formula reads can be asked in turn. */
export function derivation(asker: Asker, lines: DerivationLines): TemplateResult {
  const { words } = asker;
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
      ${lines.readings.length === 0 ? nothing : row('readings', readings(asker, lines.readings))}
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
                ${sources.map((source) => html`<li>${citationText(source)}</li>`)}
              </ul>`,
            )
      }
    </dl>`;
}

function readings(asker: Asker, lines: readonly ReadingLine[]): TemplateResult {
  return html`<ul>
    ${lines.map(
      ({ quantity, name, value, status }) =>
        html`<li>
          <span aria-hidden="true">${headed(asker.words, name, '')}</span
          >${whyButton({ ...asker, name: headed(asker.words, name, value) }, quantity, value)}
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
