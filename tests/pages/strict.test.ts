import { expect, test } from 'vitest';
import { askWhy, driveInputs, hoursNote, inPlanner, typeHours } from './driving.js';
import { useBrowser } from './web.js';

const web = useBrowser();

test('the strict page refuses what it says it refuses', async () => {
  const { page, violations, close } = await web.open('/demo/strict.html');
  const refused = await page.evaluate(() => {
    const probe = document.createElement('p');
    document.body.append(probe);
    probe.setAttribute('style', 'color: red');
    const results = { style: probe.style.color, markup: 'set', connection: 'tried' };
    try {
      probe.innerHTML = '<b>x</b>';
    } catch {
      results.markup = 'refused';
    }
    return results;
  });
  expect(refused).toMatchObject({ style: '', markup: 'refused' });
  expect((await violations()).length).toBeGreaterThan(0);
  await close();
});

test('every state of the planner keeps to the strict policy', async () => {
  const { page, complaints, violations, close } = await web.open('/demo/strict.html');
  await driveInputs(page);
  await askWhy(page);
  await typeHours(page, '99');
  expect(await hoursNote(page)).toBe('Hours a week is 99; allowed: 0.5 to 20.');
  await page.$eval('weekwright-planner', async (planner) => {
    planner.setAttribute('phase', 'summer');
    planner.lang = 'de';
    await planner.updateComplete;
  });
  await inPlanner(page, '.problems');
  expect(complaints).toEqual([]);
  expect(await violations()).toEqual([]);
  await close();
});

test("a coach's method, with formulas of its own, keeps to the strict policy", async () => {
  const { page, violations, close } = await web.open('/demo/strict.html');
  const club = (await (await fetch(new URL('/demo/club-method.json', page.url()))).json()) as unknown;
  const plan = await page.$eval(
    'weekwright-planner',
    async (planner, method) => {
      planner.method = method;
      await planner.updateComplete;
      return planner.plan;
    },
    club,
  );
  expect(plan).toMatchObject({ method: { id: 'lamplighters-thursday' } });
  expect(await violations()).toEqual([]);
  await close();
});
