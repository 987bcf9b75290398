import type { Method } from '../training/method/document.js';
import { eventIds, levelIds, phaseIds } from '../training/method/ids.js';
import type { Values } from '../words/phrases.js';
import { optionNames, planOptions, type OptionName } from './options.js';
import { rosterColumns, rosterFields } from './roster-fields.js';
import { spokenLanguages, type Speech } from './speech.js';
import { textTable } from './text-table.js';

/** What `weekwright --help` shows. */
export function generalHelp({ texts }: Speech): string {
  const usage = ['weekwright plan [--hours HOURS] […]', 'weekwright --help', 'weekwright --version'];
  return page([
    texts.say('about'),
    listing(
      texts.say('heading.usage'),
      usage.map((line) => [line]),
    ),
    listing(texts.say('heading.commands'), [['plan', texts.say('command.plan')]]),
    texts.say('command.help'),
  ]);
}

/** What `weekwright plan --help` shows; ranges and starting values are those of the method. */
export function planHelp(speech: Speech, method: Method): string {
  const { texts } = speech;
  const options = optionNames.map((name) => [synopsis(name), optionText(speech, method, name)]);
  const usage = ['weekwright plan --hours 4 --phase build --level developing --event half-marathon'];
  return page([
    listing(
      texts.say('heading.usage'),
      [...usage, 'weekwright plan --roster FILE [--json]'].map((line) => [line]),
    ),
    listing(texts.say('heading.options'), options),
    texts.say('columns', { columns: rosterColumns.join(',') }),
    texts.say('ndjson', { fields: rosterFields.join(', ') }),
    texts.say('exit-codes'),
  ]);
}

const page = (paragraphs: readonly string[]): string => `${paragraphs.join('\n\n')}\n`;

function listing(heading: string, rows: readonly (readonly string[])[]): string {
  const indented = textTable(rows, ['left', 'left']).replace(/^/gm, '  ');
  return `${heading}\n${indented}`;
}

const synopsis = (name: OptionName): string => `--${name} ${planOptions[name].value}`.trimEnd();

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
  if (name !== 'hours' && name !== 'strength-cap') return {};
  const { least, most, start } = range[name];
  return { least, most, start };
}
