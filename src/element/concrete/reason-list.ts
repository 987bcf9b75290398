import { html, type TemplateResult } from 'lit';
import type { Reason } from '../../words/reason.js';
import { citations } from '../../words/sources.js';
import { citationText } from '../parts/citation-text.js';

/** What numbers rest on, with their sources. */
export const reasonList = (reasons: readonly Reason[]): TemplateResult =>
  html`${reasons.map(
    ({ text, status, sources }) =>
      html`<p>${text} <span class="status">(${status})</span></p>
        ${cited(sources)}`,
  )}`;

/** Sources as they are cited. */
export function cited(sources: readonly string[]): TemplateResult {
  return html`<ul class="cited">
    ${citations(sources).map((source) => html`<li><small>${citationText(source)}</small></li>`)}
  </ul>`;
}
