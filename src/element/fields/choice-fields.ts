import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { slider } from '../parts/slider.js';
import type { FieldView } from './field-view.js';
import type { FieldOptions } from './fields.js';

interface ShareOptions<R> extends FieldOptions {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly set: (share: number) => R;
}

/** A share with a slider in whole per cent. */
export function shareField<R>(
  { words, desk }: FieldView<R>,
  { id, label, value, least, most, set }: ShareOptions<R>,
): TemplateResult {
  return html`<div class="field" part="field">
    <span class="field-name" id="${id}-label">${label}</span>
    <output aria-hidden="true">${words.share(value)}</output>
    ${slider({
      labelledBy: `${id}-label`,
      spoken: words.share(value),
      least: Math.round(least * 100),
      most: Math.round(most * 100),
      step: 1,
      value: Math.round(value * 100),
      change: (next) => {
        desk.act(set(next / 100));
      },
    })}
  </div>`;
}

interface ChoiceOptions<T, R> extends FieldOptions {
  readonly choices: readonly { readonly value: T; readonly text: string }[];
  readonly value: T;
  readonly set: (value: T) => R;
}

/** A list to choose from. */
export function choiceField<T, R>(
  { desk }: Pick<FieldView<R>, 'desk'>,
  { id, label, choices, value, set }: ChoiceOptions<T, R>,
): TemplateResult {
  return html`<div class="field" part="field">
    <label for=${id}>${label}</label>
    <select
      id=${id}
      @change=${({ currentTarget }: Event) => {
        const chosen = currentTarget instanceof HTMLSelectElement ? choices[currentTarget.selectedIndex] : undefined;
        if (chosen) desk.act(set(chosen.value));
      }}
    >
      ${choices.map((each) => html`<option .selected=${live(each.value === value)}>${each.text}</option>`)}
    </select>
  </div>`;
}
