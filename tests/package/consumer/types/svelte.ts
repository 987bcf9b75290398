// What TypeScript takes, and what it refuses, where a page has the types for Svelte.
import type { SvelteHTMLElements } from 'svelte/elements';
import 'weekwright/svelte';

export type Props = SvelteHTMLElements['weekwright-planner'];

export const taken: Props = {
  class: 'week',
  lang: 'de',
  hours: 7.5,
  phase: null,
  level: undefined,
  strengthCap: 100,
  'event-date': '2027-05-02',
  season: { weeks: 8 },
  'onplan-change': (event) => {
    const minutes: number = event.detail.rounded.strength;
    return minutes;
  },
};

// @ts-expect-error: hours are a number
export const worded: Props = { hours: 'four' };
// @ts-expect-error: the plan is there to be read
export const planned: Props = { plan: null };
// @ts-expect-error: there are no miles
export const unknown: Props = { miles: 4 };
// @ts-expect-error: a listener gets the plan's event
export const mistaken: Props = { 'onplan-change': (event: KeyboardEvent) => event.key };
