import { html, nothing, type TemplateResult } from 'lit';
import type { RunningRequest } from '../../plan/running/wishes.js';
import { heartLines, heartSpanText } from '../../words/running/heart-text.js';
import { amountField } from '../fields/amount-field.js';
import type { RunningView } from './running-view.js';

const fields = [
  { field: 'age', key: 'age' },
  { field: 'highestHeart', key: 'highest' },
  { field: 'restingHeart', key: 'resting' },
  { field: 'weight', key: 'weight' },
] as const;

/** Age, heart and weight, which nobody has to tell; what follows from them. */
export function heartBox(view: RunningView): TemplateResult {
  const { words, method, running, desk } = view;
  return html`<p class="quiet">${words.say('running.private')}</p>
    <fieldset class="concrete-inputs">
      <legend class="visually-hidden">${words.say('running.box.heart')}</legend>
      ${fields.map(({ field, key }) =>
        amountField(view, {
          id: `running-${key}`,
          label: words.say(`running.input.${key}`),
          value: running.wishes[field],
          set: (value): RunningRequest => ({ ...desk.request, [field]: value }),
        }),
      )}
    </fieldset>
    ${heartLines(words, method, running).map((line) => html`<p>${line}</p>`)}
    ${
      running.bands.length > 0
        ? html`<table class="bands">
            <caption>
              ${words.say('running.bands')}
            </caption>
            <tbody>
              ${running.bands.map(
                (band) =>
                  html`<tr>
                    <th scope="row">${words.say(`running.band.${band.id}`)}</th>
                    <td>${heartSpanText(words, band)}</td>
                  </tr>`,
              )}
            </tbody>
          </table>`
        : nothing
    }`;
}
