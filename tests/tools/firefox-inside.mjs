// What Firefox itself can do for a page and its driver offers nothing for: scripts in the browser's own scope.

/** Runs a function in the browser's own scope, with `pageBrowser` at hand; what it takes and gives is plain data. */
async function runInside(page, work, options = {}) {
  const { connection } = page.browser();
  const { result: tree } = await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome' });
  const [window] = tree.contexts;
  const { result: outcome } = await connection.send('script.evaluate', {
    expression: `{
      const windows = [...Services.wm.getEnumerator('navigator:browser')];
      const browsers = windows.flatMap(({ gBrowser }) => [...gBrowser.browsers]);
      const pageBrowser = browsers.find(({ currentURI }) => currentURI.spec === ${JSON.stringify(page.url())});
      (${work})(${JSON.stringify(options)});
    }`,
    target: { context: window.context },
    awaitPromise: true,
  });
  if (outcome.type === 'exception') throw new Error(`inside Firefox: ${outcome.exceptionDetails.text}`);
  return outcome.result.value;
}

/* The functions below run inside Firefox, where `pageBrowser` is the browser of the page. */
/* global Cc, Ci, pageBrowser */

function overrideMedia({ features }) {
  const { browsingContext } = pageBrowser;
  browsingContext.prefersColorSchemeOverride = features['prefers-color-scheme'];
  browsingContext.prefersReducedMotionOverride = features['prefers-reduced-motion'];
  browsingContext.forcedColorsOverride = features['forced-colors'];
}

/** Media features by their names in CSS. */
export const setFirefoxMedia = (page, features) => runInside(page, overrideMedia, { features });

function focusPage() {
  pageBrowser.focus();
}

/** Brings the focus back from the bars of the window, to which Tab goes behind the last thing of a page. */
export const focusFirefoxPage = (page) => runInside(page, focusPage);

/** Everything below a document, in reading order, once the mark that was put into it last is there and nothing changes. */
async function readTree({ mark }) {
  // Held on to, for without somebody who holds it the service stops, and its trees are gone.
  globalThis.treeService ??= Cc['@mozilla.org/accessibilityService;1'].getService(Ci.nsIAccessibilityService);
  const service = globalThis.treeService;
  const kindOf = (node) => service.getStringRole(node.role);
  // What is in a date field or in a list to choose from is the browser's own.
  const isWhole = (node) => ['date editor', 'combobox'].includes(kindOf(node));
  const childrenOf = (node) =>
    isWhole(node) ? [] : Array.from({ length: node.childCount }, (_, index) => node.getChildAt(index));
  const all = (node) => (node === null ? [] : [node, ...childrenOf(node).flatMap(all)]);
  // What has no role of its own in ARIA.
  const roleNames = { 'date editor': 'date', details: 'details', summary: 'summary' };
  const describe = (node) => ({
    role: roleNames[kindOf(node)] ?? node.computedARIARole,
    name: node.name ?? '',
    value: node.value,
    description: node.description,
  });
  let before = '';
  for (let attempt = 0; attempt < 200; attempt += 1) {
    const nodes = all(service.getAccessibleFor(pageBrowser)).map(describe);
    const now = JSON.stringify(nodes);
    if (now === before && nodes.some(({ name }) => name === mark)) return now;
    before = now;
    await new Promise((done) => {
      setTimeout(done, 50);
    });
  }
  throw new Error('the accessibility tree does not come to rest');
}

let marks = 0;

/** The accessibility tree as a list in reading order. */
export async function readFirefoxTree(page) {
  marks += 1;
  const mark = `mark ${String(marks)}`;
  await page.evaluate((ariaLabel) => {
    document.body.append(Object.assign(document.createElement('div'), { role: 'note', ariaLabel, id: 'tree-mark' }));
  }, mark);
  const nodes = JSON.parse(await runInside(page, readTree, { mark }));
  await page.evaluate(() => {
    document.querySelector('#tree-mark').remove();
  });
  return nodes.filter(({ name }) => name !== mark);
}
