import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import { mostScenarios, scenarioLimits, type Scenario } from '../../plan/scenarios/document.js';
import { headed } from '../../words/joined.js';
import { plainName } from '../../words/sheet/scenario-name.js';
import { columnRole, nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** The heads of the columns: which scenario is on show, what it is called, and what can be done with it. */
export function scenarioHeads(view: SheetView): TemplateResult {
  const { words, bench } = view;
  const { scenarios } = bench.store.sheet;
  return html`<tr>
    <th scope="col" class="head"><span class="visually-hidden">${words.say('sheet.scenario')}</span></th>
    ${scenarios.map((scenario) => scenarioHead(view, scenario))}
  </tr>`;
}

function scenarioHead(view: SheetView, scenario: Scenario): TemplateResult {
  const { words, bench } = view;
  const { id } = scenario;
  const { onShow, sheet } = bench.store;
  const name = nameOf(view, scenario);
  const inputs = bench.store.of(id)?.outcome.ok ? undefined : scenario.inputs;
  return html`<th scope="col" data-role=${columnRole(view, scenario)}>
    <span class="visually-hidden" id="scenario-${id}">${name}</span>
    <span class="name">
      <input
        type="radio"
        name="on-show"
        aria-label=${headed(words, words.say('sheet.on-show'), name)}
        title=${words.say('sheet.on-show')}
        .checked=${live(scenario === onShow)}
        @change=${() => {
          bench.show(id);
        }}
      />
      <input
        type="text"
        class="typed"
        aria-label=${words.say('sheet.name-of')}
        maxlength=${scenarioLimits.name}
        placeholder=${inputs ? plainName(words, inputs) : scenario.name === '' ? name : plainName(words, scenario.inputs)}
        ${typedText(scenario.name)}
        @input=${beginTyping}
        @blur=${endTyping}
        @change=${(event: Event) => {
          const text = endTyping(event);
          if (text !== null) bench.rename(id, text);
        }}
      />
      ${menu(view, scenario, name)}
    </span>
    <small class="reference">${id === sheet.reference ? words.say('sheet.reference') : nothing}</small>
  </th>`;
}

function menu({ words, bench }: SheetView, { id }: Scenario, name: string): TemplateResult {
  const { scenarios, reference } = bench.store.sheet;
  const place = scenarios.findIndex((each) => each.id === id);
  const item = (key: string, isPossible: boolean, act: () => void): TemplateResult | typeof nothing =>
    isPossible
      ? html`<button
          type="button"
          @click=${(event: Event) => {
            closeMenu(event);
            act();
            void focusMenu(bench, id);
          }}
        >
          ${words.say(`sheet.menu.${key}`)}
        </button>`
      : nothing;
  return html`<details class="menu" @focusout=${leaveMenu} @keydown=${escapeMenu}>
    <summary aria-label=${words.say('sheet.menu', { scenario: name })}></summary>
    <div class="items">
      ${item('reference', id !== reference, () => {
        bench.compareWith(id);
      })}
      ${item('copy', scenarios.length < mostScenarios, () => {
        bench.copy(id);
      })}
      ${item('earlier', place > 0, () => {
        bench.move(id, -1);
      })}
      ${item('later', place < scenarios.length - 1, () => {
        bench.move(id, 1);
      })}
      ${item('remove', scenarios.length > 1, () => {
        bench.remove(id);
      })}
    </div>
  </details>`;
}

/** The focus goes along with a scenario that is moved; of one that is gone, or out of sight, to the one on show. */
async function focusMenu({ host, store }: SheetView['bench'], id: string): Promise<void> {
  await host.updateComplete;
  const menus = host.shadowRoot?.querySelectorAll<HTMLElement>('.menu summary');
  const menuOf = (wanted: string): HTMLElement | undefined =>
    menus?.[store.sheet.scenarios.findIndex((each) => each.id === wanted)];
  [menuOf(id), menuOf(store.onShow.id)].find((menu) => menu?.checkVisibility())?.focus();
}

const detailsOf = ({ currentTarget }: Event): HTMLDetailsElement | null =>
  currentTarget instanceof Element ? currentTarget.closest('details') : null;

function closeMenu(event: Event): void {
  const details = detailsOf(event);
  details?.querySelector('summary')?.focus();
  if (details) details.open = false;
}

function leaveMenu(event: FocusEvent): void {
  const details = detailsOf(event);
  const { relatedTarget } = event;
  if (details && !(relatedTarget instanceof Node && details.contains(relatedTarget))) details.open = false;
}

function escapeMenu(event: KeyboardEvent): void {
  if (event.key !== 'Escape' || !detailsOf(event)?.open) return;
  event.preventDefault();
  event.stopPropagation();
  closeMenu(event);
}
