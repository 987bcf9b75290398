import { html, nothing, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { accept, replace, suggestions, typedWord, type FormulaName, type TextAtCaret } from './completion.js';
import type { FormulaFieldOptions } from './formula-field-options.js';
import { formulaNote } from './formula-note.js';

/**
 * A text field for a formula that suggests the names of quantities: a combobox with a list. One controller a field.
 *
 * @example
 * readonly #field = new FormulaField(this);
 * // in the template: ${this.#field.render({ id: 'formula', label: 'Formula', … })}
 */
export class FormulaField implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #options: FormulaFieldOptions | null = null;
  /** The word that the list completes; '' shows all names, null closes the list. */
  #word: string | null = null;
  /** Which of the suggestions is active; -1 for none. */
  #active = -1;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    this.#word = null;
  }

  render(options: FormulaFieldOptions): TemplateResult {
    this.#options = options;
    const { id, label, text, error, words } = options;
    const list = this.#list;
    const isOpen = list.length > 0;
    return html`<div class="formula" @focusout=${this.#handleLeave}>
      <label id="${id}-label" for=${id}>${label}</label>
      <div class="entry">
        <input
          id=${id}
          type="text"
          role="combobox"
          dir="ltr"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          enterkeyhint="done"
          aria-labelledby="${id}-label"
          aria-autocomplete="list"
          aria-expanded=${isOpen ? 'true' : 'false'}
          aria-controls="${id}-list"
          aria-activedescendant=${list[this.#active] ? optionId(id, this.#active) : nothing}
          aria-invalid=${error ? 'true' : 'false'}
          aria-describedby="${id}-note"
          .value=${live(text)}
          @input=${this.#handleInput}
          @keydown=${this.#handleKey}
          @click=${this.#close}
        />
        <button
          type="button"
          tabindex="-1"
          aria-label=${words.say('sheet.all-names')}
          aria-expanded=${isOpen ? 'true' : 'false'}
          aria-controls="${id}-list"
          @mousedown=${keepFocus}
          @click=${this.#handleToggle}
        >
          <svg viewBox="0 0 12 8" aria-hidden="true"><path d="M1 1l5 5 5-5" /></svg>
        </button>
      </div>
      <ul
        id="${id}-list"
        role="listbox"
        aria-label=${words.say('sheet.names')}
        ?hidden=${!isOpen}
        @mousedown=${keepFocus}
      >
        ${list.map((name, index) => this.#option(name, index))}
      </ul>
      ${formulaNote(options, this.#mend)}
    </div>`;
  }

  /** Pressing it acts on release, as a link does; the keys for it are those of the field. */
  #option({ id, name }: FormulaName, index: number): TemplateResult {
    // eslint-disable-next-line lit-a11y/click-events-have-key-events -- the focus stays in the field, which has the keys
    return html`<li
      id=${optionId(this.#options?.id ?? '', index)}
      role="option"
      aria-selected=${index === this.#active ? 'true' : 'false'}
      @click=${({ currentTarget }: Event) => {
        this.#accept(inputBeside(currentTarget), id);
      }}
    >
      <span>${name}</span> <small dir="ltr">${id}</small>
    </li>`;
  }

  get #list(): readonly FormulaName[] {
    return this.#word === null ? [] : suggestions(this.#options?.names ?? [], this.#word);
  }

  #show(word: string | null, active = -1): void {
    this.#word = word;
    this.#active = active;
    this.#host.requestUpdate();
  }

  readonly #close = (): void => {
    if (this.#word !== null) this.#show(null);
  };

  readonly #handleLeave = ({ currentTarget, relatedTarget }: FocusEvent): void => {
    const isInside =
      currentTarget instanceof Node && relatedTarget instanceof Node && currentTarget.contains(relatedTarget);
    if (!isInside) this.#close();
  };

  readonly #handleInput = ({ currentTarget }: Event): void => {
    const input = inputBeside(currentTarget);
    this.#show(typedWord(atCaret(input)) || null);
    this.#options?.act.input(input.value);
  };

  readonly #handleToggle = ({ currentTarget }: Event): void => {
    inputBeside(currentTarget).focus();
    this.#show(this.#list.length > 0 ? null : '');
  };

  /** Keys of a combobox with a list (WAI-ARIA Authoring Practices); what is not taken moves the caret as ever. */
  readonly #handleKey = (event: KeyboardEvent): void => {
    if (event.isComposing) return;
    const input = inputBeside(event.currentTarget);
    if (this.#take(event, input)) {
      event.preventDefault();
      event.stopPropagation();
    } else if (!['Shift', 'Control', 'Alt', 'Meta'].includes(event.key) && !writes(event)) this.#close();
  };

  #take({ key, altKey }: KeyboardEvent, input: HTMLInputElement): boolean {
    const list = this.#list;
    const active = list[this.#active];
    if (key === 'ArrowDown' && altKey) this.#show('');
    else if (key === 'ArrowDown' && list.length > 0) this.#move(input, 1);
    else if (key === 'ArrowUp' && list.length > 0) this.#move(input, -1);
    else if ((key === 'Enter' || key === 'Tab') && active) this.#accept(input, active.id);
    else if (key === 'Enter') this.#finish('commit');
    else if (key === 'Escape' && list.length > 0) this.#show(null);
    else if (key === 'Escape') this.#finish('cancel');
    else return false;
    return true;
  }

  /** Beyond either end of the list the field itself is next, and then the other end. */
  #move(input: HTMLInputElement, step: 1 | -1): void {
    const places = this.#list.length + 1;
    this.#show(this.#word, ((this.#active + 1 + step + places) % places) - 1);
    void this.#host.updateComplete.then(() => {
      input.closest('.formula')?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
    });
  }

  #finish(how: 'commit' | 'cancel'): void {
    this.#close();
    this.#options?.act[how]();
  }

  #accept(input: HTMLInputElement, id: string): void {
    this.#write(input, accept(atCaret(input), id));
  }

  /** Puts a name in place of the piece that is wrong. */
  readonly #mend = (target: EventTarget | null, id: string): void => {
    const { text = '', error } = this.#options ?? {};
    if (error) this.#write(inputBeside(target), replace(text, error, id));
  };

  /** The text goes into the field at once, so that the caret can be set; the render that follows finds it there. */
  #write(input: HTMLInputElement, { text, caret }: TextAtCaret): void {
    input.value = text;
    input.focus();
    input.setSelectionRange(caret, caret);
    this.#show(null);
    this.#options?.act.input(text);
  }
}

const optionId = (id: string, index: number): string => `${id}-option-${String(index)}`;

const keepFocus = (event: Event): void => {
  event.preventDefault();
};

/** A key that changes the text: the input event that follows decides on the list. */
const writes = ({ key }: KeyboardEvent): boolean => key.length === 1 || key === 'Backspace' || key === 'Delete';

const atCaret = ({ value, selectionStart }: HTMLInputElement): TextAtCaret => ({
  text: value,
  caret: selectionStart ?? value.length,
});

function inputBeside(target: EventTarget | null): HTMLInputElement {
  const input = target instanceof Element ? target.closest('.formula')?.querySelector('input') : null;
  if (!input) throw new Error('the formula field has no input');
  return input;
}
