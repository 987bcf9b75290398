import { checkQuantity, isOfChecks } from '../plan/checks/check-quantities.js';
import type { Method } from '../training/method/document.js';
import { categoryName } from './category-name.js';
import { quantityMeaning } from './quantity-meaning.js';
import { unitOfWeek } from './quantity-value.js';
import type { Words } from './words.js';

/** The name of a quantity in plain words, fit for the middle of a sentence: "strength, minutes a week". */
export function quantityName(words: Words, method: Method, id: string): string {
  if (isOfChecks(id)) return nameOfChecks(words, method, id);
  const meaning = quantityMeaning(method, id);
  switch (meaning.of) {
    case 'own':
      return words.text(meaning.own.name);
    case 'category':
      return words.say(`quantity-of.${meaning.measure}`, { kind: categoryName(words, method, meaning.category) });
    case 'split-share':
      return words.say('quantity-of.split-share', {
        kind: categoryName(words, method, meaning.category),
        split: words.text(meaning.split.name),
      });
    case 'split':
      return words.say('quantity-of.split', { split: words.text(meaning.split.name) });
    case 'notice':
      return words.say('quantity-of.notice', { rule: words.text(meaning.rule.name) });
    case 'choice':
      return words.say(`${meaning.kind}.${meaning.id}`);
    case 'week':
      // An id that means nothing here is shown as it is.
      return unitOfWeek.has(id) ? words.say(`quantity.${id}`) : id;
  }
}

/** A check by its name, a fact by what it counts. */
function nameOfChecks(words: Words, { checks }: Method, id: string): string {
  const own = checks?.list.find((check) => checkQuantity(check.id) === id)?.name;
  return own === undefined ? words.say(id.replace(':', '.')) : words.text(own);
}

/** What a rule calls its quantity in a sentence: the kind of training alone where its minutes are meant. */
export function shortQuantityName(words: Words, method: Method, id: string): string {
  const meaning = quantityMeaning(method, id);
  if (meaning.of === 'category' && meaning.measure === 'minutes') return categoryName(words, method, meaning.category);
  return quantityName(words, method, id);
}
