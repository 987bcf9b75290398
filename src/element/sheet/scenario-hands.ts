import { html, nothing, type TemplateResult } from 'lit';
import type { PlannedScenario } from '../../plan/scenarios/scenario-planner.js';
import { formulaWords } from '../../words/formula-words.js';
import { headed } from '../../words/joined.js';
import { noticeSentence } from '../../words/notice-sentence.js';
import { quantityName } from '../../words/quantity-names.js';
import { focusGrid } from './grid-events.js';
import { nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** Everything that is set by hand, scenario by scenario, each with a way to lift it. */
export function scenarioHands(view: SheetView): TemplateResult | typeof nothing {
  const { words, bench } = view;
  const lines = bench.store.planned.flatMap((planned) =>
    planned.planner.sheet.model.overrides.map(({ on, formula }) => handLine(view, planned, { on, formula })),
  );
  if (lines.length === 0) return nothing;
  return html`<section aria-labelledby="hands-title">
    <h4 id="hands-title">${words.say('sheet.hands')}</h4>
    <ul class="hands">
      ${lines}
    </ul>
  </section>`;
}

function handLine(
  view: SheetView,
  planned: PlannedScenario,
  { on, formula }: { readonly on: string; readonly formula: string },
): TemplateResult {
  const { words, bench } = view;
  const { scenario } = planned;
  const lift = words.say('sheet.lift');
  const name = quantityName(words, planned.planner.method, on);
  return html`<li>
    ${words.say('sheet.hand-in', { scenario: nameOf(view, scenario), says: sentence(view, planned, { on, formula }) })}
    <button
      type="button"
      class="act"
      aria-label=${headed(words, lift, name)}
      @click=${() => {
        bench.grid.go({ row: on, column: scenario.id }, { mark: false });
        bench.override(scenario.id, on, null);
        void focusGrid(bench);
      }}
    >
      ${lift}
    </button>
  </li>`;
}

/** With the numbers where there is a plan, else with the formula alone. */
function sentence(
  { words }: SheetView,
  { planner: { method }, outcome }: PlannedScenario,
  { on, formula }: { readonly on: string; readonly formula: string },
): string {
  const notices = outcome.ok ? outcome.value.notices : [];
  const notice = notices.find(({ code, quantity }) => code === 'by-hand' && quantity === on);
  if (notice) return noticeSentence(words, method, notice);
  return words.say('sheet.hand', {
    name: words.capital(quantityName(words, method, on)),
    formula: formulaWords(words, { method, value: on }, formula),
  });
}
