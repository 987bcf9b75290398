import { html, nothing, type TemplateResult } from 'lit';
import { citations } from '../../words/sources.js';
import { clashLine } from '../../words/week/clash-line.js';
import type { BoardView } from './board-view.js';
import { citationText } from '../parts/citation-text.js';

/** What clashes in the week, each with its cost and, on asking, its reason. */
export function clashList({ words, method, week }: BoardView): TemplateResult | typeof nothing {
  if (week.clashes.length === 0) return nothing;
  return html`<section class="clashes" aria-labelledby="clashes-title">
    <h4 id="clashes-title">${words.say('board.clashes')}</h4>
    <ul>
      ${week.clashes.map((clash) => {
        const line = clashLine(words, method, clash);
        return html`<li>
          <details>
            <summary><b>${words.number(clash.cost)}</b> <span>${line.text}</span></summary>
            <p>${line.reason} <small class="status">${line.status}</small></p>
            ${citations(line.sources).map((source) => html`<p><small>${citationText(source)}</small></p>`)}
          </details>
        </li>`;
      })}
    </ul>
  </section>`;
}
