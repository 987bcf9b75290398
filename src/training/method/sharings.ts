import type { Sharing } from '../../sheet/model.js';
import type { Method } from './document.js';
import type { CategoryId } from './ids.js';
import { categoryQuantity, splitShareQuantity } from './names.js';

/** The shares of a split, the shares in use, the minutes: what is fixed by hand the others make room for. */
export function sharingsOf({ categories, splits, gives_way = [] }: Method): Sharing[] {
  const sharing = (quantity: (id: CategoryId) => string): Sharing => ({
    members: categories.map(({ id }) => quantity(id)),
    givesWay: gives_way.map(quantity),
  });
  return [
    ...splits.map((split) => sharing((id) => splitShareQuantity(split.id, id))),
    sharing((id) => categoryQuantity(id, 'share')),
    sharing((id) => categoryQuantity(id, 'minutes')),
  ];
}
