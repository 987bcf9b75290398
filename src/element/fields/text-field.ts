import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../../problem.js';
import { beginTyping, endTyping, typedText } from '../parts/typed-text.js';
import { fieldNote, type FieldOptions } from './fields.js';
import type { FieldView } from './field-view.js';

interface TextOptions<R> extends FieldOptions {
  readonly hint?: string;
  /** What it shows while nobody is typing. */
  readonly value: string;
  /** The keyboard of a phone. */
  readonly keys?: 'decimal' | 'numeric' | 'text';
  /** The request that the text makes, or what is wrong with it. */
  readonly set: (text: string) => R | Problem;
}

/** A text that is read when it is entered: a time, or a number that may be left out. */
export function textField<R extends object>(view: FieldView<R>, options: TextOptions<R>): TemplateResult {
  const { desk } = view;
  const { id, label, hint, value, keys = 'text', set } = options;
  return html`<div class="field" part="field">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      class="typed text"
      type="text"
      inputmode=${keys}
      autocomplete="off"
      size="8"
      aria-describedby="${id}-hint${hint ? ` ${id}-about` : ''}"
      aria-invalid=${desk.drafts.has(id) ? 'true' : 'false'}
      ${typedText(desk.drafts.get(id)?.text ?? value)}
      @input=${beginTyping}
      @blur=${endTyping}
      @change=${(event: Event) => {
        const text = endTyping(event);
        if (text === null) return;
        const made = set(text);
        if (isProblem(made)) desk.refuse(made, { id, label, text });
        else desk.act(made, { id, label, text });
      }}
    />
    ${hint ? html`<p id="${id}-about" class="hint">${hint}</p>` : nothing} ${fieldNote(view, id)}
  </div>`;
}

const isProblem = (made: object): made is Problem => 'code' in made && 'allowed' in made;
