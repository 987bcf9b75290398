import { html, nothing, type TemplateResult } from 'lit';
import type { RunningRequest } from '../../plan/running/wishes.js';
import type { Problem } from '../../problem.js';
import { heartLines, heartSpanText } from '../../words/running/heart-text.js';
import { readNumber } from '../../words/read-number.js';
import { textField } from '../fields/text-field.js';
import { notANumber } from '../inputs/not-a-number.js';
import type { RunningView } from './running-view.js';

const fields = [
  { field: 'age', key: 'age' },
  { field: 'highestHeart', key: 'highest' },
  { field: 'restingHeart', key: 'resting' },
  { field: 'weight', key: 'weight' },
] as const;

/** Age, heart and weight, which nobody has to tell; what follows from them. */
export function heartBox(view: RunningView): TemplateResult {
  const { words, method, running } = view;
  return html`<p class="quiet">${words.say('running.private')}</p>
    <fieldset class="concrete-inputs">
      <legend class="visually-hidden">${words.say('running.box.heart')}</legend>
      ${fields.map((field) => numberThatMayBeLeftOut(view, field))}
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

function numberThatMayBeLeftOut(view: RunningView, { field, key }: (typeof fields)[number]): TemplateResult {
  const { words, running, desk } = view;
  const value = running.wishes[field];
  const label = words.say(`running.input.${key}`);
  return textField(view, {
    id: `running-${key}`,
    label,
    keys: 'decimal',
    value: value === null ? '' : words.number(value),
    set: (text): RunningRequest | Problem => {
      const number = text.trim() === '' ? null : readNumber(text);
      if (number === null && text.trim() !== '') return notANumber(label, text);
      return { ...desk.request, [field]: number };
    },
  });
}
