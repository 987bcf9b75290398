import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';

interface Reached {
  goTo(control: Element): Promise<unknown>;
  hasFocus(control: Element): boolean;
}

/** Comes to a control from the one before it, as a person who presses Tab does; only then has it to show where the focus is. */
export async function tabTo(page: Reached, control: Element): Promise<void> {
  const before = document.createElement('button');
  document.body.prepend(before); // else Tab leaves the page where the control is its first
  await page.goTo(control);
  await sendKeys({ down: 'Shift' });
  await sendKeys({ press: 'Tab' });
  await sendKeys({ up: 'Shift' });
  await sendKeys({ press: 'Tab' });
  before.remove();
  expect(page.hasFocus(control), control.outerHTML).to.equal(true);
}
