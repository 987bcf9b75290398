import type { PlanInputs } from '../document.js';
import { eventIds, levelIds, phaseIds } from '../../training/method/ids.js';

/** The inputs that set one quantity to a value; null where it is no input, or the value none of its choices. */
export function requestOf(quantity: string, value: number): Partial<PlanInputs> | null {
  switch (quantity) {
    case 'weekly_hours':
      return { hours: value };
    case 'strength_cap':
      return { strengthCap: value };
    case 'season_phase':
      return choice('phase', phaseIds[value]);
    case 'athlete_level':
      return choice('level', levelIds[value]);
    case 'target_event':
      return choice('event', eventIds[value]);
    default:
      return null;
  }
}

const choice = (name: keyof PlanInputs, id: string | undefined): Partial<PlanInputs> | null =>
  id === undefined ? null : { [name]: id };
