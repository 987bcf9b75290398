import { builtInPlanner } from '../plan.js';
import { basisCommand } from './basis-command.js';
import { calendarCommand } from './calendar-command.js';
import { checksCommand } from './checks-command.js';
import { commandHelp, generalHelp } from './help.js';
import type { CliIo } from './io.js';
import { commands, type Command } from './options.js';
import { planCommand } from './plan-command.js';
import { readArguments, type Arguments, type ArgumentFault } from './read-arguments.js';
import { runningCommand } from './running-command.js';
import { seasonCommand } from './season-command.js';
import { exitCodes, problemLines, refuse, type Session } from './session.js';
import { loadSpeech, spokenLanguages, type Speech } from './speech.js';
import { strengthCommand } from './strength-command.js';
import { tableCommand } from './table-command.js';

/**
 * Runs the command.
 *
 * @param argv the arguments behind `weekwright`.
 * @returns the exit code: 0 done, 1 some lines of a roster were faulty, 2 nothing could be planned.
 */
export async function run(argv: readonly string[], io: CliIo): Promise<number> {
  const given = readArguments(argv);
  const speech = await loadSpeech(given.options.lang ?? 'en');
  if (given.options.help !== undefined) return answer(io, helpText(speech, given));
  const faults = [...given.faults, ...commandFaults(given)].map(({ key, values }) => speech.texts.say(key, values));
  const refusals = [...faults, ...languageProblems(speech, given)];
  if (refusals.length > 0) return refuse({ io }, refusals);
  if (given.options.version !== undefined) return answer(io, `${await io.version()}\n`);
  const command = knownCommand(given.command);
  if (command === undefined) return refuse({ io }, [generalHelp(speech).trimEnd()]);
  return carryOut[command]({ options: given.options, speech, io });
}

const carryOut: Readonly<Record<Command, (session: Session) => Promise<number>>> = {
  plan: planCommand,
  season: seasonCommand,
  running: runningCommand,
  strength: strengthCommand,
  checks: checksCommand,
  calendar: calendarCommand,
  table: tableCommand,
  basis: basisCommand,
};

function answer(io: CliIo, text: string): number {
  io.write(text);
  return exitCodes.done;
}

function helpText(speech: Speech, { command }: Arguments): string {
  const known = knownCommand(command);
  return known ? commandHelp(speech, builtInPlanner().method, known) : generalHelp(speech);
}

function commandFaults({ command }: Arguments): ArgumentFault[] {
  if (command === undefined || knownCommand(command)) return [];
  const allowed = commands.join(', ');
  return [{ key: 'fault.unknown-command', values: { given: JSON.stringify(command), allowed } }];
}

const knownCommand = (command: string | undefined): Command | undefined => commands.find((each) => each === command);

function languageProblems(speech: Speech, { options: { lang } }: Arguments): string[] {
  if (lang === undefined || spokenLanguages.includes(lang)) return [];
  const allowed = { choices: spokenLanguages };
  return problemLines(speech, [{ path: '--lang', value: lang, code: 'not-one-of', allowed }]);
}
