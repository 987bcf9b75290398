import type { Block } from '../../sheet/model.js';
import { withoutNoise } from '../../sheet/numbers.js';
import type { Method } from './document.js';
import { categoryQuantity } from './names.js';
import { apportion } from '../sessions/apportion.js';

export const minutesInAWeek = 7 * 24 * 60;

/**
 * The rows of the sheet that hold rounded minutes. The week's total becomes a whole number of steps (halves up), and
 * the categories share those steps by Sainte-Laguë's method. A negative category has no share, and no week has more than
 * `minutesInAWeek`: the block then fails.
 */
export function roundingBlock({ categories, tie_order, rounding: { step } }: Method): Block {
  const tieOrder = tie_order.map((id) => categories.findIndex((category) => category.id === id));
  return {
    id: 'sainte-lague',
    reads: categories.map(({ id }) => categoryQuantity(id, 'minutes')),
    writes: [...categories.map(({ id }) => categoryQuantity(id, 'rounded')), 'total_rounded'],
    compute: (minutes) => {
      const total = minutes.reduce((sum, each) => sum + each, 0);
      if (total > minutesInAWeek || minutes.some((each) => each < 0)) return [];
      const steps = Math.round(withoutNoise(total / step));
      return [...apportion(minutes, steps, tieOrder).map((units) => units * step), steps * step];
    },
  };
}
