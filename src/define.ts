import type { PlanChangeEvent } from './element/plan-change-event.js';
import { WeekwrightPlanner } from './element/weekwright-planner.js';

const tag = 'weekwright-planner';

// A page may load the script twice, or two versions of it: the first one stays, and nothing throws.
if (!customElements.get(tag)) customElements.define(tag, WeekwrightPlanner);

declare global {
  interface HTMLElementTagNameMap {
    'weekwright-planner': WeekwrightPlanner;
  }
  interface HTMLElementEventMap {
    'plan-change': PlanChangeEvent;
  }
}
