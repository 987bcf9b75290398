// What axe finds in a planner; it walks open shadow roots.
import 'axe-core/axe.min.js';
import type axe from 'axe-core';

declare global {
  interface Window {
    readonly axe: typeof axe;
  }
}

const options: axe.RunOptions = {
  // The last one brings the sizes of targets, which are not looked at by default.
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  rules: {
    'label-content-name-mismatch': { enabled: true },
    // These are about whole pages, which a planner is not.
    'page-has-heading-one': { enabled: false },
    region: { enabled: false },
  },
  resultTypes: ['violations', 'incomplete'],
};

/** axe cannot tell the ground of text over a drawing; tests/element/ring.test.ts shows that none lies on a part of it. */
const noDrawings = new CSSStyleSheet();
noDrawings.replaceSync('svg { visibility: hidden }');

/** An element with its shadow root: a planner, or a piece of one. */
interface Rooted {
  readonly element: Element;
  readonly root: ShadowRoot;
}

/** Faults, and contrast that could not be told, as lines to read. */
export async function faultsOf({ root, element }: Rooted): Promise<string[]> {
  root.adoptedStyleSheets.push(noDrawings);
  const { violations, incomplete } = await window.axe.run(element, options);
  root.adoptedStyleSheets.pop();
  return [...violations, ...incomplete.filter(isDoubtful)].flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, any }) => `${id}: ${help}: ${target.flat().join(' ')} ${any[0]?.message ?? ''}`),
  );
}

/** The minus of a button is no text to axe; the plus beside it, in the same colour, is. */
function isDoubtful({ id, nodes }: axe.Result): boolean {
  return id === 'color-contrast' && nodes.some(({ html }) => !html.includes('class="step"'));
}
