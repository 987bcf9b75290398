import type { Method } from '../../training/method/document.js';
import type { Pace } from '../../training/season/season-hours.js';
import { seasonRules } from './season-ground.js';
import type { SeasonWishes } from './wishes.js';

/** How fast and how far the hours of a season may go. */
export function paceOf(method: Method, wishes: SeasonWishes): Pace {
  const { recovery, way_back } = seasonRules(method);
  return {
    // Who runs more than is wanted at most begins at the most.
    start: Math.min(wishes.hours, wishes.mostHours) * 60,
    weeksOff: wishes.weeksOff,
    most: wishes.mostHours * 60,
    least: method.inputs.weekly_hours.least * 60,
    step: method.rounding.step,
    rise: wishes.rise,
    easierDrop: wishes.easierDrop,
    taper: { weeks: wishes.taperWeeks, drop: wishes.taperDrop },
    recoveryShare: recovery.share,
    wayBack: { offShare: way_back.off_share, steps: way_back.steps },
  };
}
