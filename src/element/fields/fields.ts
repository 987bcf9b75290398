import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import type { NumberInput } from '../../training/method/document.js';
import { readNumber } from '../../words/read-number.js';
import { notANumber } from '../inputs/not-a-number.js';
import { typedEntry } from '../inputs/typed-entry.js';
import { slider } from '../parts/slider.js';
import type { FieldView } from './field-view.js';

export interface FieldOptions {
  /** Of its own within the shadow root. */
  readonly id: string;
  readonly label: string;
}

interface NumberOptions<R> extends FieldOptions {
  readonly value: number;
  readonly range: Omit<NumberInput, 'start'>;
  readonly unit: string;
  /** The value as it is read out. */
  readonly spoken: string;
  readonly set: (value: number) => R;
}

/** A number with a slider, and a field to type it into. */
export function numberField<R>(view: FieldView<R>, options: NumberOptions<R>): TemplateResult {
  const { words, desk } = view;
  const { id, label, value, range, unit, spoken, set } = options;
  return html`<div class="field" part="field">
    <label id="${id}-label" for=${id}>${label}</label>
    <div class="entry">
      ${typedEntry(words, {
        id,
        describedBy: `${id}-hint`,
        range: { ...range, start: range.least },
        value,
        draft: desk.drafts.get(id),
        type: (text) => {
          const number = readNumber(text);
          if (number === null) desk.refuse(notANumber(label, text), { id, label, text });
          else desk.act(set(number), { id, label, text });
        },
      })}<span class="unit">${unit}</span>
    </div>
    ${slider({
      labelledBy: `${id}-label`,
      describedBy: `${id}-hint`,
      spoken,
      ...range,
      value,
      change: (next) => {
        desk.act(set(next), { id, label, text: String(next) });
      },
    })}
    ${fieldNote(view, id)}
  </div>`;
}

interface DateOptions<R> extends FieldOptions {
  readonly value: string;
  readonly set: (date: string) => R;
}

/** A day, in the browser's own field for dates. */
export function dateField<R>(view: FieldView<R>, { id, label, value, set }: DateOptions<R>): TemplateResult {
  const { desk } = view;
  return html`<div class="field" part="field">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      class="typed date"
      type="date"
      aria-describedby="${id}-hint"
      aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
      .value=${live(desk.drafts.get(id)?.text ?? value)}
      @change=${({ currentTarget }: Event) => {
        if (!(currentTarget instanceof HTMLInputElement)) return;
        const text = currentTarget.value;
        desk.act(set(text), { id, label, text });
      }}
    />
    ${fieldNote(view, id)}
  </div>`;
}

/** What is wrong with what was typed. */
export function fieldNote<R>({ words, details, desk }: FieldView<R>, id: string): TemplateResult {
  const draft = desk.drafts.get(id);
  return html`<p id="${id}-hint" class="hint wrong">${draft ? details.sayProblem(words, draft.problem) : nothing}</p>`;
}
