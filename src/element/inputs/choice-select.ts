import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';

/** One of a few choices, and what happens when another is taken. */
export interface Choice<T extends string> {
  readonly choices: readonly T[];
  readonly value: string;
  readonly name: (choice: string) => string;
  readonly change: (choice: T) => void;
}

/** A list to choose from; `labelledBy` is left out where a label points at it. */
export function choiceSelect<T extends string>(
  { choices, value, name, change }: Choice<T>,
  { id, labelledBy }: { readonly id: string; readonly labelledBy?: string },
): TemplateResult {
  return html`<select
    id=${id}
    aria-labelledby=${labelledBy ?? nothing}
    @change=${({ currentTarget }: Event) => {
      const choice = currentTarget instanceof HTMLSelectElement ? choices[currentTarget.selectedIndex] : undefined;
      if (choice !== undefined) change(choice);
    }}
  >
    ${choices.map((choice) => html`<option value=${choice} .selected=${live(choice === value)}>${name(choice)}</option>`)}
  </select>`;
}
