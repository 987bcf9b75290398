import type { SeasonPage } from './season/season-page.js';

/** The fragment of the link that is copied when somebody presses for one. */
export async function copiedHash(page: SeasonPage): Promise<string> {
  let text = '';
  const write = async ([item]: readonly ClipboardItem[]): Promise<void> => {
    text = (await (await item?.getType('text/plain'))?.text()) ?? '';
  };
  Object.defineProperty(navigator.clipboard, 'write', { configurable: true, value: write });
  await page.click(page.tool('Copy link'));
  await page.until(() => text !== '', 'the link is copied');
  Reflect.deleteProperty(navigator.clipboard, 'write');
  return new URL(text).hash;
}
