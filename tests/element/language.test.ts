import { expect } from '@open-wc/testing';
import de from '../../shared/locales/de.json';
import en from '../../shared/locales/en.json';
import { openPlanner, type PlannerPage } from './planner-page.js';
import { collapsed } from './text.js';

const label = (page: PlannerPage): string => collapsed(page.find('#hours-label'));
const spoken = (page: PlannerPage): string | null => page.find('.planner').getAttribute('lang');

/** Runs a test inside an ancestor with a language. */
async function inside(lang: string, test: (holder: HTMLElement, page: PlannerPage) => Promise<void>): Promise<void> {
  const holder = document.createElement('div');
  holder.lang = lang;
  document.body.append(holder);
  const page = await openPlanner();
  holder.append(page.element);
  await page.settled();
  await test(holder, page);
  holder.remove();
}

describe('the language of a planner', () => {
  it('is English where the page says nothing', async () => {
    const page = await openPlanner();
    expect([label(page), spoken(page)]).to.deep.equal([en['input.hours'], 'en']);
  });

  it('is that of its own lang', async () => {
    const page = await openPlanner('lang="de"');
    expect([label(page), spoken(page)]).to.deep.equal([de['input.hours'], 'de']);
    expect(page.headline).to.include('75 Minuten');
  });

  it('is that of a region as well', async () => {
    expect(label(await openPlanner('lang="de-AT"'))).to.equal(de['input.hours']);
  });

  it('is that of the nearest ancestor with a lang', async () => {
    await inside('de', async (_, page) => {
      expect(label(page)).to.equal(de['input.hours']);
      page.element.lang = 'en';
      await page.settled();
      expect(label(page)).to.equal(en['input.hours']);
    });
  });

  it('is that of a host whose shadow root it stands in', async () => {
    await inside('de', async (holder, page) => {
      const host = document.createElement('div');
      holder.append(host);
      host.attachShadow({ mode: 'open' }).append(page.element);
      await page.settled();
      expect(label(page)).to.equal(de['input.hours']);
    });
  });

  it('is English where there is no file for it', async () => {
    const page = await openPlanner('lang="is"');
    expect([label(page), spoken(page)]).to.deep.equal([en['input.hours'], 'en']);
  });

  it('changes while it is on the page, and changes back', async () => {
    const page = await openPlanner();
    page.element.lang = 'de';
    await page.settled();
    expect(label(page)).to.equal(de['input.hours']);
    page.element.removeAttribute('lang');
    await page.settled();
    expect(label(page)).to.equal(en['input.hours']);
  });

  it('changes with the lang of an ancestor', async () => {
    await inside('en', async (holder, page) => {
      holder.lang = 'de';
      await Promise.resolve();
      await page.settled();
      expect(label(page)).to.equal(de['input.hours']);
    });
  });

  it('changes no number', async () => {
    const page = await openPlanner('hours="7.25"');
    const before = page.element.plan;
    page.element.lang = 'de';
    await page.settled();
    expect(page.element.plan).to.deep.equal(before);
    expect(page.row('intervals').exact).to.equal('43,5');
  });
});

describe('what was fetched later is in the new language too', () => {
  const keys = /\b(?:derivation|problem|reason|quantity|formula)\.\w/;

  for (const [from, to] of [
    ['en', 'de'],
    ['de', 'en'],
    ['en', 'en-GB'],
  ] as const)
    it(`a derivation, from ${from} to ${to}`, async () => {
      const page = await openPlanner(`lang="${from}"`);
      await page.ask('strength_minutes');
      page.element.lang = to;
      await page.settled();
      const close = (to === 'de' ? de : en)['derivation.close'];
      expect(collapsed(page.find('#why header button'))).to.equal(close);
      expect(collapsed(page.why)).to.not.match(keys);
    });

  it('a problem, from German to English', async () => {
    const page = await openPlanner('lang="de" hours="40"');
    page.element.lang = 'en';
    await page.settled();
    expect(page.problems).to.deep.equal(['Hours a week is 40; allowed: 0.5 to 20.']);
  });
});
