import { html, type TemplateResult } from 'lit';
import { newRow } from './new-row.js';
import { quantityGrid } from './quantity-grid.js';
import { backwardsQuestion } from './questions/backwards-question.js';
import { influenceQuestion } from './questions/influence-question.js';
import { sweepQuestion } from './questions/sweep-question.js';
import { scenarioChooser } from './scenario-chooser.js';
import { scenarioFailures } from './scenario-failures.js';
import { scenarioInputs } from './scenario-inputs.js';
import type { SheetView } from './sheet-view.js';
import { toolbar } from './toolbar.js';

const questions = { sweep: sweepQuestion, backwards: backwardsQuestion, influence: influenceQuestion };

/** The what-if sheet: scenarios side by side, their quantities under them, and what can be asked of them. */
export function sheetPanel(view: SheetView): TemplateResult {
  const { words, bench } = view;
  const scenarios = bench.store.sheet.scenarios.length;
  return html`<header>
      <h3 class="panel-title" id="sheet-title">${words.say('sheet.title')}</h3>
      <p class="quiet">${words.say('sheet.intro')}</p>
    </header>
    ${toolbar(view)} ${scenarioChooser(view)}
    <div class="columns-box" data-scenarios=${scenarios}>
      ${scenarioInputs(view)} ${scenarioFailures(view)} ${quantityGrid(view)}
    </div>
    ${newRow(view)}
    <section aria-labelledby="questions-title" class="questions">
      <h3 class="panel-title" id="questions-title">${words.say('sheet.questions')}</h3>
      ${Object.entries(questions).map(([id, question]) => questionBox(view, id, question))}
    </section>`;
}

/** A question is worked out only while it is open. */
function questionBox(view: SheetView, id: string, question: (view: SheetView) => TemplateResult): TemplateResult {
  const { words, bench } = view;
  const isOpen = bench.questions.open.has(id);
  return html`<details
    class="question"
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) bench.questions.openBox(id, currentTarget.open);
    }}
  >
    <summary>${words.say(`sheet.ask.${id}`)}</summary>
    ${isOpen ? question(view) : ''}
  </details>`;
}
