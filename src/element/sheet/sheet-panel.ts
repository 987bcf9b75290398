import { html, type TemplateResult } from 'lit';
import { newRow } from './new-row.js';
import { quantityGrid } from './quantity-grid.js';
import { questionIds, type QuestionId } from './question-desk.js';
import { scenarioChooser } from './scenario-chooser.js';
import { scenarioFailures } from './scenario-failures.js';
import { scenarioHands } from './scenario-hands.js';
import { scenarioInputs } from './scenario-inputs.js';
import type { SheetView } from './sheet-view.js';
import { toolbar } from './toolbar.js';

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
    ${scenarioHands(view)} ${newRow(view)}
    <section aria-labelledby="questions-title" class="questions">
      <h3 class="panel-title" id="questions-title">${words.say('sheet.questions')}</h3>
      ${questionIds.map((id) => questionBox(view, id))}
    </section>`;
}

/** A question is worked out only while it is open. */
function questionBox(view: SheetView, id: QuestionId): TemplateResult {
  const { words, bench } = view;
  const { desk } = bench;
  return html`<details
    class="question"
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) desk.toggle(id, currentTarget.open);
    }}
  >
    <summary>${words.say(`sheet.ask.${id}`)}</summary>
    ${desk.isOpen(id) ? desk.asked?.boxes[id]({ ...view, questions: desk.asked.questions }) : ''}
  </details>`;
}
