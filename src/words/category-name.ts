import type { Method } from '../training/method/document.js';
import type { CategoryId } from '../training/method/ids.js';
import type { Words } from './words.js';

/** The name of a kind of training inside a sentence: "slow running"; a coach's own name as the coach writes it. */
export function categoryName(words: Words, method: Method, id: CategoryId): string {
  const category = method.categories.find((candidate) => candidate.id === id);
  return words.text(category?.name ?? { key: `category.${id}` });
}

/** The same at the beginning of a line: "Slow running". */
export function categoryTitle(words: Words, method: Method, id: CategoryId): string {
  return words.capital(categoryName(words, method, id));
}
