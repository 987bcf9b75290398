// What Chromium does for a page by its own protocol, beyond the commands that the runner has.

const sessions = new WeakMap();

/** One session a page, kept open: detaching it would undo what was set. */
async function sessionOf(page) {
  if (!sessions.has(page)) sessions.set(page, await page.createCDPSession());
  return sessions.get(page);
}

/** Media features by their names in CSS. */
export async function setChromiumMedia(page, features) {
  const session = await sessionOf(page);
  const list = Object.entries(features).map(([name, value]) => ({ name, value }));
  await session.send('Emulation.setEmulatedMedia', { features: list });
}

/** Roles that are no ARIA, and one that has two names, as tests call them. */
const roleNames = { Date: 'date', DisclosureTriangle: 'summary', img: 'image' };

/** What is in a date field is the browser's own. */
const isWhole = ({ role }) => role === 'Date';

/** The accessibility tree as a list in reading order. */
export async function readChromiumTree(page) {
  const flat = (node) => [node, ...(isWhole(node) ? [] : (node.children ?? []).flatMap(flat))];
  return flat(await page.accessibility.snapshot()).map(({ role, name, value, valuetext, description }) => ({
    role: roleNames[role] ?? role,
    name: name ?? '',
    value: String(valuetext ?? value ?? ''),
    description: description ?? '',
  }));
}

/** Bytes of the script heap that are in use once what nobody holds is gone. */
export async function readChromiumHeap(page) {
  const session = await sessionOf(page);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  return usedSize;
}
