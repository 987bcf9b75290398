import { openChecks, scene } from './checks-page.js';
it('probe', async () => {
  const page = await openChecks(scene, 'split checks week');
  await page.until(() => page.has('.board .day, .board li'), 'x').catch(() => null);
  await page.typeIn('checks-age', '67');
  await page.opensAll();
  console.log(page.panelText);
  console.log(JSON.stringify(page.element.plan?.load), JSON.stringify((page.element.plan as any).checks?.length), Object.keys(page.element.plan ?? {}).join(), JSON.stringify(page.element.plan?.checks[0]));
  console.log(page.find('.board').innerHTML.slice(0, 300));
  await page.tellWeeks('100 200 0 300');
  console.log(page.weeks.value, page.told, page.hintOf('checks-weeks'));
  await page.ticks('symptoms');
  console.log(page.panelText, page.root.querySelector('.planner')?.innerHTML.length, page.text);
});
