import type { CellError } from '../sheet/errors.js';
import type { Words } from './words.js';

/**
 * Why a quantity has no value, fit for the middle of a sentence; a chain of causes is followed to its end.
 *
 * @param name says what a quantity is called: by its name in words where its method is known, else by its id.
 * @example 'the formula divides by zero'
 */
export function cellErrorReason(words: Words, error: CellError, name: (id: string) => string): string {
  const key = `cell-error.${error.code}`;
  switch (error.code) {
    case 'division-by-zero':
    case 'too-large':
      return words.say(key);
    case 'nothing-left':
      return words.say(key, { over: error.over });
    case 'not-a-number':
      if (error.operation === 'sainte-lague') return words.say('cell-error.not-rounded');
      if (error.operation === 'week') return words.say('cell-error.no-week');
      return words.say(key, { operation: error.operation });
    case 'unknown-name':
      return words.say(key, { name: error.name });
    case 'circle':
      return words.say(key, { path: error.path.map(name).join(words.arrow) });
    case 'depends-on':
      return words.say(key, { name: name(error.name), cause: cellErrorReason(words, error.cause, name) });
  }
}
