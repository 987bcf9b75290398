import { eventIds, levelIds, phaseIds } from '../training/method/ids.js';
import type { PlanInputs } from './document.js';

/** The quantity of each input. */
export const inputQuantities: Readonly<Record<keyof PlanInputs, string>> = {
  hours: 'weekly_hours',
  phase: 'season_phase',
  level: 'athlete_level',
  event: 'target_event',
  strengthCap: 'strength_cap',
};

/** The names of the inputs. */
export const inputNames = [
  'hours',
  'phase',
  'level',
  'event',
  'strengthCap',
] as const satisfies readonly (keyof PlanInputs)[];

/** The inputs as the sheet holds them: a choice is its place in the list of choices. */
export function inputValues({ hours, phase, level, event, strengthCap }: PlanInputs): Readonly<Record<string, number>> {
  return {
    weekly_hours: hours,
    season_phase: phaseIds.indexOf(phase),
    athlete_level: levelIds.indexOf(level),
    target_event: eventIds.indexOf(event),
    strength_cap: strengthCap,
  };
}
