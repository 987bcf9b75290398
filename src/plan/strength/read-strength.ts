import type { Outcome, Problem } from '../../problem.js';
import { duplicate, repeated } from '../../training/method/duplicates.js';
import { equipmentIds, patternIds, type PatternId } from '../../training/method/strength-rules.js';
import { between, list, object, oneOf, orNull, readAs, whole, type Reader } from '../fields.js';
import type { StrengthGround } from './strength-ground.js';
import { strengthLimits, type LiftedSet, type StrengthWishes } from './wishes.js';

const { minutes, kilograms, age } = strengthLimits;

/**
 * Reads what a request says of strength, and fills in the method's usual equipment.
 *
 * @returns the wishes, or every problem with its path (`strength.lifted[0].kilograms`), the value given and what is
 *   allowed.
 */
export function readStrength(given: unknown, ground: StrengthGround): Outcome<StrengthWishes> {
  const problems: Problem[] = [];
  const wishes = readAs(strength(ground), given, problems);
  if (wishes && problems.length === 0) problems.push(...doubles(wishes));
  if (wishes && problems.length === 0) return { ok: true, value: wishes };
  return { ok: false, problems: problems.map(inStrength) };
}

const strength = (ground: StrengthGround): Reader<StrengthWishes> =>
  object(({ take }) => ({
    equipment: take('equipment', list(oneOf(equipmentIds), equipmentIds.length)) ?? ground.rules.equipment,
    minutes: take('minutes', orNull(whole(minutes.least, minutes.most))) ?? null,
    forms: take('forms', forms(ground)) ?? {},
    lifted: take('lifted', lifted(ground)) ?? [],
    age: take('age', orNull(whole(age.least, age.most))) ?? null,
  }));

/** A pattern's form is one of its own movements. */
const forms = ({ movements }: StrengthGround): Reader<StrengthWishes['forms']> =>
  object(({ take }) => {
    const choices = (pattern: PatternId): string[] => movements.filter((each) => each.pattern === pattern).map(idOf);
    return Object.fromEntries(
      patternIds.flatMap((pattern) => {
        const form = take(pattern, oneOf(choices(pattern)));
        return form === undefined ? [] : [[pattern, form]];
      }),
    );
  });

/** Only movements with a weight tell how much can be lifted. */
function lifted({ movements, rules }: StrengthGround): Reader<readonly LiftedSet[]> {
  const loaded = movements.filter((each) => each.loaded).map(idOf);
  const set: Reader<LiftedSet | undefined> = object(({ need }) => {
    const movement = need('movement', oneOf(loaded));
    const weight = need('kilograms', between(kilograms.least, kilograms.most));
    const repetitions = need('repetitions', whole(1, rules.maximum.most_repetitions));
    if (movement === undefined || weight === undefined || repetitions === undefined) return undefined;
    return { movement, kilograms: weight, repetitions };
  });
  return list(set, movements.length);
}

function doubles(wishes: StrengthWishes): Problem[] {
  const movements = wishes.lifted.map(({ movement }) => movement);
  return [
    ...repeated(wishes.equipment).map((index) => duplicate(`equipment[${index}]`, wishes.equipment[index])),
    ...repeated(movements).map((index) => duplicate(`lifted[${index}].movement`, movements[index])),
  ];
}

const idOf = ({ id }: { readonly id: string }): string => id;

const inStrength = (problem: Problem): Problem => ({
  ...problem,
  path: problem.path === '' ? 'strength' : `strength.${problem.path}`,
});
