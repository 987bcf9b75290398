const handingOver = ['calendar', 'table'] as const;
const planning = ['plan', 'season', 'running', 'strength', 'checks', ...handingOver] as const;

/** What the command can be asked for. */
export const commands = [...planning, 'basis'] as const;
export type Command = (typeof commands)[number];

/** Of the others the answer is a file already. */
const inJson = ['plan', 'season', 'running', 'strength', 'checks', 'basis'] as const;

interface OptionKind {
  readonly type: 'string' | 'boolean';
  readonly value: string;
  readonly of: readonly Command[];
}

const ofOneWeek = ['plan', 'running', 'strength', 'checks', ...handingOver] as const;
const ofSeason = ['season', ...handingOver] as const;
const ofRuns = ['running', ...handingOver] as const;
const ofSets = ['strength', ...handingOver] as const;

/** Every option, in the order in which the help lists them; `value` is what stands for theirs, `of` the commands it is for. */
export const allOptions = {
  hours: { type: 'string', value: 'HOURS', of: planning },
  phase: { type: 'string', value: 'PHASE', of: ofOneWeek },
  date: { type: 'string', value: 'DATE', of: ofSeason },
  start: { type: 'string', value: 'DATE', of: ofSeason },
  weeks: { type: 'string', value: 'WEEKS', of: ofSeason },
  'most-hours': { type: 'string', value: 'HOURS', of: ofSeason },
  level: { type: 'string', value: 'LEVEL', of: planning },
  event: { type: 'string', value: 'EVENT', of: planning },
  'strength-cap': { type: 'string', value: 'MINUTES', of: planning },
  days: { type: 'string', value: 'MINUTES,…', of: ofOneWeek },
  'week-of': { type: 'string', value: 'DATE', of: handingOver },
  rise: { type: 'string', value: 'PERCENT', of: ofSeason },
  'easier-every': { type: 'string', value: 'WEEKS', of: ofSeason },
  'easier-drop': { type: 'string', value: 'PERCENT', of: ofSeason },
  'taper-weeks': { type: 'string', value: 'WEEKS', of: ofSeason },
  'taper-drop': { type: 'string', value: 'PERCENT', of: ofSeason },
  'upkeep-from': { type: 'string', value: 'PHASE', of: ofSeason },
  'upkeep-sessions': { type: 'string', value: 'SESSIONS', of: ofSeason },
  'recovery-weeks': { type: 'string', value: 'WEEKS', of: ofSeason },
  phases: { type: 'string', value: 'PHASE[:WEEKS],…', of: ofSeason },
  events: { type: 'string', value: 'DATE:EVENT,…', of: ofSeason },
  'by-hand': { type: 'string', value: 'DATE:HOURS[:REASON],…', of: ofSeason },
  'weeks-off': { type: 'string', value: 'WEEKS', of: ofSeason },
  'hours-before': { type: 'string', value: 'HOURS', of: ['checks'] },
  'longest-run': { type: 'string', value: 'MINUTES', of: [...ofSeason, 'checks'] },
  race: { type: 'string', value: 'DISTANCE=TIME', of: ofRuns },
  'race-date': { type: 'string', value: 'DATE', of: ofRuns },
  'threshold-pace': { type: 'string', value: 'TIME', of: ofRuns },
  unit: { type: 'string', value: 'UNIT', of: ofRuns },
  equipment: { type: 'string', value: 'EQUIPMENT,…', of: ofSets },
  minutes: { type: 'string', value: 'MINUTES', of: ofSets },
  form: { type: 'string', value: 'PATTERN=MOVEMENT,…', of: ofSets },
  lifted: { type: 'string', value: 'MOVEMENT:KILOGRAMSxREPETITIONS,…', of: ofSets },
  age: { type: 'string', value: 'YEARS', of: ['running', 'strength', 'checks'] },
  'highest-heart': { type: 'string', value: 'BEATS', of: ['running'] },
  'resting-heart': { type: 'string', value: 'BEATS', of: ['running'] },
  weight: { type: 'string', value: 'KILOGRAMS', of: ['running'] },
  loads: { type: 'string', value: 'LOAD,…;LOAD,…', of: ['checks'] },
  effort: { type: 'string', value: 'KIND=EFFORT,…', of: ['checks'] },
  answers: { type: 'string', value: 'ANSWER,…', of: ['checks'] },
  name: { type: 'string', value: 'TEXT', of: ['calendar'] },
  contact: { type: 'string', value: 'TEXT', of: ['calendar'] },
  at: { type: 'string', value: 'TIME', of: ['calendar'] },
  early: { type: 'string', value: 'TIME', of: ['calendar'] },
  method: { type: 'string', value: 'FILE', of: commands },
  roster: { type: 'string', value: 'FILE', of: ['plan'] },
  json: { type: 'boolean', value: '', of: inJson },
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
