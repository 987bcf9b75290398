import { html, nothing, type TemplateResult } from 'lit';
import { mostScenarios } from '../../plan/scenarios/document.js';
import { copyLink, copyTable } from './copying.js';
import type { SheetView } from './sheet-view.js';

/** What can be done to the whole sheet, and what came of the last copying. */
export function toolbar(view: SheetView): TemplateResult {
  const { words, bench } = view;
  const { store } = bench;
  const button = (key: string, isPossible: boolean, act: () => void): TemplateResult =>
    html`<button type="button" class="act" aria-disabled=${isPossible ? 'false' : 'true'} @click=${act}>
      ${words.say(`sheet.${key}`)}
    </button>`;
  const isFull = store.sheet.scenarios.length >= mostScenarios;
  return html`<div class="toolbar" role="group" aria-label=${words.say('sheet.title')}>
      ${button('add', !isFull, () => {
        if (isFull) bench.say({ key: 'sheet.most', count: mostScenarios });
        else bench.copy(store.onShow.id);
      })}
      ${button('undo', store.canUndo, () => {
        bench.undo();
      })}
      ${button('redo', store.canRedo, () => {
        bench.redo();
      })}
      ${button('copy-table', true, () => void copyTable(view))} ${button('copy-link', true, () => void copyLink(view))}
    </div>
    ${messageLine(view)}`;
}

/** There from the start, so that listeners hear what comes into it. */
function messageLine(view: SheetView): TemplateResult {
  return html`<div class="message" role="status">${message(view)}</div>`;
}

function message({ words, details, bench: { message: shown } }: SheetView): TemplateResult | typeof nothing {
  if (!shown) return nothing;
  const { key, count = 0, text, problems = [] } = shown;
  return html`<p>${words.capital(words.say(key, { count }))}</p>
    ${problems.map((problem) => html`<p class="wrong">${details.sayProblem(words, problem)}</p>`)}
    ${text === undefined ? nothing : html`<textarea readonly rows="3" aria-label=${words.say(key)} .value=${text}></textarea>`}`;
}
