import { html, nothing, type TemplateResult } from 'lit';
import { loadRows } from '../../words/checks/load-rows.js';
import { dayName } from '../../words/week/day-name.js';
import type { ChecksView } from './checks-view.js';

/** How hard the week is, day by day, and how that is spread. */
export function loadBox({ words, load }: ChecksView): TemplateResult {
  const hasOwn = load.own.load !== null;
  const heading = (key: string): TemplateResult => html`<th scope="col">${words.say(`checks.load.${key}`)}</th>`;
  return html`${load.days === null ? html`<p>${words.say('check-missing.days')}</p>` : dayTable(words, load.days)}
    <div class="scroll" tabindex="0" role="region" aria-label=${words.say('checks.box.load')}>
      <table>
        <thead>
          <tr>
            ${heading('number')} ${heading('this')} ${hasOwn ? heading('own') : nothing} ${heading('about')}
          </tr>
        </thead>
        <tbody>
          ${loadRows(words, load).map(
            ({ name, value, own, how }) =>
              html`<tr>
                <th scope="row">${name}</th>
                <td>${value}</td>
                ${hasOwn ? html`<td>${own}</td>` : nothing}
                <td class="how">${how}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <p>${words.say('season-reason.load')}</p>
    <p>${words.say('differs.ratio')}</p>`;
}

const dayTable = (words: ChecksView['words'], days: readonly number[]): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="region" aria-label=${words.say('checks.load.days')}>
    <table class="day-loads">
      <caption>
        ${words.say('checks.load.days')}
      </caption>
      <thead>
        <tr>
          ${days.map((_, day) => html`<th scope="col">${dayName(words, day)}</th>`)}
        </tr>
      </thead>
      <tbody>
        <tr>
          ${days.map((load) => html`<td>${words.number(load)}</td>`)}
        </tr>
      </tbody>
    </table>
  </div>`;
