import { html, type TemplateResult } from 'lit';
import { slider } from '../parts/slider.js';
import type { Choice } from './choice-select.js';

/** A slider over a few choices in their order, with a mark for each. */
export function choiceSlider<T extends string>(
  { choices, value, name, change }: Choice<T>,
  labelledBy: string,
): TemplateResult {
  return html`${slider({
      labelledBy,
      spoken: name(value),
      least: 0,
      most: choices.length - 1,
      step: 1,
      value: choices.findIndex((choice) => choice === value),
      change: (index) => {
        const choice = choices[index];
        if (choice !== undefined) change(choice);
      },
    })}
    <div class="ticks" aria-hidden="true">${choices.map(() => html`<span></span>`)}</div>`;
}
