import { html, type TemplateResult } from 'lit';
import type { Words } from '../../words/words.js';

const usual = [
  'pain',
  'bone',
  'warning-signs',
  'illness',
  'low-energy',
  'heat',
  'pregnancy',
  'under-18',
  'older',
  'new',
  'local',
] as const;

/** The usual cautions, a line each. */
export const cautionLines = (words: Words): TemplateResult =>
  html`<ul>
    ${usual.map((caution) => html`<li>${words.say(`usual-caution.${caution}`)}</li>`)}
  </ul>`;
