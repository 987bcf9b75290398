import { categoryIds } from '../../training/method/ids.js';
import type { RunningKind, RunningRules } from '../../training/method/running-rules.js';
import { metresOf } from '../../training/running/distance.js';
import { kilocalories, runningMultiple } from '../../training/running/energy.js';
import { runParts, type RunPart } from '../../training/running/run-session.js';
import type { Span } from '../../training/running/span.js';
import type { Plan } from '../document.js';
import { sessionsOf, type PlannedSession } from '../sessions-of.js';
import type { ConcreteSession, RunningBasis } from './document.js';
import { speedsOf } from './guides.js';

/** What sessions are made concrete with. */
export interface Known {
  readonly rules: RunningRules;
  readonly basis: RunningBasis | null;
  /** In kilograms. */
  readonly weight: number | null;
}

/** Every session of the week: what a run is made of, how far it goes, and what it takes. */
export const concreteSessions = (plan: Plan, known: Known): readonly ConcreteSession[] =>
  sessionsOf(plan, categoryIds).map((session) => {
    const kind = known.rules.kinds.find(({ id }) => id === session.category);
    return kind ? concreteRun(session, kind, known) : otherSession(session, known);
  });

function concreteRun(session: PlannedSession, kind: RunningKind, known: Known): ConcreteSession {
  const parts = runParts(session.minutes, kind);
  const easy = easyKind(known.rules);
  if (!known.basis) return { ...session, parts, metres: null, energy: null };
  const speeds = { work: speedsOf(known.basis, kind), easy: speedsOf(known.basis, easy) };
  return { ...session, parts, metres: metresOf(parts, speeds), energy: runningEnergy(parts, speeds, known.weight) };
}

/** Warm-up, rests and cool-down are run as slow runs are. */
function easyKind({ kinds }: RunningRules): RunningKind {
  const slow = kinds.find(({ id }) => id === 'slow');
  if (!slow) throw new Error('a method has every kind of running');
  return slow;
}

function runningEnergy(
  parts: readonly RunPart[],
  speeds: Parameters<typeof metresOf>[1],
  weight: number | null,
): Span | null {
  if (weight === null) return null;
  const at = (end: keyof Span): number =>
    parts.reduce((sum, { kind, minutes, times }) => {
      const multiple = runningMultiple((kind === 'work' ? speeds.work : speeds.easy)[end]);
      return sum + kilocalories(multiple, { minutes: minutes * times, kilograms: weight });
    }, 0);
  return { from: at('from'), to: at('to') };
}

function otherSession(session: PlannedSession, { rules: { energy }, weight }: Known): ConcreteSession {
  const { least, most } = session.category === 'strength' ? energy.strength : energy.cross;
  const at = (multiple: number, kilograms: number): number =>
    kilocalories(multiple, { minutes: session.minutes, kilograms });
  return {
    ...session,
    parts: [],
    metres: null,
    energy: weight === null ? null : { from: at(least, weight), to: at(most, weight) },
  };
}
