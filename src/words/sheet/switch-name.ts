import type { Method } from '../../training/method/document.js';
import { splitQuantity } from '../../training/method/names.js';
import { quantityName } from '../quantity-names.js';
import type { Words } from '../words.js';

/** What starts or stops at a turning point, in quotation marks: a rule by its name, a split as such. */
export function switchName(words: Words, method: Method, id: string): string {
  const { rules, splits } = method;
  const rule = rules.find((each) => each.id === id);
  if (rule) return words.say('sheet.rule', { name: words.capital(words.text(rule.name)) });
  const check = /^!?(check:.*)$/.exec(id)?.[1];
  if (check !== undefined)
    return words.say(id.startsWith('!') ? 'sheet.check.caution' : 'sheet.check.look', {
      name: quantityName(words, method, check),
    });
  const split = splits.find((each) => splitQuantity(each.id) === id);
  return split ? words.say('sheet.split', { split: words.text(split.name) }) : id;
}
