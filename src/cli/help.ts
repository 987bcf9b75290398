import type { Method } from '../training/method/document.js';
import { eventIds, levelIds, phaseIds } from '../training/method/ids.js';
import { seasonPhaseIds, upkeepIds } from '../training/method/season-rules.js';
import { byHandReasons } from '../plan/season/wishes.js';
import type { Values } from '../words/phrases.js';
import { optionKind, optionsOf, type Command, type OptionName } from './options.js';
import { rosterColumns, rosterFields } from './roster-fields.js';
import { spokenLanguages, type Speech } from './speech.js';
import { textTable } from './text-table.js';

/** What `weekwright --help` shows. */
export function generalHelp({ texts }: Speech): string {
  const usage = [
    'weekwright plan [--hours HOURS] […]',
    'weekwright season --date DATE [--weeks WEEKS] […]',
    'weekwright --help',
    'weekwright --version',
  ];
  return page([
    texts.say('about'),
    listing(
      texts.say('heading.usage'),
      usage.map((line) => [line]),
    ),
    listing(texts.say('heading.commands'), [
      ['plan', texts.say('command.plan')],
      ['season', texts.say('command.season')],
    ]),
    texts.say('command.help'),
  ]);
}

const usageOf: Readonly<Record<Command, readonly string[]>> = {
  plan: [
    'weekwright plan --hours 4 --phase build --level developing --event half-marathon',
    'weekwright plan --roster FILE [--json]',
  ],
  season: ['weekwright season --hours 4 --most-hours 6 --event half-marathon --date 2027-04-11 --weeks 16'],
};

/** What `weekwright plan --help` shows, or that of another command; ranges and starting values are those of the method. */
export function commandHelp(speech: Speech, method: Method, command: Command): string {
  const { texts } = speech;
  const options = optionsOf(command).map((name) => [synopsis(name), optionText(speech, method, name)]);
  const ofRoster = [
    texts.say('columns', { columns: rosterColumns.join(',') }),
    texts.say('ndjson', { fields: rosterFields.join(', ') }),
  ];
  return page([
    listing(
      texts.say('heading.usage'),
      usageOf[command].map((line) => [line]),
    ),
    listing(texts.say('heading.options'), options),
    ...(command === 'plan' ? ofRoster : [texts.say('season.dates')]),
    texts.say('exit-codes'),
  ]);
}

const page = (paragraphs: readonly string[]): string => `${paragraphs.join('\n\n')}\n`;

function listing(heading: string, rows: readonly (readonly string[])[]): string {
  const indented = textTable(rows, ['left', 'left']).replace(/^/gm, '  ');
  return `${heading}\n${indented}`;
}

const synopsis = (name: OptionName): string => `--${name} ${optionKind(name).value}`.trimEnd();

const choices: Readonly<Partial<Record<OptionName, readonly string[]>>> = {
  phase: phaseIds,
  level: levelIds,
  event: eventIds,
};

function optionText({ words, texts }: Speech, { inputs }: Method, name: OptionName): string {
  const start: Partial<Record<OptionName, string>> = {
    phase: inputs.season_phase.start,
    level: inputs.athlete_level.start,
    event: inputs.target_event.start,
  };
  const ids = choices[name];
  if (ids) return texts.say('option.choice', { choices: ids.join(', '), start: start[name] ?? '' });
  return texts.say(`option.${name}`, valuesFor(name, inputs, words.alternatives(spokenLanguages)));
}

function valuesFor(name: OptionName, inputs: Method['inputs'], languages: string): Values {
  const range = { hours: inputs.weekly_hours, 'strength-cap': inputs.strength_cap };
  if (name === 'lang') return { choices: languages };
  if (name === 'upkeep-from') return { choices: upkeepIds.join(', ') };
  if (name === 'phases') return { choices: seasonPhaseIds.join(', ') };
  if (name === 'events') return { choices: eventIds.join(', ') };
  if (name === 'by-hand') return { choices: byHandReasons.join(', ') };
  if (name !== 'hours' && name !== 'strength-cap') return {};
  const { least, most, start } = range[name];
  return { least, most, start };
}
