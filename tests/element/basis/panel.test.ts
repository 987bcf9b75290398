import { expect } from '@open-wc/testing';
import club from '../../../demo/club-method.json';
import evidence from '../../../shared/evidence/evidence.json';
import de from '../../../shared/locales/de.json';
import en from '../../../shared/locales/en.json';
import builtIn from '../../../shared/methods/default.json';
import { collapsed } from '../text.js';
import { openBasis } from './basis-page.js';

/** How often a status stands anywhere in a method. */
function statuses(node: unknown, wanted: string): number {
  if (typeof node !== 'object' || node === null) return 0;
  const own = 'status' in node && node.status === wanted ? 1 : 0;
  return Object.values(node).reduce<number>((sum, each) => sum + statuses(each, wanted), own);
}

/*
 * Two things rest on papers without a status of their own in shared/methods/default.json: how minutes are rounded
 * (Sainte-Laguë) and the order of run and strength on a day (`order_sources`).
 */
const published = statuses(builtIn, 'published') + 2;

describe('what a planner rests on', () => {
  it('is said first in numbers: published, common practice, assumptions', async () => {
    const page = await openBasis();
    const [practice, assumptions] = [statuses(builtIn, 'common practice'), statuses(builtIn, 'assumption')];
    expect(page.lead).to.equal(
      `Numbers and rules of this method: ${String(published)} published, ${String(practice)} common practice, and ${String(assumptions)} assumptions.`,
    );
  });

  it('names every place where studies and common practice differ', async () => {
    const page = await openBasis();
    expect(page.titles(0)).to.deep.equal(builtIn.checks.differences.map(({ name: { key } }) => textOf(key)));
    expect(page.titles(0)).to.have.length(9).and.to.include('Ten per cent a week');
  });

  it('names every part of a plan', async () => {
    const page = await openBasis();
    expect(page.titles(1)).to.deep.equal([
      ...['How the week is divided', 'Rules that correct it', 'Sessions and rounding', 'The days of the week'],
      ...['The season', 'Paces and heart rates', 'Strength by sets', 'Checks and questions before the start'],
    ]);
  });

  it('every difference opens by keyboard and by mouse, with its text and its sources', async () => {
    const page = await openBasis();
    for (const [index, { text, sources }] of builtIn.checks.differences.entries()) {
      const box = page.boxes(0)[index];
      const summary = box?.querySelector('summary');
      if (!box || !summary) throw new Error(`there is no difference ${String(index)}`);
      expect(box.open).to.equal(false);
      if (index % 2 === 0) await page.click(summary);
      else await (await page.goTo(summary)).press('Enter');
      expect([box.open, collapsed(box.querySelector('p') ?? box)]).to.deep.equal([true, textOf(text.key)]);
      const cited = [...box.querySelectorAll('.cited li')].map(collapsed);
      // Two findings of one work are cited once.
      expect(cited).to.deep.equal([...new Set(sources.map(citation))]);
    }
  });

  it('every part opens, and has as many reasons as it counts', async () => {
    const page = await openBasis();
    for (const box of page.boxes(1)) {
      const summary = box.querySelector('summary');
      if (!summary) throw new Error('a part has no name');
      await page.click(summary);
      expect(box.open).to.equal(true);
      expect(box.querySelector('p')?.checkVisibility()).to.equal(true);
    }
    const status = page.texts('.basis-panel > section:last-of-type .status');
    const all = published + statuses(builtIn, 'common practice') + statuses(builtIn, 'assumption');
    expect(status).to.have.length(all);
    expect(status.filter((each) => each === '(published)')).to.have.length(published);
  });

  it('leaves no key, placeholder, broken text or unknown source', async () => {
    for (const lang of ['en', 'de']) {
      const page = await (await openBasis(`lang="${lang}"`)).opensAll();
      const text = collapsed(page.find('.basis-panel'));
      expect(text).to.not.match(/\{\w+\}|undefined|NaN|null|\breason\.|basis\.|differs[.-]|check-reason/);
      const ids = page.texts('.basis-panel .cited li').filter((each) => /^[A-Z]\d\d$|^[a-z-]+$/.test(each));
      expect(ids).to.deep.equal([]);
    }
  });

  it('cites every source with one full stop at the end of its authors', () => {
    expect(evidence.filter(({ cite }) => cite.includes('..')).map(({ id }) => id)).to.deep.equal([]);
  });

  it('stays open while a person goes on', async () => {
    const page = await openBasis();
    const [box] = page.boxes(1);
    const summary = box?.querySelector('summary');
    if (!box || !summary) throw new Error('there is no part');
    await page.click(summary);
    await page.drag('hours', 7);
    expect(box.open).to.equal(true);
  });
});

describe('a method of a coach’s own', () => {
  it('has its own reasons', async () => {
    const page = await openBasis();
    const before = page.lead;
    page.element.method = club;
    await page.until(() => page.lead !== before, 'the method comes');
    const [division, rules] = page.boxes(1).map(collapsed);
    for (const { reason } of club.splits) if (typeof reason === 'string') expect(division).to.contain(reason);
    for (const { reason } of club.rules) if (typeof reason === 'string') expect(rules).to.contain(reason);
    expect(page.boxes(1)[0]?.querySelectorAll('.status')).to.have.length(club.splits.length);
    expect(page.boxes(1)[1]?.querySelectorAll('.status')).to.have.length(club.rules.length);
  });

  it('may differ from studies in its own words', async () => {
    const own = { id: 'ours', name: 'Our hills', text: 'We run hills in June.', sources: ['our own notes'] };
    const page = await openBasis();
    page.element.method = { ...builtIn, id: 'hills', checks: { ...builtIn.checks, differences: [own] } };
    await page.until(() => page.titles(0)[0] === 'Our hills', 'the method comes');
    expect([page.titles(0), page.element.problems]).to.deep.equal([['Our hills'], []]);
    expect(collapsed(page.boxes(0)[0] ?? page.element))
      .to.contain('We run hills in June.')
      .and.to.contain('our own notes');
  });
});

it('what a planner rests on is said in German, with nothing of it in English', async () => {
  const page = await (await openBasis('lang="de"')).opensAll();
  const text = collapsed(page.find('.basis-panel'));
  expect(text).to.contain(de['basis.title']).and.to.contain(de['differs.ten-per-cent']);
  const english = Object.entries(en)
    .filter(([key]) => /^(?:basis|differs|differs-name|check-reason|reason|check)\./.test(key))
    .flatMap(([, message]) => (typeof message === 'string' ? [message] : Object.values(message)))
    .filter((message) => !message.includes('{') && message.length > 14);
  expect(english.filter((message) => text.includes(message))).to.deep.equal([]);
});

function textOf(key: string): unknown {
  return new Map<string, unknown>(Object.entries(en)).get(key);
}

function citation(id: string): string {
  const found = evidence.find((entry) => entry.id === id);
  if (!found) throw new Error(`no evidence ${id}`);
  return found.doi === null ? found.cite : `${found.cite}. doi:${found.doi}`;
}
