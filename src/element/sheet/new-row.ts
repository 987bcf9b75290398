import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { scenarioLimits } from '../../plan/scenarios/document.js';
import { draftField } from './draft-field.js';
import { focusGrid } from './grid-events.js';
import type { SheetView } from './sheet-view.js';

/** Adds a row of one's own: a name and a formula over what is there. */
export function newRow(view: SheetView): TemplateResult | typeof nothing {
  const { words, bench } = view;
  const row = bench.newRow;
  if (bench.store.sheet.rows.length >= scenarioLimits.rows) return nothing;
  if (!row)
    return html`<button
      type="button"
      class="act"
      @click=${() => {
        bench.beginRow({ name: '', isUnnamed: false });
        void focusOn(bench, '#row-name');
      }}
    >
      ${words.say('sheet.add-row')}
    </button>`;
  const cancel = (): void => {
    bench.beginRow(null);
    void focusOn(bench, '.sheet > .act');
  };
  const { quantity } = bench.placeOfRow();
  const note = row.isUnnamed ? words.say('sheet.row-unnamed') : words.say('sheet.row-id', { id: quantity });
  return html`<section class="why" aria-labelledby="row-title">
    <h4 id="row-title">${words.say('sheet.add-row')}</h4>
    <div class="question-field">
      <label for="row-name">${words.say('sheet.row-name')}</label>
      <input
        id="row-name"
        class="typed"
        type="text"
        maxlength=${scenarioLimits.name}
        aria-describedby="row-note"
        aria-invalid=${row.isUnnamed ? 'true' : 'false'}
        .value=${live(row.name)}
        @input=${({ currentTarget }: Event) => {
          if (currentTarget instanceof HTMLInputElement)
            bench.beginRow({ name: currentTarget.value, isUnnamed: false });
        }}
      />
    </div>
    <p id="row-note" class=${row.isUnnamed ? 'hint wrong' : 'hint'}>${row.name === '' && !row.isUnnamed ? '' : note}</p>
    ${draftField(view, {
      draft: 'row',
      id: 'formula-row',
      label: words.say('sheet.row-formula'),
      quantity,
      place: () => bench.placeOfRow(),
      put: (formula) => {
        if (row.name.trim() === '') bench.beginRow({ ...row, isUnnamed: true });
        else if (formula !== null) {
          bench.addRow(formula);
          void focusGrid(bench);
        }
      },
      putLabel: words.say('sheet.add-row'),
      cancel,
    })}
    <button type="button" class="act" @click=${cancel}>${words.say('sheet.cancel')}</button>
  </section>`;
}

/** What has the focus goes when the form comes or goes; it is given to what comes instead. */
async function focusOn({ host }: SheetView['bench'], selector: string): Promise<void> {
  await host.updateComplete;
  host.shadowRoot?.querySelector<HTMLElement>(selector)?.focus();
}
