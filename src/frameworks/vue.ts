// Types of the tag in templates of Vue 3: `import 'weekwright/vue'`. Nothing of it runs.
import type { EmitFn, HTMLAttributes, PublicProps } from 'vue';
import type { WeekwrightPlanner } from '../index.js';
import type { PlannerAttributes, PlannerEvents, PlannerProperties } from './planner-props.js';

/** Vue reads what may be bound from `$props`, and what may be listened to from `$emit`. */
interface PlannerInTemplate {
  new (): WeekwrightPlanner & {
    /** For templates alone: an element has no such property. */
    $props: HTMLAttributes & PublicProps & PlannerProperties & PlannerAttributes;
    /** For templates alone: an element has no such method. */
    $emit: EmitFn<{ [Name in keyof PlannerEvents]: (event: PlannerEvents[Name]) => void }>;
  };
}

declare module 'vue' {
  interface GlobalComponents {
    'weekwright-planner': PlannerInTemplate;
  }
}
