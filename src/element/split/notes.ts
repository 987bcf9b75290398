import { html, nothing, type TemplateResult } from 'lit';
import { actedRules } from '../../words/acted-rules.js';
import type { View } from '../view.js';

/**
 * Which rules acted and what is worth knowing. Most weeks have nothing of it: the sentences come with the details. Room is
 * kept, so that nothing jumps when one comes.
 */
export function notes(view: View): TemplateResult {
  return html`<div class="notes" part="notes">${view.details?.noteLines(view) ?? quietNotes(view)}</div>`;
}

function quietNotes({ words, plan }: View): TemplateResult {
  return html`<section aria-labelledby="rules-title">
    <h3 id="rules-title">${words.say('planner.rules')}</h3>
    ${actedRules(plan).length > 0 ? nothing : html`<p class="quiet">${words.say('planner.no-rules')}</p>`}
  </section>`;
}
