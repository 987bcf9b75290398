import type { TemplateResult } from 'lit';
import { scenarioName } from '../../words/sheet/scenario-name.js';
import { summaryTable } from './summary-table.js';
import type { SeasonView } from './season-view.js';

/** The seasons of all scenarios side by side. */
export function compareBox(view: SeasonView): TemplateResult {
  const { words, desk } = view;
  const seasons = desk.scenarios.flatMap(({ scenario, outcome }, index) => {
    if (!outcome.ok || !outcome.value.season) return [];
    const { inputs, season } = outcome.value;
    // Scenarios may be called alike: their weeks are, and their seasons are not.
    const name = scenarioName(words, { name: scenario.name, inputs });
    return [{ name: words.say('season.compare.name', { place: index + 1, name }), season }];
  });
  return summaryTable(view, words.say('season.box.compare'), seasons);
}
