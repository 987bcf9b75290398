import { expect, fixture } from '@open-wc/testing';
import { accessibleNames } from '../accessibility-tree.js';
import { allPanels, pageIn, type FormPage } from './form-page.js';

async function open(html: string): Promise<FormPage> {
  return pageIn(await fixture<HTMLElement>(`<form>${html}</form>`));
}

const planner = (attributes = ''): string => `<weekwright-planner ${attributes}></weekwright-planner>`;
const name = ({ root }: FormPage): string | null | undefined =>
  root.querySelector('[part="planner"]')?.getAttribute('aria-label');

function label({ element }: FormPage): HTMLElement {
  const found = element.labels[0];
  if (!(found instanceof HTMLElement)) throw new Error('the planner has no label');
  return found;
}

describe('a label of the page', () => {
  for (const [kind, html] of [
    ['for the planner', `<label for="week">Your week</label>${planner('id="week"')}`],
    ['around the planner', `<label><span>Your week</span>${planner()}</label>`],
  ] as const) {
    it(`${kind} names its region`, async () => {
      const page = await open(html);
      expect(name(page)).to.equal('Your week');
      expect(await accessibleNames(/^region$/)).to.include('region: Your week');
    });

    it(`${kind} puts the focus on the first control when it is pressed`, async () => {
      const page = await open(html);
      await page.click(label(page).querySelector('span') ?? label(page));
      expect(document.activeElement === page.element).to.equal(true);
      const first = page.root.querySelector('input, select, button');
      expect(page.hasFocus(first ?? undefined)).to.equal(true);
    });

    it(`${kind} leaves the focus where somebody works inside`, async () => {
      const page = await open(html);
      await page.click(page.stepButton('strengthCap', 'less'));
      await page.click(page.find('.answer'));
      expect(page.hasFocus(page.all('input, select, button')[0])).to.equal(false);
      page.list('event').focus();
      expect(page.hasFocus(page.list('event'))).to.equal(true);
    });
  }

  it('outside of a form names it and takes the focus to it as well', async () => {
    const outside = await fixture<HTMLElement>(`<div><label for="week">Your week</label>${planner('id="week"')}</div>`);
    const page = await pageIn(outside);
    expect(name(page)).to.equal('Your week');
    await page.click(label(page));
    expect(page.hasFocus(page.root.querySelector('input, select, button') ?? undefined)).to.equal(true);
  });

  it('does not name it where the planner has an attribute for that', async () => {
    const page = await open(`<label for="week">Your week</label>${planner('id="week" label="Our week"')}`);
    expect(name(page)).to.equal('Our week');
    page.element.label = null;
    await page.settled();
    expect(name(page)).to.equal('Your week');
  });

  it('around the planner is called by its own words, not by what stands in the tag', async () => {
    const content = '<table><tr><td>90 minutes</td></tr></table><p slot="header">Clinic</p>';
    const page = await open(`<label>Your week <weekwright-planner>${content}</weekwright-planner></label>`);
    expect(name(page)).to.equal('Your week');
  });

  it('may be several', async () => {
    const page = await open(`<label for="week">Your</label><label for="week"> week </label>${planner('id="week"')}`);
    expect(name(page)).to.equal('Your week');
  });
});

describe('a planner without a label', () => {
  it('is called by its own name', async () => {
    expect(name(await open(planner()))).to.equal('Training week planner');
    expect(name(await open(planner('label="" lang="de"')))).to.equal('Planer für die Trainingswoche');
  });

  for (const panel of allPanels.split(' '))
    it(`takes the focus by script, with the panel ${panel} alone`, async () => {
      const page = await open(planner(`panels="${panel}"`));
      page.element.focus();
      expect(document.activeElement === page.element).to.equal(true);
      expect(page.root.activeElement?.checkVisibility()).to.equal(true);
    });
});
