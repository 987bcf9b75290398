import { expect } from '@open-wc/testing';
import { openHandout, scene, type HandoutPage } from './handout-page.js';
import { choosesFile, fileText, savesPlan } from './files.js';

const told = {
  name: 'Spring',
  running: { race: { metres: 10_000, seconds: 2700, date: null } },
  strength: { equipment: ['barbell'] },
  checks: { age: 47 },
  record: [{ date: '2026-11-30', category: 'slow', minutes: 40, effort: 3 }],
  handout: { runner: 'Anna', contact: 'Coach', note: 'Hello' },
};
const week = { days: [60, 45, 60, 60, 45, 90, 120] };
const whole = fileText(told, { week, season: { date: '2027-04-11', weeks: 16 } });
const saved = async (page: HandoutPage): Promise<Record<string, unknown>> =>
  JSON.parse((await savesPlan(page)).text) as Record<string, unknown>;

describe('a page that has no panel for parts of a plan', () => {
  it('says which parts it does not show', async () => {
    const page = await openHandout(scene, 'handout');
    await choosesFile(page, whole);
    await page.hearsBack('The plan from the file is open.');
    expect(page.message).to.match(
      /This page does not show its days, its season, pace and heart rate, what there is for strength, what is told for checks,? and what was done\./,
    );
    expect(page.element.plan?.inputs.hours).to.equal(7);
  });

  it('saves them again as they were, through every act', async () => {
    const page = await openHandout(scene, 'split handout');
    await choosesFile(page, whole);
    await page.drag('hours', 8);
    await page.writeNote('Changed');
    const file = await saved(page);
    const { running, strength, checks, record } = told;
    expect(file).to.deep.include({ name: 'Spring', running, strength, checks, record });
    expect(file['handout']).to.deep.equal({ ...told.handout, note: 'Changed' });
  });

  it('says nothing of the kind where it has them all, or the plan has nothing of them', async () => {
    const full = await openHandout(scene, 'week season running strength checks record handout');
    await choosesFile(full, whole);
    await full.hearsBack('The plan from the file is open.');
    expect(full.message).to.not.contain('does not show');
    const bare = await openHandout(scene, 'handout');
    await choosesFile(bare, fileText());
    await bare.hearsBack('The plan from the file is open.');
    expect(bare.message).to.not.contain('does not show');
  });

  it('says that it has but one of several scenarios, and nothing of what was set by hand', async () => {
    const page = await openHandout(scene, 'split handout');
    const file = JSON.parse(fileText()) as { sheet: { scenarios: object[] } };
    file.sheet.scenarios.push({ ...file.sheet.scenarios[0], id: 'b', overrides: { strength_minutes: '61' } });
    await choosesFile(page, JSON.stringify({ ...file, onShow: 'b' }));
    await page.hearsBack('with 2 scenarios');
    expect(page.message).to.contain('its other scenarios').and.to.contain('set by hand in its sheet');
  });

  it('has the week and the season of the scenario on show where it has panels for those', async () => {
    const page = await openHandout(scene, 'week season handout');
    await page.until(() => page.has('.board .day') && page.has('#season-week-title'), 'the panels come');
    await choosesFile(page, whole);
    await page.until(() => page.element.plan?.week?.wishes.days.join() === week.days.join(), 'the days come');
    expect(page.season.wishes.date).to.equal('2027-04-11');
  });
});
