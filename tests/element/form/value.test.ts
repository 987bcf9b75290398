import { expect, fixture } from '@open-wc/testing';
import { allPanels, openForm, openWholeForm, pageIn, type FormPage } from './form-page.js';

/** What a person does, panel by panel. */
const acts: Readonly<Record<string, (page: FormPage) => Promise<unknown>>> = {
  'a slider that is dragged': (page) => page.drag('hours', 6),
  'a choice from a list': (page) => page.choose(page.list('event'), 1),
  'a typed value': (page) => page.type('hours', '7.5'),
  'a step button': (page) => page.click(page.stepButton('strengthCap', 'less')),
  'sessions picked': (page) => page.choose(page.sessionList('strength'), 1),
  'minutes of a day': async (page) => {
    const [field] = page.all<HTMLInputElement>('.board .day input.typed, .board input[id^="day"]');
    if (!field) throw new Error('no day has a field');
    await page.fill(field, '75');
    await page.press('Enter');
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
  },
  'a wish of the season': (page) => page.setDate('season-date', '2027-05-16'),
  'a scenario of the sheet': async (page) => {
    await page.add();
    await page.set(1, 'hours', 7);
  },
  'what is told of the runner': async (page) => {
    await page.opens('own');
    await page.typeIn('checks-age', '67');
  },
};

describe('a form with a planner', () => {
  it('has the plan on show under its name', async () => {
    const page = await openForm();
    page.expectEntry();
    expect([...new FormData(page.form).keys()]).to.deep.equal(['plan']);
    expect(JSON.parse(page.element.value)).to.deep.equal(page.element.plan);
  });

  for (const [name, act] of Object.entries(acts))
    it(`has the plan on show after ${name}`, async () => {
      const page = await openWholeForm();
      const before = page.entry;
      await act(page);
      await page.settled();
      page.expectEntry();
      expect(page.entry).to.not.equal(before);
    });

  it('has it already when the page hears of an act', async () => {
    const page = await openForm();
    const heard: unknown[][] = [];
    for (const place of [page.element, page.form, document])
      place.addEventListener('plan-change', ({ detail }: CustomEventInit) => {
        heard.push([page.entry === JSON.stringify(detail)]);
      });
    await page.drag('hours', 6);
    expect(heard).to.deep.equal([[true], [true], [true]]);
  });

  it('gives back sessions that were picked, with days beside them', async () => {
    const page = await openForm('hours="5" days="60,0,45,60,0,90,120" panels="split week"');
    const list = page.sessionList('strength');
    await page.choose(list, list.length - 1);
    await page.until(() => page.element.plan?.week?.state === 'laid', 'the week is laid');
    const { value } = page.element;
    expect(JSON.parse(value)).to.have.nested.property('week.picks.strength');
    const again = await openForm('panels="split week"');
    await again.sets(value);
    await again.until(() => again.element.value === value, 'it is the same plan');
  });

  it('has what the page sets', async () => {
    const page = await openForm();
    page.element.hours = 8;
    await page.settled();
    page.expectEntry();
    expect(JSON.parse(page.planText)).to.have.nested.property('inputs.hours', 8);
  });

  it('has nothing of one without a name, and the plan once it has one', async () => {
    const page = await openForm('', { name: '' });
    expect([...new FormData(page.form)]).to.deep.equal([]);
    page.element.name = 'plan';
    await page.settled();
    page.expectEntry();
    expect(page.element.getAttribute('name')).to.equal('plan');
  });

  it('has each of several under its own name', async () => {
    const form = await fixture<HTMLFormElement>(
      '<form><weekwright-planner name="one" hours="3"></weekwright-planner><weekwright-planner name="two" hours="9"></weekwright-planner></form>',
    );
    const [one, two] = [await pageIn(form, '[name="one"]'), await pageIn(form, '[name="two"]')];
    await two.drag('hours', 10);
    const sent = [...new FormData(form)];
    expect(sent).to.deep.equal([
      ['one', one.planText],
      ['two', two.planText],
    ]);
    expect(one.element.plan?.inputs.hours).to.equal(3);
  });

  it('loses it to the form that it is moved to', async () => {
    const place = await fixture<HTMLElement>('<div><form id="from"></form><form id="to"></form></div>');
    const [from, to] = place.querySelectorAll('form');
    if (!from || !to) throw new Error('two forms are needed');
    from.innerHTML = '<weekwright-planner name="plan"></weekwright-planner>';
    const page = await pageIn(from);
    await page.drag('hours', 6);
    to.append(page.element);
    await page.settled();
    expect([...new FormData(from)]).to.deep.equal([]);
    expect(page.form === to).to.equal(true);
    page.expectEntry();
    await page.drag('hours', 7);
    page.expectEntry();
  });

  it('may be somewhere else, named by the attribute form', async () => {
    const place = await fixture<HTMLElement>(
      '<div><form id="elsewhere"></form><weekwright-planner name="plan" form="elsewhere"></weekwright-planner></div>',
    );
    const page = await pageIn(place);
    expect(page.form.id).to.equal('elsewhere');
    page.expectEntry();
  });

  it('has it from the beginning where the planner has every panel', async () => {
    const page = await openForm(`panels="${allPanels}"`);
    page.expectEntry();
  });
});
