import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import type { NumberInput } from '../../training/method/document.js';
import type { Words } from '../../words/words.js';
import type { Draft } from '../view.js';

export interface TypedEntryOptions {
  readonly id: string;
  /** Ids of what names it; left out where a label points at it. */
  readonly labelledBy?: string;
  readonly describedBy: string;
  readonly range: NumberInput;
  readonly value: number;
  readonly draft: Draft | undefined;
  readonly type: (text: string) => void;
}

/** A number that can be typed; what is no value of it stays as it was typed. */
export function typedEntry(words: Words, options: TypedEntryOptions): TemplateResult {
  const { id, labelledBy, describedBy, range, value, draft, type } = options;
  return html`<input
    id=${id}
    class="typed"
    type="text"
    inputmode="decimal"
    autocomplete="off"
    size=${String(range.most).length + 2}
    aria-labelledby=${labelledBy ?? nothing}
    aria-describedby=${describedBy}
    aria-invalid=${draft ? 'true' : 'false'}
    .value=${live(draft?.text ?? words.number(value, 2))}
    @change=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLInputElement) type(currentTarget.value);
    }}
  />`;
}
