import { html, nothing, type TemplateResult } from 'lit';
import { isOfChecks } from '../../plan/checks/check-quantities.js';
import type { SheetRow } from '../../plan/scenarios/rows.js';
import { derivationLines } from '../../words/derivation-lines.js';
import { rowName } from '../../words/sheet/row-name.js';
import { draftField } from './draft-field.js';
import { closeDetail, focusGrid } from './grid-events.js';
import type { OpenCell } from './grid-state.js';
import { ruleSwitches } from './rule-switches.js';
import { nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** What unfolds under a row: a value or formula to put over the cell, or the formula for all, and why it is so. */
export function cellDetail(view: SheetView, open: OpenCell): TemplateResult {
  const { words, bench } = view;
  const { row, scenario } = open;
  const name = rowName(words, bench.method, row);
  const found = bench.store.sheet.scenarios.find(({ id }) => id === scenario);
  return html`<section class="why" aria-labelledby="cell-title">
    <header>
      <h4 id="cell-title" tabindex="-1">
        ${found ? words.say('sheet.cell', { row: name, scenario: nameOf(view, found) }) : name}
      </h4>
      <button
        type="button"
        class="plain"
        @click=${() => {
          closeDetail(view);
        }}
      >
        ${words.say('sheet.close')}
      </button>
    </header>
    ${row.kind === 'rule' ? ruleSwitches(view, row.rule, scenario) : formulas(view, open, row)} ${why(view, open)}
  </section>`;
}

/** Over one cell a value or a formula can be put; the head of a row has the formula for all. */
function formulas(view: SheetView, { scenario }: OpenCell, row: SheetRow): TemplateResult | typeof nothing {
  // How the plan stands to guidance is nothing to be set by hand.
  if (row.kind !== 'quantity' || isOfChecks(row.quantity)) return nothing;
  return scenario === null ? forAll(view, row.quantity) : overCell(view, scenario, row.quantity);
}

function overCell(view: SheetView, scenario: string, quantity: string): TemplateResult {
  const { words, bench } = view;
  const { overrides = {} } = bench.store.sheet.scenarios.find(({ id }) => id === scenario) ?? {};
  const isOverridden = Object.hasOwn(overrides, quantity);
  return draftField(view, {
    draft: 'here',
    id: 'formula-here',
    label: words.say('sheet.override'),
    quantity,
    place: () => bench.placeOver(scenario, quantity),
    put: (formula) => {
      bench.override(scenario, quantity, formula);
      closeDetail(view);
    },
    putLabel: words.say('sheet.put'),
    cancel: () => {
      closeDetail(view);
    },
    ...(isOverridden && { lift: words.say('sheet.lift') }),
  });
}

function forAll(view: SheetView, quantity: string): TemplateResult | typeof nothing {
  const { words, bench } = view;
  if (bench.formulaOf(quantity) === null) return nothing;
  const { formulas: edited, rows } = bench.store.sheet;
  const isOwn = rows.some(({ id }) => id === quantity);
  return html`${draftField(view, {
    draft: 'all',
    id: 'formula-all',
    label: words.say('sheet.formula-for-all'),
    quantity,
    place: () => bench.placeForAll(quantity),
    put: (formula) => {
      bench.setFormula(quantity, formula);
      closeDetail(view);
    },
    putLabel: words.say('sheet.set-formula'),
    cancel: () => {
      closeDetail(view);
    },
    ...(Object.hasOwn(edited, quantity) && { lift: words.say('sheet.back-to-method') }),
  })}
  ${
    isOwn
      ? html`<button
          type="button"
          class="plain"
          @click=${() => {
            bench.removeRow(quantity);
            void focusGrid(bench);
          }}
        >
          ${words.say('sheet.remove-row')}
        </button>`
      : nothing
  }`;
}

/** Why the number is so, in the scenario of the cell, or in the one on show; what it was worked out with can be asked on. */
function why({ words, details, bench }: SheetView, open: OpenCell): TemplateResult | typeof nothing {
  const planned = bench.store.of(open.scenario ?? bench.store.onShow.id);
  if (!planned || open.quantity === null) return nothing;
  const { method, derivations } = planned.planner;
  const lines = derivationLines(words, { method, plan: { derivations } }, open.quantity);
  if (!lines) return nothing;
  const ask = (quantity: string | null): void => {
    bench.grid.open = { ...open, quantity: quantity ?? open.quantity };
    bench.update();
  };
  return html`<h5>${lines.title}</h5>
    ${details.derivation({ words, asked: null, act: { ask } }, lines)}`;
}
