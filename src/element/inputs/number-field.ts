import { html, type TemplateResult } from 'lit';
import type { NumberInput } from '../../training/method/document.js';
import { slider } from '../parts/slider.js';
import type { NumberField, View } from '../view.js';
import { typedEntry } from './typed-entry.js';

/** A numeric input: a slider, a field to type into, and a button one step down and up. */
export interface NumberFieldOptions {
  readonly field: NumberField;
  readonly label: string;
  readonly hint: string;
  readonly range: NumberInput;
  /** The value as it is read out: "4 hours". */
  readonly spoken: string;
  readonly unit: string;
}

export function numberField(view: View, options: NumberFieldOptions): TemplateResult {
  const { field, label, hint, range } = options;
  const value = view.plan.inputs[field];
  const change = (next: number): void => {
    view.act.change({ [field]: next });
  };
  const entry = typedEntry(view.words, {
    id: field,
    describedBy: `${field}-hint`,
    range,
    value,
    draft: view.drafts[field],
    type: (text) => {
      view.act.type(field, text);
    },
  });
  return html`<div class="field" part="field">
    <label id="${field}-label" for=${field}>${label}</label>
    <div class="entry">
      ${stepButton(view, options, -1)}${entry}<span class="unit">${options.unit}</span>${stepButton(view, options, 1)}
    </div>
    ${slider({
      labelledBy: `${field}-label`,
      describedBy: `${field}-hint`,
      spoken: options.spoken,
      ...range,
      value,
      change,
    })}
    ${fieldNote(view, field, hint)}
  </div>`;
}

/** At the end of the range the button stays where it is, and keeps the focus of whoever came there by it. */
function stepButton({ words, plan, act }: View, options: NumberFieldOptions, direction: -1 | 1): TemplateResult {
  const { field, label, range } = options;
  const next = nextStep(plan.inputs[field], range, direction);
  return html`<button
    type="button"
    class="step"
    aria-label=${words.say(direction < 0 ? 'input.less' : 'input.more', { label })}
    aria-disabled=${next === null ? 'true' : 'false'}
    @click=${() => {
      if (next !== null) act.change({ [field]: next });
    }}
  >
    ${direction < 0 ? '−' : '+'}
  </button>`;
}

/** The next value on the slider's grid, so that 4.1 hours go to 4.25 or 4; null at the end of the range. */
function nextStep(value: number, { least, most, step }: NumberInput, direction: -1 | 1): number | null {
  // How far it is up the grid, or down; a hair of rounding is no step.
  const steps = (direction * (value - least)) / step + 1e-9;
  const next = least + direction * step * (Math.floor(steps) + 1);
  return next < least || next > most ? null : next;
}

function fieldNote({ words, drafts, details }: View, field: NumberField, hint: string): TemplateResult {
  const draft = drafts[field];
  return html`<p id="${field}-hint" class=${draft ? 'hint wrong' : 'hint'}>
    ${draft ? details?.sayProblem(words, draft.problem) : hint}
  </p>`;
}
