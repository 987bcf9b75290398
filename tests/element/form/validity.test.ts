import { expect } from '@open-wc/testing';
import { openForm, type FormPage } from './form-page.js';

/** What is wrong, as names of `ValidityState`. */
function flags({ element }: FormPage): string[] {
  const { validity } = element;
  return ['valueMissing', 'customError', 'badInput', 'valid'].filter((flag) => Reflect.get(validity, flag) === true);
}

/** Whether the form goes off when its button is pressed. */
async function submits(page: FormPage): Promise<boolean> {
  let isSubmitted = false;
  page.form.addEventListener('submit', (event) => {
    event.preventDefault();
    isSubmitted = true;
  });
  const button = document.createElement('button');
  page.form.append(button);
  await page.click(button);
  return isSubmitted;
}

/** That the form cannot be submitted, and that a browser which says so puts the focus into the planner. */
async function expectHeld(page: FormPage): Promise<void> {
  const { element, form } = page;
  expect([element.checkValidity(), form.checkValidity(), form.reportValidity()]).to.deep.equal([false, false, false]);
  expect(element.matches(':invalid')).to.equal(true);
  await page.settled();
  expect(document.activeElement === element, 'the focus is in the planner').to.equal(true);
  expect(page.root.activeElement, 'and on something of it').to.not.equal(null);
  expect(await submits(page)).to.equal(false);
}

describe('a planner with a plan', () => {
  for (const required of ['', 'required'])
    it(`may be submitted ${required}`, async () => {
      const page = await openForm(required);
      expect([flags(page), page.element.validationMessage, page.element.willValidate]).to.deep.equal([
        ...[['valid'], '', true],
      ]);
      expect([page.element.checkValidity(), page.element.reportValidity()]).to.deep.equal([true, true]);
      expect(await submits(page)).to.equal(true);
    });
});

describe('a planner that has no plan, for answers stop it', () => {
  const stopped = async (attributes: string): Promise<FormPage> => {
    const page = await openForm(`panels="split checks" ${attributes}`);
    return (await page.opens('start')).ticks('symptoms');
  };

  it('holds the form where it is required, and says what the panel says', async () => {
    const page = await stopped('required');
    expect(flags(page)).to.deep.equal(['valueMissing']);
    expect(page.element.validationMessage).to.equal('No plan for now');
    expect(page.entry).to.equal(null);
    await expectHeld(page);
  });

  it('says it in German', async () => {
    const page = await stopped('required lang="de"');
    expect(page.element.validationMessage).to.equal('Vorerst kein Plan');
  });

  it('lets the form go again once the answer is taken back', async () => {
    const page = await stopped('required');
    await page.ticks('symptoms');
    expect(flags(page)).to.deep.equal(['valid']);
    page.expectEntry();
    expect(await submits(page)).to.equal(true);
  });

  it('lets the form go without a plan where it is not required', async () => {
    const page = await stopped('');
    expect([flags(page), page.entry]).to.deep.equal([['valid'], null]);
    expect(await submits(page)).to.equal(true);
    page.element.required = true;
    await page.settled();
    expect(flags(page)).to.deep.equal(['valueMissing']);
  });

  it('is told by the page: holds the form from the beginning', async () => {
    const page = await openForm('panels="split checks" required');
    page.element.checks = { answers: ['symptoms'] };
    await page.settled();
    expect(page.element.plan).to.equal(null);
    await expectHeld(page);
  });
});

describe('a typed value that is none', () => {
  for (const [language, says] of [
    ['en', 'Hours a week is "soon"; it has to be a number.'],
    ['de', 'Stunden pro Woche ist "soon"; nötig ist eine Zahl.'],
  ] as const)
    it(`holds the form and says why: ${language}`, async () => {
      const page = await openForm(`lang="${language}"`);
      await page.type('hours', 'soon');
      expect(flags(page)).to.deep.equal(['customError']);
      expect(page.element.validationMessage).to.equal(says);
      expect(page.hint('hours')).to.contain(says);
      await expectHeld(page);
      expect(page.hasFocus(page.typed('hours')), 'the focus is on the field').to.equal(true);
    });

  it('leaves in the form what is on show, and is forgiven', async () => {
    const page = await openForm('hours="6"');
    await page.type('hours', '40');
    expect(page.element.validationMessage).to.equal('Hours a week is 40; allowed: 0.5 to 20.');
    page.expectEntry();
    await page.type('hours', '7');
    expect([flags(page), page.element.validationMessage]).to.deep.equal([['valid'], '']);
  });

  it('is said in the language that is spoken now', async () => {
    const page = await openForm();
    await page.type('hours', 'soon');
    page.element.lang = 'de';
    await page.settled();
    expect(page.element.validationMessage).to.match(/^Stunden pro Woche/);
  });
});

describe('a typed value that is none, on a panel that is fetched', () => {
  const places = { week: '.board .day input', checks: '#checks-run' };

  for (const [panel, place] of Object.entries(places))
    it(`holds the form: ${panel}`, async () => {
      const page = await openForm(`panels="${panel}"`);
      const field = page.find<HTMLInputElement>(place);
      await page.fill(field, 'much');
      await page.press('Enter');
      await page.until(() => field.getAttribute('aria-invalid') === 'true', 'that is told');
      expect(flags(page)).to.deep.equal(['customError']);
      await expectHeld(page);
    });
});

describe('a faulty attribute', () => {
  for (const [attribute, path] of [
    ['hours="40"', 'Hours a week is 40'],
    ['phase="summer"', 'Season phase is "summer"'],
    ['panels="split moon"', 'panels is "moon"'],
    ['days="1,2" panels="week"', 'days'],
    ['race="fast" panels="running"', 'race'],
    ['event-date="soon" panels="season"', 'Day of the event'],
  ] as const)
    it(`holds the form: ${attribute}`, async () => {
      const page = await openForm(attribute);
      await page.until(() => page.problems.length > 0, 'that is told');
      expect(flags(page)).to.deep.equal(['customError']);
      expect(page.element.validationMessage).to.equal(page.problems[0]);
      expect(page.element.validationMessage.startsWith(path), page.element.validationMessage).to.equal(true);
      await expectHeld(page);
    });
});
