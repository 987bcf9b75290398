import { expect } from '@open-wc/testing';
import { openHandout, scene, type HandoutPage } from './handout-page.js';

/** The limits of shared/schema/file.schema.json. */
const limits = { name: 60, runner: 60, contact: 200, note: 1000 } as const;

async function enter(page: HandoutPage, field: keyof typeof limits, text: string): Promise<HandoutPage> {
  return field === 'note' ? page.writeNote(text) : page.paste(`handout-${field}`, text);
}
const fieldOf = (page: HandoutPage, field: string) =>
  page.find<HTMLInputElement | HTMLTextAreaElement>(`#handout-${field}`);

describe('what is written on a handout', () => {
  it('is empty at first', async () => {
    const page = await openHandout();
    for (const field of Object.keys(limits)) expect(fieldOf(page, field).value, field).to.equal('');
    expect(page.has('.handout .p-note')).to.equal(false);
    expect(page.textOf('footer p')).to.equal('This is a planning aid, not medical advice.');
  });

  it('is whom it is for, above the week', async () => {
    const page = await openHandout();
    await page.typeIn('handout-runner', 'Anna B.');
    expect(page.textOf('.p-over')).to.match(/^For Anna B\. ?Build$/);
  });

  it('is whom to ask, in place of the line that this is a planning aid', async () => {
    const page = await openHandout();
    await page.typeIn('handout-contact', 'Coach, room 3');
    expect(page.textOf('footer')).to.match(/^Questions: Coach, room 3 As of /);
  });

  it('is a note with its line breaks', async () => {
    const page = await openHandout();
    await page.writeNote('  Easy does it.\nSee you on Friday.  ');
    expect(page.find('.handout .p-note').textContent).to.equal('Easy does it.\nSee you on Friday.');
    expect(getComputedStyle(page.find('.handout .p-note')).whiteSpace).to.match(/^pre-(line|wrap)$/);
  });

  it('is shown as it was written: no markup is read from it', async () => {
    const page = await openHandout();
    const text = '<img src=x onerror="document.title=1"> & "x"';
    await page.typeIn('handout-runner', text);
    await page.typeIn('handout-contact', text);
    await page.writeNote(text);
    expect(page.has('.handout img')).to.equal(false);
    expect(page.panelText.split(text)).to.have.length.at.least(4);
  });

  it('is taken when somebody leaves the field by Tab', async () => {
    const page = await openHandout();
    await page.fill(page.typedIn('handout-runner'), 'Anna');
    await page.press('Tab');
    expect(page.textOf('.p-over')).to.contain('For Anna');
    expect(page.hasFocus(page.typedIn('handout-contact'))).to.equal(true);
  });

  it('tells the page of no other plan', async () => {
    const page = await openHandout();
    const plan = page.element.plan;
    const events = await page.heard(async () => {
      await page.typeIn('handout-name', 'Spring');
      await page.typeIn('handout-runner', 'Anna');
      await page.writeNote('Hello');
      await page.chooseText(page.selectOf('handout-paper'), 'Letter');
      await page.setDate('handout-start', '2027-01-04');
    });
    expect([events, page.element.plan]).to.deep.equal([[], plan]);
  });
});

describe('whom to ask', () => {
  it('is what the page says, and follows it', async () => {
    const page = await openHandout(`${scene} contact="Running clinic, ext. 12"`);
    expect(page.typedIn('handout-contact').value).to.equal('Running clinic, ext. 12');
    expect(page.textOf('footer')).to.contain('Questions: Running clinic, ext. 12');
    page.element.contact = 'Desk 4';
    await page.settled();
    expect([page.typedIn('handout-contact').value, page.textOf('footer p')]).to.deep.equal([
      ...['Desk 4', 'Questions: Desk 4'],
    ]);
  });

  it('is what a person types over it, whatever the page says later', async () => {
    const page = await openHandout(`${scene} contact="Clinic"`);
    await page.typeIn('handout-contact', 'My coach');
    page.element.contact = 'Clinic 2';
    await page.settled();
    expect([page.typedIn('handout-contact').value, page.textOf('footer p')]).to.deep.equal([
      ...['My coach', 'Questions: My coach'],
    ]);
  });

  it('is nobody where a person wipes what the page says', async () => {
    const page = await openHandout(`${scene} contact="Clinic"`);
    await page.typeIn('handout-contact', '');
    expect([page.typedIn('handout-contact').value, page.textOf('footer p')]).to.deep.equal([
      ...['', 'This is a planning aid, not medical advice.'],
    ]);
  });
});

describe('a text that is too long', () => {
  for (const [field, most] of Object.entries(limits) as [keyof typeof limits, number][])
    it(`for ${field}: ${String(most)} characters are taken, one more is refused and stays as it was typed`, async () => {
      const page = await openHandout();
      const [fits, long] = ['x'.repeat(most), 'y'.repeat(most + 1)];
      await enter(page, field, fits);
      expect([fieldOf(page, field).value, page.hintOf(`handout-${field}`)]).to.deep.equal([fits, '']);
      await enter(page, field, long);
      expect(fieldOf(page, field).value).to.equal(long);
      expect(fieldOf(page, field).getAttribute('aria-invalid')).to.equal('true');
      const label = page.textOf(`label[for="handout-${field}"]`);
      const shown = new Intl.NumberFormat('en').format(most);
      expect(page.hintOf(`handout-${field}`)).to.equal(`${label} is too long; allowed: ${shown} at most.`);
      expect(fieldOf(page, field).getAttribute('aria-describedby')).to.contain(`handout-${field}-hint`);
      expect(page.panelText).to.not.contain('yyy');
      await enter(page, field, 'short');
      expect([fieldOf(page, field).value, page.hintOf(`handout-${field}`)]).to.deep.equal(['short', '']);
      expect(fieldOf(page, field).getAttribute('aria-invalid')).to.equal('false');
    });

  it('does not stand in the way of another field', async () => {
    const page = await openHandout();
    await page.paste('handout-runner', 'y'.repeat(61));
    await page.typeIn('handout-contact', 'Coach');
    expect([page.textOf('footer p'), page.typedIn('handout-runner').value.length]).to.deep.equal([
      ...['Questions: Coach', 61],
    ]);
  });
});
