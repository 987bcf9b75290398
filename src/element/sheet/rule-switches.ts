import { html, nothing, type TemplateResult } from 'lit';
import { ruleSentence } from '../../words/rule-sentence.js';
import type { SheetView } from './sheet-view.js';

/** What a rule does in a scenario, and where it can be switched off and on: here, and in all scenarios. */
export function ruleSwitches(
  { words, bench }: SheetView,
  rule: string,
  scenario: string | null,
): TemplateResult | typeof nothing {
  const { sheet } = bench.store;
  const planned = bench.store.of(scenario ?? bench.store.onShow.id);
  const known = sheet.method.rules.find(({ id }) => id === rule);
  if (!planned || !known) return nothing;
  const result = planned.outcome.ok ? planned.outcome.value.rules.find(({ id }) => id === rule) : undefined;
  const button = (isOff: boolean, where: string | null): TemplateResult =>
    html`<button
      type="button"
      class="act"
      @click=${() => {
        bench.switchRule(where, rule);
      }}
    >
      ${words.say(`sheet.rule.switch-${isOff ? 'on' : 'off'}${where === null ? '-all' : ''}`)}
    </button>`;
  const isOffForAll = sheet.rulesOff.includes(rule);
  const switches =
    known.enabled === false
      ? html`<p>${words.say('sheet.rule.off-by-method')}</p>`
      : html`<p class="draft">
          ${scenario === null || isOffForAll ? nothing : button(planned.scenario.rulesOff.includes(rule), scenario)}
          ${button(isOffForAll, null)}
        </p>`;
  return html`${result ? html`<p>${ruleSentence(words, planned.planner.method, result)}</p>` : nothing}
    <p class="quiet">
      ${words.text(known.reason)} <small class="status">${words.say(`status.${known.status}`)}</small>
    </p>
    ${switches}`;
}
