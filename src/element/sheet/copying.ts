import { tableHtml, tableText } from '../../exchange/table-text.js';
import type { Words } from '../../words/words.js';
import { linkKey } from '../link/fragment.js';
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

/** Numbers for other programs: as the language writes them, the minus as programs know it. */
export function copyFormat(words: Words): (value: number) => string {
  return (value) => `${value < 0 ? '-' : ''}${words.number(Math.abs(value), 4)}`;
}

/** False where the browser, or the page around a frame, forbids it. */
async function copied(texts: Readonly<Record<string, string>>): Promise<boolean> {
  try {
    const blobs = Object.entries(texts).map(([type, text]) => [type, new Blob([text], { type })] as const);
    await navigator.clipboard.write([new ClipboardItem(Object.fromEntries(blobs))]);
    return true;
  } catch {
    return false;
  }
}
