import { expect, fixture } from '@open-wc/testing';
import club from '../../../demo/club-method.json';
import { allPanels, openForm, openWholeForm, pageIn, type FormPage } from './form-page.js';

/** A plan with days, a season and sessions picked, as a form has sent it. */
async function submitted(): Promise<{ readonly text: string; readonly plan: object }> {
  const page = await openForm(
    'panels="split week season" hours="5" phase="peak" level="trained" event="10k" days="60,45,60,60,45,90,120" event-date="2027-04-11"',
  );
  await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
  page.expectEntry();
  const { planText: text } = page;
  page.form.remove();
  return { text, plan: JSON.parse(text) as object };
}

/** Until a planner shows a plan: its week is found in its own time. */
const shows = (page: FormPage, text: string): Promise<FormPage> =>
  page.until(() => page.element.value === text, 'the plan is on show');

describe('a plan that was submitted before', () => {
  it('is on show again when a browser restores the form', async () => {
    const { text } = await submitted();
    const page = await openForm('panels="split week season"');
    const events = await page.heard(async () => {
      page.element.formStateRestoreCallback(text);
      await page.settled();
      await shows(page, text);
    });
    page.expectEntry();
    expect([events, page.element.problems]).to.deep.equal([[], []]);
  });

  it('is on show before any panel has come', async () => {
    const { text } = await submitted();
    const form = await fixture<HTMLFormElement>(
      '<form><weekwright-planner name="plan" panels="split week season"></weekwright-planner></form>',
    );
    const element = form.querySelector('weekwright-planner');
    element?.formStateRestoreCallback(text);
    await shows(await pageIn(form), text);
  });

  it('is on show where it stands in the page as an attribute', async () => {
    const { text } = await submitted();
    const element = document.createElement('weekwright-planner');
    element.setAttribute('value', text);
    const page = await openForm(`panels="split week season" ${/value=".*"/s.exec(element.outerHTML)?.[0] ?? ''}`);
    await shows(page, text);
    page.expectEntry();
  });

  it('is on show where it was set before the planner is on a page', async () => {
    const { text } = await submitted();
    const element = document.createElement('weekwright-planner');
    Object.assign(element, { value: text, panels: 'split week season' });
    const form = await fixture<HTMLFormElement>('<form></form>');
    form.append(element);
    await shows(await pageIn(form), text);
  });

  it('is on show where it was set before the tag was known', async () => {
    const { text } = await submitted();
    const other = document.implementation.createHTMLDocument();
    const element = other.createElement('weekwright-planner');
    Object.defineProperty(element, 'value', { value: text, writable: true, configurable: true, enumerable: true });
    element.setAttribute('panels', 'split week season');
    const form = await fixture<HTMLFormElement>('<form></form>');
    form.append(element);
    await shows(await pageIn(form), text);
  });

  it('has its days and its season where their panels come later', async () => {
    const { text } = await submitted();
    const page = await (await openForm()).sets(text);
    expect(page.element.plan).to.include({ week: null, season: null });
    page.element.panels = 'split week season';
    await page.settled();
    await shows(page, text);
  });

  it('has the sessions that were picked', async () => {
    const before = await openForm();
    await before.choose(before.sessionList('strength'), 1);
    const page = await (await openForm()).sets(before.element.value);
    expect(page.element.value).to.equal(before.element.value);
    expect(page.row('strength').sessions).to.equal(before.row('strength').sessions);
  });

  it('goes over what was typed and is no value', async () => {
    const page = await openForm('hours="6"');
    const { value } = page.element;
    await page.type('hours', 'soon');
    await page.sets(value);
    expect([page.typed('hours').value, page.element.validity.valid]).to.deep.equal(['6', true]);
  });

  it('by a coach’s own method is on show where that method is in use', async () => {
    const other = await openForm();
    other.element.method = club;
    await other.drag('hours', 6);
    await other.until(() => other.element.plan?.method.id === club.id, 'the method is there');
    const text = other.element.value;
    const form = await fixture<HTMLFormElement>('<form></form>');
    const element = document.createElement('weekwright-planner');
    Object.assign(element, { method: club, value: text, name: 'plan' });
    form.append(element);
    await shows(await pageIn(form), text);
  });
});

describe('the value of a planner', () => {
  it('set to itself changes nothing', async () => {
    const page = await openWholeForm();
    await page.drag('hours', 5);
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
    const { value } = page.element;
    const events = await page.heard(() => page.sets(value));
    await page.answered();
    expect(page.element.value).to.equal(value);
    expect([events, page.element.problems]).to.deep.equal([[], []]);
    page.expectEntry();
  });

  it('is empty before there is a plan, and where there is none', async () => {
    expect(document.createElement('weekwright-planner').value).to.equal('');
    const page = await openForm('panels="split checks"');
    await (await page.opens('start')).ticks('symptoms');
    expect(page.element.value).to.equal('');
  });
});

describe('a value that is none', () => {
  const faulty: Readonly<Record<string, readonly [(plan: Record<string, unknown>) => unknown, string]>> = {
    'no JSON': [() => '{"format":', 'value'],
    'another format': [(plan) => ({ ...plan, format: 'weekwright-file' }), 'value.format'],
    'a newer version': [(plan) => ({ ...plan, version: 2 }), 'value.version'],
    'another method': [(plan) => ({ ...plan, method: { id: 'club', name: 'Club' } }), 'value.method'],
    'out of range': [
      (plan) => ({ ...plan, inputs: { ...(plan['inputs'] as object), hours: 40 } }),
      'value.inputs.hours',
    ],
    'a list': [() => [], 'value.format'],
    'too deep': [() => `${'['.repeat(100)}${']'.repeat(100)}`, 'value'],
  };

  for (const [kind, [make, path]] of Object.entries(faulty))
    it(`is told with its path, and what is on show stays: ${kind}`, async () => {
      const page = await openForm('hours="6"');
      await page.choose(page.sessionList('strength'), 1);
      const before = page.element.value;
      const made = make(JSON.parse(before) as Record<string, unknown>);
      await page.sets(typeof made === 'string' ? made : JSON.stringify(made));
      expect(page.element.problems.map((problem) => problem.path)).to.deep.equal([path]);
      await page.until(() => page.problems.length > 0, 'that is told');
      expect(page.problems).to.have.length(1);
      expect(page.problems[0]?.startsWith(`${path} is`)).to.equal(true);
      expect(page.element.value).to.equal(before);
      expect(page.element.validationMessage).to.equal(page.problems[0]);
    });

  const wrong = '{"format":"none"}';

  it('is forgiven when a good one is set, or none', async () => {
    const page = await openForm();
    const good = page.element.value;
    for (const value of [good, '']) {
      await page.sets(wrong);
      expect(page.element.validity.valid).to.equal(false);
      await page.sets(value);
      expect([page.element.problems, page.element.validity.valid]).to.deep.equal([[], true]);
    }
  });

  it('is forgiven when a person goes on from the plan on show', async () => {
    const page = await openForm(`value='${wrong}'`);
    expect(page.problems).to.have.length(1);
    await page.drag('hours', 6);
    expect([page.problems, page.element.problems, page.element.validity.valid]).to.deep.equal([[], [], true]);
  });

  it('is told where all panels are', async () => {
    const page = await openForm(`panels="${allPanels}" value='${wrong}'`);
    expect(page.element.problems.map(({ path }) => path)).to.deep.equal(['value.format']);
  });
});
