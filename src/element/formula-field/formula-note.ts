import { html, nothing, type TemplateResult } from 'lit';
import { excerpt } from './excerpt.js';
import type { FormulaFieldOptions } from './formula-field-options.js';
import { nearestName } from './nearest-name.js';

type Mend = (target: EventTarget | null, id: string) => void;

/** What is said under the field: the result, or the text with the wrong piece marked, the reason and a way out. */
export function formulaNote(
  { id, text, error, result, names, words }: FormulaFieldOptions,
  mend: Mend,
): TemplateResult {
  if (!error) return html`<div class="formula-note"><p id="${id}-note" class="formula-result">${result}</p></div>`;
  const { before, found, after } = excerpt(text, error);
  const meant = nearestName(found, names)?.id;
  return html`<div class="formula-note">
    <div id="${id}-note">
      <p class="formula-echo" dir="ltr">${before}<mark>${found}</mark>${after}</p>
      <p class="wrong">${words.capital(error.reason)}</p>
    </div>
    ${
      meant === undefined
        ? nothing
        : html`<button
            type="button"
            @click=${({ currentTarget }: Event) => {
              mend(currentTarget, meant);
            }}
          >
            ${words.say('sheet.did-you-mean', { name: meant })}
          </button>`
    }
  </div>`;
}
