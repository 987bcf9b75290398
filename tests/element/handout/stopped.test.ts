import { expect } from '@open-wc/testing';
import { carrying, choosesFile, drag, fileText, savesPlan } from './files.js';
import { openHandout, scene } from './handout-page.js';

describe('what is taken home, where answers stop the plan,', () => {
  it('is not shown, and a file that is dropped changes nothing', async () => {
    const page = await openHandout(scene, 'checks handout');
    page.element.checks = { answers: ['symptoms'] };
    await page.until(() => !page.has('.handout'), 'it steps aside');
    expect(page.element.plan).to.equal(null);
    drag(page, ['dragenter', 'dragover', 'drop'], carrying(fileText({ name: 'Other' }), 'plan.json'));
    await new Promise((resolve) => setTimeout(resolve, 300));
    await page.settled();
    expect([page.element.plan, page.has('.handout')]).to.deep.equal([null, false]);
  });

  it('has none of the answers in a saved plan', async () => {
    const page = await openHandout(scene, 'checks handout');
    page.element.checks = { age: 40, answers: ['pain', 'pregnant'] };
    await page.settled();
    const { text } = await savesPlan(page);
    expect(text).to.contain('"age": 40');
    expect(text).to.not.match(/answers|pain|pregnant/);
  });

  it('takes no file that has answers', async () => {
    const page = await openHandout(scene, 'checks handout');
    await choosesFile(page, fileText({ checks: { answers: ['pain'] } }));
    await page.hearsBack('The file cannot be opened; nothing was changed:');
    expect(page.message).to.contain('checks.answers');
  });
});
