import type { Block } from '../../sheet/model.js';
import { withoutNoise } from '../../sheet/numbers.js';
import type { Method } from './document.js';
import { categoryQuantity } from './names.js';
import { apportion } from '../sessions/apportion.js';

export const minutesInAWeek = 7 * 24 * 60;

/**
 * The rows of the sheet that hold rounded minutes. The week's total becomes a whole number of steps (halves up), and
 * the categories share those steps by Sainte-Laguë's method; where some are held by hand, the others share the rest, by
 * their minutes or, where they have none, evenly. A negative category has no share, no week has more than
 * `minutesInAWeek`, and while anybody is left to share, nobody can hold more than the total: the block then fails.
 */
export function roundingBlock({ categories, tie_order, rounding: { step } }: Method): Block {
  const tieOrder = tie_order.map((id) => categories.findIndex((category) => category.id === id));
  return {
    id: 'sainte-lague',
    reads: categories.map(({ id }) => categoryQuantity(id, 'minutes')),
    writes: [...categories.map(({ id }) => categoryQuantity(id, 'rounded')), 'total_rounded'],
    compute: (minutes, held = []) => {
      const exact = sum(minutes);
      if (exact > minutesInAWeek || minutes.some((each) => each < 0)) return [];
      const isFree = minutes.map((_, index) => held[index] === undefined);
      const hasMinutes = minutes.some((each, index) => isFree[index] === true && each > 0);
      const free = minutes.map((each, index) => (isFree[index] !== true ? 0 : hasMinutes ? each : 1));
      const taken = sum(minutes.map((_, index) => held[index] ?? 0));
      const total = held[minutes.length] ?? wholeSteps(exact, step) * step;
      const steps = isFree.includes(true) ? wholeSteps(total - taken, step) : 0;
      if (steps < 0) return [];
      const units = apportion(free, steps, tieOrder);
      const rounded = units.map((count, index) => held[index] ?? count * step);
      return [...rounded, sum(rounded)];
    },
  };
}

const sum = (values: readonly number[]): number => values.reduce((total, each) => total + each, 0);

const wholeSteps = (minutes: number, step: number): number => Math.round(withoutNoise(minutes / step));
