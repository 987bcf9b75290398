import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from './parts/cautions.js';
import type { View } from './view.js';

/**
 * Where the what-if sheet stands; it is fetched and rendered apart (see `SheetController`). The cautions are here where no
 * other panel has them.
 */
export const sheetPlace = {
  styles: [],
  render: (view: View): TemplateResult =>
    html`<section class="sheet" part="sheet" data-loading=${view.words.say('planner.loading')}></section>
      ${view.panels.includes('split') ? nothing : cautions(view)}`,
};
