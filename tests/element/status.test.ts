import { aTimeout, expect } from '@open-wc/testing';
import { openPlanner, type PlannerPage } from './planner-page.js';

/** A little more than the time after which changes are told. */
const quietMilliseconds = 900;

/** When the status message changed, while something is done and for a while afterwards. */
async function changes(page: PlannerPage, act: () => Promise<unknown>): Promise<number[]> {
  const times: number[] = [];
  const observer = new MutationObserver(() => times.push(performance.now()));
  observer.observe(page.status, { childList: true, characterData: true, subtree: true });
  await act();
  await aTimeout(quietMilliseconds);
  observer.disconnect();
  return times;
}

describe('the status message', () => {
  it('is there, and empty, before anything has changed', async () => {
    const { status } = await openPlanner();
    expect(status.textContent.trim()).to.equal('');
    expect(status.getAttribute('role')).to.equal('status');
  });

  it('changes once for twenty keys on a slider, half a second after the last', async () => {
    const page = await openPlanner('hours="4"');
    page.slider('hours').focus();
    let lastKey = 0;
    const times = await changes(page, async () => {
      for (let key = 0; key < 20; key += 1) await page.press('ArrowRight');
      lastKey = performance.now();
    });
    expect(times).to.have.length(1);
    expect((times[0] ?? 0) - lastKey).to.be.at.least(500);
  });

  it('says the outcome, and what there is to read, and not the value of the slider', async () => {
    const page = await openPlanner('hours="8.75" event="longer"');
    page.slider('hours').focus();
    await changes(page, () => page.press('ArrowRight'));
    const said = page.status.textContent;
    expect(said).to.equal(
      'Nine hours in build: 205 minutes of slow running, 80 minutes of tempo running, 55 minutes of intervals, ' +
        '80 minutes of cross-training, and 120 minutes of strength. 1 rule acted. 2 things worth knowing.',
    );
    expect(said).to.not.equal(page.slider('hours').getAttribute('aria-valuetext'));
  });

  it('is silent where nothing changed, and where the page changed something', async () => {
    const page = await openPlanner('hours="4"');
    const times = await changes(page, async () => {
      await page.ask('strength_minutes');
      page.element.hours = 7;
      await page.settled();
    });
    expect(times).to.deep.equal([]);
  });

  it('tells of a typed text that is refused', async () => {
    const page = await openPlanner('hours="4"');
    await changes(page, () => page.type('hours', '99'));
    expect(page.status.textContent).to.equal('Hours a week is 99; allowed: 0.5 to 20.');
  });

  it('is not said by a planner that was taken away', async () => {
    const page = await openPlanner('hours="4"');
    const times = await changes(page, async () => {
      await page.drag('hours', 7);
      page.element.remove();
    });
    expect(times).to.deep.equal([]);
    expect(page.element.isUpdatePending).to.equal(false);
  });
});
