import { expect, fixture } from '@open-wc/testing';
import { openChecks, ChecksPage } from './checks/checks-page.js';
import { HandoutPage } from './handout/handout-page.js';
import { finish, printing } from './handout/printer.js';
import { openPlanner, PlannerPage } from './planner-page.js';

const content = `
  <img slot="logo" alt="Quillfield" width="40" height="40" />
  <h2 slot="header">Quillfield Movement Clinic</h2>
  <p slot="contact">Extension 14</p>
  <p slot="footer"><a href="#terms">Terms</a></p>`;
const slots = ['logo', 'header', 'contact', 'footer'] as const;

const slotted = ({ element }: PlannerPage, slot: string): HTMLElement => {
  const found = element.querySelector<HTMLElement>(`[slot="${slot}"]`);
  if (!found) throw new Error(`nothing is in the slot ${slot}`);
  return found;
};

describe('what a page puts around the panels', () => {
  it('is shown: logo and header in front of them, contact and footer behind', async () => {
    const page = await openPlanner('panels="split basis"', content);
    const inputs = page.find('.panels > :first-child').getBoundingClientRect();
    const last = page.all('.panels > *').at(-1)?.getBoundingClientRect();
    for (const slot of slots) {
      const { top, bottom, height } = slotted(page, slot).getBoundingClientRect();
      expect(height, slot).to.be.greaterThan(0);
      if (slot === 'logo' || slot === 'header') expect(bottom, slot).to.be.at.most(inputs.top);
      else expect(top, slot).to.be.at.least(last?.bottom ?? Infinity);
    }
    const [logo, header] = ['logo', 'header'].map((slot) => slotted(page, slot).getBoundingClientRect());
    expect(logo?.right).to.be.at.most(header?.left ?? 0);
    expect(page.all('[part="header"], [part="footer"]')).to.have.length(2);
  });

  it('is read in that order, and stays of the page: its ids and styles are the page’s', async () => {
    const page = await openPlanner('', content);
    const order = page.all<HTMLSlotElement>('slot').map(({ name }) => name);
    expect(order).to.deep.equal([...slots]);
    expect(page.find('.panels').compareDocumentPosition(page.find('[part="footer"]'))).to.equal(
      Node.DOCUMENT_POSITION_FOLLOWING,
    );
    expect(slotted(page, 'header').getRootNode() === document).to.equal(true);
  });

  it('changes with the page', async () => {
    const page = await openPlanner('', content);
    slotted(page, 'header').textContent = 'Another clinic';
    const more = document.createElement('p');
    more.slot = 'footer';
    more.textContent = 'One more';
    page.element.append(more);
    await page.settled();
    expect(more.getBoundingClientRect().height).to.be.greaterThan(0);
    expect(slotted(page, 'header').checkVisibility()).to.equal(true);
  });

  it('takes no room while there is nothing', async () => {
    const page = await openPlanner();
    for (const part of ['header', 'footer'])
      expect(page.find(`[part="${part}"]`).getBoundingClientRect().height, part).to.equal(0);
    const height = page.element.getBoundingClientRect().height;
    for (const part of ['header', 'footer']) page.find(`[part="${part}"]`).style.display = 'none';
    expect(page.element.getBoundingClientRect().height).to.equal(height);
  });

  it('stays where answers leave no plan', async () => {
    const page = new ChecksPage(
      await fixture(`<weekwright-planner panels="split checks">${content}</weekwright-planner>`),
    );
    await page.until(() => page.has('.checks .panel-title'), 'the panel comes');
    await (await page.opens('start')).ticks('symptoms');
    expect(page.element.plan).to.equal(null);
    for (const slot of slots) expect(slotted(page, slot).checkVisibility(), slot).to.equal(true);
  });

  it('can be used while the planner is disabled', async () => {
    const page = await openPlanner('disabled', `${content}<button slot="footer">Call us</button>`);
    const button = page.element.querySelector('button');
    expect(button?.matches(':disabled')).to.equal(false);
    button?.focus();
    expect(document.activeElement === button).to.equal(true);
  });

  it('is not printed: the sheet is as it is without', async () => {
    const sheets: (string | undefined)[] = [];
    for (const inside of ['', content]) {
      const tag = `<weekwright-planner panels="split handout">${inside}</weekwright-planner>`;
      const page = new HandoutPage(await fixture(tag));
      await page.until(() => page.has('.handout .panel-title'), 'the panel comes');
      const [sheet] = await printing(() => page.acts('Print'));
      if (!sheet) throw new Error('nothing is printed');
      sheets.push(sheet.text);
      finish(sheet);
      page.element.remove();
    }
    expect(sheets[0]).to.contain('min');
    expect(sheets[1]).to.equal(sheets[0]);
  });

  it('is no control of the planner: the first is still an input', async () => {
    const page = await openPlanner('', '<a slot="header" href="#home">Home</a>');
    page.element.focus();
    expect(page.root.activeElement?.matches('input, button')).to.equal(true);
  });
});

it('checks without slots have no room kept for them either', async () => {
  const page = await openChecks();
  expect(page.find('[part="footer"]').getBoundingClientRect().height).to.equal(0);
});
