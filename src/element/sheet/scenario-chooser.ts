import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** Which scenario is on show, where a narrow screen has room for one and its comparison only. */
export function scenarioChooser(view: SheetView): TemplateResult {
  const { words, bench } = view;
  const { sheet, onShow } = bench.store;
  return html`<fieldset class="chooser">
    <legend class="visually-hidden">${words.say('sheet.scenarios')}</legend>
    ${sheet.scenarios.map(
      (scenario) =>
        html`<label
          ><input
            type="radio"
            name="scenario"
            .checked=${live(scenario === onShow)}
            @change=${() => {
              bench.show(scenario.id);
            }}
          /><span>${nameOf(view, scenario)}</span></label
        >`,
    )}
  </fieldset>`;
}
