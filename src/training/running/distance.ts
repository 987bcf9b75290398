import type { RunPart } from './run-session.js';
import type { Span } from './span.js';

/** Speeds in metres a minute. */
export interface Speeds {
  /** At the pace of the work. */
  readonly work: Span;
  /** At the pace of everything else. */
  readonly easy: Span;
}

/** Metres of a run, at the slower and at the faster end of its paces. */
export function metresOf(parts: readonly RunPart[], { work, easy }: Speeds): Span {
  const at = (end: keyof Span): number =>
    parts.reduce((sum, { kind, minutes, times }) => sum + minutes * times * (kind === 'work' ? work : easy)[end], 0);
  return { from: at('from'), to: at('to') };
}

/** Metres a minute of a pace in seconds a kilometre, and the other way round. */
export const speedOf = (pace: number): number => 60_000 / pace;
