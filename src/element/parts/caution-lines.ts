import { html, type TemplateResult } from 'lit';
import type { Method } from '../../training/method/document.js';
import { usualCautions } from '../../words/usual-cautions.js';
import type { Words } from '../../words/words.js';

/** The usual cautions, a line each. */
export const cautionLines = (words: Words, method: Method): TemplateResult =>
  html`<ul>
    ${usualCautions(words, method).map((caution) => html`<li>${caution}</li>`)}
  </ul>`;
