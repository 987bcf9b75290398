import { html, type TemplateResult } from 'lit';
import type { PlanInputs } from '../../plan/document.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import { eventIds, levelIds, phaseIds } from '../../training/method/ids.js';
import { choiceSelect } from '../inputs/choice-select.js';
import { choiceSlider } from '../inputs/choice-slider.js';
import { typedEntry } from '../inputs/typed-entry.js';
import { slider } from '../parts/slider.js';
import type { NumberField } from '../view.js';
import { scenarioHeads } from './scenario-heads.js';
import { columnRole } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** The inputs of all scenarios, a column each, by the same sliders as everywhere. */
export function scenarioInputs(view: SheetView): TemplateResult {
  const { words } = view;
  const row = (label: string, cell: (scenario: Scenario) => TemplateResult): TemplateResult =>
    html`<tr>
      <th scope="row" id="inputs-${label}">${words.say(`input.${label}`)}</th>
      ${view.bench.store.sheet.scenarios.map(
        (scenario) => html`<td data-role=${columnRole(view, scenario)}>${cell(scenario)}</td>`,
      )}
    </tr>`;
  return html`<table class="columns inputs-table">
    <caption class="visually-hidden">
      ${words.say('sheet.inputs')}
    </caption>
    <thead>
      ${scenarioHeads(view)}
    </thead>
    <tbody>
      ${row('hours', (scenario) => numberCell(view, scenario, 'hours'))}
      ${row('phase', (scenario) => choiceCell(view, scenario, { field: 'phase', choices: phaseIds }))}
      ${row('level', (scenario) => choiceCell(view, scenario, { field: 'level', choices: levelIds }))}
      ${row('event', (scenario) => choiceCell(view, scenario, { field: 'event', choices: eventIds }))}
      ${row('strength-cap', (scenario) => numberCell(view, scenario, 'strengthCap'))}
    </tbody>
  </table>`;
}

/** The inputs that the week of a scenario is made from. */
function inputsOf({ bench }: SheetView, scenario: Scenario): PlanInputs {
  const { outcome } = bench.store.of(scenario.id) ?? {};
  return outcome?.ok ? outcome.value.inputs : scenario.inputs;
}

const labels = { hours: 'hours', strengthCap: 'strength-cap' } as const;

function numberCell(view: SheetView, scenario: Scenario, field: NumberField): TemplateResult {
  const { words, bench, details } = view;
  const { weekly_hours, strength_cap } = bench.store.sheet.method.inputs;
  const range = field === 'hours' ? weekly_hours : strength_cap;
  const value = inputsOf(view, scenario)[field];
  const draft = bench.inputs.of(scenario.id, field);
  const labelledBy = `inputs-${labels[field]} scenario-${scenario.id}`;
  const describedBy = `${scenario.id}-${field}-note`;
  const entry = typedEntry(words, {
    id: `${scenario.id}-${field}`,
    labelledBy,
    describedBy,
    range,
    value,
    draft,
    type: (text) => {
      bench.inputs.type(scenario.id, field, text);
    },
  });
  return html`<div class="entry">
      ${entry}<span class="unit">${words.say(field === 'hours' ? 'unit.hours' : 'unit.minutes')}</span>
    </div>
    ${slider({
      labelledBy,
      spoken: field === 'hours' ? words.hours(value) : words.minutes(value),
      ...range,
      value,
      change: (next) => {
        bench.inputs.forget(scenario.id, field);
        bench.set(scenario.id, { [field]: next });
      },
    })}
    <p id=${describedBy} class="wrong">${draft ? details.sayProblem(words, draft.problem) : ''}</p>`;
}

interface ChoiceCell<T extends string> {
  readonly field: 'phase' | 'level' | 'event';
  readonly choices: readonly T[];
}

function choiceCell<T extends string>(
  view: SheetView,
  scenario: Scenario,
  { field, choices }: ChoiceCell<T>,
): TemplateResult {
  const { words, bench } = view;
  const labelledBy = `inputs-${field} scenario-${scenario.id}`;
  const choice = {
    choices,
    value: inputsOf(view, scenario)[field],
    name: (id: string): string => words.capital(words.say(`${field}.${id}`)),
    change: (id: T): void => {
      bench.set(scenario.id, { [field]: id });
    },
  };
  return html`${choiceSelect(choice, { id: `${scenario.id}-${field}`, labelledBy })}
  ${field === 'event' ? '' : choiceSlider(choice, labelledBy)}`;
}
