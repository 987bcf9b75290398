import { html, nothing, type TemplateResult } from 'lit';
import type { CheckResult } from '../../plan/checks/document.js';
import { checkGroupIds } from '../../training/method/check-rules.js';
import { checkLines, unknownLines } from '../../words/checks/check-lines.js';
import { reasonList } from '../concrete/reason-list.js';
import type { ChecksView } from './checks-view.js';

/** Every check of the plan by what it is about; what is not known yet comes last. */
export function checkList(view: ChecksView): TemplateResult {
  const { words, plan } = view;
  const known = plan.checks.filter(({ level }) => level !== null);
  const unknown = plan.checks.filter(({ level }) => level === null);
  return html`<div class="check-groups">
      ${checkGroupIds.map((group) =>
        groupOf(
          view,
          words.say(`check-group.${group}`),
          known.filter((check) => check.group === group),
        ),
      )}
    </div>
    ${unknown.length === 0 ? nothing : notKnown(view, unknown)}`;
}

/** What would have to be told, and which checks would follow from it. */
function notKnown(view: ChecksView, checks: readonly CheckResult[]): TemplateResult {
  const { words } = view;
  return html`<section class="check-group">
    <h4>${words.say('checks.unknown')}</h4>
    <ul class="unknown">
      ${unknownLines(words, view, checks).map(({ says, names }) => html`<li>${says} <small>${words.list(names)}</small></li>`)}
    </ul>
  </section>`;
}

function groupOf(view: ChecksView, title: string, checks: readonly CheckResult[]): TemplateResult | typeof nothing {
  if (checks.length === 0) return nothing;
  return html`<section class="check-group">
    <h4>${title}</h4>
    ${checks.map((check) => checkItem(view, check))}
  </section>`;
}

/** What was found in sight; what it rests on, what it does not say and what would change it one press away. */
function checkItem({ words, method, load }: ChecksView, check: CheckResult): TemplateResult {
  const { name, level, says, range, change, reason, notSaid } = checkLines(words, { method, load }, check);
  return html`<details class="check" data-check=${check.id} data-level=${check.level ?? 'unknown'}>
    <summary>
      <span class="check-name">${name}</span> <span class="check-level">${level}</span>
      <span class="check-says">${says}</span>
    </summary>
    <p class="check-range">${words.capital(range)}.</p>
    ${change === null ? nothing : html`<p class="check-change">${words.say('checks.change', { change })}</p>`}
    <h5>${words.say('checks.source')}</h5>
    ${reasonList([reason])}
    <h5>${words.say('checks.not')}</h5>
    <p>${notSaid}</p>
  </details>`;
}
