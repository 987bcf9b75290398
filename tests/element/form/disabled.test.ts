import { aTimeout, expect, fixture } from '@open-wc/testing';
import { resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { carrying, drag, fileText } from '../handout/files.js';
import { collapsed } from '../text.js';
import { allPanels, openForm, openWholeForm, pageIn, whole, type FormPage } from './form-page.js';

afterEach(() => resetMouse());

const controls = 'input, select, textarea, button';

async function disable(page: FormPage): Promise<FormPage> {
  page.element.setAttribute('disabled', '');
  await page.settled();
  return page.answered();
}

/** That something which is done changes nothing, and that the page hears nothing. */
async function expectNothing(page: FormPage, act: () => Promise<unknown>): Promise<void> {
  const before = page.element.value;
  const events = await page.heard(async () => {
    await act();
    await page.settled();
    await aTimeout(200);
  });
  expect(events.length, 'plan-change').to.equal(0);
  expect(page.element.value === before, 'the plan is as it was').to.equal(true);
}

describe('a planner that is disabled', () => {
  it('is not submitted, by its attribute', async () => {
    const page = await openForm('disabled');
    expect([page.entry, page.element.disabled, page.element.willValidate]).to.deep.equal([null, true, false]);
    page.element.disabled = false;
    await page.settled();
    page.expectEntry();
    expect(page.element.hasAttribute('disabled')).to.equal(false);
  });

  it('is not submitted, by the fieldset around it', async () => {
    const form = await fixture<HTMLFormElement>(
      '<form><fieldset disabled><weekwright-planner name="plan"></weekwright-planner></fieldset></form>',
    );
    const page = await pageIn(form);
    expect([page.entry, page.element.hasAttribute('disabled')]).to.deep.equal([null, false]);
    expect(page.slider('hours').matches(':disabled')).to.equal(true);
    form.querySelector('fieldset')?.toggleAttribute('disabled', false);
    await page.settled();
    page.expectEntry();
    expect(page.slider('hours').matches(':disabled')).to.equal(false);
  });

  it('is so by its property too, and no longer', async () => {
    const page = await openForm();
    expect([page.element.disabled, page.element.required]).to.deep.equal([false, false]);
    for (const isDisabled of [true, false]) {
      page.element.disabled = isDisabled;
      await page.settled();
      expect(page.slider('hours').matches(':disabled')).to.equal(isDisabled);
      expect(page.entry).to.equal(isDisabled ? null : page.planText);
    }
  });

  it('does not hold the form, whatever is wrong', async () => {
    const page = await openForm('hours="40" disabled required');
    expect(page.form.checkValidity()).to.equal(true);
  });

  it('has no control that works, on any of ten panels, and shows what it showed', async function () {
    // Every box of every panel is opened.
    this.timeout(60_000);
    const page = await openWholeForm();
    for (const name of allPanels.split(' '))
      expect(page.root.querySelector(`[part="${name}"], .answer`)).to.not.equal(null);
    for (const details of page.all<HTMLDetailsElement>('.panels details')) details.open = true;
    await restful(page);
    const before = panelTexts(page);
    expect(page.all(controls).length).to.be.greaterThan(60);
    await disable(page);
    expect(page.all(controls).filter((each) => !each.matches(':disabled'))).to.deep.equal([]);
    expect(panelTexts(page)).to.deep.equal(before);
    expect(page.all('.panels [contenteditable]')).to.deep.equal([]);
  });

  it('can be told by a person who cannot see it: each control is disabled, not only without effect', async () => {
    const page = await openForm('disabled');
    const before = page.element.value;
    await expectNothing(page, async () => {
      await page.click(page.stepButton('hours', 'more'));
      page.slider('hours').focus();
      await sendKeys({ press: 'ArrowRight' });
    });
    expect([page.element.value, page.root.activeElement]).to.deep.equal([before, null]);
  });

  for (const [name, key] of [
    ['Delete', 'Delete'],
    ['a digit', '9'],
    ['Enter', 'Enter'],
    ['undo', 'Control+z'],
  ] as const)
    it(`keeps the sheet as it is when somebody presses ${name} in a cell`, async () => {
      const page = await openForm('panels="split sheet"');
      await page.until(() => page.has('.grid'), 'the sheet comes');
      await page.override('strength_minutes', 0, '90');
      await disable(page);
      await expectNothing(page, async () => {
        page.cell('strength_minutes').focus();
        if (key === 'Control+z') {
          await sendKeys({ down: 'Control' });
          await sendKeys({ press: 'z' });
          await sendKeys({ up: 'Control' });
        } else await sendKeys({ press: key });
      });
      expect(page.shown('strength_minutes').text).to.contain('90');
    });

  it('keeps cards on their days when somebody drags one', async () => {
    const page = await openForm(`panels="split week" ${whole}`);
    await page.until(() => page.element.plan?.week?.state === 'laid' && page.has('.board .card'), 'the week is laid');
    await disable(page);
    await expectNothing(page, () => drags(page));
    expect(page.element.plan?.week?.wishes.pinned).to.deep.equal([]);
  });

  it('keeps cards on their days when it is disabled while somebody drags one', async () => {
    const page = await openForm(`panels="split week" ${whole}`);
    await page.until(() => page.element.plan?.week?.state === 'laid' && page.has('.board .card'), 'the week is laid');
    await expectNothing(page, () => drags(page, () => disable(page)));
    expect(page.element.plan?.week?.wishes.pinned).to.deep.equal([]);
  });

  for (const panels of ['split handout', 'split record'])
    it(`does not open a file that is dropped: ${panels}`, async () => {
      const page = await openForm(`panels="${panels}"`);
      await disable(page);
      const before = collapsed(page.find('.panels'));
      const isPlan = panels.includes('handout');
      const [text, name] = isPlan ? [fileText(), 'plan.json'] : ['Date,Kind,Minutes\n2026-11-30,easy,45\n', 'done.csv'];
      await expectNothing(page, async () => {
        drag(page, ['dragenter', 'dragover', 'drop'], carrying(text, name));
        await aTimeout(800);
      });
      expect(collapsed(page.find('.panels'))).to.equal(before);
    });

  it('works as before once it is enabled again', async () => {
    const page = await disable(await openForm());
    page.element.removeAttribute('disabled');
    await page.settled();
    await page.type('hours', '9');
    expect(page.element.plan?.inputs.hours).to.equal(9);
    page.expectEntry();
  });
});

const panelTexts = (page: FormPage): string[] => page.texts('.panels > *');

/** Until nothing more is worked out in boxes that were opened. */
async function restful(page: FormPage): Promise<void> {
  for (let before: string[] = []; before.join() !== panelTexts(page).join(); await aTimeout(2500))
    before = panelTexts(page);
}

/** Drags the first card to another day with the mouse. */
async function drags(page: FormPage, meanwhile: () => Promise<unknown> = () => Promise.resolve()): Promise<void> {
  const [card] = page.all('.board .card');
  const days = page.all('.board .day');
  const from = days.findIndex((day) => card !== undefined && day.contains(card));
  const to = days[from === 3 ? 2 : 3];
  if (!card || !to) throw new Error('there is no card to drag');
  card.scrollIntoView({ block: 'center' });
  await sendMouse({ type: 'move', position: middleOf(card) });
  await sendMouse({ type: 'down' });
  await sendMouse({ type: 'move', position: middleOf(to) });
  await meanwhile();
  await sendMouse({ type: 'move', position: middleOf(to) });
  await sendMouse({ type: 'up' });
}

function middleOf(target: Element): [number, number] {
  const { left, top, width, height } = target.getBoundingClientRect();
  return [Math.round(left + width / 2), Math.round(top + Math.min(height, 60) / 2)];
}
