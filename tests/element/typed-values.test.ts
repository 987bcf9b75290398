import { expect } from '@open-wc/testing';
import { openPlanner, shownPlan, type NumberFieldName } from './planner-page.js';

describe('a value that is typed', () => {
  const good: readonly [field: NumberFieldName, text: string, value: number, shown: string][] = [
    ['hours', '6', 6, '6'],
    ['hours', '4.25', 4.25, '4.25'],
    ['hours', '4,25', 4.25, '4.25'],
    ['hours', '4:15', 4.25, '4.25'],
    ['hours', '0:45', 0.75, '0.75'],
    ['hours', ' 5 ', 5, '5'],
    // Not on the slider's grid, and still allowed.
    ['hours', '4.1', 4.1, '4.1'],
    ['hours', '20', 20, '20'],
    ['strengthCap', '107', 107, '107'],
  ];

  for (const [field, text, value, shown] of good)
    it(`“${text}” in ${field} is ${String(value)}`, async () => {
      const page = await openPlanner();
      await page.type(field, text);
      expect(shownPlan(page).inputs[field]).to.equal(value);
      expect(page.typed(field).value).to.equal(shown);
      expect(page.typed(field).getAttribute('aria-invalid')).to.equal('false');
    });

  it('is taken when the field is left', async () => {
    const page = await openPlanner();
    const entry = page.typed('hours');
    entry.focus();
    entry.select();
    await page.press('7', 'Tab');
    expect(shownPlan(page).inputs.hours).to.equal(7);
  });

  it('is typed over one that changes once the field is reached', async () => {
    const page = await openPlanner('hours="6"');
    const entry = page.typed('hours');
    page.stepButton('hours', 'less').click();
    entry.focus();
    entry.select();
    await page.settled();
    expect(entry.value).to.equal('5.75');
    await page.press('8', 'Enter');
    expect(shownPlan(page).inputs.hours).to.equal(8);
  });

  it('in German may have the comma that German writes', async () => {
    const page = await openPlanner('lang="de"');
    await page.type('hours', '7,5');
    expect(shownPlan(page).inputs.hours).to.equal(7.5);
    expect(page.typed('hours').value).to.equal('7,5');
  });
});

describe('a text that is no value', () => {
  const wrong: readonly [field: NumberFieldName, text: string, says: string][] = [
    ['hours', 'abc', 'Hours a week is "abc"; it has to be a number.'],
    ['hours', '4:75', 'Hours a week is "4:75"; it has to be a number.'],
    ['hours', '', 'Hours a week is ""; it has to be a number.'],
    ['hours', '99', 'Hours a week is 99; allowed: 0.5 to 20.'],
    ['hours', '0', 'Hours a week is 0; allowed: 0.5 to 20.'],
    ['strengthCap', '200', 'Strength cap is 200; allowed: 90 to 120.'],
  ];

  for (const [field, text, says] of wrong)
    it(`“${text}” in ${field} is refused under the field, and nothing is lost`, async () => {
      const page = await openPlanner('hours="6"');
      const before = shownPlan(page);
      await page.type(field, text);
      const entry = page.typed(field);
      expect(page.hint(field)).to.equal(says);
      expect(entry.getAttribute('aria-invalid')).to.equal('true');
      expect(entry.getAttribute('aria-describedby')).to.equal(`${field}-hint`);
      expect(entry.value, 'the text that was typed').to.equal(text);
      expect(shownPlan(page)).to.equal(before);
      expect(page.problems, 'said once, where it was typed').to.deep.equal([]);
    });

  it('stays while something else is changed', async () => {
    const page = await openPlanner();
    await page.type('hours', 'abc');
    await page.drag('phase', 0);
    expect(shownPlan(page).inputs).to.include({ hours: 4, phase: 'off-season' });
    expect(page.typed('hours').value).to.equal('abc');
    expect(page.typed('hours').getAttribute('aria-invalid')).to.equal('true');
  });

  const ways: Readonly<Record<string, (page: Awaited<ReturnType<typeof openPlanner>>) => Promise<unknown>>> = {
    'typing a good value': (page) => page.type('hours', '5'),
    'moving the slider': (page) => page.drag('hours', 5),
    'pressing a button beside it': (page) => page.click(page.stepButton('hours', 'more')),
    'typing the value it had': (page) => page.type('hours', '4'),
  };

  for (const [way, act] of Object.entries(ways))
    it(`is put right by ${way}`, async () => {
      const page = await openPlanner('hours="4"');
      await page.type('hours', '99');
      await act(page);
      expect(page.typed('hours').value).to.equal(String(shownPlan(page).inputs.hours));
      expect(page.typed('hours').getAttribute('aria-invalid')).to.equal('false');
      expect(page.hint('hours')).to.equal('All training together, strength included.');
    });
});
