import { html, nothing, type TemplateResult } from 'lit';
import type { NumberInput } from '../../training/method/document.js';
import type { Words } from '../../words/words.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
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
    ${typedText(draft?.text ?? words.number(value, 2))}
    @input=${beginTyping}
    @blur=${endTyping}
    @change=${(event: Event) => {
      const text = endTyping(event);
      if (text !== null) type(text);
    }}
  />`;
}
