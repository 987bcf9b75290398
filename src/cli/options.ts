/** The options of `weekwright plan`, in the order in which the help lists them; `value` is what stands for theirs. */
export const planOptions = {
  hours: { type: 'string', value: 'HOURS' },
  phase: { type: 'string', value: 'PHASE' },
  level: { type: 'string', value: 'LEVEL' },
  event: { type: 'string', value: 'EVENT' },
  'strength-cap': { type: 'string', value: 'MINUTES' },
  days: { type: 'string', value: 'MINUTES,…' },
  method: { type: 'string', value: 'FILE' },
  roster: { type: 'string', value: 'FILE' },
  json: { type: 'boolean', value: '' },
  lang: { type: 'string', value: 'LANGUAGE' },
  help: { type: 'boolean', value: '' },
  version: { type: 'boolean', value: '' },
} as const;

export type OptionName = keyof typeof planOptions;

/** Options that stand for a field of a request to the planner. */
export const requestFields = {
  hours: 'hours',
  phase: 'phase',
  level: 'level',
  event: 'event',
  'strength-cap': 'strengthCap',
} as const satisfies Partial<Record<OptionName, string>>;

export const optionNames = Object.keys(planOptions).filter(isOptionName);

export function isOptionName(name: string): name is OptionName {
  return Object.hasOwn(planOptions, name);
}
