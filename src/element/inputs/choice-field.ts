import { html, nothing, type TemplateResult } from 'lit';
import type { View } from '../view.js';
import { choiceSelect } from './choice-select.js';
import { choiceSlider } from './choice-slider.js';

export type ChoiceFieldName = 'phase' | 'level' | 'event';

/** An input with a few choices: a list to choose from and, where they have an order one can feel, a slider. */
export interface ChoiceFieldOptions<T extends string> {
  readonly field: ChoiceFieldName;
  readonly choices: readonly T[];
  readonly slider: 'with slider' | 'list only';
}

export function choiceField<T extends string>(
  { words, plan, act }: View,
  { field, choices, slider }: ChoiceFieldOptions<T>,
): TemplateResult {
  const choice = {
    choices,
    value: plan.inputs[field],
    name: (id: string): string => words.capital(words.say(`${field}.${id}`)),
    change: (id: T): void => {
      act.change({ [field]: id });
    },
  };
  return html`<div class="field" part="field">
    <label id="${field}-label" for=${field}>${words.say(`input.${field}`)}</label>
    ${choiceSelect(choice, { id: field })} ${slider === 'list only' ? nothing : choiceSlider(choice, `${field}-label`)}
  </div>`;
}
