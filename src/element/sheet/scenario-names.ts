import type { Scenario } from '../../plan/scenarios/document.js';
import { scenarioName } from '../../words/sheet/scenario-name.js';
import type { SheetView } from './sheet-view.js';

/** What a scenario is called, by the week that it has now. */
export function nameOf({ words, bench }: SheetView, scenario: Scenario): string {
  const { outcome } = bench.store.of(scenario.id) ?? {};
  return scenarioName(words, { name: scenario.name, inputs: outcome?.ok ? outcome.value.inputs : scenario.inputs });
}

/** Whether a column shows the scenario on show, the one beside it on a narrow screen, or another. */
export function columnRole({ bench: { store } }: SheetView, scenario: Scenario): 'on-show' | 'beside' | 'other' {
  const { onShow, sheet } = store;
  if (scenario === onShow) return 'on-show';
  const beside = onShow.id === sheet.reference ? sheet.scenarios.find((each) => each !== onShow)?.id : sheet.reference;
  return scenario.id === beside ? 'beside' : 'other';
}
