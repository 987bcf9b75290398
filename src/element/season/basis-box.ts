import { html, type TemplateResult } from 'lit';
import { phaseIds } from '../../training/method/ids.js';
import { seasonReasons } from '../../words/season/season-reasons.js';
import { citations } from '../../words/sources.js';
import type { SeasonView } from './season-view.js';

/** What the numbers of the season rest on, with sources; and what the literature calls the phases. */
export function basisBox({ words, method }: SeasonView): TemplateResult {
  const terms = phaseIds.map((phase) =>
    words.say('season.basis.term', { phase: words.say(`phase.${phase}`), term: words.say(`phase-term.${phase}`) }),
  );
  return html`${seasonReasons(words, method).map(
      ({ text, status, sources }) =>
        html`<p>${text} <span class="status">(${status})</span></p>
          ${cited(sources)}`,
    )}
    <p>${words.say('season.basis.terms', { terms: words.list(terms) })}</p>
    ${cited(['C20', 'C21'])}`;
}

function cited(sources: readonly string[]): TemplateResult {
  return html`<ul>
    ${citations(sources).map(({ cite, doi }) => html`<li><small>${cite}${doi === null ? '' : `. doi:${doi}`}</small></li>`)}
  </ul>`;
}
