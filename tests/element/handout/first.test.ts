import { expect } from '@open-wc/testing';
import { openHandout, openWithDays, scene } from './handout-page.js';

/** A clock that stands at noon of a day while something is done. */
async function onDay<T>(date: string, act: () => Promise<T>): Promise<T> {
  const Original = Date;
  class Standing extends Original {
    constructor(...given: readonly [] | readonly [number | string]) {
      super(...((given.length === 0 ? [`${date}T12:00:00`] : given) as [string]));
    }
  }
  Object.assign(globalThis, { Date: Standing });
  try {
    return await act();
  } finally {
    Object.assign(globalThis, { Date: Original });
  }
}

describe('a handout as it starts', () => {
  it('says which week it is for, and how many sessions that has', async () => {
    const page = await openHandout();
    await page.setDate('handout-start', '2026-12-02');
    expect(page.title).to.equal('To take home');
    const sessions = Object.values(page.element.plan?.sessions ?? {}).flat();
    expect(page.lead).to.equal(`The week Nov 30 – Dec 6, 2026: ${String(sessions.length)} sessions.`);
    expect(page.typedIn('handout-start').value).to.equal('2026-11-30');
  });

  it('counts one session as one', async () => {
    const page = await openHandout('hours="0.5" phase="off-season" level="new"');
    const sessions = Object.values(page.element.plan?.sessions ?? {}).flat();
    expect(page.lead).to.match(sessions.length === 1 ? /: one session\.$/ : /: \d sessions\.$/);
  });

  // 3 December 2026 is a Thursday: `node -p "new Date('2026-12-03').getDay()"` says 4.
  for (const [day, monday] of [
    ['2026-11-30', '2026-11-30'],
    ['2026-12-03', '2026-11-30'],
    ['2026-12-04', '2026-12-07'],
    ['2026-12-06', '2026-12-07'],
    ['2026-12-31', '2026-12-28'],
    ['2027-01-01', '2027-01-04'],
  ] as const)
    it(`on ${day} is for the week of ${monday}`, async () => {
      const page = await onDay(day, () => openHandout());
      expect(page.typedIn('handout-start').value).to.equal(monday);
    });

  it('shows what is printed; the other boxes are closed, and nothing of them is made', async () => {
    const page = await openHandout();
    expect(page.all('.handout .box[open]').map(({ className }) => className)).to.deep.equal(['box handout-look']);
    for (const name of ['calendar', 'open', 'content', 'keep'])
      expect(page.find(`.handout-${name}`).children, name).to.have.length(1);
  });

  it('has no choice between week and season where there is no season', async () => {
    const page = await openHandout();
    expect(page.has('#handout-what')).to.equal(false);
  });

  it('follows the plan on show', async () => {
    const page = await openHandout();
    await page.drag('hours', 10);
    const all = Object.values(page.element.plan?.sessions ?? {}).flat();
    expect(page.lead).to.contain(`: ${String(all.length)} sessions.`);
    expect(page.all('.handout .p-days tbody tr')).to.have.length(all.length);
  });

  it('has the sessions for any day where no days are given, and seven days where they are', async () => {
    const any = await openHandout();
    expect(any.textOf('.p-days caption')).to.equal('On any day of the week');
    const page = await openWithDays();
    expect(page.has('.handout .p-days caption')).to.equal(false);
    expect(page.texts('.handout .p-days tbody th')).to.have.length(7);
  });
});

describe('the week of a handout', () => {
  it('typed with a day that is none is refused, and stays', async () => {
    const page = await openHandout();
    await page.setDate('handout-start', '2027-01-06');
    const { lead } = page;
    await page.setDate('handout-start', '');
    expect(page.hintOf('handout-start')).to.match(/^Week of .*a day of the calendar/);
    expect(page.typedIn('handout-start').getAttribute('aria-invalid')).to.equal('true');
    expect([page.lead, page.typedIn('handout-start').value]).to.deep.equal([lead, '']);
    await page.setDate('handout-start', '2027-01-12');
    expect([page.hintOf('handout-start'), page.typedIn('handout-start').value]).to.deep.equal(['', '2027-01-11']);
    expect(page.lead).to.contain('Jan 11 – 17, 2027');
  });

  for (const date of ['0999-01-01', '10000-01-01', '275760-09-13'])
    it(`far away as ${date} is answered in words`, async () => {
      const page = await openHandout();
      const { lead } = page;
      await page.setDate('handout-start', date);
      expect(page.lead === lead || page.typedIn('handout-start').value !== '').to.equal(true);
      expect(page.panelText).to.not.match(/NaN|undefined|Invalid/);
    });
});

describe('the paper at first', () => {
  for (const [languages, paper] of [
    [['en-US'], 'Letter'],
    [['fr-CA', 'en-GB'], 'Letter'],
    [['de-DE', 'en-US'], 'A4'],
    [['en'], 'A4'],
    [['en', 'es-MX'], 'Letter'],
    [[], 'A4'],
  ] as const)
    it(`for ${languages.join(', ') || 'no language'} is ${paper}`, async () => {
      Object.defineProperty(navigator, 'languages', { configurable: true, value: languages });
      const page = await openHandout(`${scene} lang="en"`);
      Reflect.deleteProperty(navigator, 'languages');
      expect(page.optionOf('handout-paper')).to.equal(paper);
    });
});
