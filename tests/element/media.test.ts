import { expect } from '@open-wc/testing';
import { describeWithMedia } from './media.js';
import { openPlanner, type PlannerPage } from './planner-page.js';

/** A system colour as the browser computes it here. */
function systemColour(name: string): string {
  const probe = document.createElement('div');
  probe.style.color = name;
  document.body.append(probe);
  const { color } = getComputedStyle(probe);
  probe.remove();
  return color;
}

const durations = (page: PlannerPage): number[] =>
  page.all('.planner, .planner *').flatMap((each) => {
    const { transitionDuration, animationDuration, animationName } = getComputedStyle(each);
    const moving = animationName === 'none' ? transitionDuration : `${transitionDuration}, ${animationDuration}`;
    return moving.split(', ').map((text) => Number.parseFloat(text) * 1000);
  });

describe('motion', () => {
  it('is short: changes fade in within 150 milliseconds', async () => {
    const longest = Math.max(...durations(await openPlanner()));
    expect(longest).to.be.greaterThan(0).and.at.most(150);
  });

  describeWithMedia('where people ask for less', { 'prefers-reduced-motion': 'reduce' }, () => {
    it('is none', async () => {
      const page = await openPlanner();
      expect(Math.max(...durations(page))).to.equal(0);
      await page.drag('hours', 9);
      expect(document.getAnimations()).to.deep.equal([]);
    });
  });
});

describeWithMedia('forced colours', { 'forced-colors': 'active' }, () => {
  it('draw the ring in the colour of text, with its names beside it', async () => {
    const page = await openPlanner();
    const text = systemColour('CanvasText');
    for (const part of page.all('.arc, .leader')) expect(getComputedStyle(part).stroke).to.equal(text);
    expect(page.texts('.ring-label > span')).to.have.length(5);
  });

  it('leave fields, buttons and problems with an edge', async () => {
    const page = await openPlanner('hours="40"');
    for (const selector of ['.planner', '.entry', 'select', '.problems']) {
      const { borderTopStyle, borderTopWidth } = getComputedStyle(page.find(selector));
      expect(`${selector} ${borderTopStyle} ${borderTopWidth}`).to.equal(`${selector} solid 1px`);
    }
  });

  it('show which number is asked why', async () => {
    const page = await openPlanner();
    await page.ask('strength_minutes');
    expect(getComputedStyle(page.number('strength_minutes')).outlineStyle).to.equal('solid');
  });
});

const brightness = (text: string): number => Math.max(...(text.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number));

function schemeOf(page: PlannerPage): 'light' | 'dark' {
  const { color, backgroundColor } = getComputedStyle(page.find('.planner'));
  return brightness(backgroundColor) > brightness(color) ? 'light' : 'dark';
}

describe('the colour scheme', () => {
  for (const scheme of ['light', 'dark'] as const) {
    it(`is that of the page, ${scheme}`, async () => {
      const page = await openPlanner();
      page.element.style.colorScheme = scheme;
      expect(schemeOf(page)).to.equal(scheme);
    });

    describeWithMedia(`of people who prefer ${scheme}`, { 'prefers-color-scheme': scheme }, () => {
      it('is theirs where the page leaves it to them', async () => {
        const page = await openPlanner();
        page.element.style.colorScheme = 'light dark';
        expect(schemeOf(page)).to.equal(scheme);
      });
    });
  }

  it('gives way to the colours of the page', async () => {
    const page = await openPlanner();
    page.element.style.cssText =
      '--weekwright-accent: rgb(120, 0, 90); --weekwright-ground: rgb(255, 250, 240); --weekwright-strength: rgb(1, 2, 3)';
    expect(getComputedStyle(page.find('.planner')).backgroundColor).to.equal('rgb(255, 250, 240)');
    expect(getComputedStyle(page.find('.arc[data-category="strength"]')).stroke).to.equal('rgb(1, 2, 3)');
    expect(getComputedStyle(page.find('.planner')).accentColor).to.equal('rgb(120, 0, 90)');
  });

  it("is not disturbed by names that the page's own styles may use", async () => {
    const page = await openPlanner();
    const before = getComputedStyle(page.find('.planner')).backgroundColor;
    for (const name of ['--ground', '--accent', '--text', '--slow', '--line'])
      page.element.style.setProperty(name, 'rgb(9, 9, 9)');
    expect(getComputedStyle(page.find('.planner')).backgroundColor).to.equal(before);
  });
});
