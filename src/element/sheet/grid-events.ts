import { categoryQuantity } from '../../training/method/names.js';
import type { SheetRow } from '../../plan/scenarios/rows.js';
import { tableHtml, tableText } from '../../exchange/table-text.js';
import { gridMove, type GridPlace } from './grid-moves.js';
import { headColumn } from './grid-state.js';
import type { SheetView } from './sheet-view.js';
import { copyFormat } from '../parts/copied.js';
import { tableOf } from './table-of.js';

/** The grid's keys: arrows, Home, End and pages move, with Shift they mark; Enter opens, Delete lifts, a letter types. */
export function handleGridKey(view: SheetView, event: KeyboardEvent): void {
  const { bench } = view;
  const { currentTarget, target, key, shiftKey } = event;
  if (!(currentTarget instanceof HTMLElement) || !(target instanceof HTMLElement)) return;
  if (target.closest('.detail')) return leaveDetail(view, event);
  if (isUndo(event)) return;
  const { grid, store } = bench;
  const isMirrored = getComputedStyle(currentTarget).direction === 'rtl';
  const shape = grid.shape(bench.groups, store.sheet.scenarios);
  const next = gridMove(grid.place, { key, ctrlKey: event.ctrlKey, isMirrored }, shape);
  if (next) {
    grid.go(next, { mark: shiftKey });
    focusPlace(currentTarget, next);
    bench.update();
  } else if (!actOnKey(view, event)) return;
  event.preventDefault();
}

/** Opens, lifts or begins to type at the place where one is; false for a key that means nothing here. */
function actOnKey(view: SheetView, { key, ctrlKey, metaKey, altKey }: KeyboardEvent): boolean {
  const { bench } = view;
  const { place } = bench.grid;
  const row = rowAt(view, place.row);
  if (!row || ctrlKey || metaKey || altKey) return false;
  const scenario = place.column === headColumn ? null : place.column;
  if (key === 'Enter' || key === 'F2' || key === ' ') {
    // What is open stays: somebody may have typed into it before it had the focus. Escape closes.
    if (isOpenAt(view, place)) void focusDetail(bench.host);
    else openAt(view, place);
    return true;
  }
  if (row.kind !== 'quantity' || scenario === null || bench.host.matches(':disabled')) return false;
  if (key === 'Delete' || key === 'Backspace') {
    bench.override(scenario, row.quantity, null);
    return true;
  }
  if (key.length !== 1) return false;
  // Keys that come before the field has the focus go on with what was typed.
  const isOpen = isOpenAt(view, place);
  if (!isOpen) openAt(view, place);
  const { here } = bench.drafts;
  here.type(isOpen ? here.text + key : key, bench.placeOver(scenario, row.quantity));
  return true;
}

function isOpenAt({ bench }: SheetView, { row, column }: GridPlace): boolean {
  const { open } = bench.grid;
  return open?.row.id === row && open.scenario === (column === headColumn ? null : column);
}

/** Opens the details of a cell, or closes them where they are open; the focus goes along. */
function openAt(view: SheetView, place: GridPlace): void {
  const { bench } = view;
  const row = rowAt(view, place.row);
  if (!row) return;
  const scenario = place.column === headColumn ? null : place.column;
  const isOpen = isOpenAt(view, place);
  bench.openCell(isOpen ? null : { row, scenario, quantity: quantityOfRow(row) });
  if (!isOpen) void focusDetail(bench.host);
}

/** Of a row of sessions the whole minutes are explained, which they are cut from. */
function quantityOfRow(row: SheetRow): string | null {
  if (row.kind === 'sessions') return categoryQuantity(row.category, 'rounded');
  return row.kind === 'quantity' ? row.quantity : null;
}

