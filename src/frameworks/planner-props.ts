import type { LitElement } from 'lit';
import type { PlanChangeEvent, WeekwrightPlanner } from '../index.js';

/** `strengthCap` as an attribute is spelled: `strength-cap`. */
type Dashed<Name extends string> = Name extends `${infer First}${infer Rest}`
  ? `${First extends Lowercase<First> ? First : `-${Lowercase<First>}`}${Dashed<Rest>}`
  : Name;

/** What the tag has beyond any other element. */
type Own = Omit<WeekwrightPlanner, keyof LitElement>;

/** Whether two types are the same, `readonly` included, which plain assignment overlooks. */
// eslint-disable-next-line @typescript-eslint/no-unnecessary-type-parameters -- T makes the compiler compare exactly
type Same<One, Other> = (<T>() => T extends One ? 1 : 2) extends <T>() => T extends Other ? 1 : 2 ? true : false;

type IsSettable<Name extends keyof Own> = Own[Name] extends (...inputs: never) => unknown
  ? false
  : Same<Pick<Own, Name>, Readonly<Pick<Own, Name>>> extends true
    ? false
    : true;

/** All that a page may set, by name: read off the class, so that there is no second list of it. */
type PropertyName = { [Name in keyof Own]: IsSettable<Name> extends true ? Name : never }[keyof Own];

/** Properties of the tag, each of which may be left out. */
export type PlannerProperties = { [Name in PropertyName]?: Own[Name] | undefined };

/** The attributes whose names differ from those of their properties; their values are written as text. */
export type PlannerAttributes = {
  [Name in PropertyName as Dashed<Name> extends Name ? never : Dashed<Name>]?: string | number | null | undefined;
};

/** What the tag fires, by name. */
export interface PlannerEvents {
  'plan-change': PlanChangeEvent;
}

/** Listeners for React and Svelte, which listen to `plan-change` where they are given `onplan-change`. */
export type PlannerListeners = {
  [Name in keyof PlannerEvents as `on${Name}`]?: ((event: PlannerEvents[Name]) => void) | undefined;
};
