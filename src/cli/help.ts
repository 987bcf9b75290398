import { distanceUnits } from '../plan/running/wishes.js';
import { strengthGround } from '../plan/strength/strength-ground.js';
import { answerIds } from '../training/checks/screening.js';
import type { Method } from '../training/method/document.js';
import { eventIds, levelIds, phaseIds } from '../training/method/ids.js';
import { patternIds } from '../training/method/strength-rules.js';
import { optionValues } from './option-values.js';
import { commands, optionKind, optionsOf, type Command, type OptionName } from './options.js';
import { page, under } from './paragraphs.js';
import { rosterColumns, rosterFields } from './roster-fields.js';
import type { Speech } from './speech.js';
import { textTable } from './text-table.js';

/** What `weekwright --help` shows. */
export function generalHelp({ texts }: Speech): string {
  const usage = [
    'weekwright plan [--hours HOURS] […]',
    'weekwright season --date DATE [--weeks WEEKS] […]',
    'weekwright running [--race DISTANCE=TIME] […]',
    'weekwright strength [--equipment EQUIPMENT,…] […]',
    'weekwright checks [--days MINUTES,…] […]',
    'weekwright calendar --week-of DATE [--at TIME] […]',
    'weekwright table --week-of DATE […]',
    'weekwright basis [--method FILE] […]',
    'weekwright --help',
    'weekwright --version',
  ];
  return page([
    texts.say('about'),
    listing(
      texts.say('heading.usage'),
      usage.map((line) => [line]),
    ),
    listing(
      texts.say('heading.commands'),
      commands.map((command) => [command, texts.say(`command.${command}`)]),
    ),
    texts.say('command.help'),
  ]);
}

const usageOf: Readonly<Record<Command, readonly string[]>> = {
  plan: [
    'weekwright plan --hours 4 --phase build --level developing --event half-marathon',
    'weekwright plan --roster FILE [--json]',
  ],
  season: ['weekwright season --hours 4 --most-hours 6 --event half-marathon --date 2027-04-11 --weeks 16'],
  running: ['weekwright running --hours 4 --race 10k=45:00 --age 40 --weight 70'],
  strength: ['weekwright strength --hours 4 --equipment band,dumbbells --lifted goblet-squat:20x8'],
  checks: ['weekwright checks --hours 4 --days 60,0,45,60,0,90,120 --age 45 --hours-before 3.5 --longest-run 60'],
  calendar: [
    'weekwright calendar --hours 4 --days 60,0,45,60,0,90,120 --week-of 2027-01-11 --at 18:00 > week.ics',
    'weekwright calendar --hours 4 --event half-marathon --date 2027-04-11 --weeks 16 > season.ics',
  ],
  table: [
    'weekwright table --hours 4 --days 60,0,45,60,0,90,120 --week-of 2027-01-11 > week.csv',
    'weekwright table --hours 4 --event half-marathon --date 2027-04-11 --weeks 16 > season.csv',
  ],
  basis: ['weekwright basis [--method FILE] [--json]'],
};

/** What `weekwright plan --help` shows, or that of another command; ranges and starting values are those of the method. */
export function commandHelp(speech: Speech, method: Method, command: Command): string {
  const { texts } = speech;
  return page([
    listing(
      texts.say('heading.usage'),
      usageOf[command].map((line) => [line]),
    ),
    listing(
      texts.say('heading.options'),
      optionsOf(command).map((name) => [synopsis(name), optionText(speech, method, { command, name })]),
    ),
    ...moreOf[command](speech, method),
    texts.say('exit-codes'),
  ]);
}

const moreOf: Readonly<Record<Command, (speech: Speech, method: Method) => readonly string[]>> = {
  plan: ({ texts }) => [
    texts.say('columns', { columns: rosterColumns.join(',') }),
    texts.say('ndjson', { fields: rosterFields.join(', ') }),
  ],
  season: ({ texts }) => [texts.say('season.dates')],
  running: ({ texts }) => [texts.say('running.about')],
  strength: movementHelp,
  checks: ({ words, texts }) => [
    listing(
      texts.say('heading.answers'),
      answerIds.map((id) => [id, words.say(`screening.${id}`)]),
    ),
    texts.say('checks.about'),
  ],
  calendar: ({ texts }) => [texts.say('handout.about'), texts.say('calendar.about'), texts.say('season.dates')],
  table: ({ texts }) => [texts.say('handout.about'), texts.say('table.about'), texts.say('season.dates')],
  basis: () => [],
};

/** Who chooses a form, or tells of a set, has to know what it is called here. */
function movementHelp({ texts }: Speech, method: Method): readonly string[] {
  const { movements } = strengthGround(method);
  const rows = patternIds.map((pattern) => [
    pattern,
    movements.flatMap((each) => (each.pattern === pattern ? [each.id] : [])).join(', '),
  ]);
  const loaded = movements.filter((each) => each.loaded).map(({ id }) => id);
  return [listing(texts.say('heading.movements'), rows), texts.say('strength.about', { movements: loaded.join(', ') })];
}

const listing = (heading: string, rows: readonly (readonly string[])[]): string =>
  under(heading, textTable(rows, ['left', 'left']).replace(/^/gm, '  '));

const synopsis = (name: OptionName): string => `--${name} ${optionKind(name).value}`.trimEnd();

interface OptionOf {
  readonly command: Command;
  readonly name: OptionName;
}

function optionText(speech: Speech, method: Method, { command, name }: OptionOf): string {
  const { season_phase: phase, athlete_level: level, target_event: event } = method.inputs;
  const choices: Partial<Record<OptionName, { readonly ids: readonly string[]; readonly start: string }>> = {
    phase: { ids: phaseIds, start: phase.start },
    level: { ids: levelIds, start: level.start },
    event: { ids: eventIds, start: event.start },
    unit: { ids: distanceUnits, start: 'km' },
  };
  const choice = choices[name];
  if (choice) return speech.texts.say('option.choice', { choices: choice.ids.join(', '), start: choice.start });
  // The same minutes, of other days before.
  const key = command === 'checks' && name === 'longest-run' ? 'option.longest-run.checks' : `option.${name}`;
  return speech.texts.say(key, optionValues(speech, method)[name]);
}