async function focusDetail(host: HTMLElement & { readonly updateComplete: Promise<boolean> }): Promise<void> {
  await host.updateComplete;
  const detail = host.shadowRoot?.querySelector('.grid .detail');
  const field = detail?.querySelector<HTMLElement>('[role="combobox"]') ?? detail?.querySelector<HTMLElement>('h4');
  field?.focus({ preventScroll: true });
  detail?.scrollIntoView({ block: 'nearest' });
}

/** Gives the focus to the place in the grid where one is. */
export async function focusGrid({ host }: SheetView['bench']): Promise<void> {
  await host.updateComplete;
  host.shadowRoot?.querySelector<HTMLElement>('.grid [tabindex="0"]')?.focus();
}

/** Escape goes back to the cell. */
function leaveDetail(view: SheetView, event: KeyboardEvent): void {
  if (event.key !== 'Escape' || event.defaultPrevented) return;
  event.preventDefault();
  event.stopPropagation();
  closeDetail(view);
}

/** Closes what is open and gives the focus back to its cell. */
export function closeDetail({ bench }: SheetView): void {
  const table = bench.host.shadowRoot?.querySelector<HTMLElement>('.grid');
  if (table) focusPlace(table, bench.grid.place);
  bench.openCell(null);
}

/** The place follows the focus, however it came there. */
export function handleGridFocus({ bench }: SheetView, { target }: FocusEvent): void {
  const place = placeOf(target);
  const { grid } = bench;
  if (!place || (place.row === grid.place.row && place.column === grid.place.column)) return;
  grid.go(place, { mark: false });
  bench.update();
}

/**
 * WebKit scrolls to the text of a field alone, which may lie under the heads then: a field that Tab came to is shown
 * whole. With Shift, WebKitGTK knows Tab by its place on the keyboard alone.
 */
export function handleGridKeyUp({ target, code }: KeyboardEvent): void {
  if (code === 'Tab' && target instanceof HTMLInputElement) target.scrollIntoView({ block: 'nearest' });
}

/** A press opens a cell; with Shift it marks the block up to there. */
export function handleGridPress(view: SheetView, event: MouseEvent): void {
  const { bench } = view;
  const { target, shiftKey } = event;
  if (!(target instanceof Element) || target.closest('.detail, button')) return;
  const place = placeOf(target);
  if (!place) return;
  bench.grid.go(place, { mark: shiftKey });
  if (shiftKey) bench.update();
  else openAt(view, place);
}

/** Copies the block that is marked, else the cell, as a table. */
export function handleGridCopy(view: SheetView, event: ClipboardEvent): void {
  const { target, clipboardData } = event;
  if (!clipboardData || !(target instanceof Element) || target.closest('.detail')) return;
  const { grid, store } = view.bench;
  const shape = grid.shape(view.bench.groups, store.sheet.scenarios);
  const block = grid.block(shape) ?? { rows: [grid.place.row], columns: [grid.place.column] };
  const table = tableOf(view, block);
  const format = copyFormat(view.words);
  clipboardData.setData('text/plain', tableText(table, format));
  clipboardData.setData('text/html', tableHtml(table, format));
  event.preventDefault();
}

function rowAt({ bench }: SheetView, id: string): SheetRow | undefined {
  return bench.groups.flatMap(({ rows }) => rows).find((row) => row.id === id);
}

function placeOf(target: EventTarget | null): GridPlace | null {
  const cell = target instanceof Element ? target.closest<HTMLElement>('[data-row][data-column]') : null;
  const { row, column } = cell?.dataset ?? {};
  return row === undefined || column === undefined ? null : { row, column };
}

function focusPlace(table: HTMLElement, { row, column }: GridPlace): void {
  const cells = [...table.querySelectorAll<HTMLElement>(`[data-row="${CSS.escape(row)}"]`)];
  const cell = cells.find(({ dataset }) => dataset['column'] === column) ?? cells[0];
  cell?.focus();
}

const isUndo = ({ key, ctrlKey, metaKey }: KeyboardEvent): boolean => (ctrlKey || metaKey) && /^[zycZYC]$/.test(key);
