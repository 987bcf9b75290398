import type { RunningRequest } from '../../plan/running/wishes.js';
import type { Outcome } from '../../problem.js';
import { readRace } from '../../words/running/read-race.js';
import type { ConcretePage } from '../concrete/concrete-panel.js';
import { isPlainObject } from '../is-plain-object.js';

/** What a page tells of the runner: its property, and the race of its attribute. */
export function beginRunning({ given, text }: ConcretePage): Outcome<RunningRequest> {
  if (given != null && !isPlainObject(given))
    return {
      ok: false,
      problems: [{ path: 'running', value: typeof given, code: 'wrong-type', allowed: { expected: 'object' } }],
    };
  const told: RunningRequest = { ...given };
  if (text == null) return { ok: true, value: told };
  const race = readRace(text);
  return race
    ? { ok: true, value: { ...told, race } }
    : { ok: false, problems: [{ path: 'race', value: text, code: 'wrong-type', allowed: { expected: 'race' } }] };
}
