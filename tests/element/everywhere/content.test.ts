import { expect } from '@open-wc/testing';
import { openPlace, panelNames, places } from './places.js';

/** What can hold pictures, sound, film or what plays, and what leads to other pages. */
const foreign = 'img, picture, canvas, audio, video, object, embed, iframe, marquee, svg image, svg text, a, area';

describe('a panel has neither pictures of text, nor sound, nor film, nor links, nor anything that moves by itself', () => {
  for (const panel of panelNames)
    it(panel, async () => {
      const page = await openPlace(panel, 'open');
      const all = page.all(`${places[panel].root}, ${places[panel].root} *`);
      expect(all.length).to.be.greaterThan(30);
      expect(all.filter((each) => each.matches(foreign)).map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
      const pictures = all.filter((each) => getComputedStyle(each).backgroundImage.includes('url('));
      expect(pictures.map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
      expect(all.filter((each) => getComputedStyle(each).animationName !== 'none')).to.deep.equal([]);
    });
});
