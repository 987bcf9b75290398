import { expect } from '@open-wc/testing';
import { evidence } from '../../../src/words/evidence.js';
import { collapsed } from '../text.js';
import { openPlace, panelNames, places } from './places.js';

/** What a work is called, without who wrote it and where: "Effects of Tapering on Performance". */
const titles = evidence.map(({ cite }) => cite.split('. ')[1] ?? '').filter((title) => title.length > 20);

describe('the English titles of what is cited are marked as English in a German planner', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      const page = await openPlace(panel, 'open', 'lang="de"');
      const cited = page
        .all(`${places[panel].root} *:not(:has(*))`)
        .filter((each) => titles.some((title) => collapsed(each).includes(title)));
      expect(
        cited.filter((each) => each.closest('[lang]')?.getAttribute('lang') !== 'en').map(collapsed),
      ).to.deep.equal([]);
    });

  it('and there are some', async () => {
    const page = await openPlace('basis', 'open', 'lang="de"');
    expect(titles.filter((title) => collapsed(page.find('.basis-panel')).includes(title)).length).to.be.greaterThan(9);
  });
});
