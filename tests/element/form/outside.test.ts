import { expect, fixture } from '@open-wc/testing';
import { openPlanner } from '../planner-page.js';

const asked = (): string[] =>
  performance
    .getEntriesByType('resource')
    .map(({ name }) => name)
    .filter((name) => name.includes('/form/form-part'));

describe('a planner outside of a form', () => {
  it('does not fetch what a form needs, until it is put into one', async () => {
    const page = await openPlanner('name="plan" required label="The week"');
    await page.drag('hours', 6);
    await page.choose(page.sessionList('strength'), 1);
    expect([page.element.form, page.element.validity.valid]).to.deep.equal([null, true]);
    expect(asked()).to.deep.equal([]);
    const form = await fixture<HTMLFormElement>('<form></form>');
    form.append(page.element);
    await page.settled();
    expect(asked()).to.have.length(1);
    expect(new FormData(form).get('plan')).to.equal(JSON.stringify(page.element.plan));
  });
});
