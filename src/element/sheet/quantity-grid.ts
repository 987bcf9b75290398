import { html, nothing, type TemplateResult } from 'lit';
import type { GroupId, RowGroup, SheetRow } from '../../plan/scenarios/rows.js';
import type { Scenario } from '../../plan/scenarios/document.js';
import { quantityMeaning } from '../../words/quantity-meaning.js';
import { ofGroups, rowName } from '../../words/sheet/row-name.js';
import type { Words } from '../../words/words.js';
import { cellDetail } from './cell-detail.js';
import { gridCell } from './grid-cell.js';
import type { GridCell } from './shown-cell.js';
import { handleGridCopy, handleGridFocus, handleGridKey, handleGridKeyUp, handleGridPress } from './grid-events.js';
import type { GridPlace, GridShape } from './grid-moves.js';
import { groupRow, headColumn } from './grid-state.js';
import { columnRole, nameOf } from './scenario-names.js';
import type { SheetView } from './sheet-view.js';

/** All quantities of all scenarios: a grid, in which cells are opened and changed in place. */
export function quantityGrid(view: SheetView): TemplateResult {
  const { words, bench } = view;
  const { scenarios } = bench.store.sheet;
  const groups = bench.groups;
  const shape = bench.grid.shape(groups, scenarios);
  bench.grid.stayIn(shape);
  const block = bench.grid.block(shape);
  return html`<table
    class="columns grid"
    role="grid"
    aria-multiselectable="true"
    @keydown=${(event: KeyboardEvent) => {
      handleGridKey(view, event);
    }}
    @keyup=${handleGridKeyUp}
    @focusin=${(event: FocusEvent) => {
      handleGridFocus(view, event);
    }}
    @click=${(event: MouseEvent) => {
      handleGridPress(view, event);
    }}
    @copy=${(event: ClipboardEvent) => {
      handleGridCopy(view, event);
    }}
  >
    <caption class="visually-hidden">
      ${words.say('sheet.quantities')}
    </caption>
    <thead>
      <tr>
        <th scope="col" class="head"><span class="visually-hidden">${words.say('sheet.quantity')}</span></th>
        ${scenarios.map(
          (scenario) => html`<th scope="col" data-role=${columnRole(view, scenario)}>${nameOf(view, scenario)}</th>`,
        )}
      </tr>
    </thead>
    ${groups.map((group) => groupBody(view, group, block))}
  </table>`;
}

function groupBody(view: SheetView, { id, rows }: RowGroup, block: GridShape | null): TemplateResult {
  const isShut = view.bench.grid.isShut(id);
  return html`<tbody>
    ${groupHead(view, id, isShut)} ${isShut ? nothing : rows.map((row) => gridRow(view, row, block))}
  </tbody>`;
}

function groupHead({ words, bench }: SheetView, id: GroupId, isShut: boolean): TemplateResult {
  const place = { row: groupRow(id), column: headColumn };
  return html`<tr class="group">
    <th scope="rowgroup" colspan=${bench.store.sheet.scenarios.length + 1}>
      <button
        type="button"
        data-row=${place.row}
        data-column=${place.column}
        tabindex=${isAt(bench.grid.place, place.row, null) ? 0 : -1}
        aria-expanded=${isShut ? 'false' : 'true'}
        @click=${() => {
          bench.grid.toggle(id);
          bench.update();
        }}
      >
        ${words.say(`sheet.group.${id}`)}
      </button>
    </th>
  </tr>`;
}

function gridRow(view: SheetView, row: SheetRow, block: GridShape | null): TemplateResult {
  const { words, bench } = view;
  const { sheet } = bench.store;
  const { open, place } = bench.grid;
  const isMarked = (column: string): boolean => block?.rows.includes(row.id) === true && block.columns.includes(column);
  const category = categoryOf(view, row);
  const head = html`<th
    scope="row"
    data-row=${row.id}
    data-column=${headColumn}
    tabindex=${isAt(place, row.id, headColumn) ? 0 : -1}
    aria-selected=${isMarked(headColumn) ? 'true' : nothing}
  >
    ${category === null ? nothing : html`<span class="swatch" data-category=${category}></span>`}${rowName(words, bench.method, row)}
  </th>`;
  return html`<tr>
      ${head}${sheet.scenarios.map((scenario) => bodyCell(view, { row, scenario, isMarked: isMarked(scenario.id) }))}
    </tr>
    ${
      open?.row.id === row.id
        ? html`<tr class="detail">
            <td colspan=${sheet.scenarios.length + 1}>${cellDetail(view, open)}</td>
          </tr>`
        : nothing
    }`;
}

interface BodyCell {
  readonly row: SheetRow;
  readonly scenario: Scenario;
  readonly isMarked: boolean;
}

function bodyCell(view: SheetView, { row, scenario, isMarked }: BodyCell): TemplateResult {
  const { words, bench } = view;
  const { store, grid } = bench;
  const [planned, reference] = [store.of(scenario.id), store.of(store.sheet.reference)];
  if (!planned || !reference) return html`<td></td>`;
  const cell = view.turns.cell(scenario.id, row.id, () => gridCell(view, row, { planned, reference }));
  const isOpen = grid.open?.row.id === row.id && grid.open.scenario === scenario.id;
  return html`<td
    data-role=${columnRole(view, scenario)}
    data-row=${row.id}
    data-column=${scenario.id}
    data-mark=${cell.mark}
    tabindex=${isAt(grid.place, row.id, scenario.id) ? 0 : -1}
    aria-expanded=${isOpen ? 'true' : 'false'}
    aria-selected=${isMarked ? 'true' : nothing}
  >
    ${cell.text}
    ${row.kind === 'quantity' ? html`<small>${cell.difference}</small>` : nothing}${markText(words.say, cell)}
  </td>`;
}

/** A mark that the eye sees by its colour and its dot, in words. */
function markText(say: Words['say'], { mark }: GridCell): TemplateResult | typeof nothing {
  return mark === 'by-hand' || mark === 'gives-way'
    ? html`<span class="visually-hidden">${say('mark.comma', { head: '', rest: say(`sheet.${mark}`) })}</span>`
    : nothing;
}

/** Where the one tab stop of the grid is; a row that heads a group has no columns of its own. */
const isAt = (place: GridPlace, row: string, column: string | null): boolean =>
  place.row === row && (column === null || place.column === column);

/** The kind of training that a row is about, for its colour. */
function categoryOf({ bench }: SheetView, row: SheetRow): string | null {
  if (row.kind === 'sessions') return row.category;
  const meaning = row.kind === 'quantity' ? quantityMeaning(bench.method, row.quantity) : null;
  return meaning?.of === 'category' && ofGroups.has(meaning.measure) ? meaning.category : null;
}
