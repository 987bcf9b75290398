import { html, nothing, type TemplateResult } from 'lit';
import { cautions } from './parts/cautions.js';
import type { Panel, View } from './view.js';

/**
 * Where a panel stands that is fetched and rendered apart (see `LatePanelController`). The cautions are under the last of
 * these where no other panel has them.
 */
export const latePlace = (name: string, place = name): Panel => ({
  render: (view: View): TemplateResult =>
    html`<section class=${place} part=${name} data-loading=${view.words.say('planner.loading')}></section>
      ${view.panels.at(-1) === name && !view.panels.includes('split') ? cautions(view) : nothing}`,
});
