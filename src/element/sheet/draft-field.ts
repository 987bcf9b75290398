import { html, nothing, type TemplateResult } from 'lit';
import { quantityIds } from '../../sheet/sheet.js';
import { cellErrorReason } from '../../words/cell-error-reason.js';
import { formulaErrorReason } from '../../words/formula-error-reason.js';
import { quantityName } from '../../words/quantity-names.js';
import { quantityValue } from '../../words/quantity-value.js';
import type { FormulaName } from '../formula-field/completion.js';
import type { FormulaFieldError } from '../formula-field/formula-field-options.js';
import type { FormulaDraft, FormulaPlace } from './formula-draft.js';
import type { SheetView } from './sheet-view.js';

export interface DraftFieldOptions {
  readonly draft: 'here' | 'all' | 'row';
  readonly id: string;
  readonly label: string;
  readonly quantity: string;
  readonly place: () => FormulaPlace;
  /** Takes the formula; null lifts what stands there. */
  readonly put: (formula: string | null) => void;
  readonly putLabel: string;
  readonly cancel: () => void;
  /** The label of a button that lifts; left out where there is nothing to lift. */
  readonly lift?: string;
}

/** A formula being typed, what it is worth, and a button that takes it. */
export function draftField(view: SheetView, options: DraftFieldOptions): TemplateResult {
  const { words, bench } = view;
  const { id, label, quantity, place, put, lift, putLabel, cancel } = options;
  const draft = bench.drafts[options.draft];
  const commit = async (): Promise<void> => {
    if (draft.text.trim() === '') put(null);
    else {
      const formula = await draft.accepted(place());
      if (formula !== null) put(formula);
    }
  };
  return html`<div class="draft">
    ${draft.field.render({
      id,
      label,
      text: draft.text,
      error: errorOf(view, draft),
      result: resultOf(view, draft, quantity),
      names: namesOf(view),
      words,
      act: {
        input: (text) => {
          draft.type(text, place());
        },
        commit: () => void commit(),
        cancel,
      },
    })}
    <button type="button" class="act" @click=${commit}>${putLabel}</button>
    ${
      lift === undefined
        ? nothing
        : html`<button
            type="button"
            class="act"
            @click=${() => {
              draft.begin('');
              put(null);
            }}
          >
            ${lift}
          </button>`
    }
  </div>`;
}

/** Where the text goes wrong; a circle goes wrong as a whole. */
function errorOf({ words, bench }: SheetView, { text, trial }: FormulaDraft): FormulaFieldError | null {
  if (!trial || trial.ok) return null;
  if ('error' in trial) {
    const { position, found } = trial.error;
    return { position, length: found.length, reason: formulaErrorReason(words, trial.error) };
  }
  if (trial.failure.code !== 'circle') return null;
  const name = (id: string): string => quantityName(words, bench.method, id);
  return { position: 0, length: text.length, reason: cellErrorReason(words, trial.failure, name) };
}

function resultOf({ words, bench }: SheetView, { trial }: FormulaDraft, quantity: string): string {
  if (!trial) return '';
  const { method } = bench;
  if (trial.ok)
    return words.say('sheet.result', { value: quantityValue(words, method, { id: quantity, value: trial.value }) });
  if (!('failure' in trial) || trial.failure.code === 'circle') return '';
  return words.capital(cellErrorReason(words, trial.failure, (id) => quantityName(words, method, id)));
}

/** Everything that a formula may name, with what it is called. */
function namesOf({ words, bench }: SheetView): readonly FormulaName[] {
  const model = bench.store.shown?.planner.sheet.model;
  if (!model) return [];
  return [...quantityIds(model), ...Object.keys(model.names)].map((id) => ({
    id,
    name: quantityName(words, bench.method, id),
  }));
}
