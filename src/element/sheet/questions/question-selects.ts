import { html, type TemplateResult } from 'lit';
import { live } from '../../parts/live.js';
import { inputQuantities } from '../../../plan/inputs.js';
import { quantityName } from '../../../words/quantity-names.js';
import type { QuestionView } from './question-view.js';

interface SelectOptions {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
}

/** A list of the inputs. */
export function inputSelect(
  { words, bench, questions }: QuestionView,
  { id, label }: { readonly id: string; readonly label: string },
): TemplateResult {
  const { method } = bench;
  const options = Object.values(inputQuantities).map((input) =>
    option(input, words.capital(quantityName(words, method, input)), questions.input),
  );
  const change = (input: string): void => {
    questions.ask({ input });
  };
  return select({ id, label, value: questions.input, change }, options);
}

/** A list of all quantities, in the groups of the sheet. */
export function quantitySelect(
  view: QuestionView,
  { id, label }: { readonly id: string; readonly label: string },
): TemplateResult {
  const { words, bench, questions } = view;
  const { method } = bench;
  const groups = bench.groups.map((group) => {
    const rows = group.rows.filter((row) => row.kind === 'quantity');
    return rows.length === 0
      ? ''
      : html`<optgroup label=${words.say(`sheet.group.${group.id}`)}>
          ${rows.map(({ quantity }) =>
            option(quantity, words.capital(quantityName(words, method, quantity)), questions.quantity),
          )}
        </optgroup>`;
  });
  const change = (quantity: string): void => {
    questions.ask({ quantity });
  };
  return select({ id, label, value: questions.quantity, change }, groups);
}

/** A labelled list; `options` are its contents. */
export function select({ id, label, change }: SelectOptions, options: readonly unknown[]): TemplateResult {
  return html`<span class="question-field">
    <label for=${id}>${label}</label>
    <select
      id=${id}
      @change=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLSelectElement) change(currentTarget.value);
      }}
    >
      ${options}
    </select>
  </span>`;
}

export function option(value: string, text: string, selected: string): TemplateResult {
  return html`<option value=${value} .selected=${live(value === selected)}>${text}</option>`;
}
