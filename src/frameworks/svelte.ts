// Types of the tag in components of Svelte 5: `import 'weekwright/svelte'`. Nothing of it runs.
import type { HTMLAttributes } from 'svelte/elements';
import type { WeekwrightPlanner } from '../index.js';
import type { PlannerAttributes, PlannerListeners, PlannerProperties } from './planner-props.js';

type TagProps = HTMLAttributes<WeekwrightPlanner>;

declare module 'svelte/elements' {
  interface SvelteHTMLElements {
    'weekwright-planner': TagProps & PlannerProperties & PlannerAttributes & PlannerListeners;
  }
}
