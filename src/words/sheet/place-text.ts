import type { InputQuantity } from '../../sheet/model.js';
import type { Solution } from '../../sheet/explore/solutions.js';
import type { Method } from '../../training/method/document.js';
import { quantityValue } from '../quantity-value.js';
import type { Words } from '../words.js';

/** Where on an input's range something is: "5 hours", "4 hours 52.5 minutes to just under 5 hours". */
export function placeText(words: Words, method: Method, { input, solution }: PlaceOn): string {
  const text = (value: number): string => quantityValue(words, method, { id: input.id, value });
  const { from, to, includesFrom, includesTo } = solution;
  if (from === to) return text(from);
  const key = `sheet.place.${includesFrom ? 'from' : 'above'}-${includesTo ? 'to' : 'under'}`;
  return words.say(key, { from: text(from), to: text(to) });
}

export interface PlaceOn {
  readonly input: Pick<InputQuantity, 'id'>;
  readonly solution: Solution;
}
