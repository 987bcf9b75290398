import { html, nothing, type TemplateResult } from 'lit';
import type { Plan } from '../../plan.js';
import { categoryQuantity } from '../../training/method/names.js';
import { kindRows, type KindRow } from '../../words/kind-rows.js';
import { whyButton } from '../parts/why-button.js';
import type { View } from '../view.js';
import { sessionPicker } from './session-picker.js';

/** The numbers of the ring as a table; every number answers why, and the sessions of each kind can be picked. */
export function weekTable(view: View): TemplateResult {
  const { words, method, plan } = view;
  const head = (key: string, name: string): TemplateResult =>
    html`<th scope="col" class=${name}>${words.say(`table.${key}`)}</th>`;
  const split = method.splits.find(({ id }) => id === plan.split.id);
  return html`<table class="week" part="table">
      <caption class="visually-hidden">
        ${words.say('table.caption')}
      </caption>
      <thead>
        <tr>
          ${head('kind', 'kind')}${head('share', 'share')}${head('exact', 'exact')}${head('planned', 'planned')}${head('sessions', 'sessions')}
        </tr>
      </thead>
      <tbody>
        ${kindRows(words, method, plan).map((row) => kindRow(view, row))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row" class="kind">${words.say('table.total')}</th>
          <td class="share">${words.share(1)}</td>
          <td class="exact">${whyButton(view, 'planned_minutes', words.number(plan.total.exact, 1))}</td>
          <td class="planned">${whyButton(view, 'total_rounded', words.number(plan.total.rounded, 0))}</td>
          <td class="sessions">
            ${whyButton(view, 'running_share', words.say('table.running', { share: words.share(runningShare(plan)) }))}
          </td>
        </tr>
      </tfoot>
    </table>
    <p class="basis">
      <span
        >${words.say('planner.split', { name: split ? words.text(split.name) : plan.split.id })}
        <small class="status">${words.say(`status.${plan.split.status}`)}</small></span
      >
      <span>${words.say('planner.method', { name: words.text(plan.method.name) })}</span>
    </p>`;
}

/** The share of running after all rules; the core has worked it out. */
function runningShare({ derivations }: Plan): number {
  return derivations['running_share']?.value ?? Number.NaN;
}

function kindRow(view: View, { category, name }: KindRow): TemplateResult {
  const { words, plan } = view;
  const why = (what: 'share' | 'minutes' | 'rounded', text: string): TemplateResult =>
    whyButton(view, categoryQuantity(category, what), text);
  return html`<tr class=${plan.rounded[category] === 0 ? 'empty' : nothing}>
    <th scope="row" class="kind">
      <span><span class="swatch" data-category=${category}></span>${name}</span>
    </th>
    <td class="share">${why('share', words.share(plan.split.shares[category]))}</td>
    <td class="exact">${why('minutes', words.number(plan.minutes[category], 1))}</td>
    <td class="planned">${why('rounded', words.number(plan.rounded[category], 0))}</td>
    <td class="sessions">${sessionPicker(view, category)}</td>
  </tr>`;
}
