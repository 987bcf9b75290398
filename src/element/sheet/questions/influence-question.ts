import { html, type TemplateResult } from 'lit';
import type { Influence } from '../../../sheet/explore/influence.js';
import { quantityName } from '../../../words/quantity-names.js';
import { differenceText } from '../../../words/sheet/cell-text.js';
import { cssVariables } from '../../parts/css-variables.js';
import type { QuestionView } from './question-view.js';
import { quantitySelect } from './question-selects.js';

/** Which input moves a quantity most: a bar for one step down and one for one step up, the longest first. */
export function influenceQuestion(view: QuestionView): TemplateResult {
  const { words, questions } = view;
  const influences = questions.influences ?? [];
  const largest = Math.max(...influences.flatMap(({ down, up }) => [Math.abs(down ?? 0), Math.abs(up ?? 0)]));
  return html`<div class="question-fields">
      ${quantitySelect(view, { id: 'influence-quantity', label: words.say('sheet.influence.of') })}
    </div>
    <table class="influence">
      <caption class="visually-hidden">
        ${words.say('sheet.ask.influence')}
      </caption>
      <thead>
        <tr>
          <th scope="col">${words.say('sheet.input')}</th>
          <th scope="col">${words.say('sheet.influence.down')}</th>
          <th scope="col">${words.say('sheet.influence.up')}</th>
        </tr>
      </thead>
      <tbody>
        ${influences.map((influence) => influenceRow(view, influence, largest))}
      </tbody>
    </table>`;
}

function influenceRow(view: QuestionView, { input, down, up }: Influence, largest: number): TemplateResult {
  const { words, bench } = view;
  return html`<tr>
    <th scope="row">${words.capital(quantityName(words, bench.method, input))}</th>
    ${[down, up].map((change) => html`<td>${bar(view, change, largest)}</td>`)}
  </tr>`;
}

function bar({ words, bench, questions }: QuestionView, change: number | null, largest: number): TemplateResult {
  if (change === null) return html`<span class="quiet">${words.say('sheet.influence.end')}</span>`;
  const unit = bench.unitOf(questions.quantity);
  const text = differenceText(words, unit, { value: change, reference: 0 });
  const size = largest > 0 ? (100 * Math.abs(change)) / largest : 0;
  return html`<span
    class="bar"
    data-sign=${change < 0 ? 'less' : 'more'}
    ${cssVariables({ '--size': `${String(size)}%` })}
    ><span>${text === '' ? words.say('sheet.influence.none') : text}</span></span
  >`;
}
