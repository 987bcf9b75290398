import { html, nothing, type TemplateResult } from 'lit';
import type { Exercise } from '../../plan/strength/document.js';
import { strengthGround } from '../../plan/strength/strength-ground.js';
import type { Movement } from '../../training/method/strength-rules.js';
import { isAtHand } from '../../training/strength/choose-movement.js';
import { howHard, nextText, setsText, shareText, weightText } from '../../words/strength/exercise-line.js';
import { movementName, movementOf } from '../../words/strength/movement-text.js';
import { choiceField } from '../fields/choice-fields.js';
import type { StrengthView } from './strength-view.js';

/** A movement with its sets; pressed, how it is done, what to mind, and easier and harder forms. */
export function exerciseItem(view: StrengthView, exercise: Exercise, session: number): TemplateResult {
  const { words, method, desk } = view;
  const id = `strength-${session}-${exercise.pattern}`;
  const weight = weightText(words, exercise);
  return html`<details
    class="exercise"
    ?open=${desk.isOpen(id)}
    @toggle=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLDetailsElement) desk.toggle(id, currentTarget.open);
    }}
  >
    <summary>
      <b>${movementName(words, method, exercise.movement)}</b>
      <span class="sets">${setsText(words, exercise)}</span>
      ${weight === '' ? nothing : html`<span class="sets">${weight}</span>`}
      <span class="quiet">${howHard(words, exercise)}</span>
    </summary>
    ${desk.isOpen(id) ? exerciseDetails(view, exercise, id) : nothing}
  </details>`;
}

function exerciseDetails(view: StrengthView, exercise: Exercise, id: string): TemplateResult {
  const { words, method } = view;
  const { how, cautions = [] } = movementOf(method, exercise.movement);
  const told = [words.text(how), shareText(words, exercise), nextText(words, exercise)].filter((line) => line !== '');
  return html`${told.map((line) => html`<p>${line}</p>`)}
  ${cautions.map((caution) => html`<p class="mind">${words.text(caution)}</p>`)} ${formField(view, exercise, id)}`;
}

/** The forms of a pattern, from the easiest on; those that lack equipment say so. */
function formField(view: StrengthView, { pattern, movement }: Exercise, id: string): TemplateResult {
  const { words, method, strength, desk } = view;
  const forms = strengthGround(method).movements.filter((each) => each.pattern === pattern);
  const name = (each: Movement): string =>
    isAtHand(each, strength.wishes.equipment)
      ? words.text(each.name)
      : words.say('strength.form.needs', {
          movement: words.text(each.name),
          equipment: words.list(each.equipment.map((item) => words.say(`strength.equipment.${item}`))),
        });
  return choiceField(view, {
    id: `${id}-form`,
    label: words.say('strength.form'),
    choices: [...forms]
      .sort((one, other) => one.grade - other.grade)
      .map((each) => ({ value: each.id, text: name(each) })),
    value: movement,
    set: (form) => ({ ...desk.request, forms: { ...desk.request.forms, [pattern]: form } }),
  });
}
