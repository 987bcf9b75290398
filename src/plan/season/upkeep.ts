import type { Method } from '../../training/method/document.js';
import type { PhaseId } from '../../training/method/ids.js';
import type { UpkeepId } from '../../training/method/season-rules.js';
import type { SeasonWishes } from './wishes.js';

const keptUp: Readonly<Record<UpkeepId, readonly PhaseId[]>> = {
  never: [],
  taper: ['taper'],
  peak: ['peak', 'taper'],
};

/** The most minutes of strength in a week of a phase, where a season only keeps it up: typical sessions; 0 for no limit. */
export function upkeepMinutes(
  { categories }: Method,
  { upkeepFrom, upkeepSessions }: Pick<SeasonWishes, 'upkeepFrom' | 'upkeepSessions'>,
  phase: PhaseId,
): number {
  const strength = categories.find(({ id }) => id === 'strength');
  return strength && keptUp[upkeepFrom].includes(phase) ? upkeepSessions * strength.session.typical : 0;
}
