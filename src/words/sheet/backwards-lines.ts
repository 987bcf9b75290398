import type { Nearest } from '../../sheet/explore/nearest.js';
import type { WorkedBack } from '../../sheet/explore/work-backwards.js';
import type { InputQuantity } from '../../sheet/model.js';
import type { Method } from '../../training/method/document.js';
import { quantityName } from '../quantity-names.js';
import { quantityValue } from '../quantity-value.js';
import type { Words } from '../words.js';
import { placeText } from './place-text.js';
import { switchName } from './switch-name.js';

/** A question worked backwards, and what came of it. */
export interface Answer {
  readonly input: Pick<InputQuantity, 'id'>;
  readonly quantity: string;
  readonly target: number;
  readonly result: WorkedBack;
}

/** The answer in sentences: where the goal is reached or, where it is not, what comes nearest and why. */
export function backwardsLines(words: Words, method: Method, answer: Answer): readonly string[] {
  const { input, quantity, target, result } = answer;
  const { solutions, nearest, failsSomewhere } = result;
  const value = (id: string, amount: number): string => quantityValue(words, method, { id, value: amount });
  const named = {
    name: words.capital(quantityName(words, method, quantity)),
    input: quantityName(words, method, input.id),
    target: value(quantity, target),
  };
  const fails = failsSomewhere ? [words.say('sheet.back.fails', named)] : [];
  if (solutions.length > 0) {
    const places = solutions.map((solution) => placeText(words, method, { input, solution }));
    return [words.say('sheet.back.found', { ...named, places: words.alternatives(places) }), ...fails];
  }
  if (!nearest) return [words.say('sheet.back.nowhere', named)];
  const near = { ...named, value: value(quantity, nearest.value), at: value(input.id, nearest.at) };
  const key = nearest.isReached ? 'sheet.back.nearest' : 'sheet.back.beside';
  return [words.say(key, near), because(words, method, { ...answer, nearest }), ...fails];
}

/** Why nothing comes nearer. */
function because(words: Words, method: Method, { input, quantity, nearest }: Answer & { nearest: Nearest }): string {
  const reason = nearest.because;
  const names = 'switches' in reason ? reason.switches.map((id) => switchName(words, method, id)) : [];
  const value = (amount: number): string => quantityValue(words, method, { id: quantity, value: amount });
  const values = {
    input: quantityName(words, method, input.id),
    name: quantityName(words, method, quantity),
    rules: words.list(names),
    ...(reason.kind === 'jump' && { before: value(reason.before), after: value(reason.after) }),
  };
  const isNamed = names.length > 0 ? '-by-rule' : '';
  return words.say(`sheet.because.${reason.kind}${isNamed}`, values);
}
