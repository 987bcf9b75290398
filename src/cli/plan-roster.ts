import type { Plan, Planner } from '../plan.js';
import { withDayName } from './days.js';
import { printable } from './printable.js';
import { readRoster } from './read-roster.js';
import type { RosterEntry, RosterFault } from './roster.js';
import { rosterCsv, rosterNdjson, type NamedPlan } from './roster-output.js';
import { exitCodes, problemLines, type Session } from './session.js';

/** A roster's text, and the fields of the command line that stand in for what a line leaves out. */
export interface RosterRequest {
  readonly text: string;
  readonly defaults: Readonly<Record<string, unknown>>;
}

/** Plans for every sound line, in the roster's order; every fault of the others is told. */
export function planRoster(session: Session, planner: Planner, { text, defaults }: RosterRequest): number {
  const { io, options } = session;
  const roster = readRoster(text);
  const plans: NamedPlan[] = [];
  const faults: RosterFault[] = [...roster.faults];
  for (const entry of roster.entries) {
    const outcome = planner.plan({ ...defaults, ...entry.request });
    if (outcome.ok) plans.push(named(entry, outcome.value));
    else faults.push(...outcome.problems.map((problem) => ({ ...faultAt(entry), problem: entry.asMet(problem) })));
  }
  const isRefused = plans.length === 0 && faults.length > 0;
  if (!isRefused) io.write(options.json === undefined ? rosterCsv(plans) : rosterNdjson(plans));
  if (faults.length === 0) return exitCodes.done;
  io.writeError(printable(faultText(session, faults)));
  return isRefused ? exitCodes.refused : exitCodes.faultyLines;
}

const named = ({ name }: RosterEntry, plan: Plan): NamedPlan => ({ name, plan });

const faultAt = ({ line, name }: RosterEntry): Pick<RosterFault, 'line' | 'name'> => ({ line, name });

function faultText({ speech }: Session, faults: readonly RosterFault[]): string {
  const { texts, words } = speech;
  const nameOf = (path: string): string => (path === '' ? texts.say('roster.whole-line') : withDayName(words, path));
  const lines = faults
    .toSorted((a, b) => a.line - b.line)
    .flatMap((fault) => {
      const text =
        'problem' in fault ? problemLines(speech, [fault.problem], nameOf) : [texts.say(fault.key, fault.values)];
      const key = fault.name === '' ? 'roster.line' : 'roster.named-line';
      return text.map((each) => texts.say(key, { line: fault.line, name: fault.name, text: each }));
    });
  return `${lines.join('\n')}\n`;
}
