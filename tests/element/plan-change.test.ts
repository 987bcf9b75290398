import { expect } from '@open-wc/testing';
import { sendMouse } from '@web/test-runner-commands';
import { PlanChangeEvent } from '../../src/index.js';
import { openPlanner, shownPlan, type PlannerPage } from './planner-page.js';

/** Near its end, for in its middle a slider may stand already. */
async function pressNearEnd(page: PlannerPage, slider: Element): Promise<unknown> {
  slider.scrollIntoView({ block: 'center' });
  const { left, top, width, height } = slider.getBoundingClientRect();
  await sendMouse({ type: 'click', position: [Math.round(left + 0.95 * width), Math.round(top + height / 2)] });
  return page.settled();
}

/** What one act of a person looks like. */
const acts: Readonly<Record<string, (page: PlannerPage) => Promise<unknown>>> = {
  'a key on a slider': (page) => {
    page.slider('hours').focus();
    return page.press('ArrowRight');
  },
  'a press on a slider': (page) => pressNearEnd(page, page.slider('level')),
  'a choice from a list': (page) => {
    page.list('event').focus();
    return page.press('ArrowUp');
  },
  'a step button': (page) => page.click(page.stepButton('strengthCap', 'less')),
  'a typed value': (page) => page.type('hours', '7,5'),
  'sessions picked': (page) => {
    page.sessionList('strength').focus();
    return page.press('ArrowDown');
  },
};

/** Everything of a kind that the page hears while something is done. */
async function heard(types: readonly string[], act: () => Promise<unknown>): Promise<Event[]> {
  const events: Event[] = [];
  const note = (event: Event): number => events.push(event);
  for (const type of types) document.addEventListener(type, note);
  await act();
  for (const type of types) document.removeEventListener(type, note);
  return events;
}

for (const [name, act] of Object.entries(acts))
  describe(name, () => {
    it('is heard on the document as one plan-change with the whole plan', async () => {
      const page = await openPlanner();
      const events = await heard(['plan-change'], () => act(page));
      expect(events).to.have.length(1);
      const [event] = events;
      if (!(event instanceof PlanChangeEvent)) throw new Error('no PlanChangeEvent');
      expect(event.target === page.element).to.equal(true);
      expect(event.bubbles && event.composed && !event.cancelable).to.equal(true);
      expect(event.detail).to.deep.equal(shownPlan(page));
    });

    it('lets no event of the inputs out of the planner', async () => {
      const page = await openPlanner();
      expect(await heard(['input', 'change', 'beforetoggle', 'toggle'], () => act(page))).to.deep.equal([]);
    });
  });

it('the detail is plain data, and goes through JSON unchanged', async () => {
  const page = await openPlanner('hours="1.1" event="longer"');
  const [event] = await heard(['plan-change'], () => page.drag('hours', 9));
  if (!(event instanceof PlanChangeEvent)) throw new Error('no PlanChangeEvent');
  expect(JSON.parse(JSON.stringify(event.detail))).to.deep.equal(event.detail);
  expect(event.detail).to.include({ format: 'weekwright-plan', version: 1 });
});

it('twenty keys on a slider are twenty changes, each with its own plan', async () => {
  const page = await openPlanner('hours="4"');
  page.slider('hours').focus();
  const keys = Array.from({ length: 20 }, () => 'ArrowRight');
  const events = await heard(['plan-change'], () => page.press(...keys));
  const hours = events.map((event) => (event instanceof PlanChangeEvent ? event.detail.inputs.hours : null));
  expect(hours).to.deep.equal(keys.map((_, index) => 4.25 + index / 4));
});

describe('no plan-change is fired', () => {
  const silent: Readonly<Record<string, (page: PlannerPage) => unknown>> = {
    'when a property is set': ({ element }) => Object.assign(element, { hours: 7, phase: 'base' }),
    'when an attribute is set': ({ element }) => {
      element.setAttribute('level', 'elite');
    },
    'when a method is set': ({ element }) => Object.assign(element, { method: { format: 'none' } }),
    'when the language changes': ({ element }) => {
      element.lang = 'de';
    },
    'when a text is typed that is no value': (page) => page.type('hours', 'abc'),
    'when the value is typed that was there': (page) => page.type('hours', '4.0'),
    'when somebody asks why': (page) => page.ask('strength_minutes'),
  };

  for (const [name, act] of Object.entries(silent))
    it(name, async () => {
      const page = await openPlanner('hours="4"');
      const events = await heard(['plan-change'], async () => {
        await act(page);
        await page.settled();
      });
      expect(events).to.deep.equal([]);
    });

  it('when a planner starts', async () => {
    expect(await heard(['plan-change'], () => openPlanner('hours="9"'))).to.deep.equal([]);
  });
});
