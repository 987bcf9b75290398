import { html, type TemplateResult } from 'lit';
import { inputs } from '../inputs/inputs.js';
import { inputsStyles } from '../inputs/inputs.styles.js';
import { ring } from '../ring/ring.js';
import { ringStyles } from '../ring/ring.styles.js';
import type { View } from '../view.js';
import { answer } from './answer.js';
import { cautions } from '../parts/cautions.js';
import { notes } from './notes.js';
import { reasonsStyles } from './reasons.styles.js';
import { splitStyles } from './split-panel.styles.js';
import { weekTableStyles } from './week-table.styles.js';
import { weekTable } from './week-table.js';

/** The week divided: the answer, the ring, the inputs beside it, the numbers, and why they are so. */
export const splitPanel = {
  styles: [inputsStyles, ringStyles, splitStyles, weekTableStyles, reasonsStyles],
  render: (view: View): TemplateResult =>
    html`<div class="split">
      ${answer(view)}
      <div class="left">${ring(view)} ${inputs(view)}</div>
      <div class="right">
        <div class="numbers">
          ${weekTable(view)} ${view.details?.why(view) ?? html`<section id="why" hidden></section>`} ${notes(view)}
          ${cautions(view)}
        </div>
      </div>
    </div>`,
};
