// What TypeScript takes, and what it refuses, where a page has the types for Vue.
import type { GlobalComponents } from 'vue';
import type { PlanChangeEvent } from 'weekwright';
import 'weekwright/vue';

type Planner = InstanceType<GlobalComponents['weekwright-planner']>;

export type Props = Planner['$props'];
/** Whether Vue hands an event of this name, as this type, to a listener in a template. */
export type Emits<Name extends string, Event> = Planner['$emit'] extends (name: Name, event: Event) => void
  ? true
  : false;

export const typed: Emits<'plan-change', PlanChangeEvent> = true;
// @ts-expect-error: a listener gets the plan's event
export const mistyped: Emits<'plan-change', KeyboardEvent> = true;

export const taken: Props = {
  key: 'week',
  class: 'week',
  lang: 'de',
  hours: 7.5,
  phase: null,
  level: undefined,
  strengthCap: 100,
  'event-date': '2027-05-02',
  season: { weeks: 8 },
};

// @ts-expect-error: hours are a number
export const worded: Props = { hours: 'four' };
// @ts-expect-error: the plan is there to be read
export const planned: Props = { plan: null };
// @ts-expect-error: there are no miles
export const unknown: Props = { miles: 4 };
