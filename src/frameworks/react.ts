// Types of the tag in JSX, for React 19 and newer: `import 'weekwright/react'`. Nothing of it runs.
import type { DetailedHTMLProps, HTMLAttributes } from 'react';
import type { WeekwrightPlanner } from '../index.js';
import type { PlannerAttributes, PlannerListeners, PlannerProperties } from './planner-props.js';

type TagProps = DetailedHTMLProps<HTMLAttributes<WeekwrightPlanner>, WeekwrightPlanner>;

declare module 'react' {
  // eslint-disable-next-line @typescript-eslint/no-namespace -- React keeps its tags in one
  namespace JSX {
    interface IntrinsicElements {
      'weekwright-planner': TagProps & PlannerProperties & PlannerAttributes & PlannerListeners;
    }
  }
}
