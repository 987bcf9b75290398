import { html, type TemplateResult } from 'lit';
import { phaseIds } from '../../training/method/ids.js';
import { seasonReasons } from '../../words/season/season-reasons.js';
import { cited, reasonList } from '../concrete/reason-list.js';
import type { SeasonView } from './season-view.js';

/** What the numbers of the season rest on, with sources; and what the literature calls the phases. */
export function basisBox({ words, method }: SeasonView): TemplateResult {
  const terms = phaseIds.map((phase) =>
    words.say('season.basis.term', { phase: words.say(`phase.${phase}`), term: words.say(`phase-term.${phase}`) }),
  );
  return html`${reasonList(seasonReasons(words, method))}
    <p>${words.say('season.basis.terms', { terms: words.list(terms) })}</p>
    ${cited(['C20', 'C21'])}`;
}
