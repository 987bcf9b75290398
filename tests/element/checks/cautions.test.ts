import { expect, waitUntil } from '@open-wc/testing';
import de from '../../../shared/locales/de.json';
import en from '../../../shared/locales/en.json';
import { openChecks } from './checks-page.js';
import { openPlanner, type PlannerPage } from '../planner-page.js';

const lines = (texts: typeof en | typeof de): string[] =>
  Object.entries(texts).flatMap(([key, text]) =>
    key.startsWith('usual-caution.') && typeof text === 'string' ? [text] : [],
  );

const open = async (page: PlannerPage): Promise<PlannerPage> => {
  page.find('.cautions > summary').focus();
  await page.press('Enter');
  await waitUntil(() => page.all('.cautions li').length > 0, 'the lines come');
  return page;
};

describe('cautions by the age that is told', () => {
  for (const [age, cautions] of [
    ['17', [en['usual-caution.under-18']]],
    ['18', []],
    ['64', []],
    ['65', [en['usual-caution.older']]],
    ['', []],
  ] as const)
    it(`are ${String(cautions.length)} with “${age}”`, async () => {
      const page = await openChecks();
      await page.typeIn('checks-age', '40');
      await page.typeIn('checks-age', age);
      expect(page.texts('.checks .concrete-notes li')).to.deep.equal(cautions);
    });
});

describe('the usual cautions', () => {
  for (const panels of ['split', 'checks', 'basis', 'split checks basis', 'basis split', 'checks basis'])
    it(`are there once, a line in sight and the list one press away, with panels="${panels}"`, async () => {
      const page = await openPlanner(`panels="${panels}"`);
      expect(page.texts('.cautions > summary')).to.deep.equal([`${en['caution.aid']} ${en['caution.title']}`]);
      await open(page);
      expect(page.texts('.cautions li')).to.have.members(lines(en));
    });

  it('are said in German as well, each line', async () => {
    const page = await open(await openPlanner('lang="de"'));
    expect(page.texts('.cautions li')).to.have.members(lines(de));
    expect(lines(de)).to.have.length(lines(en).length);
  });

  it('change with the language while they are open', async () => {
    const page = await open(await openPlanner('lang="en"'));
    page.element.lang = 'de';
    await page.settled();
    await waitUntil(() => page.texts('.cautions li').includes(lines(de)[0] ?? ''), 'German comes');
    expect(page.texts('.cautions li')).to.have.members(lines(de));
  });

  it('stay open while a person goes on', async () => {
    const page = await open(await openPlanner());
    await page.drag('hours', 6);
    expect(page.find<HTMLDetailsElement>('.cautions').open).to.equal(true);
    expect(page.texts('.cautions li')).to.have.length(lines(en).length);
  });

  it('name the signs with which nobody trains on, and put local judgement first', async () => {
    const page = await open(await openPlanner());
    const text = page.texts('.cautions li').join(' ');
    for (const word of [
      /[Cc]hest pain/,
      /bone/,
      /pregnan/i,
      /Under 18/,
      /From 65 on/,
      /Local rules/,
      /illness/i,
      /heat/i,
    ])
      expect(text).to.match(word);
  });
});
