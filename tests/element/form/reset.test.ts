import { expect } from '@open-wc/testing';
import { openForm, openWholeForm, type FormPage } from './form-page.js';

/** All that the planner shows, apart from which boxes are open. */
const sight = (page: FormPage): string[] => [
  page.element.value,
  ...page.texts('.scenarios, .grid thead, .record .lead'),
];

describe('a form that is reset', () => {
  it('has the inputs of the attributes again, and the starting values of the method', async () => {
    const page = await openForm('hours="6" phase="peak"');
    const before = page.element.value;
    await page.drag('hours', 9);
    await page.drag('phase', 0);
    await page.drag('level', 3);
    await page.choose(page.list('event'), 1);
    await page.type('strengthCap', '110');
    expect(page.element.value).to.not.equal(before);
    await page.resets();
    expect(page.element.value).to.equal(before);
    page.expectEntry();
    expect(page.element).to.include({ hours: 6, phase: 'peak' });
    expect([page.typed('hours').value, page.list('phase').value]).to.deep.equal(['6', 'peak']);
  });

  it('follows attributes that have changed since', async () => {
    const page = await openForm('hours="6"');
    await page.drag('hours', 9);
    page.element.setAttribute('hours', '7');
    await page.drag('hours', 3);
    await page.resets();
    expect(page.element.plan?.inputs.hours).to.equal(7);
  });

  it('forgets sessions that were picked, and what was typed and is no value', async () => {
    const page = await openForm();
    const before = page.element.value;
    await page.choose(page.sessionList('strength'), 1);
    await page.type('hours', 'soon');
    await page.resets();
    expect([page.element.value, page.typed('hours').value, page.element.validity.valid]).to.deep.equal([
      ...[before, '4', true],
    ]);
  });

  it('tells nobody', async () => {
    const page = await openForm();
    await page.drag('hours', 9);
    const events = await page.heard(async () => {
      await page.resets();
      await page.answered();
    });
    expect(events).to.deep.equal([]);
  });

  it('is reset by a button of its own', async () => {
    const page = await openForm('hours="6"', { around: '<button type="reset">Begin again</button>' });
    await page.drag('hours', 9);
    const button = page.form.querySelector('button');
    if (!button) throw new Error('there is no button');
    await page.click(button);
    await page.settled();
    expect(page.element.plan?.inputs.hours).to.equal(6);
  });

  it('has the value of the attribute again', async () => {
    const other = await openForm('hours="8" level="elite"');
    await other.choose(other.sessionList('strength'), 1);
    const { value } = other.element;
    const page = await openForm('hours="6"');
    page.element.setAttribute('value', value);
    await page.settled();
    expect(page.element.value).to.equal(value);
    await page.drag('hours', 3);
    await page.resets();
    expect(page.element.value).to.equal(value);
  });

  it('forgets a faulty value that was set', async () => {
    const page = await openForm();
    await page.sets('none');
    await page.resets();
    expect([page.element.problems, page.element.validity.valid]).to.deep.equal([[], true]);
  });
});

describe('what a person has set on a panel is forgotten by a reset', () => {
  const acts: Readonly<Record<string, (page: FormPage) => Promise<unknown>>> = {
    days: async (page) => {
      const [field] = page.all<HTMLInputElement>('.board .day input.typed, .board input[id^="day"]');
      if (!field) throw new Error('no day has a field');
      await page.fill(field, '75');
      await page.press('Enter');
    },
    season: (page) => page.setDate('season-date', '2027-05-16'),
    running: (page) => page.typeIn('running-time', '44:00'),
    strength: async (page) => {
      await page.click(page.find('.strength-lifted > summary'));
      await page.until(() => page.has('#strength-age'), 'the box opens');
      await page.typeIn('strength-age', '60');
    },
    checks: async (page) => {
      await page.opens('own');
      await page.typeIn('checks-age', '67');
    },
    'answers that stop the plan': async (page) => {
      await (await page.opens('start')).ticks('symptoms');
      expect(page.element.plan).to.equal(null);
    },
    record: (page) => page.click(page.find('.record input[type="checkbox"]')),
    'scenarios of the sheet': async (page) => {
      await page.add();
      await page.set(1, 'hours', 7);
    },
  };

  for (const [name, act] of Object.entries(acts))
    it(name, async () => {
      const page = await openWholeForm();
      const before = sight(page);
      await act(page);
      expect(sight(page), 'it was something').to.not.deep.equal(before);
      const events = await page.heard(async () => {
        await page.resets();
        await page.until(() => sight(page).join() === before.join(), 'all is as it was');
        await page.answered();
      });
      expect([sight(page), events]).to.deep.equal([before, []]);
      page.expectEntry();
    });

  it('minutes of a day that are none', async () => {
    const page = await openForm('panels="week" days="60,45,60,60,45,90,120"');
    const day = (): HTMLInputElement => page.at('.board .day input', 0);
    const before = [day().value, day().getAttribute('aria-invalid')];
    await page.fill(day(), 'much');
    await page.press('Enter');
    expect(day().getAttribute('aria-invalid')).to.equal('true');
    await page.resets();
    await page.answered();
    expect([day().value, day().getAttribute('aria-invalid')]).to.deep.equal(before);
  });

  it('choices of the handout', async () => {
    const page = await openForm('panels="handout"');
    const chosen = (): string[] => ['ink', 'paper'].map((id) => page.selectOf(`handout-${id}`).value);
    const before = chosen();
    for (const id of ['ink', 'paper']) await page.choose(page.selectOf(`handout-${id}`), 1);
    expect(chosen()).to.not.deep.equal(before);
    await page.resets();
    await page.answered();
    expect(chosen()).to.deep.equal(before);
  });

  it('texts of the handout', async () => {
    const page = await openForm('panels="handout" contact="The clinic"');
    await page.paste('handout-runner', 'Ida');
    await page.paste('handout-contact', 'Nobody');
    await page.writeNote('Easy means easy.');
    await page.resets();
    await page.answered();
    const texts = ['runner', 'contact'].map((id) => page.typedIn(`handout-${id}`).value);
    expect([...texts, page.noteField.value]).to.deep.equal(['', 'The clinic', '']);
  });
});
