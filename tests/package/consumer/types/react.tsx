// What TypeScript takes, and what it refuses, where a page has the types for React.
import { createRef, type ComponentProps } from 'react';
import type { WeekwrightPlanner } from 'weekwright';
import 'weekwright/react';

const planner = createRef<WeekwrightPlanner>();

export const week = (
  <weekwright-planner
    key="week"
    ref={planner}
    className="week"
    lang="de"
    hours={7.5}
    phase={null}
    level={undefined}
    strengthCap={100}
    event-date="2027-05-02"
    most-hours={8}
    season={{ weeks: 8 }}
    onplan-change={(event) => {
      const minutes: number = event.detail.rounded.strength;
      return minutes;
    }}
  >
    <p>Four hours.</p>
  </weekwright-planner>
);
export const hours: number | null | undefined = planner.current?.hours;

export const refused = [
  // @ts-expect-error: hours are a number
  <weekwright-planner key={1} hours="four" />,
  // @ts-expect-error: the plan is there to be read
  <weekwright-planner key={2} plan={null} />,
  // @ts-expect-error: there are no miles
  <weekwright-planner key={3} miles={4} />,
  // @ts-expect-error: React would listen to PlanChange
  <weekwright-planner key={4} onPlanChange={() => undefined} />,
  // @ts-expect-error: a listener gets the plan's event
  <weekwright-planner key={5} onplan-change={(event: KeyboardEvent) => event.key} />,
];

export type Props = ComponentProps<'weekwright-planner'>;
