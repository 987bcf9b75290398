/** Attributes of the planner that the address of the page may have, beside `lang`: all but those of a field of a form. */
export const attributes = [
  'label',
  'panels',
  'hours',
  'phase',
  'level',
  'event',
  'strength-cap',
  'days',
  'event-date',
  'most-hours',
  'race',
  'equipment',
  'contact',
  'storage',
  'method-src',
] as const;

/** Colours, by their custom properties without `--weekwright-`. */
export const colours = [
  'accent',
  'ground',
  'text',
  'muted',
  'line',
  'slow',
  'tempo',
  'intervals',
  'cross',
  'strength',
] as const;

export const schemes = ['light', 'dark'] as const;

/** Languages of the planner; a page of its own, so that they are known before any words are fetched. */
export const languages = ['ar', 'de', 'en', 'es', 'fr'] as const;
export type Language = (typeof languages)[number];

/** Everything that the address may have. */
export const names: readonly string[] = [...attributes, 'lang', ...colours, 'radius', 'scheme', 'parent'];
