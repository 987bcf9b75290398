import type { PlanPart } from '../plan-part.js';
import { makeStrength } from './make-strength.js';
import { readStrength } from './read-strength.js';
import { strengthGround } from './strength-ground.js';

/** Fills the strength sessions of a plan, where a request says what there is to train with. */
export const strengthPart: PlanPart = {
  name: 'strength',
  read: (given, method) => {
    const ground = strengthGround(method);
    const read = readStrength(given, ground);
    if (!read.ok) return read;
    return { ok: true, value: (plan) => ({ ...plan, strength: makeStrength(plan, read.value, ground) }) };
  },
};
