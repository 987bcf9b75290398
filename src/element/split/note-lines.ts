import { html, nothing, type TemplateResult } from 'lit';
import { noticesWithCauses } from '../../words/notices-with-causes.js';
import { ruleLines, type PlanLine } from '../../words/plan-lines.js';
import type { View } from '../view.js';

/** Which rules acted and what is worth knowing, a sentence each. */
export function noteLines({ words, method, plan }: View): TemplateResult {
  const rules = ruleLines(words, method, plan);
  const notices = noticesWithCauses(words, method, plan);
  return html`<section aria-labelledby="rules-title">
      <h3 id="rules-title">${words.say('planner.rules')}</h3>
      ${rules.length === 0 ? html`<p class="quiet">${words.say('planner.no-rules')}</p>` : list(rules)}
    </section>
    ${
      notices.length === 0
        ? nothing
        : html`<section aria-labelledby="notices-title">
            <h3 id="notices-title">${words.say('planner.notices')}</h3>
            ${list(notices)}
          </section>`
    }`;
}

function list(lines: readonly PlanLine[]): TemplateResult {
  return html`<ul>
    ${lines.map(
      ({ text, level, status }) =>
        html`<li class=${level}>
          ${text} ${status === null ? nothing : html`<small class="status">${status}</small>`}
        </li>`,
    )}
  </ul>`;
}
