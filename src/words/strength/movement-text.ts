import { strengthGround } from '../../plan/strength/strength-ground.js';
import type { Method } from '../../training/method/document.js';
import type { Movement } from '../../training/method/strength-rules.js';
import type { Words } from '../words.js';

/** The movement with an id, of the library or of the coach. */
export function movementOf(method: Method, id: string): Movement {
  const found = strengthGround(method).movements.find((each) => each.id === id);
  if (!found) throw new Error(`there is no movement ${id}`);
  return found;
}

/** What a movement is called: "Goblet squat". */
export const movementName = (words: Words, method: Method, id: string): string =>
  words.text(movementOf(method, id).name);
