import { html, type TemplateResult } from 'lit';
import type { Citation } from '../../words/citation.js';

/** A source as it is cited: in English, whatever the planner speaks. */
export const citationText = ({ cite, doi }: Citation): TemplateResult =>
  html`<span lang="en" dir="ltr">${cite}${doi === null ? '' : `. doi:${doi}`}</span>`;
