const planning = ['plan', 'season', 'running', 'strength', 'checks'] as const;

/** What the command can be asked for. */
export const commands = [...planning, 'basis'] as const;
export type Command = (typeof commands)[number];

interface OptionKind {
  readonly type: 'string' | 'boolean';
  readonly value: string;
  readonly of: readonly Command[];
}

const ofOneWeek = ['plan', 'running', 'strength', 'checks'] as const;

/** Every option, in the order in which the help lists them; `value` is what stands for theirs, `of` the commands it is for. */
export const allOptions = {
  hours: { type: 'string', value: 'HOURS', of: planning },
  phase: { type: 'string', value: 'PHASE', of: ofOneWeek },
  date: { type: 'string', value: 'DATE', of: ['season'] },
  start: { type: 'string', value: 'DATE', of: ['season'] },
  weeks: { type: 'string', value: 'WEEKS', of: ['season'] },
  'most-hours': { type: 'string', value: 'HOURS', of: ['season'] },
  level: { type: 'string', value: 'LEVEL', of: planning },
  event: { type: 'string', value: 'EVENT', of: planning },
  'strength-cap': { type: 'string', value: 'MINUTES', of: planning },
  days: { type: 'string', value: 'MINUTES,…', of: ofOneWeek },
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
  'hours-before': { type: 'string', value: 'HOURS', of: ['checks'] },
  'longest-run': { type: 'string', value: 'MINUTES', of: ['season', 'checks'] },
  race: { type: 'string', value: 'DISTANCE=TIME', of: ['running'] },
  'race-date': { type: 'string', value: 'DATE', of: ['running'] },
  'threshold-pace': { type: 'string', value: 'TIME', of: ['running'] },
  unit: { type: 'string', value: 'UNIT', of: ['running'] },
  equipment: { type: 'string', value: 'EQUIPMENT,…', of: ['strength'] },
  minutes: { type: 'string', value: 'MINUTES', of: ['strength'] },
  form: { type: 'string', value: 'PATTERN=MOVEMENT,…', of: ['strength'] },
  lifted: { type: 'string', value: 'MOVEMENT:KILOGRAMSxREPETITIONS,…', of: ['strength'] },
  age: { type: 'string', value: 'YEARS', of: ['running', 'strength', 'checks'] },
  'highest-heart': { type: 'string', value: 'BEATS', of: ['running'] },
  'resting-heart': { type: 'string', value: 'BEATS', of: ['running'] },
  weight: { type: 'string', value: 'KILOGRAMS', of: ['running'] },
  loads: { type: 'string', value: 'LOAD,…;LOAD,…', of: ['checks'] },
  effort: { type: 'string', value: 'KIND=EFFORT,…', of: ['checks'] },
  answers: { type: 'string', value: 'ANSWER,…', of: ['checks'] },
  method: { type: 'string', value: 'FILE', of: commands },
  roster: { type: 'string', value: 'FILE', of: ['plan'] },
  json: { type: 'boolean', value: '', of: commands },
  lang: { type: 'string', value: 'LANGUAGE', of: commands },
  help: { type: 'boolean', value: '', of: commands },
  version: { type: 'boolean', value: '', of: commands },
} as const satisfies Readonly<Record<string, OptionKind>>;

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
