import { fieldIds, type Field, type Vocabulary } from '../../exchange/record/mapping.js';
import type { Method } from '../../training/method/document.js';
import { byCategory } from '../../training/method/ids.js';
import { categoryName } from '../../words/category-name.js';
import type { Words } from '../../words/words.js';

/** By which words tables are understood: those of the language, the coach's own, and the ids that our files have. */
export function vocabularyOf(words: Words, method: Method): Vocabulary {
  const list = (key: string): string[] =>
    words
      .say(key)
      .split(',')
      .map((word) => word.trim());
  const ofFields = fieldIds.map((id): [Field, readonly string[]] => [id, [...list(`record.words.${id}`), id]]);
  return {
    fields: Object.fromEntries(ofFields) as Record<Field, readonly string[]>,
    kinds: byCategory((id) => [categoryName(words, method, id), ...list(`record.words.${id}`), id]),
  };
}
