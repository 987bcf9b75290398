import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { cssVariables } from '../parts/css-variables.js';
import type { View } from '../view.js';

export type ChoiceFieldName = 'phase' | 'level' | 'event';

/** An input with a few choices: a list to choose from and, where they have an order one can feel, a slider. */
export interface ChoiceFieldOptions<T extends string> {
  readonly field: ChoiceFieldName;
  readonly choices: readonly T[];
  readonly slider: 'with slider' | 'list only';
}

export function choiceField<T extends string>(
  view: View,
  { field, choices, slider }: ChoiceFieldOptions<T>,
): TemplateResult {
  const { words, plan, act } = view;
  const value: string = plan.inputs[field];
  const change = (choice: T | undefined): void => {
    if (choice !== undefined) act.change({ [field]: choice });
  };
  const name = (choice: string): string => words.capital(words.say(`${field}.${choice}`));
  return html`<div class="field" part="field">
    <label id="${field}-label" for=${field}>${words.say(`input.${field}`)}</label>
    <select
      id=${field}
      @change=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLSelectElement) change(choices[currentTarget.selectedIndex]);
      }}
    >
      ${choices.map((choice) => html`<option value=${choice} .selected=${live(choice === value)}>${name(choice)}</option>`)}
    </select>
    ${slider === 'list only' ? nothing : choiceSlider({ choices, value, label: `${field}-label`, spoken: name(value), change })}
  </div>`;
}

interface ChoiceSlider<T extends string> {
  readonly choices: readonly T[];
  readonly value: string;
  readonly label: string;
  readonly spoken: string;
  readonly change: (choice: T | undefined) => void;
}

function choiceSlider<T extends string>({ choices, value, label, spoken, change }: ChoiceSlider<T>): TemplateResult {
  const index = choices.findIndex((choice) => choice === value);
  const last = choices.length - 1;
  return html`<input
      type="range"
      part="slider"
      aria-labelledby=${label}
      aria-valuetext=${spoken}
      min="0"
      max=${last}
      step="1"
      .value=${live(String(index))}
      ${cssVariables({ '--fill': `${String((index / last) * 100)}%` })}
      @input=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLInputElement) change(choices[currentTarget.valueAsNumber]);
      }}
    />
    <div class="ticks" aria-hidden="true">${choices.map(() => html`<span></span>`)}</div>`;
}
