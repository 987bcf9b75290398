import { builtInMethod } from '../method/built-in.js';
import type { Method } from '../method/document.js';
import { byCategory, type ByCategory, type CategoryId } from '../method/ids.js';

/** How hard a usual session of each kind feels, 0 to 10; as in the built-in method where a method leaves it out. */
export const effortsOf = (method: Pick<Method, 'categories'>): ByCategory<number> =>
  byCategory((id) => effortIn(method, id) ?? effortIn(builtInMethod, id) ?? 0);

const effortIn = ({ categories }: Pick<Method, 'categories'>, category: CategoryId): number | undefined =>
  categories.find(({ id }) => id === category)?.effort;
