import { expect, it } from 'vitest';
import defaultDocument from '../../../shared/methods/default.json' with { type: 'json' };
import { defaultClashes, defaultRules } from './default-rules.js';

const { week } = defaultDocument;

it("the default method has the design's table of clashes", () => {
  const outlines = week.clashes.map(({ id, kind, cost, status, ...rest }) => ({
    ...{ id, kind, cost, status },
    ...('days_apart' in rest ? { first: rest.first, then: rest.then, days_apart: rest.days_apart } : {}),
  }));
  expect(outlines).toEqual(defaultClashes.map(({ name: _name, says: _says, reason: _reason, ...rest }) => rest));
});

it('the default method has two sessions a day at most, a rest day and one quality run a day', () => {
  const { sessions_a_day, rest_days, one_a_day, order_in_day, hours_between } = defaultRules;
  expect(week).toMatchObject({ sessions_a_day, rest_days, one_a_day, order_in_day, hours_between });
});
