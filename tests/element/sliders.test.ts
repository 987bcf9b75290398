import { expect } from '@open-wc/testing';
import { resetMouse, sendMouse } from '@web/test-runner-commands';
import { openPlanner, shownPlan, type FieldName, type PlannerPage } from './planner-page.js';

/** The slider with the focus on it. */
async function onSlider(field: FieldName, attributes = ''): Promise<PlannerPage> {
  const page = await openPlanner(attributes);
  page.slider(field).focus();
  return page;
}

describe('a slider by keyboard', () => {
  const hours: readonly [key: string, from: number, to: number][] = [
    ['ArrowRight', 4, 4.25],
    ['ArrowUp', 4, 4.25],
    ['ArrowLeft', 4, 3.75],
    ['ArrowDown', 4, 3.75],
    ['Home', 4, 0.5],
    ['End', 4, 20],
    ['ArrowRight', 20, 20],
    ['ArrowLeft', 0.5, 0.5],
    // A value between two steps goes to the next one.
    ['ArrowRight', 4.1, 4.25],
  ];

  for (const [key, from, to] of hours)
    it(`${key} moves ${String(from)} hours to ${String(to)}`, async () => {
      const page = await onSlider('hours', `hours="${String(from)}"`);
      await page.press(key);
      expect(shownPlan(page).inputs.hours).to.equal(to);
      expect(page.slider('hours').value).to.equal(String(to));
    });

  it('PageUp and PageDown move by more than a step', async () => {
    const page = await onSlider('hours', 'hours="4"');
    await page.press('PageUp');
    expect(shownPlan(page).inputs.hours).to.be.greaterThan(4.25);
    await page.press('PageDown');
    expect(shownPlan(page).inputs.hours).to.equal(4);
  });

  it('walks through the phases in the order of a season', async () => {
    const page = await onSlider('phase', 'phase="off-season"');
    const seen: string[] = [];
    for (const _ of page.list('phase').options) {
      seen.push(shownPlan(page).inputs.phase);
      await page.press('ArrowRight');
    }
    expect(seen).to.deep.equal(['off-season', 'base', 'build', 'peak', 'taper', 'recovery']);
    expect(shownPlan(page).inputs.phase, 'and stays at the end').to.equal('recovery');
  });

  it('moves the level and the strength cap', async () => {
    const page = await onSlider('level', 'level="trained" strength-cap="100"');
    await page.press('ArrowRight');
    page.slider('strengthCap').focus();
    await page.press('ArrowRight');
    expect(shownPlan(page).inputs).to.include({ level: 'elite', strengthCap: 105 });
  });

  it('keeps the focus while everything around it changes', async () => {
    const page = await onSlider('hours', 'hours="5.75"');
    for (const key of ['ArrowRight', 'ArrowRight', 'End', 'Home']) {
      await page.press(key);
      expect(page.hasFocus(page.slider('hours'))).to.equal(true);
    }
  });
});

describe('a slider says its value in words', () => {
  const spoken: readonly [field: FieldName, attributes: string, text: string][] = [
    ['hours', 'hours="4"', '4 hours'],
    ['hours', 'hours="1"', '1 hour'],
    ['hours', 'hours="4.25"', '4 hours 15 minutes'],
    ['hours', 'hours="0.5"', '30 minutes'],
    ['phase', 'phase="off-season"', 'Off season'],
    ['level', 'level="elite"', 'Elite'],
    ['strengthCap', 'strength-cap="95"', '95 minutes'],
  ];

  for (const [field, attributes, text] of spoken)
    it(`${attributes} as ${text}`, async () => {
      const page = await openPlanner(attributes);
      expect(page.slider(field).getAttribute('aria-valuetext')).to.equal(text);
    });
});

describe('a slider by pointer', () => {
  afterEach(() => resetMouse());

  const at = (slider: HTMLElement, share: number): [number, number] => {
    const { left, top, width, height } = slider.getBoundingClientRect();
    return [Math.round(left + width * share), Math.round(top + height / 2)];
  };

  it('goes where it is pressed', async () => {
    const page = await openPlanner('hours="4"');
    await page.click(page.slider('hours'));
    expect(shownPlan(page).inputs.hours).to.be.closeTo(10.25, 0.5);
  });

  it('follows the pointer and stops with it', async () => {
    const page = await openPlanner('phase="off-season"');
    const slider = page.slider('phase');
    slider.scrollIntoView({ block: 'center' });
    await sendMouse({ type: 'move', position: at(slider, 0.02) });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: at(slider, 0.5) });
    await page.settled();
    expect(['build', 'peak']).to.include(shownPlan(page).inputs.phase);
    await sendMouse({ type: 'move', position: at(slider, 1.2) });
    await sendMouse({ type: 'up' });
    await page.settled();
    expect(shownPlan(page).inputs.phase).to.equal('recovery');
    await sendMouse({ type: 'move', position: at(slider, 0.5) });
    await page.settled();
    expect(shownPlan(page).inputs.phase).to.equal('recovery');
  });
});
