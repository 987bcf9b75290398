import type { RunningRequest } from '../../plan/running/wishes.js';
import type { Outcome } from '../../problem.js';
import { readRace } from '../../words/running/read-race.js';
import type { ConcretePage } from '../concrete/concrete-panel.js';
import { givenRequest } from '../concrete/given-request.js';

/** What a page tells of the runner: its property, and the race of its attribute. */
export function beginRunning({ given, text }: ConcretePage): Outcome<RunningRequest> {
  const told = givenRequest('running', given);
  if (!told.ok || text == null) return told;
  const race = readRace(text);
  return race
    ? { ok: true, value: { ...told.value, race } }
    : { ok: false, problems: [{ path: 'race', value: text, code: 'wrong-type', allowed: { expected: 'race' } }] };
}
