import { html, type TemplateResult } from 'lit';
import type { View } from './view.js';

/** Where the what-if sheet stands; it is fetched and rendered apart (see `SheetController`). */
export const sheetPlace = {
  styles: [],
  render: ({ words }: View): TemplateResult =>
    html`<section class="sheet" part="sheet" data-loading=${words.say('planner.loading')}></section>`,
};
