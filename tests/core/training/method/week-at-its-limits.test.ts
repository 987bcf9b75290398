import { describe, expect, test } from 'vitest';
import { documentWith, plannerOf, problemsOf } from './documents.js';

const own = (id: string) => [{ id, name: 'mine', formula: '1', status: 'assumption' }];

describe('names that a sheet with days has', () => {
  const names = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'].map(
    (day) => `${day}_minutes`,
  );

  test.each([...names, 'week_cost'])('%s is refused for a quantity of the coach', async (name) => {
    const problem = { path: 'quantities[0].id', value: name, code: 'duplicate', allowed: {} };
    expect(await problemsOf(documentWith('quantities', own(name)))).toEqual([problem]);
  });

  test.each(['week_costs', 'monday', 'day_minutes'])('%s is not', async (name) => {
    expect((await plannerOf(documentWith('quantities', own(name)))).method.quantities).toMatchObject([{ id: name }]);
  });
});

describe('a week at its limits is read:', () => {
  test.each([
    ['week', undefined],
    ['week.sessions_a_day', 5],
    ['week.rest_days', 0],
    ['week.rest_days', 7],
    ['week.one_a_day', []],
    ['week.clashes', []],
    ['week.clashes[0].cost', 0],
    ['week.clashes[0].cost', 1000],
    ['week.templates', []],
    ['week.templates[0].minutes', [0, 0, 0, 0, 0, 0, 1440]],
    ['week.order_sources', undefined],
  ])('%s = %j', async (path, value) => {
    const document = documentWith(path, value);

    expect((await plannerOf(document)).method.format).toBe('weekwright-method');
  });
});
