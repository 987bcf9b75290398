import type { Problem } from '../problem.js';
import { duplicate, repeated } from '../training/method/duplicates.js';
import { patternIds } from '../training/method/strength-rules.js';
import { numberOrText } from './number-or-text.js';
import { asOption, asText, fieldsOf, list, partsOf, type OptionFields, type Read } from './option-fields.js';
import type { Asked } from './plan-answer.js';
import type { Session } from './session.js';

const none = 'none';

/** `none` by itself is no equipment at all. */
const equipment: Read = (text) => (text.trim() === none ? [] : list(asText)(text));

/** `squat=goblet-squat`: a movement for a pattern. */
const formsIn = (text: string): readonly (readonly [pattern: string, movement: string])[] =>
  text.split(',').map((entry) => {
    const [pattern = '', movement = ''] = partsOf(entry.trim(), '=', 2);
    return [pattern.trim(), movement.trim()];
  });

/** `goblet-squat:20x8`: twenty kilograms eight times. */
const liftedSet: Read = (text) => {
  const [movement, set = ''] = partsOf(text, ':', 2);
  const [kilograms = '', repetitions = ''] = partsOf(set, 'x', 2);
  return { movement, kilograms: numberOrText(kilograms), repetitions: numberOrText(repetitions) };
};

const strengthFields: OptionFields = {
  equipment: { field: 'equipment', read: equipment },
  minutes: { field: 'minutes', read: numberOrText },
  form: { field: 'forms', read: (text) => Object.fromEntries(formsIn(text)) },
  lifted: { field: 'lifted', read: list(liftedSet) },
  age: { field: 'age', read: numberOrText },
};

/** What the options of a command line tell of a person's strength training. */
export const strengthAsked = (session: Pick<Session, 'options'>): Asked => ({
  request: { strength: fieldsOf(session, strengthFields) },
  problems: doubleForms(session),
  asOption: (problem) => named(problem, session),
});

/** An object of patterns would keep the last of two without a word. */
function doubleForms({ options: { form } }: Pick<Session, 'options'>): Problem[] {
  const patterns = form === undefined ? [] : formsIn(form).map(([pattern]) => pattern);
  return repeated(patterns).map((index) => duplicate('--form', patterns[index]));
}

function named(problem: Problem, { options }: Pick<Session, 'options'>): Problem {
  const [, pattern] = /^strength\.forms\.(.*)$/s.exec(problem.path) ?? [];
  if (pattern !== undefined && problem.code === 'unknown-field')
    return { path: '--form', value: pattern, code: 'not-one-of', allowed: { choices: patternIds } };
  if (pattern !== undefined) return { ...problem, path: `--form (${pattern})` };
  const { choices } = problem.allowed;
  // Beside other equipment there cannot be none.
  const isAlone = problem.path === 'strength.equipment[0]' && !options.equipment?.includes(',');
  const allowed = isAlone && Array.isArray(choices) ? { choices: [...choices.map(String), none] } : problem.allowed;
  return asOption({ ...problem, allowed }, 'strength', strengthFields);
}
