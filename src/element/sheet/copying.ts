import { tableHtml, tableText } from '../../exchange/table-text.js';
import { linkKey } from '../link/fragment.js';
import { copied, copyFormat } from '../parts/copied.js';
import type { SheetView } from './sheet-view.js';
import { tableOf } from './table-of.js';

/** Copies the whole sheet as a table: what is open of it, in all scenarios. */
export async function copyTable(view: SheetView): Promise<void> {
  const { bench, words } = view;
  const table = tableOf(view, bench.grid.shape(bench.groups, bench.store.sheet.scenarios));
  const format = copyFormat(words);
  const text = tableText(table, format);
  const isCopied = await copied({ 'text/plain': text, 'text/html': tableHtml(table, format) });
  bench.say(isCopied ? { key: 'sheet.copied-table' } : { key: 'sheet.not-copied', text });
}

/** Copies the address of the page with the whole sheet in it. */
export async function copyLink({ bench }: SheetView): Promise<void> {
  const { linkTo } = await import('../link/link.js');
  const link = await linkTo(bench.store.sheet, { href: location.href, key: linkKey(bench.host.id) });
  if (!link.ok) {
    bench.say({ key: 'sheet.faulty-link', problems: link.problems });
    return;
  }
  const isCopied = await copied({ 'text/plain': link.value });
  const count = link.value.length;
  bench.say(isCopied ? { key: 'sheet.copied-link', count } : { key: 'sheet.not-copied', text: link.value });
}
