/** Every option, in the order in which the help lists them; `value` is what stands for theirs, `of` the commands it is for. */
export const allOptions = {
  hours: { type: 'string', value: 'HOURS', of: ['plan', 'season'] },
  phase: { type: 'string', value: 'PHASE', of: ['plan'] },
  date: { type: 'string', value: 'DATE', of: ['season'] },
  start: { type: 'string', value: 'DATE', of: ['season'] },
  weeks: { type: 'string', value: 'WEEKS', of: ['season'] },
  'most-hours': { type: 'string', value: 'HOURS', of: ['season'] },
  level: { type: 'string', value: 'LEVEL', of: ['plan', 'season'] },
  event: { type: 'string', value: 'EVENT', of: ['plan', 'season'] },
  'strength-cap': { type: 'string', value: 'MINUTES', of: ['plan', 'season'] },
  days: { type: 'string', value: 'MINUTES,…', of: ['plan'] },
  rise: { type: 'string', value: 'PERCENT', of: ['season'] },
  'easier-every': { type: 'string', value: 'WEEKS', of: ['season'] },
  'easier-drop': { type: 'string', value: 'PERCENT', of: ['season'] },
  'taper-weeks': { type: 'string', value: 'WEEKS', of: ['season'] },
  'taper-drop': { type: 'string', value: 'PERCENT', of: ['season'] },
  'upkeep-from': { type: 'string', value: 'PHASE', of: ['season'] },
  'upkeep-sessions': { type: 'string', value: 'SESSIONS', of: ['season'] },
  'recovery-weeks': { type: 'string', value: 'WEEKS', of: ['season'] },
  phases: { type: 'string', value: 'PHASE[:WEEKS],…', of: ['season'] },
  events: { type: 'string', value: 'DATE:EVENT,…', of: ['season'] },
  'by-hand': { type: 'string', value: 'DATE:HOURS[:REASON],…', of: ['season'] },
  'weeks-off': { type: 'string', value: 'WEEKS', of: ['season'] },
  'longest-run': { type: 'string', value: 'MINUTES', of: ['season'] },
  method: { type: 'string', value: 'FILE', of: ['plan', 'season'] },
  roster: { type: 'string', value: 'FILE', of: ['plan'] },
  json: { type: 'boolean', value: '', of: ['plan', 'season'] },
  lang: { type: 'string', value: 'LANGUAGE', of: ['plan', 'season'] },
  help: { type: 'boolean', value: '', of: ['plan', 'season'] },
  version: { type: 'boolean', value: '', of: ['plan', 'season'] },
} as const satisfies Readonly<Record<string, OptionKind>>;

/** What the command can be asked for. */
export const commands = ['plan', 'season'] as const;
export type Command = (typeof commands)[number];

interface OptionKind {
  readonly type: 'string' | 'boolean';
  readonly value: string;
  readonly of: readonly Command[];
}

export type OptionName = keyof typeof allOptions;

/** Options that stand for a field of a request to the planner. */
export const requestFields = {
  hours: 'hours',
  phase: 'phase',
  level: 'level',
  event: 'event',
  'strength-cap': 'strengthCap',
} as const satisfies Partial<Record<OptionName, string>>;

/** The options of a command. */
export const optionsOf = (command: Command): readonly OptionName[] =>
  Object.entries<OptionKind>(allOptions).flatMap(([name, { of }]) =>
    isOptionName(name) && of.includes(command) ? [name] : [],
  );

export function isOptionName(name: string): name is OptionName {
  return Object.hasOwn(allOptions, name);
}

/** What the option is like, whichever it is. */
export const optionKind = (name: OptionName): OptionKind => allOptions[name];
