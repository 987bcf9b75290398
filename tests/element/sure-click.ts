// Clicks by the mouse that land where they are meant to, on a page where things still come and move.
import { nextFrame } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';

const eventTypes = ['pointerdown', 'mousedown', 'pointerup', 'mouseup', 'click'] as const;

/** Presses in the middle of what is there. What falls on something else is held back from it, and comes again. */
export async function clickOn(target: Element): Promise<void> {
  for (let attempt = 0; attempt < 3; attempt += 1) {
    const fallen = await clickOnce(target);
    // What is gone meanwhile needs no second click.
    if (fallen === null || !target.isConnected) return;
    console.log(`A click fell on ${fallen} for ${named(target)}.`);
  }
  throw new Error(`every click on ${named(target)} falls on something else`);
}

/** What it fell on instead, or null. */
async function clickOnce(target: Element): Promise<string | null> {
  let fallen: string | null = null;
  const watch = (event: Event): void => {
    const path = event.composedPath();
    if (event.type === 'pointerdown' && !isOn(target, path))
      fallen = path[0] instanceof Element ? named(path[0]) : 'nothing';
    if (fallen === null) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  for (const type of eventTypes) window.addEventListener(type, watch, { capture: true });
  await sendMouse({ type: 'click', position: await middleOf(target) });
  for (const type of eventTypes) window.removeEventListener(type, watch, { capture: true });
  return fallen;
}

/** Also on the label of a field, which passes it on. */
function isOn(target: Element, path: readonly EventTarget[]): boolean {
  const labels = target instanceof HTMLInputElement ? [...(target.labels ?? [])] : [];
  return [target, ...labels].some((each) => path.includes(each));
}

const named = (element: Element): string => element.outerHTML.slice(0, 150);

function middle(target: Element): [number, number] {
  target.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = target.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + height / 2)];
}

/** Where something is once it stands still: panels above it may still be coming. */
async function middleOf(target: Element): Promise<[number, number]> {
  for (;;) {
    const before = middle(target);
    await nextFrame();
    await nextFrame();
    const now = middle(target);
    if (now.join() === before.join()) return now;
  }
}
